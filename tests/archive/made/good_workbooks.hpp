#pragma once
// The workbooks of the archive that can be recalculated, with the results that today's functions give.

#include "workbook.hpp"

#include <optional>

namespace hearthcell::tests::archive {

/// What somebody typed into a workbook; all invented.
struct Readings {
    double altitude, water, start, end, wood, moisture, calorific_value, minutes;
};

Readings readings(int number);

/// What the kernels make of it.
struct Results {
    double boiling_point, water_heat, wood_energy, efficiency, firepower;
};

Results results(Readings const& typed);

/// One of the mixed workbooks; its path, format, flavour and figures follow from its number.
Workbook good_workbook(int number);

inline constexpr int good_count = 300;
std::vector<Workbook> good_workbooks(int count = good_count);

/// What one of our functions gives today, computed without any office.
Held today(std::string const& function, std::vector<std::variant<double, std::string>> const& arguments);

} // namespace hearthcell::tests::archive
