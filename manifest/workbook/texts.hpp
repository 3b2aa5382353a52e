#pragma once
// The texts of the templates in four languages.

#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace hearthcell::workbook {

/// The texts of a sheet in one language, by the English text. Terms of the glossary and names of fuels and materials
/// come from the catalogue, and stand in no file. A file of texts is a list of objects
/// {"en": …, "fr": …, "es": …, "sw": …}; {"all": …} is a text that stays as it is in every language (a unit, a name).
class Texts {
public:
    /// Every entry of `own` has to be used; those of `shared` may be.
    Texts(std::string language, std::vector<std::filesystem::path> const& shared, std::filesystem::path const& own);

    /// The text in the language; the text itself, and a note of it, where it is not known.
    std::string translated(std::string_view english);

    [[nodiscard]] std::set<std::string> const& unknown() const { return unknown_; }
    [[nodiscard]] std::set<std::string> const& unused() const { return unused_; }
    [[nodiscard]] std::string const& language() const { return language_; }

private:
    void read(std::filesystem::path const& file, bool has_to_be_used);
    void add_terms();

    std::string language_;
    std::map<std::string, std::string, std::less<>> by_english_; ///< of the files
    std::map<std::string, std::string, std::less<>> terms_;      ///< of the catalogue
    std::set<std::string> unknown_, unused_;
};

/// Whether there is anything in it to translate: a letter.
bool has_words(std::string_view text);

} // namespace hearthcell::workbook
