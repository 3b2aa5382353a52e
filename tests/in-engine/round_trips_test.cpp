#include "calc.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

constexpr auto with_formulas = "B1:B7";

void write_formulas(Sheet sheet) {
    sheet.formulas("A1", {{"0", "=STOVE.BOILINGPOINT(A2)"},
                          {"1830", "=STOVE.BOILINGPOINT(A2;1001.5)"},
                          {"1240", "=STOVE.WATERHEAT(5000;20;95;\"WBT 4.2.3\")"},
                          {"", "=STOVE.USEFULHEAT(5000;20;95;;120)"}, // an argument left out in the middle
                          {"", "=STOVE.DRYMASS(1000;12)"},            // #NUM!
                          {"", "=ROUND(STOVE.AIRPRESSURE(A2);1)&\" hPa\""}});
    sheet.array_formula("B7", "=SUMPRODUCT(STOVE.EACHROW(\"BOILINGPOINT\";A1:A3))");
}

office::TextRows formulas_of(Sheet const& sheet) {
    office::TextRows formulas;
    for (int row = 1; row <= 7; ++row)
        formulas.push_back({sheet.formula("B" + std::to_string(row))});
    return formulas;
}

/// The files hold numbers in decimal, .xlsx with 15 digits only.
void expect_as_stored(office::ValueRows const& values, office::ValueRows const& expected) {
    ASSERT_EQ(values.size(), expected.size());
    for (std::size_t row = 0; row < values.size(); ++row)
        if (double const* const exact = std::get_if<double>(&expected[row][0]))
            EXPECT_NEAR(number(values[row][0]), *exact, std::abs(*exact) * 1e-14) << "row " << row + 1;
        else
            EXPECT_EQ(values[row], expected[row]) << "row " << row + 1;
}

class RoundTrip : public Calc, public testing::WithParamInterface<char const*> {
protected:
    RoundTrip() {
        write_formulas(sheet);
        document.recalculate();
    }
    std::filesystem::path const file = scratch_folder() / (std::string("with") + GetParam());
    std::filesystem::path const passed_on = scratch_folder() / (std::string("passed on") + GetParam());
};

class Healing : public RoundTrip {};

std::string format_name(testing::TestParamInfo<char const*> const& info) {
    return info.param + 1;
}

} // namespace

TEST_P(RoundTrip, KeepsFormulasAndValues) {
    ASSERT_EQ(sheet.value("B5"), CellValue(not_a_result));
    for (std::string const cell : {"B1", "B2", "B3", "B4", "B7"})
        ASSERT_GT(number(sheet.value(cell)), 0) << cell;
    document.save(file);
    Document reopened = Document::open(office_with_package(), file);
    EXPECT_EQ(formulas_of(reopened.sheet(0)), formulas_of(sheet));
    expect_as_stored(reopened.sheet(0).values(with_formulas), sheet.values(with_formulas));
    reopened.recalculate();
    EXPECT_EQ(reopened.sheet(0).values(with_formulas), sheet.values(with_formulas));
}

INSTANTIATE_TEST_SUITE_P(Formats, RoundTrip, testing::Values(".ods", ".fods", ".xlsx", ".xls"), format_name);

TEST_P(Healing, AFilePassedOnByAnOfficeWithoutThePackageComesBackWhole) {
    document.save(file);
    {
        Document foreign = Document::open(office_without_package(), file, office::Access::read_write);
        foreign.recalculate();
        EXPECT_EQ(foreign.sheet(0).value("B1"), CellValue(unknown_name));
        EXPECT_NE(foreign.sheet(0).formula("B1").find("stove.boilingpoint"), std::string::npos)
            << foreign.sheet(0).formula("B1");
        foreign.save(passed_on);
    }
    Document healed = Document::open(office_with_package(), passed_on);
    healed.recalculate();
    EXPECT_EQ(formulas_of(healed.sheet(0)), formulas_of(sheet));
    EXPECT_EQ(healed.sheet(0).values(with_formulas), sheet.values(with_formulas));
}

INSTANTIATE_TEST_SUITE_P(Formats, Healing, testing::Values(".ods", ".fods", ".xlsx"), format_name);

} // namespace hearthcell::tests
