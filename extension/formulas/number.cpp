#include "extension/formulas/number.hpp"

#include <locale>
#include <sstream>

namespace hearthcell::formulas {

std::optional<double> number_in(std::string_view text) {
    // std::from_chars of a double asks for a newer C++ library than every system has that an office runs on.
    std::istringstream stream{std::string(text)};
    stream.imbue(std::locale::classic());
    double number = 0;
    bool const whole = stream >> std::noskipws >> number && stream.peek() == std::istringstream::traits_type::eof();
    return whole ? std::optional(number) : std::nullopt;
}

std::string number_text(double number, int digits) {
    std::ostringstream stream;
    stream.imbue(std::locale::classic());
    stream.precision(digits);
    stream << number;
    return stream.str();
}

} // namespace hearthcell::formulas
