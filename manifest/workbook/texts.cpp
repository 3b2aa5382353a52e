#include "manifest/workbook/texts.hpp"

#include "manifest/workbook/trouble.hpp"

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>

namespace hearthcell::workbook {

Texts::Texts(std::string language, std::vector<std::filesystem::path> const& shared, std::filesystem::path const& own)
    : language_(std::move(language)) {
    for (std::filesystem::path const& file : shared)
        read(file, false);
    read(own, true);
}

void Texts::read(std::filesystem::path const& file, bool has_to_be_used) {
    std::ifstream stream(file);
    auto const entries = nlohmann::json::parse(stream, nullptr, false);
    if (!entries.is_array())
        throw Trouble(file.string() + " is no list of texts in JSON");
    for (auto const& entry : entries) {
        bool const same = entry.contains("all");
        std::string const english = entry.value(same ? "all" : "en", "");
        std::string const here = entry.value(same ? "all" : language_, "");
        if (english.empty() || here.empty())
            throw Trouble(file.string() + ": no text in '" + language_ + "' in " + entry.dump());
        if (!by_english_.emplace(english, here).second)
            throw Trouble(file.string() + ": twice: " + english);
        if (has_to_be_used)
            unused_.insert(english);
    }
}

std::string Texts::translated(std::string_view english) {
    auto const found = by_english_.find(english);
    if (found == by_english_.end()) {
        unknown_.emplace(english);
        return std::string(english);
    }
    unused_.erase(found->first);
    return found->second;
}

bool has_words(std::string_view text) {
    return std::any_of(text.begin(), text.end(), [](char c) {
        auto const byte = static_cast<unsigned char>(c);
        return (byte >= 'A' && byte <= 'Z') || (byte >= 'a' && byte <= 'z');
    });
}

} // namespace hearthcell::workbook
