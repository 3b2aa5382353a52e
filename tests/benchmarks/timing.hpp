#pragma once

#include "office/document.hpp"

#include <string>
#include <vector>

namespace hearthcell::benchmarks {

/// A sheet of its own in which one formula, filled down, is recalculated. Inputs are numbers in columns from A on, the
/// same in every row but for the last digits, so that no two rows are alike.
class Subject {
public:
    Subject(office::Office& office, std::vector<std::vector<std::string>> const& formulas,
            std::vector<double> const& inputs, int rows);

    /// Microseconds a row of one hard recalculation.
    double measure();

    [[nodiscard]] office::CellValue first_result() const { return document.sheet(0).value(result_cell); }

private:
    office::Document document;
    std::string result_cell;
    int rows;
};

/// Median microseconds a row of two subjects, measured in turn, A B A B …
struct Pair {
    double subject, baseline;
};
Pair measure_in_turn(Subject& subject, Subject& baseline, int repetitions = 5);
double measure_alone(Subject& subject, int repetitions = 5);

} // namespace hearthcell::benchmarks
