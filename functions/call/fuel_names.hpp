#pragma once
// Names where numbers are wanted: a fuel instead of its calorific value, a material instead of its specific heat.

#include "functions/call/scalar.hpp"

namespace hearthcell {

/// What a name stands for in a table, or why it stands for nothing there.
Scalar named_value(NameTable const& table, std::string_view name);

/// A column in which names may stand among the numbers, with the numbers in their places.
struct NamedColumn {
    Block numbers;
    std::vector<std::size_t> as_fired; ///< where the value holds for the fuel as it is burned
    Failure failure;
};
NamedColumn with_names_read(Argument const& argument, unsigned place, Block const& column);

/// A value as fired leaves no moisture to be taken off: fails where the moisture beside it is not 0. `place` is that
/// of the values.
Failure check_moisture_beside(NamedColumn const& values, unsigned place, Block const& moistures);

} // namespace hearthcell
