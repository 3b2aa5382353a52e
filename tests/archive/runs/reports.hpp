#pragma once
// The reports of a run, read by programs that are not ours.

#include "run.hpp"
#include "tests/archive/made/workbook.hpp"

#include <gtest/gtest.h>

#include <map>
#include <set>

namespace hearthcell::tests::archive {

/// A row of a CSV file by its headings.
using Row = std::map<std::string, std::string>;

/// Read by Python's csv module, strictly; fields are then as they were, and names of files as they are on the disk.
/// Throws when it finds fault with the file, or when rows differ in length.
std::vector<Row> read_csv(std::filesystem::path const& file);
Words csv_headings(std::filesystem::path const& file);

/// Whether all lines end as RFC 4180 has it: with a carriage return and a line feed.
bool has_proper_line_ends(std::filesystem::path const& file);

std::string text_of(std::filesystem::path const& file);

/// The rows of changes.csv that count, by file, sheet and cell.
using Key = std::tuple<std::string, std::string, std::string>;
std::map<Key, Row> counted_changes(std::filesystem::path const& output);

/// File → reasons.
std::map<std::string, std::set<std::string>> problems(std::filesystem::path const& output);

/// Whether a field of a report says this value: numbers to 15 digits.
testing::AssertionResult says(std::string const& field, Held const& value);

/// The workbooks in a folder but the summary, as relative paths.
std::set<std::string> copies(std::filesystem::path const& output);

/// Everything about a folder that a careless program could change: names, kinds, sizes, contents (hashed), modes and
/// times. A lock file that was there for a moment only shows in the time of its folder.
std::map<std::string, std::string> snapshot(std::filesystem::path const& folder);

} // namespace hearthcell::tests::archive
