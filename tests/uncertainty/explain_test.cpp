#include "support/asking.hpp"

namespace hearthcell::tests {
namespace {

using testing::Test;

std::string const water_mass = "WATERMASS";
Value const water = column({5.0, 20.0});

void expect_says(std::string const& text, std::initializer_list<char const*> parts) {
    for (char const* part : parts)
        EXPECT_NE(text.find(part), std::string::npos) << "'" << part << "' is not in: " << text;
}

TEST(ExplainUncertainty, NamesTheResultThatTheDoubtBelongsTo) {
    EXPECT_EQ(explained("UNCERTAINTY", {water_mass, water, column({0.02, 2.0}), 2.0}),
              "Fine: uncertainty 40.1412. STOVE.WATERMASS gives 4991.03 g with these values; the standard uncertainty "
              "is 20.0706 g.");
    expect_says(explained("BUDGET", {water_mass, water, column({0.02, 2.0})}), {"Fine.", "4991.03 g", "20.0706 g"});
}

TEST(ExplainUncertainty, SaysWhatTheFunctionItselfWouldSay) {
    EXPECT_EQ(explained("UNCERTAINTY", {std::string("DRYMASS"), column({600.0, 12.0}), column({1.0, 0.1})}),
              "STOVE.DRYMASS gives no result with these values: moisture is 12, outside 0 to 0.75: 12 is 1200 %; type "
              "12% or 0.12.");
    expect_says(explained("BUDGET", {std::string("FIREPOWER"), column({9592.0, 1.25}), column({1.0, 0.1})}),
                {"STOVE.FIREPOWER gives no result", "outside 0 to 60 kW"});
    expect_says(explained("UNCERTAINTY", {water_mass, column({5.0}), column({0.02})}), {"temperature must be given"});
}

TEST(ExplainUncertainty, NamesTheArgumentOfItsOwnThatIsWrong) {
    auto const says = [](std::vector<Value> const& asked, std::initializer_list<char const*> parts) {
        expect_says(explained("UNCERTAINTY", asked), parts);
    };
    says({std::string("FUELENERGY"), water, water},
         {"function name is \"FUELENERGY\"", "no equation of single numbers"});
    says({water_mass, column({5.0, 20.0, 3.0}), column({0.0, 0.0, 0.0})}, {"row 3 of values is more than"});
    says({water_mass, water, column({0.02})}, {"standard uncertainties must be as many as the values"});
    says({water_mass, water, column({0.02, -2.0})}, {"row 2 of standard uncertainties is -2, outside 0 to"});
    says({water_mass, water, column({0.02, 200.0})}, {"row 2 of standard uncertainties is 200", "in per cent"});
    says({water_mass, water, column({0.02, 2.0}), 0.95}, {"coverage factor is 0.95", "level of confidence"});
    says({water_mass, water, column({0.02, 2.0}), 95.0}, {"coverage factor is 95", "in per cent"});
    says({water_mass, water, column({0.02, 2.0}), 1.0, square({1.0, 0.2, 0.3, 1.0})},
         {"row 1, column 2 of correlations is 0.2", "mirrored"});
    says({water_mass, water, column({0.02, 2.0}), 1.0, square({1.0, 0.2, 0.2, 0.3})},
         {"row 2, column 2 of correlations is 0.3"});
    says({std::string("POTHEAT"), column({500.0, std::string("aluminium"), 20.0, 95.0}), column({1.0, 0.01, 0.0, 0.0})},
         {"row 2 of standard uncertainties is 0.01", "a text or an empty cell"});
}

TEST(ExplainUncertainty, SaysWhenFirstOrderIsNotEnoughAndByHowMuch) {
    // Boil time m/(end - start) with a rise of 10 K known to 2.8 K: f = a/x, u² = a² u²/x⁴ (1 + 8 u²/x²) by hand, from
    // H = 2a/x³ and f f''': ½ 4 a² u⁴/x⁶ + 6 a² u⁴/x⁶.
    std::string const text = explained(
        "UNCERTAINTY", {std::string("NORMALBOILTIME"), column({20.0, 80.0, 90.0, 75.0}), column({0.0, 2.0, 2.0, 0.0})});
    // First order: 150 × 2.8284/10 = 42.4264; with the second: × √1.64 = 54.33, 28.1 % more.
    expect_says(text,
                {"Fine: uncertainty 42.4264.", "But first order is not enough", "make it 54.33", "min, 28.1 % more"});
    // At a third of that: 8 u²/x² = 7.1 % of the variance, above the stated 5 %; at a quarter 4 %, below.
    expect_says(explained("UNCERTAINTY", {std::string("NORMALBOILTIME"), column({20.0, 80.0, 90.0, 75.0}),
                                          column({0.0, 0.6667, 0.6667, 0.0})}),
                {"not enough"});
    EXPECT_EQ(explained("UNCERTAINTY",
                        {std::string("NORMALBOILTIME"), column({20.0, 80.0, 90.0, 75.0}), column({0.0, 0.5, 0.5, 0.0})})
                  .find("not enough"),
              std::string::npos);
}

TEST(ExplainUncertainty, SaysThatTheSecondOrderCountsNoCorrelations) {
    // As above: slopes ±15 min/K, second order 8² (½ 9 + 13.5) = 1152 by hand. Correlated by a half, first order is
    // √900 and both together √2052 = 45.299; fully, first order is nothing and √1152 = 33.941 is left.
    auto const with_correlation = [](double r) {
        return explained("UNCERTAINTY",
                         {std::string("NORMALBOILTIME"), column({20.0, 80.0, 90.0, 75.0}), column({0.0, 2.0, 2.0, 0.0}),
                          1.0, square({1.0, 0.0, 0.0, 0.0, 0.0, 1.0, r, 0.0, 0.0, r, 1.0, 0.0, 0.0, 0.0, 0.0, 1.0})});
    };
    expect_says(with_correlation(0.5), {"Fine: uncertainty 30. ",
                                        " But first order may not be enough: the second-order terms (JCGM 100, "
                                        "5.1.2), counted without the correlations, make it 45.29",
                                        " min, 51 % more."});
    std::string const full = with_correlation(1);
    expect_says(full, {"Fine: uncertainty 0. ", "counted without the correlations, make it 33.94"});
    EXPECT_EQ(full.find("more."), std::string::npos) << full; // of nothing there is no share
}

TEST(ExplainUncertainty, SaysWhenTheSecondOrderTakesAwayFromTheFirst) {
    // Water expands, so that volume and temperature can cancel. By SR6-08 as the package iapws 1.5.3 computes it and
    // differences: at 50 °C 988.0345 kg/m³ with the slopes -0.452296, -0.006560 and 7.58e-5 by K. For 5 L ± 0.023 L and
    // ± 10 K first order is 10.290 g² with a correlation of 0.99, second order -3.525 g².
    auto const with_correlation = [](double r) {
        return explained("UNCERTAINTY",
                         {water_mass, column({5.0, 50.0}), column({0.023, 10.0}), 1.0, square({1.0, r, r, 1.0})});
    };
    expect_says(with_correlation(0.99),
                {"Fine: uncertainty 3.20", "make it 2.60", " g, 18.9 % less.", "STOVE.MONTECARLO"});
    expect_says(with_correlation(1),
                {"counted without the correlations, cancel it. ", " STOVE.MONTECARLO counts all that in."});
}

TEST(ExplainUncertainty, SaysThatNoValuesWereGiven) {
    EXPECT_EQ(explained("UNCERTAINTY", {water_mass, column({empty, empty}), column({empty, empty})}),
              "STOVE.WATERMASS gives no result with these values: volume must be given.");
}

TEST(ExplainUncertainty, SaysWhenOneStandardUncertaintyLeavesTheFunction) {
    std::string const text =
        explained("UNCERTAINTY", {std::string("MOISTURE"), column({100.0, 99.0}), column({2.0, 0.0})});
    expect_says(text, {"away from this mass as fired STOVE.MOISTURE cannot be computed"});
}

TEST(ExplainUncertainty, SaysWhenEverythingIsExact) {
    expect_says(explained("UNCERTAINTY", {water_mass, water, column({0.0, empty})}),
                {"Fine: uncertainty 0.", "every standard uncertainty is 0 or empty"});
}

TEST(ExplainMinutes, SaysHowANumberWasTaken) {
    expect_says(explained("MINUTES", {0.025}), {"Fine: time 36 min.", "a time of Calc"});
    expect_says(explained("MINUTES", {31.7}), {"Fine: time 31.7 min.", "taken as minutes"});
    expect_says(explained("MINUTES", {0.0}), {"or an empty cell?"});
    EXPECT_EQ(explained("MINUTES", {0.25, std::string("minutes")}),
              "Fine: time 0.25 min. By \"minutes\": texts by their own signs; numbers as minutes.");
}

TEST(ExplainMinutes, SaysHowANumberWasTakenUnlessItWasTold) {
    std::string const taken = "31.7 was taken as minutes: a time of Calc, a part of a day, is below 0.5.";
    for (Value const& typed : {Value(empty), Value(std::string("As it stands"))})
        EXPECT_EQ(
            explained("MINUTES", {31.7, typed}),
            "Fine: time 31.7 min. By \"as it stands\": texts by their own signs, 31:40 as mm:ss; numbers below 0.5 "
            "as parts of a day, from 3 on as minutes. " +
                taken);
    EXPECT_EQ(explained("MINUTES", {31.7, std::string("minutes")}).find("was taken"), std::string::npos);
}

TEST(ExplainMinutes, SaysNothingOfNumbersWhereThereAreNone) {
    for (Value const& times : {column({0.0, 0.0}), column({std::string("5 min"), empty})})
        EXPECT_EQ(explained("MINUTES", {times}).find("The numbers"), std::string::npos);
}

TEST(ExplainMinutes, SaysWhatIsUnclear) {
    expect_says(explained("MINUTES", {1.0625}), {"time is 1.0625, which may be minutes", "\"mm:ss\""});
    expect_says(explained("MINUTES", {std::string("1.08.20")}), {"time is \"1.08.20\"", "in one way only", "12'45\""});
    expect_says(explained("MINUTES", {std::string("1:75")}), {"time is \"1:75\"", "end at 59"});
    expect_says(explained("MINUTES", {45000.6}), {"time is 45000.6", "subtract the first"});
    expect_says(explained("MINUTES", {0.0420138888888889, std::string("mm:ss")}), {"no whole number of minutes"});
}

TEST(ExplainMinutes, SaysThatOneColonIsMinutesAndSeconds) {
    expect_says(explained("MINUTES", {std::string("12:30")}), {"Fine: time 12.5 min.", "is minutes and seconds"});
    EXPECT_EQ(explained("MINUTES", {std::string("12:30"), std::string("mm:ss")}).find("for hours"), std::string::npos);
}

TEST(ExplainMinutes, NamesTheFirstBadRowOfAColumn) {
    std::string const text =
        explained("MINUTES", {column({0.0, empty, std::string("5:00"), std::string("soon"), -1.0, 30.0})});
    expect_says(text, {"2 of 5 could not be computed; the first: row 4 of time is \"soon\"", "the largest is 30",
                       "is minutes and seconds"});
    expect_says(explained("MINUTES", {column({0.0, 10.0, -1.0})}), {"1 of 3", "row 3 of time is -1"});
}

TEST(ExplainMinutes, AsksWhetherMinutesAreTypedAmongTimesOfCalc) {
    expect_says(explained("MINUTES", {column({0.001, 0.002, 0.003, 25.0})}), {"typed among times of Calc?"});
    EXPECT_EQ(explained("MINUTES", {column({0.25, 1.0, 2.0, 25.0})}).find("among"), std::string::npos);
    expect_says(explained("MINUTES", {column({0.001, 0.002})}), {"all are below 0.5"});
    std::string const a_point = "21 minutes and 30 seconds are written 21:30.";
    expect_says(explained("MINUTES", {column({std::string("20:15"), std::string("21.30")})}), {a_point.c_str()});
    for (char const* text : {".30", "2a.30", "21.3x", "21.75"})
        EXPECT_EQ(explained("MINUTES", {column({std::string("20:15"), std::string(text)})}).find(a_point),
                  std::string::npos)
            << text;
}

TEST(Explain, LooksNoFurtherThanTheNameWhereItIsAskedAboutItself) {
    EXPECT_EQ(explained("EXPLAIN", {std::string("DRYMASS"), 600.0, 12.0}), "Fine.");
    EXPECT_EQ(explained("EXPLAIN", {std::string("NOSUCHTHING"), 600.0}),
              "function name is \"NOSUCHTHING\", which is none of: the functions of the README.");
    EXPECT_EQ(explained("EXPLAIN", {}), "function name must be given.");
    EXPECT_EQ(explained("EXPLAIN", std::vector<Value>(100000, std::string("EXPLAIN"))), "Fine.");
}

} // namespace
} // namespace hearthcell::tests
