#pragma once
// The counts of a run, and the texts made of them.

#include "extension/archive/recalculation/collected_columns.hpp"
#include "extension/archive/records/finished.hpp"
#include "extension/archive/report/agreement.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// What the checks of all workbooks came to.
struct CheckCounts {
    bool asked = false;
    std::uint64_t runs = 0, clean = 0, remarks = 0, workbooks = 0; // workbooks: those with remarks
};
/// In a sentence.
std::string words_of(CheckCounts const& counts);

/// How much of an example was carried.
struct ExampleCounts {
    bool asked = false;
    std::uint64_t formulas = 0, sheets = 0, workbooks = 0;
    std::string confirmed;        // what was said of constants and of what no sheet shows, a line each
    std::vector<std::string> odd; // of what was read
};

/// What an inventory found.
struct InventoryCounts {
    std::size_t sheets = 0, layouts = 0;
    std::uint64_t formulas = 0, ours = 0, with_ours = 0;  // cells, cells, workbooks
    std::map<std::string, std::uint64_t> recognised = {}; // hand-written formulas, by the function for each
};

/// What a run comes to. Holds nothing that would differ from one run to the next on the same files.
struct Summary {
    std::string edition;
    std::size_t workbooks = 0;
    std::size_t recalculated = 0;
    std::size_t changed = 0;   // workbooks
    std::size_t with_ours = 0; // workbooks that call functions of ours
    std::size_t given = 0;     // workbooks that this run put some into
    std::size_t copies = 0;
    std::size_t in_several_runs = 0; // workbooks, of runs that were joined
    Tally tally;
    CheckCounts remarks;
    ExampleCounts example;
    std::map<std::string, std::size_t> problems;                // by reason
    std::vector<std::pair<std::string, std::size_t>> collected; // name and in how many workbooks it was found
    std::vector<CollectedColumn> collected_columns;
    std::vector<std::string> compare; // pairs
    std::vector<std::size_t>
        compared_in; // of each pair two: in how many workbooks its new and its old cells were found
    std::vector<ComparedLine> compared;
    std::optional<InventoryCounts> inventory; // nothing: it was a recalculation

    void add(Finished const& finished);
};

/// What was found and what was done, a line each.
std::vector<std::string> opening_lines(Summary const& summary);

/// What was asked for and stands in none of the workbooks that were recalculated.
std::vector<std::string> names_nowhere(Summary const& summary);

/// "+1.2 %"; empty where there is none.
std::string percent(std::optional<double> const& part);

/// What a function computes by: why its result is another one than it was. Empty for other formulas.
std::string basis(std::string const& function);

std::string text_of(Summary const& summary);
nlohmann::json json_of(Summary const& summary);

} // namespace hearthcell::archive
