#include "extension/archive/recalculation/remarks.hpp"

#include "extension/checking/check.hpp"
#include "extension/office/text.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_remarks = 1000; // of one workbook

CheckOutcome outcome_of(checking::Result const& result) {
    CheckOutcome outcome{result.runs, result.clean, 0, {}};
    for (checking::RunRemarks const& run : result.remarks)
        for (checking::Remark const& remark : run.remarks) {
            ++outcome.all;
            if (outcome.remarks.size() < most_remarks)
                outcome.remarks.push_back({result.sheets.at(std::size_t(remark.cell.sheet)),
                                           remark.place.empty() ? remark.cells() : remark.place, remark.function,
                                           remark.value, remark.sentence, remark.effect});
        }
    return outcome;
}

checking::Result checked(office::Office& office, office::Document const& workbook,
                         std::vector<checking::Range> const& selection) {
    checking::Check check(office.context(), workbook.model(), Language::english, selection);
    while (check.go_on())
        ;
    workbook.hold(check.held());
    return check.result();
}

/// As few blocks as runs down the columns make.
std::vector<checking::Range> runs_of(std::set<Place> const& cells) {
    std::vector<checking::Range> runs;
    for (Place const& first : cells) {
        if (cells.contains({first.sheet, first.row - 1, first.column}))
            continue;
        Place last = first;
        while (cells.contains({last.sheet, last.row + 1, last.column}))
            ++last.row;
        runs.push_back({first, last});
    }
    return runs;
}

} // namespace

CheckOutcome check(office::Office& office, office::Document const& workbook) {
    return office::asking("checking the workbook", [&] { return outcome_of(checked(office, workbook, {})); });
}

std::map<Place, std::string> remarks_on(office::Office& office, office::Document const& workbook,
                                        std::set<Place> const& cells) {
    std::map<Place, std::string> remarks;
    if (cells.empty())
        return remarks;
    for (checking::RunRemarks const& run : checked(office, workbook, runs_of(cells)).remarks)
        for (checking::Remark const& remark : run.remarks)
            for (Place place = remark.cell; place.row <= std::max(remark.cell.row, remark.last_row); ++place.row)
                if (remark.place.empty() && cells.contains(place))
                    remarks[place] += (remarks[place].empty() ? "" : " ") + remark.sentence;
    return remarks;
}

} // namespace hearthcell::archive
