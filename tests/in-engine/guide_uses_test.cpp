// The guide's small tables of real use: their results by hand, and that no new function is without one.

#include "guide.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

class TablesOfUse : public FunctionGuide {
protected:
    TablesOfUse() {
        guide.recalculate();
        Sheet const uses = guide.document.sheet(guide.document.sheets() - 2);
        for (auto const& cells : uses.values("A1:E200")) {
            auto const* const written = std::get_if<std::string>(&cells[1]);
            if (written != nullptr && written->starts_with("="))
                results.emplace_back(*written, number(cells[2]));
        }
    }
    /// The result of the first formula that begins so; a formula of the guide names its cells, not its numbers.
    double result(std::string const& begin, int which = 1) {
        for (auto const& [written, value] : results)
            if (written.starts_with("=STOVE." + begin + "(") && --which == 0)
                return value;
        ADD_FAILURE() << "no table uses " << begin;
        return 0;
    }

    Guide guide{office_with_package(), GetParam()};
    std::vector<std::pair<std::string, double>> results;
};

INSTANTIATE_TEST_SUITE_P(In, TablesOfUse, testing::ValuesIn(languages), name_of_language);

TEST_P(TablesOfUse, GiveWhatTheirReadingsGiveByHand) {
    double const efficiency = 1657 / (8185 - 1180 + 2 * 31.67 * 0.06);
    EXPECT_NEAR(result("AUXILIARYENERGY"), 2 * 31.67 * 0.06, 1e-12);
    EXPECT_NEAR(result("EFFICIENCY", 1), efficiency, 1e-12);
    EXPECT_NEAR(result("EFFICIENCY", 2), 1657.0 / (8185 - 1180), 1e-12);
    EXPECT_NEAR(result("EFFICIENCY", 3), 1657 / ((380 - 125) * (29.5 * 0.96 - 2.443 * 0.04)), 1e-5); // charcoal
    double const fire = ((840 * (18.7 * 0.88 - 2.443 * 0.12)) - 150 * 29.5) / (60 * 38);
    EXPECT_NEAR(result("FIREPOWER"), fire, 1e-6);
    // Enthalpies in kJ/kg of boiling water at 14.5, 95.85 and 62.6 °C by iapws 1.5.2, and the latent heat at the
    // second.
    double const first = 3.6 * (401.600 - 60.889) + 0.19 * 2267.376, second = 2 * (262.034 - 60.889);
    EXPECT_NEAR(result("USEFULHEAT", 1), first, 0.7);
    EXPECT_NEAR(result("USEFULHEAT", 2), second, 0.4);
    EXPECT_NEAR(result("EFFICIENCY", 4), (first + second) / 8185, 1e-4);
}

TEST_P(TablesOfUse, ShareOutCarbonAndCountHoodFilterHouseAndProbeByHand) {
    double const carbon = 447.2 * 0.5 - 40 * 0.85, share = 378.0 / (8550 + 378),
                 monoxide = carbon * share * 28.010 / 12.011;
    EXPECT_NEAR(result("FUELCARBON", 2), carbon, 1e-9);
    EXPECT_NEAR(result("CARBONBALANCE", 1), monoxide, 1e-9);
    EXPECT_NEAR(result("CARBONBALANCE", 2), 1 - share, 1e-12);
    EXPECT_NEAR(result("EMISSIONFACTOR"), monoxide / 0.4472, 1e-9);
    EXPECT_NEAR(result("EMISSIONPERENERGY"), monoxide / 1.657, 1e-9);
    EXPECT_NEAR(result("EMISSIONRATE"), monoxide / 31.67, 1e-9);
    EXPECT_NEAR(result("HOODEMISSION"), 5 * 5 * (40 / 2.0 + 160 + 210 + 180 + 120 + 60 / 2.0) / 1000, 1e-9);
    EXPECT_NEAR(result("FILTEREMISSION"), 1.40 * 5000 / 16.7, 1e-9);
    EXPECT_NEAR(result("STANDARDADULTS"), 3 * 0.5 + 2 * 0.8 + 1 + 0.8, 1e-12);
    EXPECT_NEAR(result("FUELPERSTANDARDADULT"), 24800 * 0.86 / 3 / 4.9, 1e-9);
    EXPECT_NEAR(result("CORRECTEDREADING"), (94.2 - 0.4) * 95.9 / 96.1, 1e-9);
    double const long_run = 0.04 + 60 * 13.2 / (10 * 24), x = 10 * 31.67 / 60;
    EXPECT_NEAR(result("ROOMCONCENTRATION", 1), 0.04 + (long_run - 0.04) * (1 - (1 - std::exp(-x)) / x), 1e-9);
    EXPECT_NEAR(result("ROOMCONCENTRATION", 3), long_run, 1e-9);
}

TEST_P(TablesOfUse, HaveOneForEachFunctionOfEmissionsHouseholdsAndInstruments) {
    for (char const* const name : {"GASCONCENTRATION", "FUELCARBON", "CARBONBALANCE", "HOODEMISSION", "FILTEREMISSION",
                                   "EMISSIONFACTOR", "EMISSIONPERENERGY", "EMISSIONRATE", "ROOMCONCENTRATION",
                                   "STANDARDADULTS", "FUELPERSTANDARDADULT", "CORRECTEDREADING"})
        result(name);
}

TEST_P(TablesOfUse, AreLinkedFromTheIndex) {
    EXPECT_EQ(guide.document.sheet(0).shown("E5"), phrase(Word::worked_examples, GetParam()));
}

TEST(TablesOfUseInSwahili, CallAHoodByItsTermAndNotAChimney) {
    Guide const guide(office_with_package(), Language::swahili);
    std::string caught;
    for (auto const& cells : guide.document.sheet(guide.document.sheets() - 2).values("A1:B200"))
        if (auto const* const written = std::get_if<std::string>(&cells[1]);
            written != nullptr && written->starts_with("=STOVE.HOODEMISSION("))
            caught = std::get<std::string>(cells[0]);
    EXPECT_EQ(caught, "kilichonaswa na kofia ya moshi");
}

} // namespace
} // namespace hearthcell::tests
