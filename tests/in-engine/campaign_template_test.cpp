// The template for a campaign, filled with the runs of the demonstration. Means and limits were computed apart from the
// same runs with scipy 1.10 (Student's t) and python3-iapws (boiling points of runs without a measured one).

#include "extension/demonstration/demo_data.hpp"
#include "templates.hpp"

namespace hearthcell::tests {
namespace {

class CampaignTemplate : public testing::Test {
protected:
    CampaignTemplate() { hearthcell::fill(workbook, demo_data("campaign")); }
    std::string errors() { return errors_on(workbook, 0) + errors_on(workbook, 1) + errors_on(workbook, 2); }

    Document workbook =
        Document::open(office_with_package(), template_file("en", "campaign"), office::Access::read_write);
    Sheet runs = workbook.sheet(0), overview = workbook.sheet(1), tiers = workbook.sheet(2);
};

struct Limits {
    double mean, deviation, variation, lower, upper;
};

void expect_limits(office::ValueRows const& row, Limits const& expected, double exact) {
    EXPECT_EQ(row[0][0], CellValue(5.0));
    EXPECT_NEAR(number(row[0][1]), expected.mean, exact);
    EXPECT_NEAR(number(row[0][2]), expected.deviation, exact);
    EXPECT_NEAR(number(row[0][3]), expected.variation, exact);
    EXPECT_NEAR(number(row[0][4]), expected.lower, exact);
    EXPECT_NEAR(number(row[0][5]), expected.upper, exact);
}

} // namespace

TEST_F(CampaignTemplate, GivesMeanAndLimitsOfEveryStove) {
    expect_limits(overview.values("D13:I13"), {0.1294, 0.00642650761, 0.0496638918, 0.121420437, 0.137379563}, 1e-9);
    expect_limits(overview.values("D14:I14"), {0.2496, 0.00433589668, 0.0173713809, 0.244216273, 0.254983727}, 1e-9);
    // A boiling point from an altitude is good to a thousandth of a kelvin, one part in 75000 of a boil time.
    expect_limits(overview.values("K13:P13"), {31.4502988, 1.80935283, 0.0575305448, 29.2036906, 33.6969071}, 1e-3);
    expect_limits(overview.values("K16:P16"), {19.2112305, 1.56611993, 0.0815210631, 17.2666358, 21.1558254}, 1e-3);
    EXPECT_EQ(errors(), "");
}

TEST_F(CampaignTemplate, NormalisesABoilTimeByItsRiseAndMass) {
    runs.formulas("F8", {{"1690", "", "94", "19", "4000", "20"}});
    EXPECT_NEAR(number(runs.value("N8")), 20 * 75 / 75.0 * 5000 / 4000, 1e-9); // by hand
    overview.number("C8", 4000);
    EXPECT_NEAR(number(runs.value("N8")), 20, 1e-9);
    runs.formula("J8", "");
    EXPECT_EQ(runs.shown("N8"), "");
    EXPECT_EQ(runs.shown("P8"), "Not normalised: that needs altitude, start and mass of the water.");
}

TEST_F(CampaignTemplate, GivesTiersToResultsOfTheStandardsTestOnly) {
    // ISO/TR 19867-3 (from memory): efficiency from 0.10, 0.20 … up; CO 11.5 g/MJ or less is tier 2; PM2.5 481 mg/MJ.
    EXPECT_EQ(tiers.values("E8:G8")[0][0], CellValue(1.0)); // 12.9 %
    EXPECT_EQ(tiers.value("I8"), CellValue(1.0));           // 12 g/MJ
    EXPECT_EQ(tiers.value("K8"), CellValue(1.0));           // 600 mg/MJ
    EXPECT_EQ(tiers.shown("E9"), "");
    EXPECT_EQ(tiers.shown("P9"), "No tier: not a result of the laboratory test of ISO 19867-1.");
    EXPECT_EQ(tiers.value("E10"), CellValue(3.0)); // 33.0 %, from 30.5 on
    EXPECT_EQ(tiers.value("M10"), CellValue(3.0)); // safety 80
    EXPECT_EQ(tiers.value("O10"), CellValue(4.0)); // durability 12
    EXPECT_EQ(tiers.value("E11"), CellValue(4.0)); // 41.2 %, from 39.5 on
    EXPECT_EQ(tiers.value("G11"), CellValue(3.0));
    EXPECT_EQ(tiers.shown("P11"), "The lower limit falls into another tier: more runs would tell.");
}

TEST_F(CampaignTemplate, AveragesNoEfficienciesOfDifferentTests) {
    runs.text("E9", "WBT 3");
    EXPECT_EQ(overview.shown("C13"), "different tests");
    EXPECT_EQ(overview.shown("E13"), "");
    EXPECT_EQ(overview.shown("Q13"), "Efficiencies of different tests have no common mean.");
    EXPECT_EQ(tiers.shown("E8"), "");
    EXPECT_NEAR(number(overview.value("L13")), 31.4502988, 1e-3); // a boil time is a boil time
}

TEST_F(CampaignTemplate, SaysInWordsWhatIsWrongWithARun) {
    runs.text("L8", "eleven");
    EXPECT_EQ(runs.shown("P8"), "efficiency: a number is needed, not a text.");
    EXPECT_EQ(overview.value("E13"), CellValue(not_a_value)); // no mean that leaves it out in silence
    EXPECT_EQ(overview.shown("Q13"), "No mean of a text or an error: see the remarks on the sheet Runs.");
    runs.text("D13", "unheard of");
    EXPECT_EQ(runs.shown("P13"), "This stove or variant is not in the list on the sheet Overview.");
    runs.formula("E14", "");
    EXPECT_EQ(runs.shown("P14"), "Missing: test.");
    runs.number("H15", 99);
    EXPECT_NE(runs.shown("P15").find("Boiling point, measured less computed: "), std::string::npos);
    runs.number("F16", 99999);
    EXPECT_EQ(runs.value("M16"), CellValue(not_a_result));
    EXPECT_EQ(runs.shown("P16"), "altitude is 99999, outside -450 to 9000 m.");
    overview.text("C6", "high");
    EXPECT_EQ(overview.shown("F6"), "a number is needed, not a text.");
}

TEST_F(CampaignTemplate, SaysInWordsThatLimitsNeedTwoRuns) {
    overview.text("B17", "clay stove, new");
    EXPECT_EQ(overview.shown("Q17"), "No run yet.");
    runs.formulas("C28", {{"Larch Yard", "clay stove, new", "ISO 19867-1"}});
    EXPECT_EQ(runs.shown("P28"), "Missing: boil time, efficiency.");
    runs.number("L28", 0.3);
    EXPECT_EQ(runs.shown("P28"), "");
    EXPECT_EQ(overview.value("D17"), CellValue(1.0));
    EXPECT_EQ(overview.shown("E17"), "");
    EXPECT_EQ(overview.shown("Q17"), "Limits need two runs at least, better five.");
    overview.text("B18", "clay stove");
    EXPECT_EQ(overview.shown("Q18"), "This name stands in the list twice.");
    EXPECT_EQ(errors(), "");
}

} // namespace hearthcell::tests
