#include "extension/formulas/errors.hpp"

#include <algorithm>

namespace hearthcell::formulas {
namespace {

struct ErrorConstant {
    int code;
    std::string_view written;
};

/// Those that every spreadsheet program can write as a constant.
constexpr ErrorConstant error_constants[] = {{503, "#NUM!"},  {519, "#VALUE!"}, {521, "#NULL!"}, {524, "#REF!"},
                                             {525, "#NAME?"}, {532, "#DIV/0!"}, {32767, "#N/A"}};

} // namespace

std::string_view error_constant(int code) {
    auto const* const found = std::ranges::find(error_constants, code, &ErrorConstant::code);
    return found == std::end(error_constants) ? std::string_view() : found->written;
}

int code_of_error_constant(std::string_view written) {
    auto const* const found = std::ranges::find(error_constants, written, &ErrorConstant::written);
    return found == std::end(error_constants) ? 0 : found->code;
}

} // namespace hearthcell::formulas
