// The check of a workbook cries no wolf, and misses none: over simulated runs, clean ones and such with a slip.

#include "checks.hpp"
#include "simulated_runs.hpp"

namespace hearthcell::tests {

class NoCryingWolf : public Calc {};

TEST_F(NoCryingWolf, OverAThousandCleanRunsThereIsARemarkInAHundredAtTheMost) {
    write_record(sheet, simulated_runs(1000, 17));
    checking::Result const result = checked(document);
    EXPECT_EQ(result.runs, 1000U);
    auto const remarks = remarks_of(result);
    RecordProperty("remarks", int(remarks.size()));
    EXPECT_LE(remarks.size(), 10U) << in_words(result);
    EXPECT_GE(result.clean, 990U);
}

/// Each slip is planted in every tenth run of a record, one record a slip.
TEST_F(NoCryingWolf, OfRunsWithASlipOfAKnownKindNearlyAllAreFound) {
    constexpr std::size_t runs = 60;
    constexpr int every = 6, planted_in_each = int(runs) / every;
    std::vector<std::string> missed;
    int planted = 0, found = 0;
    for (Slip const& slip : slips()) {
        int found_of_slip = 0;
        for (int which = 0; which < planted_in_each; which += 3) { // one a record, so that it is unlike the others
            Document const record = Document::blank(office_with_package());
            Sheet into = record.sheet(0);
            auto const all = simulated_runs(runs, 40);
            write_record(into, all);
            int const run = which * every + 3, row = first_row_of_record + run;
            slip.plant(into, all[std::size_t(run)], row);
            checking::Result const result = checked(record);
            bool is_found = false;
            for (checking::RunRemarks const& remarks : result.remarks)
                for (checking::Remark const& remark : remarks.remarks)
                    is_found = is_found || (remark.cell.row + 1 <= row && remark.last_row + 1 >= row);
            ++planted;
            found_of_slip += is_found ? 1 : 0;
        }
        found += found_of_slip;
        if (found_of_slip == 0)
            missed.push_back(slip.what);
    }
    EXPECT_GE(found, 0.95 * planted) << "missed: " << testing::PrintToString(missed);
    RecordProperty("found", found);
    RecordProperty("planted", planted);
    EXPECT_TRUE(missed.empty()) << testing::PrintToString(missed);
}

} // namespace hearthcell::tests
