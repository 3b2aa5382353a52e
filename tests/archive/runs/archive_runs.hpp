#pragma once
// The archive under test and what several tests want to know of a run on it.

#include "reports.hpp"
#include "tests/archive/made/test_archive.hpp"

namespace hearthcell::tests::archive {

TestArchive const& made(); ///< the archive in the build tree

/// Names and cells that the runs collect.
inline constexpr auto collected = "efficiency,calorific_value,Results.B1,verdict,Readings.B2";

/// The run on the whole archive with two workers: made once, looked at by many tests.
struct WholeRun {
    std::map<std::string, std::string> before, after; ///< snapshots of the archive
    Ended ended;
};
WholeRun const& whole_run();

/// What the runs work on that are stopped or killed on their way: every third good workbook, and the odd ones.
struct PartOfArchive {
    std::string list;            ///< its good ones, with NUL between the names: what `-` and `--null` read
    std::set<std::string> files; ///< likewise, by their names in reports

    [[nodiscard]] bool holds(std::string const& file) const; ///< by its name in reports
};
PartOfArchive const& part_of_archive();

/// Whether two runs report the same, but for what chance and clock give.
void expect_the_same_reports(std::filesystem::path const& output, std::filesystem::path const& as_in);

/// Whether a run on a part of the archive reports what the run on the whole does of that part.
void expect_the_same_reports(std::filesystem::path const& output, PartOfArchive const& part);

/// Where a cell stands in the files of a run: the value that a copy holds, read from the file itself.
Held held_in_copy(std::filesystem::path const& file, std::size_t sheet, std::string const& cell);

} // namespace hearthcell::tests::archive
