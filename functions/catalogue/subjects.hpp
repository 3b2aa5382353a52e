#pragma once
// The functions of each subject, one file a subject.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

std::span<Function const> site_and_water();
std::span<Function const> moisture_of_fuel();
std::span<Function const> fuel();
std::span<Function const> performance();
std::span<Function const> standard_boil_time();
std::span<Function const> emissions();
std::span<Function const> households();
std::span<Function const> temperature_log();
std::span<Function const> repeated_runs();
std::span<Function const> comparisons();

} // namespace hearthcell
