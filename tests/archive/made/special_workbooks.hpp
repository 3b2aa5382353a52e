#pragma once
// Workbooks that can be opened but want something: to run a macro, to fetch from elsewhere, or a lot of time.

#include "workbook.hpp"

namespace hearthcell::tests::archive {

/// Its Basic writes a file as soon as somebody recalculates it and lets it.
Workbook with_macro(std::filesystem::path const& path, std::filesystem::path const& marker);

/// The workbook that others link to: a single number.
Workbook link_source(std::filesystem::path const& path, double value);

/// Refers to a cell of another workbook, once in a formula and once as a linked sheet; both have seen `saved` there.
Workbook with_links(std::filesystem::path const& path, std::filesystem::path const& source, double saved);

/// Asks a server when it is calculated.
Workbook with_web_service(std::filesystem::path const& path, std::string const& url);

/// A sheet of a million numbers, with the sum of them and a result under an older rule above.
Workbook with_a_million_cells(std::filesystem::path const& path);

/// Takes more than ten minutes of a processor, and ends.
Workbook that_takes_for_ever(std::filesystem::path const& path);

} // namespace hearthcell::tests::archive
