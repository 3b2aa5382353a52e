#include "findings.hpp"

namespace hearthcell::tests {

std::vector<Finding> findings_of(Outcome const& outcome) {
    std::vector<Finding> findings;
    Block const& block = std::get<Block>(outcome);
    EXPECT_EQ(block.columns, 2U);
    for (Block::Text const& text : block.texts) {
        if (text.place % 2 == 1) { // in place of a row
            EXPECT_EQ(text.text, "");
            continue;
        }
        if (text.text.empty()) // the row that keeps Calc from repeating a single one
            continue;
        double const row = block.numbers.at(text.place + 1);
        findings.push_back({text.text, failed(row) ? 0U : unsigned(row)});
    }
    return findings;
}

std::vector<Finding> check(LogColumns const& log, std::vector<Value> more) {
    return findings_of(call_log("LOGCHECK", log, std::move(more)));
}

std::string listed(std::vector<Finding> const& findings) {
    std::string text;
    for (Finding const& finding : findings)
        text += std::to_string(finding.row) + ": " + finding.words + "\n";
    return text;
}

void expect_only(std::vector<Finding> const& findings, std::string_view part, unsigned row) {
    ASSERT_EQ(findings.size(), 1U) << "wanted: " << part << " in row " << row << "\n" << listed(findings);
    EXPECT_NE(findings[0].words.find(part), std::string::npos) << findings[0].words << "\nwanted: " << part;
    EXPECT_EQ(findings[0].row, row) << findings[0].words;
}

void expect_nothing(std::vector<Finding> const& findings) {
    EXPECT_EQ(listed(findings), "0: nothing to remark\n");
}

LogColumns heating() {
    LogColumns log = log_of(Pot(), 1, 28, 95);
    round_to(log, 0.1);
    return log;
}

} // namespace hearthcell::tests
