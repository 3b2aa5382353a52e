// What the check of a workbook is told of a call: STOVE.EXPLAIN("NAME:check"; …).

#include "support/calls.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

/// A lone empty cell, as the check hands it over.
constexpr char const* empty_cell = "";

std::string checked(std::string_view name, std::initializer_list<Cell> arguments) {
    std::vector<Value> asked = values_of(std::vector<Cell>(arguments));
    asked.insert(asked.begin(), std::string(name) + ":check");
    Outcome const outcome = call(function_named("EXPLAIN"), asked);
    EXPECT_TRUE(std::holds_alternative<std::string>(outcome)) << name << ": " << in_words(outcome);
    return std::holds_alternative<std::string>(outcome) ? std::get<std::string>(outcome) : "";
}

TEST(CallCheck, HasNothingToSayOfACallThatIsFine) {
    EXPECT_EQ(checked("DRYMASS", {520, 0.14}), "");
    EXPECT_EQ(checked("BOILINGPOINT", {1240, 1008}), "");
    EXPECT_EQ(checked("SERIES", {Cell(1)}).substr(0, 5), "wrong");
}

TEST(CallCheck, GivesTheResultThatWasMeant) {
    EXPECT_EQ(checked("DRYMASS", {520, 12}),
              "wrong\tmoisture is 12, outside 0 to 0.75: 12 is 1200 %; type 12% or 0.12.\t457.6");
    std::string const fahrenheit = checked("WATERHEAT", {5000, 68, 93});
    EXPECT_EQ(fahrenheit.substr(0, 4), "odd\t");
    EXPECT_NE(fahrenheit.find("°F?\t1528."), std::string::npos) << fahrenheit; // 5 kg from 20 to 93 °C
}

TEST(CallCheck, PutsReadingsBackThatChangedPlaces) {
    std::string const said = checked("BENCHEFFICIENCY", {760, 4360, 14.5, 430, 95.85, 4170, 950, 0.14, 18.7});
    EXPECT_EQ(said.substr(0, 6), "wrong\t");
    EXPECT_NE(said.find("\t0.202"), std::string::npos) << said;
    EXPECT_EQ(said.back(), '%') << said;
}

TEST(CallCheck, AsksAboutA0OnlyWhereTheCellIsEmpty) {
    EXPECT_EQ(checked("DRYMASS", {520, 0}), "");
    EXPECT_EQ(checked("BOILINGPOINT", {0, 1008}), ""); // a kitchen at the sea
    EXPECT_EQ(checked("BOILINGPOINT", {empty_cell, 1008}).find("empty\taltitude\t"), 0);
    EXPECT_EQ(checked("CHARENERGY", {0}).find("odd"), std::string::npos); // no char is no empty cell
    EXPECT_EQ(checked("CHARENERGY", {empty_cell}).find("empty\tnet char\t"), 0);
    EXPECT_EQ(checked("DRYMASS", {520, empty_cell}), "empty\tmoisture\t\t520");
    EXPECT_EQ(checked("DRYMASS", {empty_cell, 0.14}).find("wrong\tmass is 0"), 0);
}

TEST(CallCheck, KeepsApartWhatHoldsForTheWholeWorkbook) {
    EXPECT_NE(checked("WATERHEAT", {5000, 20, 93, "WBT 3"}).find("note\tmethod\tWBT 3"), std::string::npos);
    EXPECT_NE(checked("BOILINGPOINT", {1240}).find("note\tdefault\tBOILINGPOINT"), std::string::npos);
}

TEST(CallCheck, HasOneLineForEachThingWhateverATextHolds) {
    EXPECT_EQ(checked("DRYMASS", {"a\tb\nc", 0.14}), "wrong\tmass is the text \"a b c\"; a number is needed.\t");
}

TEST(CallCheck, IsNothingThatEXPLAINIsAskedAboutItself) {
    EXPECT_EQ(checked("EXPLAIN", {"DRYMASS", 520, 14}), "");
}

} // namespace
} // namespace hearthcell::tests
