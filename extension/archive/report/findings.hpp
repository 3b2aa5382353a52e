#pragma once
// What the summary shows besides counts.

#include "extension/archive/records/changes_csv.hpp"
#include "extension/archive/records/finished.hpp"
#include "extension/archive/report/every_nth.hpp"

#include <array>
#include <cstdint>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// A workbook in the reports.
struct Origin {
    std::string relative;       // as the CSV files name it
    std::filesystem::path file; // what a link leads to: the recalculated copy, or the original where there is none
};

/// What the summary shows besides counts, gathered from one workbook after the other, in room that does not grow with
/// their number.
class Findings {
public:
    struct Group { // a folder or a year
        std::uint64_t workbooks = 0, with_changes = 0, changes = 0, problems = 0;
    };
    struct Large {
        Origin origin;
        std::string sheet, cell, formula, before, after;
        double relative = 0;
    };
    struct Sized { // of the changed numbers: how many are lower and higher than before
        std::uint64_t lower = 0, higher = 0;
    };
    struct Listed {
        Origin origin;
        Problem problem;
    };
    struct Remarked {
        Origin origin;
        CheckRemark remark;
    };
    struct Row { // of collected.csv
        Origin origin;
        std::uint64_t number = 0; // among all, from 1
        CollectedRow values;
    };

    void workbook(Origin const& origin, Finished const& finished);
    void change(Origin const& origin, ChangeRow const& row);
    void problem(Origin const& origin, Problem const& problem); // of a workbook or anything else

    std::map<std::string, Group> groups;
    std::vector<Large> largest; // of the counted changes, the largest first
    std::array<Sized, 5> sizes; // by size_class
    std::uint64_t counted = 0;  // changes
    std::map<Reason, std::vector<Listed>> problems;
    std::vector<Remarked> remarks; // the first ones
    std::vector<Row> first_rows;   // of collected.csv
    EveryNth<Row> sample{600};     // of its rows
    std::uint64_t rows = 0;

private:
    Group& group_of(Origin const& origin);
    void collect(Row const& row);
};

} // namespace hearthcell::archive
