// In which order EXPLAIN speaks: an argument, an impossible combination, the result, and only then what is odd.

#include "support/calls.hpp"
#include "support/explained.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

TEST(ExplainPrecedence, TheFirstBadArgumentWins) {
    expect_words({
        {"DRYMASS", {0.6, 12}, "mass is 0.6"},
        {"DRYMASS", {600, 12}, "moisture is 12"},
        {"WATERHEAT", {5000, 203, 300, "WBT 9"}, "start is 203"},
        {"WATERHEAT", {5000, 20, 95, "WBT 9"}, "method is \"WBT 9\", which is none of: \"properties\""},
        {"WATERHEAT", {"warm", 203, 300}, "water mass is the text \"warm\"; a number is needed."},
    });
}

TEST(ExplainPrecedence, AnErrorComesBeforeWhatIsOdd) {
    expect_words({
        {"BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 5900, 400, 0.4, 20.9}, "Pot and water are heavier at the end"},
        {"BOILINGPOINT", {1013.25, 500}, "sea-level pressure is 500"},
    });
    EXPECT_EQ(explained("BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 5900, 400, 0.4, 20.9}).find("gross"),
              std::string::npos);
}

TEST(ExplainPrecedence, AnArgumentComesBeforeAnImpossibleCombinationAndThatBeforeTheResult) {
    expect_words({
        {"USEFULHEAT", {500, 20, 203, omitted, 600}, "end is 203"},
        {"USEFULHEAT", {500, 20, 95, omitted, 600}, "More water evaporated than there was."},
        {"EFFICIENCY", {5000, 1000}, "The result would be 5, outside 0 to 1."},
        {"EFFICIENCY", {5000, 1000, 1000}, "The char holds as much energy as the fuel, or more."},
    });
}

TEST(ExplainPrecedence, EverythingOddIsSaidInTheOrderOfTheArguments) {
    std::string const sentence = explained("WOODENERGY", {1.2, 0.4, 20.5});
    std::size_t const mass = sentence.find("mass 1.2"), moisture = sentence.find("moisture 0.4"),
                      value = sentence.find("net calorific value is higher");
    EXPECT_LT(mass, moisture) << sentence;
    EXPECT_LT(moisture, value) << sentence;
    EXPECT_NE(value, std::string::npos) << sentence;
}

TEST(ExplainMethods, AreNamedWithTheirEquationAndWhereItComesFrom) {
    expect_words({
        {"WATERHEAT", {5000, 20, 95}, "By \"properties\": m [h(end) - h(start)], enthalpy of IAPWS SR6-08."},
        {"WATERHEAT",
         {5000, 20, 95, "wbt 3"},
         "By \"WBT 3\": 4.186 m (end - start) (the method is from memory of its "},
        {"EQUIVALENTDRYFUEL",
         {600, 0.12, 18.5, 50, "ISO 19867-1"},
         "This quantity is not defined by method \"ISO 19867-1\"."},
        {"EQUIVALENTDRYFUEL",
         {600, 0.12, 18.5, 50, "WBT 4.2.3"},
         "Method \"WBT 4.2.3\" needs the local boiling point."},
    });
}

} // namespace
} // namespace hearthcell::tests
