#include "extension/archive/recalculation/assignment.hpp"

#include "extension/formulas/quotes.hpp"

#include <charconv>
#include <optional>
#include <stdexcept>

namespace hearthcell::archive {
namespace {

std::optional<double> number_in(std::string text) {
    double const scale = text.ends_with('%') ? 100 : 1;
    if (scale != 1)
        text.pop_back();
    double number = 0;
    auto const [end, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (problem != std::errc() || end != text.data() + text.size())
        return std::nullopt;
    return number / scale;
}

} // namespace

Assignment read_assignment(std::string const& text) {
    // A sheet's name in quotes may hold the sign, too.
    auto const after_quotes = text.starts_with('\'') ? formulas::past_quotes(text, 0) : 0;
    auto const sign = text.find('=', after_quotes == std::string::npos ? 0 : after_quotes);
    if (sign == std::string::npos || sign == 0)
        throw std::invalid_argument("'" + text + "' is not NAME=VALUE");
    std::string const value = text.substr(sign + 1);
    if (auto const number = number_in(value))
        return {text.substr(0, sign), *number};
    return {text.substr(0, sign), value};
}

std::vector<std::string> split_names(std::string const& list) {
    std::vector<std::string> names(1);
    bool quoted = false;
    for (char const letter : list) {
        quoted = quoted != (letter == '\'');
        if (letter == ',' && !quoted)
            names.emplace_back();
        else
            names.back() += letter;
    }
    std::erase(names, std::string());
    return names;
}

} // namespace hearthcell::archive
