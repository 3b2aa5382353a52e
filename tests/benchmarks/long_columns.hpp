#pragma once
// Logs of up to a million readings, and how long functions take over them.

#include "extension/office/document.hpp"
#include "timing.hpp"

#include <string>

namespace hearthcell::benchmarks {

/// A sheet whose columns A and B hold a log in their first rows, up to all 1,048,576.
class LongColumns {
public:
    enum class Shape { heating, cooling, stopped_early };
    LongColumns(office::Office& office, Shape shape, int readings);

    /// Milliseconds of one hard recalculation of a function and of its empty twin, of which the first arguments are
    /// these columns ("A:A;B:B"). Throws where the function gives an error.
    Pair measure(std::string const& name, std::string const& columns, std::string const& further_arguments);

private:
    double milliseconds(std::string const& formula);

    office::Document document;
};

} // namespace hearthcell::benchmarks
