#pragma once
// How this room says what is wrong with its sources.

#include <stdexcept>

namespace hearthcell::workbook {

/// What is wrong with a source, in words; the program prints it and ends with an error.
struct Trouble : std::runtime_error {
    using std::runtime_error::runtime_error;
};

} // namespace hearthcell::workbook
