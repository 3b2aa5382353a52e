#pragma once
// Numbers and words that stand in carried formulas as such: they go into every sheet, and so have to be confirmed.

#include "extension/archive/example/example.hpp"

namespace hearthcell::archive {

struct Constant {
    std::string function;            // of ours, without STOVE.; empty: it stands in none
    std::string argument;            // by its name; of a longer one with the argument itself
    std::string value;               // as it is written there
    bool is_whole = false;           // it is all of the argument
    bool is_factor = false;          // of a unit: 1000, 60, 100
    std::size_t start = 0, size = 0; // in the formula
};
std::vector<Constant> constants_in(std::string_view formula);

/// What no sheet shows, and a carried formula takes for granted: the meter's basis, net or gross, the lid.
struct Assumption {
    std::string function, argument, holds;
};
std::vector<Assumption> assumptions_of(std::string_view formula);

} // namespace hearthcell::archive
