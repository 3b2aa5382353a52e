#pragma once
// Names of fuels and materials put into a sentence: what each stands for, and where that comes from.

#include "functions/catalogue/function.hpp"
#include "functions/words/speaker.hpp"

namespace hearthcell {

/// "pine" stands for 19.13 MJ/kg, net, dry, with its ash: Energies 15 (2022) 1442.
std::string about_name(Speaker const& say, Named const& row, Measure measure);

/// The same of every name that a call gives where a number is wanted, each once.
Sentences about_names(Speaker const& say, Function const& function, std::span<Value const> values);

} // namespace hearthcell
