#include "extension/archive/files/xlsx_formula.hpp"

#include "extension/formulas/letters.hpp"

namespace hearthcell::archive {
namespace {

/// Whether a text ends with an error but for its sign: #REF, #DIV/0.
bool ends_with_error(std::string_view text) {
    constexpr std::size_t longest = 8;
    for (std::size_t back = 1; back <= longest && back <= text.size(); ++back) {
        char const letter = text[text.size() - back];
        if (letter == '#')
            return true;
        if ((letter < 'A' || letter > 'Z') && letter != '/' && letter != '0')
            return false;
    }
    return false;
}

} // namespace

std::string in_the_way_of_calc(std::string_view formula) {
    std::string text = "=";
    char quote = 0; // inside of a text or of a sheet's name
    for (char const letter : formula) {
        if ((letter == '"' || letter == '\'') && (quote == 0 || quote == letter))
            quote = quote == 0 ? letter : '\0';
        bool const names_sheet = letter == '!' && quote == 0 &&
                                 (text.back() == '\'' || formulas::is_in_word(text.back())) && !ends_with_error(text);
        text += names_sheet ? '.' : letter;
    }
    return text;
}

} // namespace hearthcell::archive
