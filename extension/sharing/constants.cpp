#include "extension/sharing/constants.hpp"

#include "extension/formulas/errors.hpp"
#include "extension/office/text.hpp"

#include <array>
#include <charconv>

namespace hearthcell::sharing {

rtl::OUString number_constant(double number) {
    std::array<char, 32> digits{};
    auto const [end, problem] = std::to_chars(digits.data(), digits.data() + digits.size(), number);
    return {digits.data(), sal_Int32(end - digits.data()), RTL_TEXTENCODING_ASCII_US};
}

rtl::OUString text_constant(rtl::OUString const& text) {
    return "\"" + text.replaceAll("\"", "\"\"") + "\"";
}

std::optional<rtl::OUString> error_constant(sal_Int32 code) {
    std::string_view const written = formulas::error_constant(code);
    return written.empty() ? std::nullopt : std::optional(office::wide(written));
}

} // namespace hearthcell::sharing
