#pragma once
// A place on a sheet, and what a cell can hold: a number, a text, an error.

#include "extension/formulas/place.hpp"

#include <string>
#include <variant>

namespace hearthcell::archive {

using formulas::Place;

/// "B7"
std::string cell_name(Place const& place);

/// An error in a cell. The code is Calc's; 0 where a file shows a text that is not known as an error's.
struct Fault {
    int code = 0;
    std::string shown; // "#NUM!", "Err:504"
};

/// What Calc shows for an error code, and the other way round (0: no error's text).
std::string error_text(int code);
int error_code(std::string_view text);

/// A number, a text or an error; nothing where a file holds no result for a formula.
using Value = std::variant<std::monostate, double, std::string, Fault>;

/// As the CSV files have it: a number in its shortest form that reads back as the same.
std::string written(Value const& value);
std::string written(double number);

} // namespace hearthcell::archive
