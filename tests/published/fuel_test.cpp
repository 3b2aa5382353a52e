// Energy of wood and char, and the energy of several batches.

#include "functions/catalogue/names.hpp"
#include "functions/catalogue/tables.hpp"
#include "functions/kernels/fuel.hpp"
#include "support/calls.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

#include <array>

namespace hearthcell::tests {
namespace {

constexpr std::string_view iso_17225 = "ISO 17225-1, annex B, typical value (from memory)";
constexpr std::string_view ipcc = "IPCC 2006, volume 2, table 1.2 (from memory)";
PublishedTable const typical_values{
    {"CALORIFICVALUE", {"coniferous wood"}, {19.1, 0}, iso_17225},
    {"CALORIFICVALUE", {"BROAD-LEAF WOOD"}, {18.9, 0}, iso_17225},
    {"CALORIFICVALUE", {"coniferous bark"}, {19.2, 0}, iso_17225},
    {"CALORIFICVALUE", {"broad-leaf bark"}, {19, 0}, iso_17225},
    {"CALORIFICVALUE", {"coniferous logging residues"}, {19.2, 0}, iso_17225},
    {"CALORIFICVALUE", {"broad-leaf logging residues"}, {18.7, 0}, iso_17225},
    {"CALORIFICVALUE", {"willow"}, {18.4, 0}, iso_17225},
    {"CALORIFICVALUE", {"poplar"}, {18.4, 0}, iso_17225},
    {"CALORIFICVALUE", {"straw"}, {17.4, 0.2}, "ISO 17225-1, annex B: 17.2 to 17.6 (from memory)"},
    {"CALORIFICVALUE", {"charcoal"}, {29.5, 0}, ipcc},
    {"CALORIFICVALUE", {"kerosene"}, {43.8, 0}, ipcc},
    {"CALORIFICVALUE", {"liquefied petroleum gas"}, {47.3, 0}, ipcc},
    {"CALORIFICVALUE", {"paraffin wax"}, {42, 2}, "40 to 44: common practice, no source"},
    {"CALORIFICVALUE", {"pine"}, {19.13, 0}, "Energies 15 (2022) 1442: 17.50 to 19.88, mean 19.13"},
    {"CALORIFICVALUE",
     {"acacia"},
     {17.9636, half(0.01)},
     "19.29 - 21.22 × 0.0608 - 0.08 × 0.4533, J. Wood Sci., by hand"},
    {"CALORIFICVALUE", {"leucaena"}, {18.4919, half(0.01)}, "19.78 - 21.22 × 0.059 - 0.08 × 0.451, Fuel 74, by hand"},
    {"CALORIFICVALUE", {"eucalyptus branches"}, {19.48, 0}, "Residues of E. globulus, Energies, December 2018"},
    {"CALORIFICVALUE",
     {"eucalyptus branches"},
     {1307 / 66.6, 0.2},
     "The same study: 1307 TJ in 66,600 t of dry residues"},
    {"CALORIFICVALUE", {"wood pellets"}, {18.6048, half(0.01)}, "(16.5 + 2.443 × 0.1)/0.9, class A1 of ISO 17225-2"},
    {"CALORIFICVALUE",
     {"corn cobs"},
     {16.6233, half(0.01)},
     "17.72 - 21.22 × 0.05 - 0.08 × 0.446, Energies 8, by hand"},
    {"CALORIFICVALUE", {"rice husk"}, {14.1817, half(0.01)}, "15.29 - 21.22 × 0.051 - 0.08 × 0.326, Fuel 74, by hand"},
    {"CALORIFICVALUE",
     {"coconut shell"},
     {19.2557, half(0.01)},
     "20.50 - 21.22 × 0.057 - 0.08 × 0.434, Fuel 74, by hand"},
    {"CALORIFICVALUE",
     {"groundnut shell"},
     {17.4083, half(0.01)},
     "18.65 - 21.22 × 0.057 - 0.08 × 0.402, Fuel 74, by hand"},
    {"CALORIFICVALUE", {"ethanol"}, {26.8034, half(0.01)}, "(1366.8 - 3 × 44.004)/46.0684, NIST WebBook (from memory)"},
    {"CALORIFICVALUE", {18.5}, {Error::value}, "A value is no name"},
};

TEST(CalorificValue, GivesTheTypicalValuesOfTheHandbooks) {
    typical_values.check();
}

TEST(CalorificValue, HasACheckForEveryNameOfItsTable) {
    for (Named const& fuel : fuel_table.rows) {
        bool checked = false;
        for (Row const& row : typical_values.rows())
            checked = checked || same_name(row.arguments[0].text, fuel.name);
        EXPECT_TRUE(checked) << fuel.name.english << " has no row among the typical values of this test";
    }
}

PublishedTable const other_words{
    {"CALORIFICVALUE", {"charbon de bois"}, {29.5, 0}, "French for charcoal"},
    {"CALORIFICVALUE", {"CARBON VEGETAL"}, {29.5, 0}, "Spanish, typed without its accent"},
    {"CALORIFICVALUE", {"makaa"}, {29.5, 0}, "Swahili"},
    {"CALORIFICVALUE", {"leña dura"}, {18.9, 0}, "Spanish for wood of broad-leaf trees"},
    {"CALORIFICVALUE", {"Hard Wood"}, {18.9, 0}, "With a blank"},
    {"CALORIFICVALUE", {"broadleaf-wood"}, {18.9, 0}, "With the hyphen elsewhere"},
    {"CALORIFICVALUE", {"lpg"}, {47.3, 0}, "By its letters"},
    {"CALORIFICVALUE", {"wood"}, {Error::not_available}, "Of which trees?"},
    {"CALORIFICVALUE", {"paraffin"}, {Error::not_available}, "Wax in one country, lamp oil in another"},
    {"CALORIFICVALUE", {"shells"}, {Error::not_available}, "Of coconuts or of groundnuts?"},
    {"CALORIFICVALUE", {"briquettes"}, {Error::not_available}, "Of anything from sawdust to coal"},
    {"CALORIFICVALUE", {""}, {Error::not_available}, "No name at all"},
    {"POTHEAT", {500, "aluminum", 20, 95}, {33.6375, 1e-9}, "American spelling"},
    {"POTHEAT", {500, "acier inox", 20, 95}, {18.75, 1e-9}, "0.5 × 0.5 × 75, by hand"},
    {"POTHEAT", {500, "steel", 20, 95}, {Error::not_available}, "Of which kind?"},
    {"WOODENERGY", {600, 0.12, "straw"}, {9011.304, 1e-9}, "600 × (17.4 × 0.88 - 2.443 × 0.12), by hand"},
    {"NETASFIRED", {"pine", 0.2}, {14.8154, 1e-9}, "19.13 × 0.8 - 2.443 × 0.2, by hand"},
    {"CHARENERGY", {40, "charcoal"}, {1180, 1e-9}, "40 × 29.5, by hand"},
    {"WOODENERGY", {100, 0, "kerosene"}, {4380, 1e-9}, "Energy of 100 g of it, by hand"},
    {"WOODENERGY", {100, 0.1, "kerosene"}, {Error::number}, "It holds no moisture that could be taken off"},
    {"WOODENERGY", {100, "kerosene", 0.1}, {Error::value}, "A name where no name will do"},
    {"NETFROMGROSS", {"pine"}, {Error::value}, "The table has net values"},
};

TEST(Names, MayStandWhereANumberIsWantedInAnyLanguageUnlessTheyAreAmbiguous) {
    other_words.check();
}

Block fuels(std::vector<Value> const& cells) {
    Block block{cells.size(), 1, {}, {}};
    for (Value const& cell : cells) {
        if (std::string const* const name = std::get_if<std::string>(&cell))
            block.texts.push_back({block.numbers.size(), *name});
        double const* const number = std::get_if<double>(&cell);
        block.numbers.push_back(number != nullptr ? *number : text_in_block);
    }
    return block;
}
Outcome energy(std::vector<double> const& masses, std::vector<double> const& moistures, Block const& values) {
    return call(function_named("FUELENERGY"), std::vector<Value>{Block{masses.size(), 1, masses, {}},
                                                                 Block{moistures.size(), 1, moistures, {}}, values});
}

TEST(Names, MayStandAmongTheValuesOfBatches) {
    Outcome const sum = energy({300, 100}, {0.12, 0}, fuels({std::string("pine"), 18.5}));
    ASSERT_TRUE(std::holds_alternative<double>(sum));
    EXPECT_NEAR(std::get<double>(sum), 300 * (19.13 * 0.88 - 2.443 * 0.12) + 1850, 1e-9);
    Outcome const one_for_all = energy({300, 100}, {0.12}, fuels({std::string("pino")}));
    ASSERT_TRUE(std::holds_alternative<double>(one_for_all));
    EXPECT_NEAR(std::get<double>(one_for_all), 400 * (19.13 * 0.88 - 2.443 * 0.12), 1e-9);
    Outcome const with_kerosene = energy({300, 20}, {0.12, 0}, fuels({std::string("pine"), std::string("kerosene")}));
    ASSERT_TRUE(std::holds_alternative<double>(with_kerosene));
    EXPECT_NEAR(std::get<double>(with_kerosene), 300 * (19.13 * 0.88 - 2.443 * 0.12) + 876, 1e-9);
}

Failure failure_of_energy(std::vector<double> const& moistures, Block const& values) {
    Outcome const outcome = energy({300, 20}, moistures, values);
    Failure const* const why = std::get_if<Failure>(&outcome);
    return why != nullptr ? *why : Failure{};
}

TEST(Names, AmongTheValuesOfBatchesFailInTheirOwnRow) {
    Block const with_kerosene = fuels({18.5, std::string("kerosene")});
    for (std::vector<double> const& moistures : {std::vector{0.12, 0.12}, std::vector{0.12}}) {
        Failure const moist = failure_of_energy(moistures, with_kerosene);
        EXPECT_EQ(moist.reason, Reason::moisture_beside_value_as_fired);
        EXPECT_EQ(moist.argument, 2U);
        EXPECT_EQ(moist.row, 2U);
    }
    EXPECT_EQ(failure_of_energy({0, 0.1}, fuels({std::string("LPG")})).reason,
              Reason::moisture_beside_value_as_fired); // one value for all rows
    EXPECT_EQ(failure_of_energy({0, 0}, fuels({18.5, std::string("bark")})).reason, Reason::ambiguous_name);
    EXPECT_EQ(failure_of_energy({0, 0}, fuels({18.5, std::string("bark")})).row, 2U);
    EXPECT_EQ(failure_of_energy({0, 0}, fuels({std::string("boots"), 18.5})).reason, Reason::unknown_name);
    EXPECT_EQ(failure_of_energy({0, 0}, fuels({std::string("pine"), 180.0})).reason, Reason::out_of_range);
}

PublishedTable const wood{
    {"WOODENERGY", {600, 0.12, 18.5}, {9592.104, 1e-9}, "600 × 15.98684 (ISO 18125 form), by hand"},
    {"WOODENERGY", {600, 0, 18.5}, {11100, 1e-9}, "Dry wood, by hand"},
    {"WOODENERGY", {600, 0.12, 18.5, "ISO 19867-1"}, {9592.104, 1e-9}, "As real properties"},
    {"WOODENERGY",
     {600, 0.12, 18.5, "WBT 4.2.3", 94.983, 20},
     {9582.8967, half(1e-4)},
     "Equation of the method (from memory), by hand"},
    {"WOODENERGY", {600, 0.12, 18.5, "WBT 3"}, {9608.16, 1e-9}, "600 × 0.8656 × 18.5 (from memory), by hand"},
    {"WOODENERGY", {400, 0.05, 29.5}, {11161.14, 1e-9}, "Charcoal: 400 × 27.90285, by hand"},
    {"WOODENERGY", {600, 0.12, 18.5, "WBT 4.2.3", 94.983}, {Error::number}, "This method needs the air's temperature"},
    {"WOODENERGY", {600, 0.12, 18.5, "WBT 4.2.3", omitted, 20}, {Error::number}, "This method needs the boiling point"},
};

TEST(WoodEnergy, FollowsTheMethodsEquation) {
    wood.check();
}

TEST(WoodEnergy, IsMassTimesTheValueAsFired) {
    for (double const moisture : {0.0, 0.08, 0.12, 0.25, 0.5})
        EXPECT_NEAR(number("WOODENERGY", {730, moisture, 18.9}), 730 * number("NETASFIRED", {18.9, moisture}), 1e-9);
}

constexpr std::array masses{300.0, 250.0, 120.0};
constexpr std::array moistures{0.12, 0.18, 0.25};
constexpr std::array left{90.0, blank, blank};
constexpr std::array spare_masses{blank, 300.0, 250.0, blank, 120.0, blank};
constexpr std::array spare_moistures{blank, 0.12, 0.18, blank, 0.25, blank};
constexpr std::array values{18.5, 18.5, 18.5};
constexpr std::array nothing{blank, blank};
constexpr std::array two{0.12, 0.18};
constexpr std::array two_values{18.5, 18.5};
constexpr std::array too_much_left{310.0, blank, blank};
constexpr std::array spare_values{blank, 18.5, 18.5, blank, 18.5, blank};
constexpr std::array value_without_mass{blank, 18.5, 18.5, 18.5, 18.5, blank};
constexpr std::array mass_without_value{blank, 18.5, blank, blank, 18.5, blank};
constexpr std::array moisture_without_mass{0.12, 0.12, 0.18, blank, 0.25, blank};
constexpr std::array mass_without_moisture{blank, 0.12, 0.18, blank, blank, blank};
constexpr std::array left_of_nothing{blank, 90.0, blank, 10.0, blank, blank};
constexpr std::array one_and_blank{300.0, blank};
constexpr std::array one_blank{blank};
constexpr std::array all_left{300.0, blank, blank};
constexpr std::array half_a_gram_burned{299.5, blank, blank};

PublishedTable const batches{
    {"FUELENERGY", {masses, moistures, 18.5}, {10070.327, half(1e-3)}, "Three batches, by hand; inputs invented"},
    {"FUELENERGY", {masses, moistures, values}, {10070.327, half(1e-3)}, "A value for each batch"},
    {"FUELENERGY", {spare_masses, spare_moistures, 18.5}, {10070.327, half(1e-3)}, "The same with unused rows"},
    {"FUELENERGY", {masses, moistures, 18.5, omitted, left}, {8631.511, half(1e-3)}, "90 g of the first left, by hand"},
    {"FUELENERGY", {masses, 0.55 / 3, 18.5}, {9822.50, half(0.01)}, "A plain mean of the moistures misleads by -2.5 %"},
    {"FUELENERGY", {600, 0.12, 18.5, "WBT 4.2.3", omitted, 94.983, 20}, {9582.8967, half(1e-4)}, "One batch, by hand"},
    {"FUELENERGY", {600, 0.12, 18.5, "WBT 3"}, {9608.16, 1e-9}, "One batch, by hand"},
    {"FUELENERGY",
     {400, 0.05, 29.5, omitted, 150},
     {6975.71, half(0.01)},
     "Charcoal, the rest taken as moist, by hand"},
    {"FUELENERGY", {nothing, nothing, nothing}, {Error::not_available}, "No batch at all"},
    {"FUELENERGY", {masses, two, 18.5}, {Error::value}, "Three masses, two moistures"},
    {"FUELENERGY", {masses, moistures, 18.5, omitted, too_much_left}, {Error::number}, "More left than laid out"},
    {"FUELENERGY", {masses, spare_moistures, 18.5}, {Error::value}, "Columns of unlike length"},
    {"FUELENERGY", {masses, moistures, two_values}, {Error::value}, "Three masses, two values"},
    {"FUELENERGY", {masses, moistures, 18.5, omitted, two}, {Error::value}, "Three masses, two that are left"},
    {"FUELENERGY", {spare_masses, spare_moistures, spare_values}, {10070.327, half(1e-3)}, "With unused rows"},
    {"FUELENERGY", {spare_masses, spare_moistures, value_without_mass}, {Error::value}, "A value without a mass"},
    {"FUELENERGY", {spare_masses, spare_moistures, mass_without_value}, {Error::value}, "A mass without a value"},
    {"FUELENERGY", {spare_masses, moisture_without_mass, 18.5}, {Error::value}, "A moisture without a mass"},
    {"FUELENERGY", {spare_masses, mass_without_moisture, 18.5}, {Error::value}, "A mass without a moisture"},
    {"FUELENERGY", {spare_masses, spare_moistures, 18.5, omitted, left_of_nothing}, {Error::value}, "Left of nothing"},
    {"FUELENERGY", {one_and_blank, 0.12, 18.5}, {4796.052, 1e-9}, "300 × 15.98684, by hand"},
    {"FUELENERGY", {one_blank, 0.12, 18.5}, {Error::value}, "A single row of which the mass is missing"},
    {"FUELENERGY", {masses, moistures, 18.5, omitted, all_left}, {5274.275, half(1e-3)}, "The first was not burned"},
    {"FUELENERGY", {masses, moistures, 18.5, omitted, half_a_gram_burned}, {5282.2684, half(1e-4)}, "Half a gram was"},
    {"FUELENERGY", {masses, moistures, 18.5, "WBT 4.2.3"}, {Error::number}, "This method needs the boiling point"},
};

TEST(FuelEnergy, AddsWeighedBatches) {
    batches.check();
}

TEST(FuelEnergy, NamesTheRowThatIsWrong) {
    EXPECT_EQ(std::get<Failure>(called("FUELENERGY", {spare_masses, spare_moistures, mass_without_value})).row, 3U);
    EXPECT_EQ(std::get<Failure>(called("FUELENERGY", {masses, moistures, 18.5, omitted, too_much_left})).row, 1U);
}

TEST(FuelEnergy, IsTheSumOfTheSingleBatches) {
    double sum = 0;
    for (std::size_t i = 0; i < masses.size(); ++i)
        sum += number("WOODENERGY", {masses[i], moistures[i], 18.5});
    EXPECT_NEAR(number("FUELENERGY", {masses, moistures, 18.5}), sum, 1e-9);
}

TEST(CharEnergy, TakesTheDryLeftoverOfCharcoalOffTheFuel) {
    // 400 g of charcoal at 5 %, of which 150 g, dry by then, are left: 6736.14 kJ, by hand; inputs invented.
    double const burned = number("WOODENERGY", {400, 0.05, 29.5}) - number("CHARENERGY", {150});
    EXPECT_NEAR(burned, 6736.14, half(0.01));
}

PublishedTable const chars{
    {"CHARENERGY", {50}, {1475, 1e-9}, "50 × 29.5, by hand; 29.5 is the IPCC's charcoal (from memory)"},
    {"CHARENERGY", {-30, 28}, {-840, 1e-9}, "A simmer that burned earlier char, by hand"},
    {"CHARENERGY", {0}, {0, 0}, "No char"},
};

TEST(CharEnergy, IsMassTimesCalorificValue) {
    chars.check();
}

PublishedTable const dry_wood{
    {"EQUIVALENTDRYFUEL", {600, 0.12, 18.5, 50}, {438.7624, half(1e-4)}, "(9592.104 - 1475)/18.5, by hand"},
    {"EQUIVALENTDRYFUEL",
     {600, 0.12, 18.5, 50, "WBT 4.2.3", omitted, 94.983, 20},
     {438.2647, half(1e-4)},
     "(9582.8967 - 1475)/18.5, by hand"},
    {"EQUIVALENTDRYFUEL", {600, 0.12, 18.5, 50, "WBT 3"}, {444.36, 1e-9}, "600 × 0.8656 - 75, by hand"},
    {"EQUIVALENTDRYFUEL", {600, 0, 18.5, 0}, {600, 1e-9}, "Dry wood without char is itself"},
    {"EQUIVALENTDRYFUEL",
     {450, 0.12, 18.5, -30, "WBT 4.2.3", omitted, 94.983, 20},
     {436.3337, half(1e-4)},
     "A simmer that burned 30 g of earlier char, by hand"},
    {"EQUIVALENTDRYFUEL", {600, 0.12, 18.5, 50, "ISO 19867-1"}, {Error::not_available}, "Not defined by this standard"},
    {"EQUIVALENTDRYFUEL",
     {600, 0.12, 18.5, 50, "WBT 4.2.3"},
     {Error::number},
     "This method needs boiling point and air"},
};

TEST(DryWood, HoldsTheEnergyThatWasSetFree) {
    dry_wood.check();
}

TEST(DryWood, WouldBeElevenPercentLowWithTheBurnedCharForgotten) {
    double const right = number("EQUIVALENTDRYFUEL", {450, 0.12, 18.5, -30, "WBT 4.2.3", omitted, 94.983, 20});
    double const wrong = number("EQUIVALENTDRYFUEL", {450, 0.12, 18.5, 0, "WBT 4.2.3", omitted, 94.983, 20});
    EXPECT_NEAR(1 - wrong / right, 0.11, half(0.01));
}

PublishedTable const fans{
    {"AUXILIARYENERGY", {2, 30}, {3.6, 1e-12}, "2 W × 1800 s, by hand"},
    {"AUXILIARYENERGY", {1, 60}, {3.6, 1e-12}, "A watt-hour is 3.6 kJ"},
    {"AUXILIARYENERGY", {2, 30, 0.8}, {4.5, 1e-12}, "3.6/0.8, by hand"},
    {"AUXILIARYENERGY", {2, 30, 80}, {Error::number}, "80 is 8000 %"},
};

TEST(AuxiliaryEnergy, IsPowerTimesTime) {
    fans.check();
}

} // namespace
} // namespace hearthcell::tests
