#pragma once
// Made-up runs of a stove with the scatter that such tests have, and slips planted in them.

#include "extension/office/sheet.hpp"

#include <functional>
#include <string>
#include <vector>

namespace hearthcell::tests {

/// The readings of a run, in the order of the columns of its row.
struct SimulatedRun {
    double pot = 760, pot_and_water = 0, start = 0, laid_out = 0, end = 0, pot_and_water_end = 0, left = 0,
           moisture = 0, calorific_value = 18.7, net_char = 0, minutes = 0, altitude = 1240;
    std::string method = "properties";
};

/// Always the same ones for a seed: five litres or so to the boil in half an hour, at an efficiency of 15 to 30 %.
std::vector<SimulatedRun> simulated_runs(std::size_t count, unsigned seed);

/// A record of runs in rows, from the third one on, with what our functions make of them beside it.
void write_record(office::Sheet& sheet, std::vector<SimulatedRun> const& runs);
inline constexpr int first_row_of_record = 3;

/// A slip that testers make, in one run's row of a record that is written already.
struct Slip {
    std::string what;
    std::function<void(office::Sheet& sheet, SimulatedRun const& run, int row)> plant;
};
std::vector<Slip> const& slips();

} // namespace hearthcell::tests
