// One and the same run by each method: the check row of the project's science notes, all of it. The methods' equations
// are from memory of the documents; the values are worked out apart from them, with SR6-08 and SR1-86 for water.
// Inputs invented: 5000 g of water from 20 to 94.983 °C, 250 g evaporated, 600 g of wood at 12 % and 18.5 MJ/kg, 50 g
// of char at 29.5 MJ/kg, air at 20 °C; 4750 g of water left.

#include "support/calls.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

constexpr std::string_view check_row = "Check row, worked out apart";
constexpr char const *properties = "properties", *iso = "ISO 19867-1", *wbt_4 = "WBT 4.2.3", *wbt_3 = "WBT 3";

Row water_heat(char const* method, double kilojoules) {
    return {"WATERHEAT", {5000, 20, 94.983, method}, {kilojoules, half(1e-4)}, check_row};
}
PublishedTable const water_heats{water_heat(properties, 1570.1192), water_heat(iso, 1567.1447),
                                 water_heat(wbt_4, 1569.3942), water_heat(wbt_3, 1569.3942)};

Row evaporation_heat(char const* method, double kilojoules) {
    return {"EVAPORATIONHEAT", {250, 94.983, method}, {kilojoules, half(1e-4)}, check_row};
}
PublishedTable const evaporation_heats{evaporation_heat(properties, 567.4362), evaporation_heat(iso, 567.4362),
                                       evaporation_heat(wbt_4, 565), evaporation_heat(wbt_3, 565)};

Row useful_heat(char const* method, double kilojoules) {
    return {"USEFULHEAT", {5000, 20, 94.983, method, 250, 94.983}, {kilojoules, half(1e-4)}, check_row};
}
PublishedTable const useful_heats{useful_heat(properties, 2137.5554), useful_heat(iso, 2134.5809),
                                  useful_heat(wbt_4, 2134.3942), useful_heat(wbt_3, 2134.3942)};

Row wood_energy(char const* method, double kilojoules) {
    return {"WOODENERGY", {600, 0.12, 18.5, method, 94.983, 20}, {kilojoules, half(1e-4)}, check_row};
}
PublishedTable const wood_energies{wood_energy(properties, 9592.1040), wood_energy(iso, 9592.1040),
                                   wood_energy(wbt_4, 9582.8967), wood_energy(wbt_3, 9608.1600)};

Row dry_wood(char const* method, Expected const& grams) {
    return {"EQUIVALENTDRYFUEL", {600, 0.12, 18.5, 50, method, 29.5, 94.983, 20}, grams, check_row};
}
PublishedTable const dry_woods{dry_wood(properties, {438.7624, half(1e-4)}), dry_wood(iso, {Error::not_available}),
                               dry_wood(wbt_4, {438.2647, half(1e-4)}), dry_wood(wbt_3, {444.36, half(1e-4)})};

Row efficiency(char const* method, Cell const& net_char, Expected const& fraction) {
    return {"BENCHEFFICIENCY",
            {800, 5800, 20, 1000, 94.983, 5550, 400, 0.12, 18.5, method, net_char, 29.5, 94.983, 20},
            fraction,
            check_row};
}
PublishedTable const efficiencies{efficiency(properties, omitted, {0.2228453, half(1e-7)}),
                                  efficiency(properties, 50, {0.2633397, half(1e-7)}),
                                  efficiency(iso, omitted, {0.2225352, half(1e-7)}),
                                  efficiency(iso, 50, {0.2629732, half(1e-7)}),
                                  efficiency(wbt_4, omitted, {Error::number}),
                                  efficiency(wbt_4, 50, {0.2632488, half(1e-7)}),
                                  efficiency(wbt_3, omitted, {Error::number}),
                                  efficiency(wbt_3, 50, {0.2596378, half(1e-7)})};

Row specific_fuel(double grams, char const* method, Expected const& grams_per_kilogram) {
    return {"SPECIFICFUEL", {grams, 4750, method, 20, 94.983, 94.983}, grams_per_kilogram, check_row};
}
// Half a unit of the dry wood's last digit is 1e-5 g/kg here.
PublishedTable const specific_fuels{
    specific_fuel(438.7624, properties, {92.37103, 2e-5}), specific_fuel(438.7624, iso, {Error::not_available}),
    specific_fuel(438.2647, wbt_4, {92.26625, 2e-5}), specific_fuel(444.36, wbt_3, {93.54947, half(1e-5)})};

TEST(Methods, ReproduceTheCheckRowOfEveryQuantity) {
    for (PublishedTable const* table :
         {&water_heats, &evaporation_heats, &useful_heats, &wood_energies, &dry_woods, &efficiencies, &specific_fuels})
        table->check();
}

TEST(Methods, GiveTheBenchEfficiencyThatTheSingleFunctionsGive) {
    for (char const* method : {properties, iso, wbt_4, wbt_3}) {
        double const useful = number("USEFULHEAT", {5000, 20, 94.983, method, 250, 94.983});
        double const fuel = number("WOODENERGY", {600, 0.12, 18.5, method, 94.983, 20});
        // WBT 3 counts char as 1.5 times its mass of wood.
        double const credit = method == wbt_3 ? 1.5 * 50 * 18.5 : number("CHARENERGY", {50});
        double const bench =
            number("BENCHEFFICIENCY", {800, 5800, 20, 1000, 94.983, 5550, 400, 0.12, 18.5, method, 50});
        EXPECT_NEAR(bench, number("EFFICIENCY", {useful, fuel, credit}), 1e-15) << method;
        if (method == iso) // which defines no equivalent dry wood
            continue;
        double const dry = number("EQUIVALENTDRYFUEL", {600, 0.12, 18.5, 50, method, 29.5, 94.983, 20});
        EXPECT_NEAR(bench, useful / (dry * 18.5), 1e-15) << method;
    }
}

TEST(Methods, TakeEffectiveWaterAndAStandardRiseBothAsWbt423Does) {
    // A run that stopped at 80 °C: corrected twice 144.133, once 115.333 g/L; worked by hand, rounded dry wood.
    double const twice = number("SPECIFICFUEL", {438.2647, 4750, wbt_4, 20, 80, 94.983, 75});
    EXPECT_NEAR(twice, 144.133, half(1e-3) + 2e-5);
    EXPECT_NEAR(number("SPECIFICFUEL", {438.2647, 4750, wbt_3, 20, 80, 94.983, 75}), 115.333, half(1e-3) + 2e-5);
}

TEST(Methods, AreKnownInAnyLetterCaseAndWithBlanksAround) {
    double const result = number("WATERHEAT", {5000, 20, 95, "WBT 4.2.3"});
    for (char const* spelling : {"wbt 4.2.3", "Wbt 4.2.3", " WBT 4.2.3 "})
        EXPECT_EQ(number("WATERHEAT", {5000, 20, 95, spelling}), result) << spelling;
    EXPECT_EQ(number("WATERHEAT", {5000, 20, 95}), number("WATERHEAT", {5000, 20, 95, "Properties"}));
}

} // namespace
} // namespace hearthcell::tests
