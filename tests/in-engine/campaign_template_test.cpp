// The template for a campaign, filled with the runs of the demonstration. Means and limits were computed apart from the
// same runs with scipy 1.10 (Student's t) and python3-iapws (boiling points of runs without a measured one).

#include "extension/demonstration/demo_data.hpp"
#include "templates.hpp"

namespace hearthcell::tests {
namespace {

class CampaignTemplate : public testing::Test {
protected:
    CampaignTemplate() { hearthcell::fill(workbook, demo_data("campaign")); }
    std::string errors() {
        return errors_on(workbook, 0) + errors_on(workbook, 1) + errors_on(workbook, 2) + errors_on(workbook, 3);
    }

    Document workbook =
        Document::open(office_with_package(), template_file("en", "campaign"), office::Access::read_write);
    Sheet runs = workbook.sheet(0), overview = workbook.sheet(1), places = workbook.sheet(2), tiers = workbook.sheet(3);
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
    expect_limits(overview.values("D13:I13"), {0.124, 0.00587367006, 0.047368307, 0.116706875, 0.131293125}, 1e-9);
    expect_limits(overview.values("D14:I14"), {0.1964, 0.00650384502, 0.0331153005, 0.18832441, 0.20447559}, 1e-9);
    // A boiling point from an altitude is good to a thousandth of a kelvin, one part in 75000 of a boil time.
    expect_limits(overview.values("K13:P13"), {34.7240145, 1.4204564, 0.0409070329, 32.9602849, 36.4877441}, 1e-3);
    expect_limits(overview.values("K16:P16"), {26.0994716, 0.606800424, 0.0232495291, 25.3460293, 26.8529138}, 1e-3);
    EXPECT_EQ(errors(), "");
}

TEST_F(CampaignTemplate, GivesFuelUseAndFirepowerBesideThem) {
    // R 4.2, t.test
    expect_limits(overview.values("D25:I25"), {259.46, 10.1947535527, 0.0392921974, 246.801541543, 272.118458457},
                  1e-7);
    expect_limits(overview.values("K28:P28"), {4.386, 0.0879204186, 0.0200456951, 4.27683238157, 4.49516761847}, 1e-9);
}

TEST_F(CampaignTemplate, ComparesStovesWithTheEffectOfThePlacesRemoved) {
    EXPECT_EQ(places.shown("C11") + ", " + places.shown("D11") + places.shown("E11"), "Larch Yard, Ridge House");
    EXPECT_NEAR(number(places.value("C13")), (0.121 + 0.128 + 0.116) / 3, 1e-12);
    EXPECT_NEAR(number(places.value("D13")), (0.131 + 0.124) / 2, 1e-12);
    EXPECT_EQ(places.shown("J13"), "baseline");
    // R 4.2: lm(result ~ variant + place) over the runs of the baseline's test, confint, p.adjust(method = "holm")
    auto const efficiency = places.values("J15:L16"), fuel = places.values("J41:L42"), power = places.values("J54:L55");
    constexpr double expected[][3] = {
        {0.0854, 0.0765134101375, 0.0942865898625}, {0.1184, 0.1095134101375, 0.1272865898625},
        {-110.6, -119.141389989, -102.058610011},   {-133.26, -141.801389989, -124.718610011},
        {-3.684, -3.92757569105, -3.44042430895},   {-3.626, -3.86957569105, -3.38242430895}};
    std::size_t row = 0;
    for (auto const* block : {&efficiency, &fuel, &power})
        for (auto const& line : *block) {
            for (std::size_t i = 0; i < 3; ++i)
                EXPECT_NEAR(number(line[i]), expected[row][i], 1e-9 * std::abs(expected[row][0]) * 1000) << row << i;
            ++row;
        }
    EXPECT_EQ(places.shown("M15"), "< 0.001");
    EXPECT_EQ(places.value("N16"), CellValue(5.0));
    EXPECT_EQ(places.shown("J14"), "") << "measured by another test";
    EXPECT_EQ(places.shown("O14"), "By another test than the baseline: not compared.");
    EXPECT_LT(number(places.value("J27")), 0) << "a boil time is a boil time: the clay stove's, too";
}

TEST_F(CampaignTemplate, ComparesWithTheBaselineThatIsChosen) {
    places.text("C6", "chimney, flat grate");
    EXPECT_EQ(places.shown("J15"), "baseline");
    EXPECT_NEAR(number(places.value("J13")), -0.0854, 1e-12);
    places.text("C6", "unheard of");
    EXPECT_EQ(places.shown("E6"), "This stove or variant is not in the list on the sheet Overview.");
    EXPECT_EQ(places.shown("J13"), "");
}

TEST_F(CampaignTemplate, SaysWhyPlacesCannotBeCompared) {
    runs.formula("C9", "");
    EXPECT_EQ(places.shown("J15"), "");
    EXPECT_EQ(places.shown("O13"), "row 2 of blocks is empty, though that run has a result.");
    runs.text("C9", "Larch Yard");
    EXPECT_EQ(places.shown("O13"), "");
    runs.text("M10", "much");
    EXPECT_EQ(places.shown("O39"), "row 3 of results is the text \"much\"; a number is needed.");
}

TEST_F(CampaignTemplate, NormalisesABoilTimeByItsRiseAndMass) {
    runs.formulas("F8", {{"1240", "", "95.5", "20.5", "3000", "24"}});
    EXPECT_NEAR(number(runs.value("P8")), 24 * 75 / 75.0 * 3600 / 3000, 1e-9); // by hand
    overview.number("C8", 3000);
    EXPECT_NEAR(number(runs.value("P8")), 24, 1e-9);
    runs.formula("J8", "");
    EXPECT_EQ(runs.shown("P8"), "");
    EXPECT_EQ(runs.shown("R8"), "Not normalised: that needs altitude, start and mass of the water.");
}

TEST_F(CampaignTemplate, GivesTiersToResultsOfTheStandardsTestOnly) {
    // ISO/TR 19867-3 (from memory): efficiency from 0.10, 0.20 … up; CO 11.5 g/MJ or less is tier 2; PM2.5 481 mg/MJ.
    EXPECT_EQ(tiers.values("E8:G8")[0][0], CellValue(1.0)); // 12.4 %
    EXPECT_EQ(tiers.value("I8"), CellValue(1.0));           // 12 g/MJ
    EXPECT_EQ(tiers.value("K8"), CellValue(1.0));           // 600 mg/MJ
    EXPECT_EQ(tiers.shown("E9"), "");
    EXPECT_EQ(tiers.shown("P9"), "No tier: not a result of the laboratory test of ISO 19867-1.");
    EXPECT_EQ(tiers.value("E10"), CellValue(2.0)); // 20.9 %, from 19.7 on
    EXPECT_EQ(tiers.value("M10"), CellValue(3.0)); // safety 80
    EXPECT_EQ(tiers.value("O10"), CellValue(4.0)); // durability 12
    EXPECT_EQ(tiers.value("G10"), CellValue(1.0));
    EXPECT_EQ(tiers.shown("P10"), "The lower limit falls into another tier: more runs would tell.");
    EXPECT_EQ(tiers.value("E11"), CellValue(2.0)); // 24.2 %, from 23.2 on
    EXPECT_EQ(tiers.value("G11"), CellValue(2.0));
}

TEST_F(CampaignTemplate, AveragesNoEfficienciesOfDifferentTests) {
    runs.text("E9", "WBT 3");
    EXPECT_EQ(overview.shown("C13"), "different tests");
    EXPECT_EQ(overview.shown("E13"), "");
    EXPECT_EQ(overview.shown("Q13"), "Efficiencies of different tests have no common mean.");
    EXPECT_EQ(tiers.shown("E8"), "");
    EXPECT_NEAR(number(overview.value("L13")), 34.7240145, 1e-3); // a boil time is a boil time
}

TEST_F(CampaignTemplate, SaysInWordsWhatIsWrongWithARun) {
    runs.text("L8", "eleven");
    EXPECT_EQ(runs.shown("R8"), "efficiency: a number is needed, not a text.");
    EXPECT_EQ(overview.value("E13"), CellValue(not_a_value)); // no mean that leaves it out in silence
    EXPECT_EQ(overview.shown("Q13"), "No mean of a text or an error: see the remarks on the sheet Runs.");
    runs.text("D13", "unheard of");
    EXPECT_EQ(runs.shown("R13"), "This stove or variant is not in the list on the sheet Overview.");
    runs.formula("E14", "");
    EXPECT_EQ(runs.shown("R14"), "Missing: test.");
    runs.number("H15", 99);
    EXPECT_NE(runs.shown("R15").find("Boiling point, measured less computed: "), std::string::npos);
    runs.number("F16", 99999);
    EXPECT_EQ(runs.value("O16"), CellValue(not_a_result));
    EXPECT_EQ(runs.shown("R16"), "altitude is 99999, outside -450 to 9000 m.");
    overview.text("C6", "high");
    EXPECT_EQ(overview.shown("F6"), "a number is needed, not a text.");
}

TEST_F(CampaignTemplate, SaysInWordsThatLimitsNeedTwoRuns) {
    overview.text("B17", "clay stove, new");
    EXPECT_EQ(overview.shown("Q17"), "No run yet.");
    runs.formulas("C28", {{"Larch Yard", "clay stove, new", "ISO 19867-1"}});
    EXPECT_EQ(runs.shown("R28"), "Missing: boil time, efficiency.");
    runs.number("L28", 0.3);
    EXPECT_EQ(runs.shown("R28"), "");
    EXPECT_EQ(overview.value("D17"), CellValue(1.0));
    EXPECT_EQ(overview.shown("E17"), "");
    EXPECT_EQ(overview.shown("Q17"), "Limits need two runs at least, better five.");
    overview.text("B18", "clay stove");
    EXPECT_EQ(overview.shown("Q18"), "This name stands in the list twice.");
    EXPECT_EQ(errors(), "");
}

} // namespace hearthcell::tests
