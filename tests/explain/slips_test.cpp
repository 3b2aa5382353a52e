// What EXPLAIN says of likely slips. The bands behind it are common practice, no source.

#include "support/calls.hpp"
#include "support/explained.hpp"

#include <gtest/gtest.h>

#include <array>

namespace hearthcell::tests {
namespace {

constexpr std::array masses{300.0, 250.0, 120.0};
constexpr std::array moistures{0.12, 0.18, 0.25};
constexpr std::array per_cent{0.12, 18.0, 0.25};
constexpr std::array dry_basis{0.12, 0.4, 0.25};
constexpr std::array only_zero{0.0};
constexpr std::array kilograms{0.3, 0.25, 0.12};

TEST(ExplainSlips, TwelveForTwelvePercent) {
    expect_words({
        {"DRYMASS", {600, 12}, "moisture is 12, outside 0 to 0.75: 12 is 1200 %; type 12% or 0.12."},
        {"WETBASIS", {20}, "20 is 2000 %; type 20% or 0.2."},
        {"FUELENERGY", {masses, per_cent, 18.5}, "row 2 of moistures is 18, outside 0 to 0.75: 18 is 1800 %;"},
        {"NETFROMGROSS", {20, 6.2}, "6.2 is 620 %; type 6.2% or 0.062."},
        {"AUXILIARYENERGY", {2, 30, 80}, "80 is 8000 %; type 80% or 0.8."},
        {"BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 5550, 400, 12, 18.5}, "12 is 1200 %; type 12% or 0.12."},
    });
}

TEST(ExplainSlips, KilogramsInAGramArgument) {
    expect_words({
        {"DRYMASS", {0.6, 0.12}, "mass is 0.6, outside 1 to 100000 g: 0.6 kg would be 600 g."},
        {"WOODENERGY", {1.2, 0.12, 18.5}, "mass 1.2 g is very little; 1.2 kg would be 1200 g."},
        {"WATERHEAT", {5, 20, 95}, "5 kg, or 5 L, would be 5000 g."},
        {"POTHEAT", {0.8, 0.5, 20, 95}, "0.8 kg would be 800 g."},
        {"BENCHEFFICIENCY", {0.8, 5.8, 20, 1, 95, 5.55, 0.4, 0.12, 18.5}, "pot empty is 0.8"},
        {"BENCHEFFICIENCY", {800, 5800, 20, 1.0, 95, 5550, 0.4, 0.12, 18.5}, "a mass in kilograms"},
        {"CHARENERGY", {0.05}, "net char 0.05 g is very little; 0.05 kg would be 50 g."},
        {"EVAPORATIONHEAT", {0.25, 95}, "0.25 kg or L would be 250 g."},
        {"FUELENERGY", {kilograms, moistures, 18.5}, "row 1 of masses is 0.3"},
    });
}

TEST(ExplainSlips, ReadingsThatChangedPlaces) {
    expect_words({
        {"BENCHEFFICIENCY",
         {760, 4360, 95.85, 950, 14.5, 4170, 430, 0.14, 18.7},
         "The water is colder at the end than at the start: are the temperatures swapped?"},
        {"BENCHEFFICIENCY",
         {760, 4170, 14.5, 950, 95.85, 4360, 430, 0.14, 18.7},
         "Pot and water are heavier at the end than at the start; are the weighings swapped?"},
        {"BENCHEFFICIENCY",
         {760, 4360, 14.5, 430, 95.85, 4170, 950, 0.14, 18.7},
         "More fuel is left than was laid out; are the weighings swapped?"},
        {"USEFULHEAT", {5000, 93.6, 20}, "a simmer, or are the temperatures swapped?"},
    });
}

TEST(ExplainSlips, ANumberInThePlaceOfTheMethod) {
    expect_words({
        {"USEFULHEAT", {5000, 20, 93.6, 250}, "mass evaporated stands behind method, which may stay empty: ;;"},
        {"BENCHEFFICIENCY",
         {760, 4360, 14.5, 950, 95.85, 4170, 430, 0.14, 18.7, 40},
         "net char stands behind method, which may stay empty: ;;"},
    });
    EXPECT_EQ(explained("USEFULHEAT", {5000, 20, 93.6, -250}).find("stands behind"), std::string::npos);
}

TEST(ExplainSlips, CharInGramsAndAltitudesInFeetOrKilometres) {
    expect_words({
        {"EFFICIENCY", {2100, 9000, 50}, "is it the mass in grams? Then use STOVE.CHARENERGY."},
        {"BOILINGPOINT", {6233}, "altitude 6233 m is higher than people live; 6233 feet would be 1899.82 m."},
        {"BOILINGPOINT", {1.9}, "altitude has a fraction and is below 9 m; is it in kilometres?"},
        {"USEFULHEAT", {5000, 45, 93}, "the start temperature is unusually warm; is it in °F?"},
    });
    EXPECT_EQ(explained("EFFICIENCY", {2100, 9000, 1180}).find("Odd"), std::string::npos);
    EXPECT_EQ(explained("BOILINGPOINT", {2180}).find("Odd"), std::string::npos);
    EXPECT_EQ(explained("BOILINGPOINT", {3}).find("Odd"), std::string::npos);
    EXPECT_EQ(explained("USEFULHEAT", {5000, 32, 93}).find("Odd"), std::string::npos);
}

TEST(ExplainSlips, HeatBelowZero) {
    expect_words({
        {"USEFULHEAT", {5000, 95, 90}, "Odd: the water gave up more heat than its steam carried off;"},
        {"EFFICIENCY",
         {-105, 9000},
         "useful heat is -105, outside 1 to 10000000 kJ. Below 0 the water gave up more heat"},
        {"COOKINGPOWER", {-105, 30}, "was the mass evaporated left out?"},
    });
    EXPECT_EQ(explained("USEFULHEAT", {5000, 95, 90, omitted, 200}).find("gave up"), std::string::npos);
    EXPECT_EQ(explained("USEFULHEAT", {5000, 93.6, 20}).find("gave up"), std::string::npos); // swapped, it says
}

TEST(ExplainSlips, WoodTooWetAndATurnDownThatIsNone) {
    expect_words({
        {"WOODENERGY", {600, 0.519, 18.5}, "moisture 0.519 is that of green wood;"},
        {"BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 5550, 400, 0.567, 18.5}, "moisture 0.567 is that of green wood;"},
        {"TURNDOWN", {4.16, 4}, "Odd: the low power is nearly the high power;"},
    });
    EXPECT_TRUE(explained("TURNDOWN", {4.5, 4}).starts_with("Fine"));
}

TEST(ExplainSlips, UnitsAThousandfoldAndWeighingsThatChangedPlaces) {
    expect_words({
        {"BOILINGPOINTAT", {84500}, "84500 Pa would be 845 hPa."},
        {"POTHEAT", {1000, 897, 20, 95}, "897 J/(kg K) would be 0.897 kJ/(kg K)."},
        {"USEFULHEAT",
         {5000, 20, 95, omitted, -250},
         "mass evaporated is -250, outside 0 to 500000 g. Water does not gain mass over a fire;"},
        {"DRYMASS", {600, 0.005}, "moisture 0.005 is drier than wood in any air; 0.005 is 0.5 %."},
    });
}

TEST(ExplainSlips, ALoneNumberInTimes) {
    expect_words({
        {"MINUTES",
         {0.3},
         "0.3 was taken as a time of Calc, a part of a day: minutes of a test are more. If they are "
         "minutes, say \"minutes\"."},
        {"MINUTES", {31.7}, "31.7 was taken as minutes: a time of Calc, a part of a day, is below 0.5."},
    });
    EXPECT_EQ(explained("MINUTES", {0.3, "minutes"}).find("taken"), std::string::npos);
}

TEST(ExplainSlips, AResultThatCannotBeWithoutAnyHint) {
    EXPECT_EQ(explained("SIMMERENERGY", {100000, 19, 50, 1}),
              "The result would be 38000 MJ/(min L), outside 0 to 10 MJ/(min L).");
}

TEST(ExplainSlips, ANameThatIsNearlyThatOfAFunction) {
    auto const asked = [](std::string const& name) {
        Outcome const outcome = called("EXPLAIN", {name.c_str(), 1});
        std::string const* const text = std::get_if<std::string>(&outcome);
        return text != nullptr ? *text : "no text";
    };
    EXPECT_EQ(asked("BENCHEFICIENCY"), "\"BENCHEFICIENCY\" is no function; is it BENCHEFFICIENCY?");
    EXPECT_EQ(asked("stove.boilingpiont"), "\"stove.boilingpiont\" is no function; is it BOILINGPOINT?");
    for (std::string const& name :
         {std::string("NOSUCHTHING"), std::string("X"), std::string(), std::string("SUM"), std::string(100000, 'B')})
        EXPECT_EQ(asked(name), "no text") << name.substr(0, 20);
}

TEST(ExplainSlips, APointThatMayHaveBeenAColon) {
    expect_words({{"MINUTES", {"21.30"}, "21 minutes and 30 seconds are written 21:30."},
                  {"MINUTES", {"21,30"}, "21 minutes and 30 seconds are written 21:30."}});
    for (char const* text : {"21.3", "21.75", "21"})
        EXPECT_EQ(explained("MINUTES", {text}).find("21:30"), std::string::npos) << text;
}

TEST(ExplainSlips, AWrongNumberWhereANameMayStandShowsTheRangeOnly) {
    EXPECT_EQ(explained("POTHEAT", {1000, 50, 20, 95}), "material is 50, outside 0.1 to 2.5 kJ/(kg K).");
}

TEST(ExplainNames, WhatANameStandsForIsSaidWithItsSource) {
    expect_words({
        {"WOODENERGY",
         {600, 0.12, "pine"},
         "\"pine\" stands for 19.13 MJ/kg, net, dry, with its ash: Energies 15 (2022) 1442, mean of a review of pine "
         "wood."},
        {"POTHEAT", {500, "alumini", 20, 95}, "\"aluminium\" stands for 0.897 kJ/(kg K), near 25 °C: CRC Handbook"},
        {"WOODENERGY",
         {600, 0.12, "bois"},
         "net calorific value is \"bois\", which may be \"coniferous wood\" or "
         "\"broad-leaf wood\"; type which."},
        {"POTHEAT", {500, "shaba", 20, 95}, "which may be \"copper\" or \"brass\"; type which."},
        {"WOODENERGY",
         {600, 0.12, "LPG"},
         "net calorific value is \"LPG\": its value holds for the fuel as it is burned, so that no moisture is to be "
         "taken off; give 0 as the moisture."},
        {"SOURCE", {"shaba"}, "name is \"shaba\", which may be \"copper\" or \"brass\"; type which."},
        {"WOODENERGY", {600, 0.12, "boots"}, "which is none of: \"coniferous wood\", "},
    });
    std::string const of_gas = explained("WOODENERGY", {100, 0, "LPG"});
    EXPECT_TRUE(of_gas.starts_with("Fine")) << of_gas; // a moisture of 0 is no empty cell there
}

TEST(ExplainNames, ANameByItselfIsExplained) {
    auto const asked = [](char const* name) { return in_words(called("EXPLAIN", {name})); };
    EXPECT_EQ(
        asked("Charbon de bois"),
        "\"\"charcoal\" stands for 29.5 MJ/kg, net; taken as dry, to be checked: IPCC 2006 "
        "guidelines, volume 2, table 1.2 (from memory). \"charcoal\" stands for 0.9, carbon in the dry fuel, with "
        "its ash: IPCC 2006 guidelines, volume 2, tables 1.2 and 1.3: carbon by energy, times energy by mass (from "
        "memory).\"");
    EXPECT_EQ(reason("EXPLAIN", {"bark"}), Reason::ambiguous_name);
    EXPECT_EQ(reason("EXPLAIN", {"charcoal", 3}), Reason::unknown_name); // no function of that name
    EXPECT_EQ(reason("EXPLAIN", {"old boots"}), Reason::unknown_name);
}

TEST(ExplainSlips, DegreesFahrenheitAndKelvin) {
    expect_words({
        {"WATERHEAT", {5000, 68, 203}, "end is 203, outside 0.01 to 105 °C: 203 °F would be 95 °C."},
        {"WATERHEAT", {5000, 68, 95}, "the start temperature is unusually warm; is it in °F?"},
        {"WATERHEAT", {5000, 20, 368.15}, "368.15 K would be 95 °C."},
        {"USEFULHEAT", {5000, 20, 95, omitted, 250, 203}, "boiling point is 203"},
    });
}

TEST(ExplainSlips, DryBasisMoistureGivenAsWet) {
    expect_words({
        {"WOODENERGY", {600, 0.4, 18.5}, "if a pin-type meter read it, it is on dry basis: use STOVE.WETBASIS."},
        {"NETASFIRED", {18.5, 0.36}, "use STOVE.WETBASIS."},
        {"FUELENERGY", {masses, dry_basis, 18.5}, "if a pin-type meter read it, it is on dry basis"},
        {"DRYMASS",
         {600, 0.9},
         "0.9 is possible only on dry basis, as meters of the pin type read; use STOVE.WETBASIS."},
    });
}

TEST(ExplainSlips, GrossForNetAndNetForGross) {
    expect_words({
        {"WOODENERGY", {600, 0.12, 20.5}, "is it the gross value? Then use STOVE.NETFROMGROSS."},
        {"FUELENERGY", {masses, moistures, 20.5}, "is it the gross value?"},
        {"BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 5550, 400, 0.12, 20.9}, "is it the gross value?"},
        {"NETFROMGROSS", {18.5}, "is it net already?"},
    });
}

TEST(ExplainSlips, VolumeForMassAndMillilitresForLitres) {
    expect_words({
        {"WATERHEAT", {5, 20, 95}, "5 kg, or 5 L, would be 5000 g."},
        {"SPECIFICFUEL", {440, 4.75}, "4.75 kg, or 4.75 L, would be 4750 g."},
        {"WATERMASS", {5000, 20}, "5000 mL would be 5 L."},
    });
}

TEST(ExplainSlips, HectopascalAsMetres) {
    expect_words({
        {"BOILINGPOINT", {1013.25}, "altitude 1013.25 is the standard air pressure in hPa; is it metres?"},
        {"AIRPRESSURE", {1013}, "altitude 1013 is the standard air pressure in hPa; is it metres?"},
        {"BOILINGPOINT", {845.6}, "altitude looks like an air pressure in hPa; is it metres?"},
        {"BOILINGPOINT", {14000}, "14000 feet would be 4267.2 m."},
        {"BOILINGPOINT", {1008}, "altitude is what a sea-level pressure in hPa usually is, and no pressure is given;"},
        {"AIRPRESSURE", {1021}, "is it metres?"},
        {"BOILINGPOINT", {985, 985}, "altitude and sea-level pressure are the same number;"},
    });
    for (double const village : {1004.0, 1026.0, 1240.0, 850.0})
        EXPECT_TRUE(explained("BOILINGPOINT", {village}).starts_with("Fine")) << village;
    EXPECT_TRUE(explained("BOILINGPOINT", {1008, 1016}).starts_with("Fine"));
    // said once, not twice
    std::string const sentence = explained("BOILINGPOINT", {1013.25});
    EXPECT_EQ(sentence.find("is it metres?"), sentence.rfind("is it metres?")) << sentence;
}

TEST(ExplainSlips, SeaLevelPressureAsAStationReadingAndTheOtherWayRound) {
    expect_words({
        {"BOILINGPOINTAT", {1013}, "looks like one reduced to sea level"},
        {"BOILINGPOINTAT", {1013}, "With the altitude it can be checked."},
        {"BOILINGPOINTAT", {1013, 2000}, "The weather cannot give this pressure at this altitude."},
        {"BOILINGPOINTAT", {1013, 2000}, "Then use STOVE.BOILINGPOINT with altitude and sea-level pressure."},
        {"BOILINGPOINTAT", {1013, 500}, "the weather hardly ever gives at this altitude"},
        {"BOILINGPOINTAT", {885, 500}, "the weather hardly ever gives at this altitude"},
        {"BOILINGPOINT", {1500, 845}, "looks like a reading at the station"},
        {"BOILINGPOINT", {1500, 900}, "is it a reading at the station? Then use STOVE.BOILINGPOINTAT."},
        {"BOILINGPOINTAT", {84.5}, "84.5 kPa would be 845 hPa."},
        {"BOILINGPOINTAT", {29.92}, "29.92 inches of mercury would be 1013.21 hPa."},
    });
    EXPECT_TRUE(explained("BOILINGPOINTAT", {955, 500}).starts_with("Fine"));
    EXPECT_EQ(explained("BOILINGPOINTAT", {1013, 500}).find("With the altitude"), std::string::npos);
}

TEST(ExplainSlips, MinutesThatAreACalcTime) {
    expect_words({
        {"FIREPOWER",
         {9592, 30.0 / 1440},
         "looks like a time of Calc, a part of a day: it would be 30 min; multiply by"},
        {"NORMALBOILTIME", {28.0 / 1440, 20, 95}, "it would be 28 min"},
        {"FIREPOWER", {9592, 0.5}, "Is the time in hours or in days?"},
        {"FIREPOWER", {9592, 1800}, "1800 s would be 30 min."},
        {"NORMALBOILTIME", {22.5 * 60, 20, 95}, "were minutes and seconds stored as hours and minutes?"},
        {"NORMALBOILTIME", {22.5 / 24, 20, 95}, "were minutes and seconds stored as hours and minutes?"},
    });
}

TEST(ExplainSlips, AnEmptyCellReadAsZero) {
    expect_words({
        // where 0 is out of range
        {"WATERHEAT", {5000, 0, 95}, "start is 0, outside 0.01 to 105 °C. An empty cell counts as 0."},
        {"FIREPOWER", {9592, 0}, "An empty cell counts as 0."},
        // where it is legitimate
        {"BOILINGPOINT", {0}, "altitude is 0: sea level, or an empty cell?"},
        {"BOILINGPOINTAT", {1013, 0}, "altitude is 0: sea level, or an empty cell?"},
        {"WOODENERGY", {600, 0, 18.5}, "moisture is 0: oven-dry, or an empty cell?"},
        {"WETBASIS", {0}, "oven-dry, or an empty cell?"},
        {"EVAPORATIONHEAT", {0, 95}, "mass evaporated is 0: none at all, or an empty cell?"},
        {"CHARENERGY", {0}, "net char is 0: none at all, or an empty cell?"},
        {"BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 5550, 0, 0.12, 18.5}, "wood left is 0"},
        {"BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 5550, 400, 0.12, 18.5, omitted, 0}, "net char is 0"},
        {"MODELBOILTIME", {28, 20, 95, 0, 5000, 5}, "air is 0: freezing, or an empty cell?"},
        {"MODELBOILTIME", {28, 20, 89, 20, 5000, 5}, "the model is carried on by more than 5 K at the end"},
        {"MODELBOILTIME", {28, 8, 96, 20, 5000, 5}, "15 K at the start"},
        {"MODELBOILTIME", {28, 20, 96, 20, 5000, 5, 0, 25, 100, 6200}, "20 % of the water"},
        {"MODELBOILTIME", {28, 20, 95, 20, 5000, 0}, "heat loss is 0: none at all, or an empty cell?"},
        // where the default is another number than 0
        {"NETFROMGROSS", {20, 0}, "hydrogen is 0: none at all, or an empty cell?"},
    });
    // where 0 cannot be, an optional argument is left out by it
    for (std::initializer_list<Cell> const given : {std::initializer_list<Cell>{1900, 0}, {1900}})
        EXPECT_TRUE(explained("BOILINGPOINT", given).starts_with("Fine: local boiling point 93.65")) << given.size();
    EXPECT_EQ(explained("WATERHEAT", {5000, 20, 95, 0}), explained("WATERHEAT", {5000, 20, 95}));
    // one moisture for all rows
    expect_words({
        {"FUELENERGY", {masses, 0, 18.5}, "moistures are 0: oven-dry, or an empty cell?"},
        {"FUELENERGY", {masses, only_zero, 18.5}, "moistures are 0: oven-dry, or an empty cell?"},
    });
    EXPECT_TRUE(explained("FUELENERGY", {masses, moistures, 18.5}).starts_with("Fine"));
    EXPECT_TRUE(explained("FUELENERGY", {masses, moistures, 18.5, omitted, 0}).find("empty cell") == std::string::npos);
    // where leaving it out gives the same, nobody is asked
    EXPECT_TRUE(explained("USEFULHEAT", {5000, 20, 95, omitted, 0}).starts_with("Fine"));
    EXPECT_TRUE(explained("EFFICIENCY", {2137, 9592, 0, 0}).starts_with("Fine"));
}

TEST(ExplainSlips, ReadingsThatDoNotGoTogether) {
    expect_words({
        {"USEFULHEAT", {5000, 20, 98, omitted, 100, 95}, "more than 1.5 K above the boiling point"},
        {"USEFULHEAT", {5000, 20, 95, omitted, 2500}, "more than 40 % of the water evaporated"},
        {"EQUIVALENTDRYFUEL", {600, 0.12, 18.5, 200}, "the char is more than 30 % of the dry wood"},
        {"TURNDOWN", {1, 2}, "are they swapped?"},
        {"NORMALBOILTIME", {17, 28, 60}, "the correction is large"},
        {"NORMALBOILTIME", {24, 22, 94, 75, 5000, 3400}, "the correction is large"},
        {"NORMALBOILTIME", {24, 22, 94, 75, 3000, 4600}, "the correction is large"},
        {"SPECIFICFUEL", {438, 4750, "wbt 4.2.3", 20, 80, 95, 75}, "correct for that twice in WBT 4.2.3"},
        {"FIREPOWER", {9.592, 30}, "is it in MJ?"},
        {"EFFICIENCY", {2137, 9.592}, "Is an energy in MJ"},
        {"WOODENERGY", {600, 0.12, 18500}, "18500 kJ/kg would be 18.5 MJ/kg."},
        {"WOODENERGY", {600, 0.12, 4400}, "4400 kcal/kg would be 18.4219 MJ/kg."},
        {"WOODENERGY", {600, 0.12, 4.9}, "4.9 kWh/kg would be 17.64 MJ/kg."},
        {"TURNDOWN", {6000, 2.4}, "6000 W would be 6 kW."},
        {"RUNSNEEDED", {0.6, 0.2}, "a coefficient of variation above 0.5"},
    });
}

TEST(ExplainSlips, WhatDrivesAResultOutOfItsRange) {
    expect_words({
        {"EQUIVALENTDRYFUEL",
         {10, 0.12, 18.5, 50},
         " outside 0 to 200000 g. Does the char hold more energy than the wood?"},
        {"NETASFIRED", {5, 0.7}, " outside 0.1 to 50 MJ/kg. Is there so much moisture or hydrogen that nothing is"},
        {"NETFROMGROSS", {5, 0.2}, " outside 1 to 55 MJ/kg. Is there so much moisture or hydrogen that nothing is"},
    });
}

TEST(ExplainSlips, NoneInWhatIsUsual) {
    std::initializer_list<Said> const usual{
        {"BOILINGPOINT", {845}, ""}, // a village at 845 m is no pressure
        {"BOILINGPOINT", {1240, 1022}, ""},
        {"BENCHEFFICIENCY", {812, 5803, 18, 1204, 95.1, 5641, 12, 0.09, 18.9}, ""}, // 12 g of wood left
        {"MOISTURE", {15.2, 13.4}, ""},                                             // a small sample
        {"WATERHEAT", {5000, 20, 95, "WBT 3"}, ""},
        {"USEFULHEAT", {4750, 94.9, 92.5, omitted, 600, 94.983}, ""}, // a simmer
        {"FUELENERGY", {masses, moistures, 18.5}, ""},
        {"NORMALBOILTIME", {24, 22, 94}, ""},
        {"NORMALBOILTIME", {24, 22, 94, 75, 5000, 3600}, ""},
        {"NORMALBOILTIME", {24, 22, 94, 75, 3000, 4400}, ""},
        {"WATERHEAT", {5000, 70, 50}, ""},                              // water that cools, in °C
        {"SPECIFICFUEL", {438, 4750, "WBT 4.2.3", 20, 94, 95, 75}, ""}, // it boiled
        {"SPECIFICFUEL", {438, 4750, "WBT 4.2.3", 20, 80, 95}, ""},     // corrected once, for the effective water
        {"SPECIFICFUEL", {438, 4750, "WBT 3", 20, 80, 95, 75}, ""},     // once, to the standard rise
        {"SPECIFICFUEL", {438, 4750, omitted, 20, 80, 95, 75}, ""},
        {"RUNSNEEDED", {0.4, 0.2}, ""},
        {"WOODENERGY", {600, 0.12, 29.5}, ""}, // charcoal
    };
    for (Said const& call : usual) {
        std::string const sentence =
            explained(call.function, std::span<Cell const>(call.arguments.begin(), call.arguments.size()));
        EXPECT_TRUE(sentence.starts_with("Fine: ")) << call.function << ": " << sentence;
    }
}

} // namespace
} // namespace hearthcell::tests
