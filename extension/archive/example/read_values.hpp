#pragma once
// What carried formulas read: the values of their arguments, as far as they can be told without calling a function.

#include "extension/archive/example/seen_workbook.hpp"

#include <functional>

namespace hearthcell::archive {

/// The values that one argument of a function got in one workbook.
struct ReadArgument {
    std::string function, argument;
    std::vector<double> values;
};

/// Adds what the calls of our functions in a formula read. value: of a cell; NaN where it is empty, nothing where it
/// holds no number.
void add_read(std::string_view formula, Place const& cell, formulas::Reads const& reads,
              std::function<std::optional<double>(Place const&)> const& value, std::vector<ReadArgument>& all);

} // namespace hearthcell::archive
