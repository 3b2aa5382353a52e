#pragma once
// The parts of the benchmark, each a table or two. Every ratio is taken within one run, in turn.

#include "report.hpp"

#include "extension/office/office.hpp"

namespace hearthcell::benchmarks {

/// Each function against an empty call with the same kinds and number of arguments.
void measure_functions(office::Office& office, Report& report, int rows);

/// Each function against the same one of another package, say of the last edition, in an office of its own.
void measure_against_package(office::Office& office, office::Settings const& other, Report& report, int rows);

/// Our functions against the same maths written out in cells, and against what Calc brings along.
void measure_against_cells(office::Office& office, Report& report, int rows);

/// EACHROW against as many single cells.
void measure_each_row(office::Office& office, Report& report);

/// The log functions on whole columns and from a thousand to a million readings.
void measure_logs(office::Office& office, Report& report);

/// A sheet of up to 1,000,000 rows: time and memory a row. Starts an office of its own for each.
void measure_sheets(office::Settings const& settings, Report& report);

} // namespace hearthcell::benchmarks
