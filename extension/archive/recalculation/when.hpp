#pragma once
// Days and years: in cells, and in the names of folders.

#include <optional>
#include <string>
#include <string_view>

namespace hearthcell::archive {

// A path is as in the reports: "2019/march/run 3.ods".

/// The year in the name of the innermost folder that has one: "2019", "tests 2019-03". 1900 to 2099.
std::optional<int> year_of(std::string_view path);

/// What its results are counted under: the year, or else the outermost folder.
std::string folder_or_year(std::string_view path);

/// "2019-03-05" or "2019-03-05 14:30", as a table of collected results may hold it; in days since 1899-12-30, as Calc
/// counts them.
std::optional<double> day_in(std::string_view text);

/// The other way round; with the minute where there is one.
std::string written_day(double day);

} // namespace hearthcell::archive
