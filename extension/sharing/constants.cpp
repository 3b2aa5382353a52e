#include "extension/sharing/constants.hpp"

#include <array>
#include <charconv>

namespace hearthcell::sharing {
namespace {

struct ErrorConstant {
    sal_Int32 code;
    char const* written;
};

/// The errors that every spreadsheet program can write as a constant.
constexpr ErrorConstant constants[] = {{503, "#NUM!"},  {519, "#VALUE!"}, {521, "#NULL!"}, {524, "#REF!"},
                                       {525, "#NAME?"}, {532, "#DIV/0!"}, {32767, "#N/A"}};

} // namespace

rtl::OUString number_constant(double number) {
    std::array<char, 32> digits{};
    auto const [end, problem] = std::to_chars(digits.data(), digits.data() + digits.size(), number);
    return {digits.data(), sal_Int32(end - digits.data()), RTL_TEXTENCODING_ASCII_US};
}

rtl::OUString text_constant(rtl::OUString const& text) {
    return "\"" + text.replaceAll("\"", "\"\"") + "\"";
}

std::optional<rtl::OUString> error_constant(sal_Int32 code) {
    for (ErrorConstant const& constant : constants)
        if (constant.code == code)
            return rtl::OUString::createFromAscii(constant.written);
    return std::nullopt;
}

} // namespace hearthcell::sharing
