#pragma once

#include "office/document.hpp"

#include <string>

namespace hearthcell::benchmarks {

/// A sheet whose columns A and B hold a log in their first rows, up to all 1,048,576; functions are given A:A and B:B.
class LongColumns {
public:
    enum class Shape { heating, cooling, stopped_early };
    LongColumns(office::Office& office, Shape shape, int readings);

    /// Median milliseconds of one hard recalculation of the function and of its empty twin, measured in turn. Throws
    /// where the function gives an error.
    struct Pair {
        double function, empty;
    };
    Pair measure(std::string const& name, std::string const& further_arguments);

private:
    double milliseconds(std::string const& formula);

    office::Document document;
};

} // namespace hearthcell::benchmarks
