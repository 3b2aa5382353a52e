#pragma once
// A file that the user names as an example. What is wrong with it ends the run before it begins.

#include "extension/archive/files/format.hpp"
#include "extension/archive/files/problem.hpp"
#include "extension/archive/files/shown.hpp"

#include <filesystem>
#include <stdexcept>

namespace hearthcell::archive {

/// What `read` gives, which is called with the file's format. Throws std::invalid_argument, which says why it cannot be
/// read.
template <class Read> auto read_example_file(std::filesystem::path const& file, Read const& read) {
    auto const format = format_of(file);
    if (!format)
        throw std::invalid_argument(shown(file.string()) + " is no workbook of a known kind");
    try {
        return read(*format);
    } catch (Trouble const& trouble) {
        throw std::invalid_argument(shown(file.string()) + " cannot be read: " + trouble.what());
    }
}

} // namespace hearthcell::archive
