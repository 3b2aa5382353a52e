#include "functions/number/in_words.hpp"

#include <charconv>
#include <cmath>

namespace hearthcell {

std::string in_words(double number) {
    if (std::isnan(number))
        return "not a number";
    char buffer[32];
    bool const is_long = std::abs(number) >= 999999.5 && std::abs(number) < 1e15; // 10000000, not 1e+07
    auto const [end, error] =
        is_long ? std::to_chars(buffer, buffer + sizeof buffer, number, std::chars_format::fixed, 0)
                : std::to_chars(buffer, buffer + sizeof buffer, number, std::chars_format::general, 6);
    return {buffer, end};
}

} // namespace hearthcell
