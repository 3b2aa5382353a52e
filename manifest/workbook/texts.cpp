#include "manifest/workbook/texts.hpp"

#include "functions/catalogue/glossary.hpp"
#include "functions/catalogue/tables.hpp"
#include "manifest/workbook/trouble.hpp"

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>

namespace hearthcell::workbook {

Texts::Texts(std::string language, std::vector<std::filesystem::path> const& shared, std::filesystem::path const& own)
    : language_(std::move(language)) {
    add_terms();
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
        if (!same && terms_.contains(english))
            throw Trouble(file.string() + ": is a term of the glossary, or a name of its tables: " + english);
        if (!by_english_.emplace(english, here).second)
            throw Trouble(file.string() + ": twice: " + english);
        if (has_to_be_used)
            unused_.insert(english);
    }
}

void Texts::add_terms() {
    Language const language = language_of(language_);
    auto const add = [&](Wording const& term) {
        terms_.emplace(std::string(term.english), std::string(term.in(language)));
    };
    for (Wording const& term : glossary)
        add(term);
    for (NameTable const* const table : name_tables)
        for (Named const& row : table->rows)
            add(row.name);
}

std::string Texts::translated(std::string_view english) {
    if (auto const found = by_english_.find(english); found != by_english_.end()) {
        unused_.erase(found->first);
        return found->second;
    }
    if (auto const term = terms_.find(english); term != terms_.end())
        return term->second;
    unknown_.emplace(english);
    return std::string(english);
}

bool has_words(std::string_view text) {
    return std::any_of(text.begin(), text.end(), [](char c) {
        auto const byte = static_cast<unsigned char>(c);
        return (byte >= 'A' && byte <= 'Z') || (byte >= 'a' && byte <= 'z');
    });
}

} // namespace hearthcell::workbook
