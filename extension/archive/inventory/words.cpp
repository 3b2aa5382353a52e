#include "extension/archive/inventory/words.hpp"

#include "extension/formulas/letters.hpp"
#include "functions/catalogue/names.hpp"

#include <algorithm>
#include <array>

namespace hearthcell::archive {
namespace {

/// Of times and dates, as word_key gives them.
constexpr std::array<std::string_view, 41> clock_words{
    "h",   "min",   "mins",      "s",     "sec",     "am",  "pm",       "jan", "january",  "feb",  "february",
    "mar", "march", "apr",       "april", "may",     "jun", "june",     "jul", "july",     "aug",  "august",
    "sep", "sept",  "september", "oct",   "october", "nov", "november", "dec", "december", "janv", "fevr",
    "avr", "mai",   "juin",      "juil",  "aout",    "ene", "abr",      "ago"};

} // namespace

std::string word_key(std::string_view text) {
    std::string key;
    Letters letters(text);
    for (char letter = letters.next(); letter != 0; letter = letters.next())
        if (letter != ':' && letter != '\n' && letter != '\r')
            key += letter;
    return key;
}

bool reads_as_number(std::string_view text) {
    std::string const key = word_key(text);
    std::string_view const digits = std::string_view(key).substr(key.starts_with('+') ? 1 : 0);
    auto const marks = std::ranges::count_if(digits, [](char c) { return c == '.' || c == ','; });
    return marks <= 1 && text.find(':') == std::string_view::npos && std::ranges::any_of(digits, formulas::is_digit) &&
           std::ranges::all_of(digits, [](char c) { return formulas::is_digit(c) || c == '.' || c == ','; });
}

bool reads_as_entry(std::string_view text) {
    if (std::ranges::none_of(text, formulas::is_digit))
        return false;
    std::string word;
    auto const is_known = [&] {
        bool const known = word.empty() || std::ranges::find(clock_words, word) != clock_words.end();
        word.clear();
        return known;
    };
    Letters letters(text);
    constexpr std::string_view between = "0123456789.,:/+%\"\n\r";
    for (char letter = letters.next(); letter != 0; letter = letters.next()) {
        if (between.find(letter) == std::string_view::npos)
            word += letter;
        else if (!is_known())
            return false;
    }
    return is_known();
}

} // namespace hearthcell::archive
