#include "extension/checking/shown.hpp"

#include "extension/checking/remark.hpp"
#include "extension/checking/texts.hpp"
#include "extension/formulas/errors.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/reference.hpp"

namespace hearthcell::checking {
namespace {

std::string error_name(int code) {
    std::string const constant(formulas::error_constant(code));
    return !constant.empty() ? constant : code == 0 ? "Err" : "Err:" + std::to_string(code);
}

} // namespace

std::string shown(Content const& content, Language language) {
    if (auto const* const text = std::get_if<std::string>(&content.value))
        return *text;
    if (auto const* const error = std::get_if<CellError>(&content.value))
        return error_name(error->code);
    double const number = std::get<double>(content.value);
    Function const* const function = formulas::only_call(content.formula);
    bool const is_share = function != nullptr && function->result.measure == Measure::share;
    return is_share ? share_in_language(number, language) : in_language(number, language);
}

std::string Remark::cells() const {
    std::string const first = formulas::cell_name(cell.column, cell.row);
    return last_row > cell.row ? first + ":" + formulas::cell_name(cell.column, last_row) : first;
}

} // namespace hearthcell::checking
