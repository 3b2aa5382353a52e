#pragma once
// Formulas to be timed, made from the examples of the catalogue.

#include "functions/catalogue/catalogue.hpp"

#include <string>
#include <vector>

namespace hearthcell::benchmarks {

/// A formula and the numbers that it reads from the cells A1, B1, C1 …
struct Formula {
    std::string text;
    std::vector<double> inputs;
};

/// A call of a catalogue function with an example's arguments: numbers from cells, texts written out. `prefix` chooses
/// between the function itself and its empty twin. Columns are written out as arrays.
Formula call_of(Function const& function, Example const& example, std::string const& prefix);

/// The example that gives a number with the fewest arguments, or with the most.
Example const* shortest_example(Function const& function);
Example const* longest_example(Function const& function);

} // namespace hearthcell::benchmarks
