// What EXPLAIN says of slips with gases, particles, households and check points. The bands behind it are common
// practice, no source.

#include "support/calls.hpp"
#include "support/explained.hpp"

#include <gtest/gtest.h>

#include <array>

namespace hearthcell::tests {
namespace {

constexpr std::array minutes{0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0};
constexpr std::array clean{8.0, 40.0, 61.0, 55.0, 63.0, 44.0, 9.0};
constexpr std::array at_the_ceiling{8.0, 500.0, 500.0, 500.0, 480.0, 90.0, 9.0};
constexpr std::array cut_short{8.0, 40.0, 61.0, 55.0, 63.0, 44.0, 47.0};
constexpr std::array flat{50.0, 50.0, 50.0, 50.0, 50.0, 50.0, 50.0};
constexpr std::array dioxide{4000.0, 9000.0, 9500.0, 9400.0, 9100.0, 7000.0, 4100.0};
constexpr std::array half_empty{8.0, 40.0, blank, 55.0, 63.0, 44.0, 9.0};

TEST(ExplainEmissions, UnitsThatAreNotThoseWanted) {
    expect_words({
        {"CARBONBALANCE",
         {189.6, 0.9, 380, 450},
         "carbon dioxide is 0.9, outside 100 to 250000 ppm: 0.9 % would be 9000"},
        {"CARBONBALANCE", {0.19, 9000, 380, 450}, "0.19 kg would be 190 g."},
        {"CARBONBALANCE", {189.6, 9000, 0.3, 450}, "no wood burns so cleanly. Is it in per cent?"},
        {"GASCONCENTRATION", {1.2, "CO2", 25, 1013.25}, "Is it in per cent? 1 % is 10000 ppm."},
        {"GASCONCENTRATION", {35, 0.028, 25, 1013.25}, "0.028 kg/mol would be 28 g/mol."},
        {"HOODEMISSION",
         {minutes, clean, 5000},
         "row 1 of flow is 5000, outside 0.05 to 500 m³/min: 5000 L/min would be 5"},
        {"FILTEREMISSION", {1.4, 0.02, 16.7}, "0.02 m³/s would be 1.2 m³/min."},
        {"FILTEREMISSION", {1.4, 5, 0.0167}, "0.0167 m³/min would be 16.7 L/min."},
        {"FILTEREMISSION", {0.0014, 5, 16.7}, "is it in grams?"},
        {"EMISSIONFACTOR", {8000, 600}, "if the mass is in milligrams, so is the result"},
        {"EMISSIONPERENERGY", {18.7, 1.66}, "is it in MJ?"},
        {"ROOMCONCENTRATION", {9.5, 24000, 10, 60}, "24000 L would be 24 m³."},
        {"FUELCARBON", {447.2, 50}, "50 is 5000 %; type 50% or 0.5."},
        {"FUELPERSTANDARDADULT", {21.4, 3, 4.9}, "is dry mass in kilograms?"},
    });
}

TEST(ExplainEmissions, APressureThatWasLeftOut) {
    expect_words({{"GASCONCENTRATION", {35, "CO"}, "Odd: air pressure was left out, and 1013.25 hPa counted"},
                  {"GASCONCENTRATION", {35, "CO", 25, 0}, "Odd: air pressure was left out, and 1013.25 hPa counted"},
                  {"GASCONCENTRATION", {35, "CO", 0, 820}, "temperature is 0: freezing, or an empty cell?"}});
    EXPECT_TRUE(explained("GASCONCENTRATION", {35, "CO", 25, 820}).starts_with("Fine: mass concentration 32.4"));
}

TEST(ExplainEmissions, WhatCannotBeAndWhatIsSwapped) {
    expect_words({
        {"CARBONBALANCE",
         {189.6, 450, 380, 9000},
         "carbon dioxide must stand above the background: are the two swapped"},
        {"CARBONBALANCE", {189.6, 9000, 1, 450, 2}, "carbon monoxide must stand above the background"},
        {"CARBONBALANCE",
         {189.6, 1000, 380, 450},
         "carbon monoxide is 0.690909 of carbon dioxide: are the two swapped"},
        {"CARBONBALANCE", {189.6, 9000, 380, 0}, "the background of carbon dioxide is 0"},
        {"HOODEMISSION", {minutes, clean, 5, 90}, "concentrations must stand above the background"},
        {"FILTEREMISSION", {0.02, 5, 16.7, 0.02}, "The filter gained no more than the blank"},
        {"FUELCARBON", {447.2, 0.5, 200}, "the char is more than 30 % of the dry wood"},
        {"FUELCARBON", {40, 0.5, 40}, "The char holds as much carbon as the fuel, or more."},
        {"ROOMCONCENTRATION", {9.5, 24, 0, 60}, "air changes is 0: none at all, or an empty cell?"},
    });
}

TEST(ExplainEmissions, CharCountedTwiceIsWarnedOfWithEveryResult) {
    expect_words(
        {{"FUELCARBON", {447.2, 0.5, 40}, "Never give STOVE.EQUIVALENTDRYFUEL: its char would be taken off twice."}});
}

TEST(ExplainEmissions, AnInstrumentThatStandsAtItsCeiling) {
    expect_words({
        {"HOODEMISSION",
         {minutes, at_the_ceiling, 5},
         "Odd: the concentration stands at its highest, 500 mg/m³, for 10 min"},
        {"CARBONBALANCE",
         {189.6, dioxide, at_the_ceiling, 450},
         "Odd: carbon monoxide stands at its highest, 500 ppm, for 3 "},
        {"TIMEMEAN", {minutes, at_the_ceiling}, "The highest value, 500, stands for 10 min: if that is the most"},
    });
    for (auto const& log : {clean, flat})
        EXPECT_EQ(explained("CARBONBALANCE", {189.6, dioxide, log, 450}).find("highest"), std::string::npos);
    EXPECT_EQ(explained("TIMEMEAN", {minutes, clean}).find("highest"), std::string::npos);
}

TEST(ExplainEmissions, ALogThatEndsWhileTheStoveStillEmits) {
    expect_words(
        {{"HOODEMISSION", {minutes, cut_short, 5}, "the log ends at 47 mg/m³, while the stove still emitted"}});
    EXPECT_EQ(explained("HOODEMISSION", {minutes, cut_short, 5, 0, 0, 20}).find("still emitted"), std::string::npos);
    EXPECT_TRUE(explained("HOODEMISSION", {minutes, clean, 5}).starts_with("Fine: mass emitted 6.78"));
}

TEST(ExplainEmissions, RowsThatCountAlikeAndRowsThatAreLeftOut) {
    expect_words({
        {"CARBONBALANCE", {189.6, dioxide, half_empty, 450}, "Rows left out for want of one of the two gases: 1."},
        {"CARBONBALANCE",
         {189.6, dioxide, clean, 450},
         "right where the flow was steady, which in a chimney it is not."},
    });
    EXPECT_EQ(explained("CARBONBALANCE", {189.6, 9000, 380, 450}).find("Every reading"), std::string::npos);
}

TEST(ExplainEmissions, WhatAModelOfARoomCannotTell) {
    expect_words({{"ROOMCONCENTRATION", {9.5, 24, 10, 60}, "no figure of it says that a room is safe"},
                  {"ROOMCONCENTRATION", {9.5, 24, 10, 60}, "a carbon monoxide alarm and fresh air are needed"}});
}

constexpr std::array three{1.0, 2.0, 3.0}, uneven{0.4, 22.1, 94.9}, truth{0.0, 21.6, 93.7},
    fahrenheit{32.0, 70.9, 200.7};

TEST(ExplainEmissions, HowFarACorrectionReaches) {
    expect_words({
        {"CORRECTEDREADING", {94.2, 93.0, 93.6}, "the same offset counts for every reading"},
        {"CORRECTEDREADING", {60, std::array{0.4, 94.9}, std::array{0.0, 93.7}}, "Two check points: nothing tells"},
        // s and its share at the reading as numpy gives them, 0.0652384 and 0.0423893
        {"CORRECTEDREADING",
         {60, uneven, truth},
         "scatter about it by 0.0652384; its standard uncertainty there is 0.0423893"},
        {"CORRECTEDREADING", {60, fahrenheit, truth}, "are indicated and true in one unit, and not swapped?"},
        {"CORRECTEDREADING", {60, truth, fahrenheit}, "are indicated and true in one unit, and not swapped?"},
        {"CORRECTEDREADING", {5, three, three}, "Odd: the reading lies beyond the check points"},
        {"CORRECTEDREADING", {10, three, three}, "reading is 10, further beyond the check points than three times"},
    });
    EXPECT_TRUE(explained("CORRECTEDREADING", {3.9, three, three}).starts_with("Fine: corrected reading 3.9."));
}

} // namespace
} // namespace hearthcell::tests
