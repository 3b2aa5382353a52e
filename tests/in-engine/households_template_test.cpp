// The template for households, filled with the invented ones of the demonstration. Saving, limits and p were computed
// apart with scipy 1.10 (paired t test of after - Q·before, its roots by brentq), all else by hand from them.

#include "extension/demonstration/demo_data.hpp"
#include "templates.hpp"

namespace hearthcell::tests {
namespace {

class Households : public testing::TestWithParam<std::string_view> {
protected:
    Households() {
        fill(workbook, demo_data("households"));
        workbook.recalculate();
    }
    [[nodiscard]] static std::string said_here(std::string const& english) {
        return said(english, GetParam(), "households");
    }
    void no_errors() const {
        for (int sheet = 0; sheet < workbook.sheets(); ++sheet)
            EXPECT_EQ(errors_on(workbook, sheet), "") << workbook.sheet(sheet).name();
    }

    Document workbook =
        Document::open(office_with_package(), template_file(GetParam(), "households"), office::Access::read_write);
    Sheet before = workbook.sheet(0), after = workbook.sheet(1), saving = workbook.sheet(2);
};

INSTANTIATE_TEST_SUITE_P(Templates, Households, testing::ValuesIn(template_languages),
                         [](auto const& tested) { return std::string(tested.param); });

TEST_P(Households, GiveTheSavingOfTheirPairsAndHowManyAreStillNeeded) {
    EXPECT_NEAR(number(before.value("M9")), 1357.3, 0.05);
    EXPECT_NEAR(number(after.value("M9")), 928.4, 0.05);
    EXPECT_EQ(number_named(workbook, "households_in_pairs"), 11); // one was never measured again
    EXPECT_NEAR(number(saving.value("D10")), 1330.892324, 1e-6);
    EXPECT_NEAR(number(saving.value("D11")), 939.687799, 1e-6);
    EXPECT_NEAR(number_named(workbook, "saving"), 0.2939415293, 1e-9);
    EXPECT_NEAR(number_named(workbook, "saving_lower_limit"), 0.2136458024, 1e-8);
    EXPECT_NEAR(number_named(workbook, "saving_upper_limit"), 0.3743579117, 1e-8);
    EXPECT_NEAR(number(saving.value("D15")), 1.25319e-5, 1e-9);
    EXPECT_EQ(saving.value("D17"), CellValue(0.0)); // limits of ± 8 % are within the ± 10 % wanted
    saving.number("D6", 0.05);
    EXPECT_GT(number(saving.value("D17")), 5);
}

TEST_P(Households, GiveAYearAndItsCarbonDioxideByTypedAndNamedFactorsOnly) {
    EXPECT_NEAR(number_named(workbook, "saved_a_year"), 427.195341, 1e-5);
    EXPECT_NEAR(number(saving.value("E26")), 310.498798, 1e-5);
    EXPECT_NEAR(number(saving.value("F27")), 130.576137, 1e-5);
    EXPECT_NEAR(number_named(workbook, "carbon_dioxide_a_year"), 115.33536, 1e-5);
    EXPECT_EQ(saving.shown("A38"), said_here("This certifies nothing. It is arithmetic on the factors typed above: no "
                                             "programme, register or auditor has seen it, and none may be named with "
                                             "it."));
    saving.text("F33", "");
    EXPECT_EQ(saving.shown("D36"), "");
    EXPECT_EQ(saving.shown("A37"), said_here("Name where each factor comes from: none is worked out on factors without "
                                             "a name."));
    saving.text("D23", "");
    EXPECT_EQ(saving.shown("D26"), "");
    no_errors();
}

TEST_P(Households, SayWhatMayBeSaidAndWhatNot) {
    std::string const may = said_here("May be said: these households used {1} less fuel per standard adult after than "
                                      "before, between {2} and {3} less. It says nothing of other households, and "
                                      "nothing of what made the difference: season, prices and guests change, too.");
    EXPECT_EQ(saving.shown("A18").substr(0, may.find('{')), may.substr(0, may.find('{')));
    EXPECT_NE(saving.shown("A18").find("29"), std::string::npos) << saving.shown("A18");
    for (int row = 11; row <= 20; ++row)
        after.text("B" + std::to_string(row), "");
    std::string const not_said = said_here("May not be said: that the stove saves fuel in these households, or that it "
                                           "does not. Anything between {1} and {2} is possible. {3} more households "
                                           "would narrow it to plus or minus {4}.");
    after.number("B9", 35); // two pairs are left, and one of them did not save
    EXPECT_EQ(number_named(workbook, "households_in_pairs"), 2);
    std::string const words = saving.shown("A18");
    std::string const open = said_here("The limits are open: the households differ too much, or they are too few.");
    EXPECT_TRUE(words == open || words.starts_with(not_said.substr(0, not_said.find('{')))) << words;
}

TEST_P(Households, SayWhatIsMissingInARow) {
    EXPECT_EQ(before.shown("N9"), "");
    before.text("F9", "");
    EXPECT_EQ(before.shown("N9"), said_here("Missing: ") + said_here("days") + ".");
    before.text("B10", "20 kg");
    EXPECT_EQ(before.shown("N10"),
              said_here("fuel at the start") + ": " + said_here("a number is needed, not a text."));
    before.number("D11", 80);
    EXPECT_EQ(before.shown("N11"), said_here("More is left than there was: weigh again."));
    for (char const* const cell : {"G12", "H12", "I12", "J12"})
        before.text(cell, "");
    EXPECT_EQ(before.shown("N12"), said_here("Missing: who ate."));
    no_errors();
}

} // namespace
} // namespace hearthcell::tests
