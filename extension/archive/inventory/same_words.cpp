#include "extension/archive/inventory/same_words.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/archive/files/whole_file.hpp"
#include "extension/archive/inventory/words.hpp"

#include <set>
#include <sstream>
#include <stdexcept>

namespace hearthcell::archive {

SameWords same_words_in(std::filesystem::path const& file) {
    auto const text = content_of(file);
    if (!text)
        throw std::invalid_argument("--same-words: cannot read " + file.string());
    SameWords same;
    std::istringstream lines(*text);
    int number = 0;
    for (std::string line; std::getline(lines, line);) {
        ++number;
        if (line.find_first_not_of(" \t\r") == std::string::npos || line.starts_with('#'))
            continue;
        std::size_t const sign = line.find(" = ");
        std::string const one = word_key(line.substr(0, sign));
        std::string const other = sign == std::string::npos ? "" : word_key(line.substr(sign + 3));
        if (one.empty() || other.empty())
            throw std::invalid_argument("--same-words: line " + std::to_string(number) + " of " + file.string() +
                                        " is not 'word = word'");
        auto const known = same.find(other);
        std::string const stands_for = known == same.end() ? other : known->second;
        for (auto& [word, meant] : same) // what stood for the one before stands for the other now
            if (meant == one)
                meant = stands_for;
        if (one != stands_for)
            same[one] = stands_for;
    }
    return same;
}

std::string proposed_same_words(std::vector<Layout> const& layouts) {
    std::string text = "# Words that stand in the same place of layouts that are much the same. Where two mean the "
                       "same, take the # off\n"
                       "# their line, and give this file with --same-words.\n";
    std::set<std::string> known;
    for (Layout const& layout : layouts)
        for (OtherWord const& word : layout.other_words) {
            std::string const line = "# " + line_of(word.here.text) + " = " + line_of(word.there) + "\n";
            if (known.insert(line).second)
                text += line;
        }
    return text;
}

} // namespace hearthcell::archive
