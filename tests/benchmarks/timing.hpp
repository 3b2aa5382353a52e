#pragma once
// How long Calc takes over formulas.

#include "extension/office/document.hpp"

#include <functional>
#include <string>
#include <vector>

namespace hearthcell::benchmarks {

/// How formulas stand on a sheet: filled down beside all rows, once for all of them, or once over all of them.
enum class Stands { in_every_row, in_one_cell, as_array_formula };

/// A sheet of its own in which formulas are recalculated. Inputs are numbers in columns from A on, the same in every
/// row but for the last digits, so that no two rows are alike.
class Subject {
public:
    Subject(office::Office& office, std::vector<std::string> const& formulas, std::vector<double> const& inputs,
            int rows, Stands how = Stands::in_every_row);

    /// Microseconds a row of one hard recalculation.
    double measure();

    [[nodiscard]] office::CellValue first_result() const { return document.sheet(0).value(result_cell); }

private:
    office::Document document;
    std::string result_cell;
    int rows;
};

double median(std::vector<double> values);

/// What two things take when they are measured in turn, A B A B …: the median of each, and the median of the ratios
/// of neighbours, which what else the machine does disturbs least.
struct Pair {
    double subject, baseline, ratio;
};
Pair measure_in_turn(std::function<double()> const& subject, std::function<double()> const& baseline,
                     int repetitions = 9);
Pair measure_in_turn(Subject& subject, Subject& baseline);

} // namespace hearthcell::benchmarks
