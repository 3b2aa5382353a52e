#include "extension/archive/recalculation/remarks.hpp"

#include "extension/checking/check.hpp"
#include "extension/office/text.hpp"

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

} // namespace

CheckOutcome check(office::Office& office, office::Document const& workbook) {
    return office::asking("checking the workbook", [&] {
        checking::Check check(office.context(), workbook.model(), Language::english);
        while (check.go_on())
            ;
        return outcome_of(check.result());
    });
}

} // namespace hearthcell::archive
