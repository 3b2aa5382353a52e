// Every reason why a call can fail is produced by a call, and its sentence has no gap left unfilled.

#include "functions/call/part.hpp"
#include "functions/explain/explain.hpp"
#include "functions/explain/phrases.hpp"
#include "functions/number/in_words.hpp"
#include "functions/number/meaning.hpp"
#include "functions/words/sentences.hpp"
#include "support/calls.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

#include <map>
#include <numeric>

namespace hearthcell::tests {
namespace {

using Calls = std::vector<std::pair<std::string_view, std::vector<Value>>>;

Block column(std::vector<double> const& readings) {
    return {readings.size(), 1, readings, {}};
}
Block column_with_text() {
    return {2, 1, {300, text_in_block}, {{1, "a bundle"}}};
}
Value const omit{};
Block const every_two_minutes = column({0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20});

std::vector<double> one_to(std::size_t last) {
    std::vector<double> numbers(last);
    std::iota(numbers.begin(), numbers.end(), 1.0);
    return numbers;
}

/// Calls that fail, each in its own way. Those that no example of the catalogue and no published table shows already.
Calls const failing{
    {"DRYMASS", {std::string("much"), 0.12}},
    {"FUELENERGY", {column_with_text(), 0.12, 18.5}},
    {"WATERHEAT", {5000.0, 20.0, 95.0, 3.0}},
    {"CALORIFICVALUE", {18.5}},
    {"CALORIFICVALUE", {std::string("bark")}},
    {"SOURCE", {std::string("bark")}},
    {"WOODENERGY", {600.0, 0.12, std::string("LPG")}},
    {"FUELENERGY", {column({300, 250}), 0.12, std::string("LPG")}},
    {"BOILINGPOINT", {1000.0, column({1013, 1020})}},
    {"FUELENERGY", {Block{2, 2, {300, 250, 120, 80}, {}}, 0.12, 18.5}},
    {"BOILINGPOINT", {20000.0}},
    {"FUELENERGY", {column({300, -250}), 0.12, 18.5}},
    {"SOURCE", {std::string("old boots")}},
    {"WATERHEAT", {5000.0, 20.0}},
    {"AIRPRESSURE", {0.0, 1013.0, 5.0, 1.0}},
    {"FUELENERGY", {column({absent, absent}), 0.12, 18.5}},
    {"FUELENERGY", {column({300, absent}), column({0.12, 0.2}), 18.5}},
    {"FUELENERGY", {column({300, 250, 120}), column({0.12, 0.2}), 18.5}},
    {"EFFICIENCY", {5000.0, 1000.0}},
    {"EQUIVALENTDRYFUEL", {600.0, 0.12, 18.5, 50.0, std::string("ISO 19867-1")}},
    {"BENCHEFFICIENCY", {800.0, 5800.0, 20.0, 1000.0, 95.0, 5550.0, 400.0, 0.12, 18.5, std::string("WBT 3")}},
    {"WOODENERGY", {600.0, 0.12, 18.5, std::string("WBT 4.2.3")}},
    {"WOODENERGY", {600.0, 0.12, 18.5, std::string("WBT 4.2.3"), 95.0}},
    {"SPECIFICFUEL", {500.0, 5000.0, omit, 20.0}},
    {"NORMALBOILTIME", {17.0, 28.0, 86.6, 75.0, 4000.0}},
    {"NORMALBOILTIME", {17.0, 95.0, 20.0}},
    {"SPECIFICFUEL", {500.0, 5000.0, std::string("WBT 4.2.3"), 95.0, 96.0, 94.0}},
    {"USEFULHEAT", {500.0, 20.0, 95.0, omit, 600.0}},
    {"MOISTURE", {100.0, 120.0}},
    {"MOISTURE", {120.0, 100.0, std::string("wet"), 100.0}},
    {"BOILINGPOINTAT", {1013.0, 2000.0}},
    {"EFFICIENCY", {1000.0, 5000.0, 5000.0}},
    {"BENCHEFFICIENCY", {800.0, 820.0, 20.0, 1000.0, 95.0, 815.0, 400.0, 0.12, 18.5}},
    {"BENCHEFFICIENCY", {800.0, 5800.0, 20.0, 1000.0, 95.0, 5900.0, 400.0, 0.12, 18.5}},
    {"BENCHEFFICIENCY", {800.0, 5800.0, 20.0, 1000.0, 95.0, 700.0, 400.0, 0.12, 18.5}},
    {"BENCHEFFICIENCY", {800.0, 5800.0, 20.0, 1000.0, 95.0, 5550.0, 1100.0, 0.12, 18.5}},
    {"BENCHEFFICIENCY", {800.0, 5800.0, 20.0, 1000.0, 95.0, 5550.0, 1000.0, 0.12, 18.5}},
    {"FUELENERGY", {column({300, 250}), 0.12, 18.5, omit, column({0, 260})}},
    {"FILTEREMISSION", {2.0, 0.5, 500.0}},
    {"ROOMCONCENTRATION", {320.0, 24.0, 0.0, 30.0, 3.0, 1.0, std::string("in the long run")}},
    {"CORRECTEDREADING", {700.0, column({1000, 500}), column({500, 1000})}},
    {"MODELBOILTIME", {100.0, 20.0, 80.0, 20.0, 5000.0, 15.0, 450.0}},
    {"SAVING", {column({1020, 980}), column({640, 700}), omit, 0.5}},
    {"TIMEAT", {column({0, 10}), column({20, 50, 80}), 60.0}},
    {"TIMEAT", {column({0, absent}), column({20, 50}), 60.0}},
    {"TIMEAT", {column({0, 10, 10}), column({20, 50, 80}), 60.0}},
    {"TIMEAT", {column({0, 0.007, 0.014}), column({20, 50, 80}), 60.0}},
    {"HEATLOSS", {column({0, 10, 20}), column({80, 80, 80.5}), 5000.0, 20.0}},
    {"HEATLOSS", {column({0, 10, 20}), column({30, 28, 27}), 5000.0, 40.0}},
    {"HEATLOSS", {column({0, 10, 20, 30}), column({38, 20, 28, 25}), 5000.0, 20.0}},
    {"BOILTIME", {column({554, 564, 574, 584, 594}), column({20, 50, 80, 95, 95}), 95.0, omit, 3.0}},
    {"BOILFORECAST",
     {column({0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26}),
      column({20, 20.2, 20.6, 21.2, 22, 23.2, 25, 27.6, 31, 35.6, 41.6, 49.4, 59.4, 72}), 95.0}},
    {"BOILFORECAST", {every_two_minutes, column({20, 35, 47, 56, 63, 68, 72, 75, 77, 79, 80}), 95.0}},
    {"BOILFORECAST", {every_two_minutes, column({20, 22, 24, 26, 28, 30, 32, 34, 36, 38, 40}), 95.0}},
    {"BOILFORECAST", {every_two_minutes, column({20, 33, 32, 45, 40, 53, 49, 60, 54, 70, 65}), 95.0}},
    {"UNCERTAINTY", {std::string("WETBASIS"), column({0.15, 1}), column({0, 0})}},
    {"UNCERTAINTY", {std::string("CALORIFICVALUE"), std::string("poplar"), 0.5}},
    {"UNCERTAINTY", {std::string("WETBASIS"), 0.15, 2.0}},
    {"UNCERTAINTY", {std::string("WETBASIS"), 0.15, 0.01, 1.0, Block{2, 2, {1, 0, 0, 1}, {}}}},
    {"UNCERTAINTY",
     {std::string("WETBASIS"), column({0.15, absent}), column({0.01, 0}), 1.0, Block{2, 2, {1, 0.5, 0.5, 1}, {}}}},
    {"UNCERTAINTY",
     {std::string("WATERMASS"), column({5, 20}), column({0.02, 2}), 1.0, Block{2, 2, {1, 0.5, 0.5, 0.9}, {}}}},
    {"UNCERTAINTY",
     {std::string("WATERMASS"), column({5, 20}), column({0.02, 2}), 1.0, Block{2, 2, {1, 0.5, 0.4, 1}, {}}}},
    {"UNCERTAINTY",
     {std::string("NETFROMGROSS"), column({20, 0.062, 0.441}), column({0.1, 0.001, 0.01}), 1.0,
      Block{3, 3, {1, -0.9, -0.9, -0.9, 1, -0.9, -0.9, -0.9, 1}, {}}}},
    {"MINUTES", {std::string("1.08.20")}},
    {"MINUTES", {0.0420138888888889, std::string("mm:ss")}},
    {"MINUTES", {-5.0}},
    {"BLOCKEDDIFFERENCE", {column({1, 2}), column({1, 1}), column({1, 2}), 1.0}},
    {"BLOCKEDDIFFERENCE", {column({1, 2}), column({1, 2}), column({1, 1}), 1.0}},
    {"BLOCKEDDIFFERENCE", {column({1, 2}), column({1, 2}), column({1, absent}), 1.0}},
    {"BLOCKEDDIFFERENCE",
     {column(std::vector<double>(51, 1.0)), column(one_to(51)), column(std::vector<double>(51, 1.0)), 1.0}},
};

/// Calls that give a block of which an element has no value.
Calls const failing_in_part{
    {"SAVING", {column({1, 20}), column({3, 3.5})}},
};

Calls all_failing_calls() {
    Calls calls = failing;
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            for (Example const& example : function.examples)
                if (example.expected.kind == ExpectedKind::error)
                    calls.emplace_back(function.name, values_of({example.arguments.begin(), example.arguments.size()}));
    for (PublishedTable const* table : all_tables())
        for (Row const& row : table->rows())
            if (row.expected.kind == ExpectedKind::error)
                calls.emplace_back(row.function, values_of({row.arguments.begin(), row.arguments.size()}));
    return calls;
}

TEST(ExplainReasons, EveryReasonIsProducedByACall) {
    std::map<Reason, int> produced;
    for (auto const& [name, values] : all_failing_calls()) {
        Outcome const outcome = call(function_named(name), values);
        if (Failure const* why = std::get_if<Failure>(&outcome))
            ++produced[why->reason];
        else
            ADD_FAILURE() << name << " gives " << in_words(outcome) << ", not an error";
    }
    for (auto const& [name, values] : failing_in_part) {
        Function const& function = function_named(name);
        Outcome const outcome = call(function, asking_for_all(function, values));
        for (double const element : std::get<Block>(outcome).numbers)
            ++produced[failure_of(element).reason];
    }
    for (Meaning const& meaning : meanings) {
        if (meaning.reason == Reason::internal) // only an exception within the adapter gives it
            continue;
        if (meaning.reason == Reason::no_finite_slope) // no equation of the catalogue has an infinite slope
            continue;
        EXPECT_GT(produced[meaning.reason], 0)
            << "No call of this test, no example and no published table fails for this reason: "
            << sentences::of(meaning.reason).english;
    }
}

TEST(ExplainReasons, NoSentenceHasAGapLeft) {
    for (auto const& [name, values] : all_failing_calls()) {
        if (name == "EXPLAIN") // an example whose own text is no sentence
            continue;
        std::string const sentence = explain(function_named(name), values);
        EXPECT_EQ(sentence.find_first_of("{}"), std::string::npos) << name << ": " << sentence;
        EXPECT_EQ(sentence.find("nan"), std::string::npos) << name << ": " << sentence;
        EXPECT_EQ(sentence.find("  "), std::string::npos) << name << ": " << sentence;
        EXPECT_EQ(sentence.find(" ."), std::string::npos) << name << ": " << sentence;
        EXPECT_TRUE(sentence.ends_with('.') || sentence.ends_with('?')) << name << ": " << sentence;
    }
}

TEST(ExplainReasons, ASentenceSaysWhatIsWrongWhatWasGivenAndWhatIsAllowed) {
    auto const says = [](std::string_view name, std::vector<Value> const& values) {
        return explain(function_named(name), values);
    };
    EXPECT_EQ(says("BOILINGPOINT", {20000.0}),
              "altitude is 20000, outside -450 to 9000 m: 20000 feet would be 6096 m.");
    EXPECT_EQ(says("BOILINGPOINT", {std::string("20000")}),
              "altitude is \"20000\", outside -450 to 9000 m: 20000 feet would be 6096 m.");
    EXPECT_EQ(says("FIREPOWER", {std::string("0"), 30.0}), "fuel energy is \"0\", outside 1 to 10000000 kJ.")
        << "a text is no empty cell";
    EXPECT_EQ(says("FUELENERGY", {column_with_text(), 0.12, 18.5}),
              "row 2 of masses is the text \"a bundle\"; a number is needed.");
    EXPECT_EQ(says("BOILINGPOINT", {1000.0, column({1013, 1020})}),
              "sea-level pressure must be one value, not a block of cells. Whole columns go through STOVE.EACHROW.");
    EXPECT_EQ(says("AIRPRESSURE", {0.0, 1013.0, 5.0, 1.0}), "There are more arguments than the function takes (3).");
    EXPECT_EQ(says("WATERHEAT", {5000.0, 20.0, 95.0, std::string("WBT 9"), 5.0}),
              "There are more arguments than the function takes (4).");
    EXPECT_EQ(says("FUELENERGY", {}), "masses must be given.");
    EXPECT_EQ(says("FUELENERGY", {column({300, 250}), 0.12, 18.5, omit, column({0, 260})}),
              "More fuel is left than was laid out in row 2; are the weighings swapped?");
    EXPECT_EQ(says("BLOCKEDDIFFERENCE", {column({1, 2}), column({1, absent}), column({1, 1}), 1.0}),
              "row 2 of variants is empty, though that run has a result.");
    EXPECT_EQ(says("EFFICIENCY", {0.5, 2e7}), "useful heat is 0.5, outside 1 to 10000000 kJ: 0.5 MJ would be 500 kJ.");
    EXPECT_EQ(says("FIREPOWER", {std::nan(""), 30.0}), "fuel energy is not a number, outside 1 to 10000000 kJ.");
    EXPECT_EQ(says("UNCERTAINTY", {std::string("WETBASIS"), 0.15, 0.01, 1.0, 2.0}),
              "row 1 of correlations is 2, outside -1 to 1.");
}

TEST(ExplainReasons, ASentenceSaysWhichTextsAreNeeded) {
    auto const says = [](std::string_view name, std::vector<Value> const& values) {
        return explain(function_named(name), values);
    };
    EXPECT_EQ(says("SOURCE", {}), "name must be given.");
    EXPECT_EQ(says("SOURCE", {column({5, 20})}),
              "name must be one value, not a block of cells. Whole columns go through STOVE.EACHROW.");
    EXPECT_EQ(says("SOURCE", {0.0}),
              "name is the number 0; one of these texts is needed: the functions, fuels, gases and pot "
              "materials of the README. An empty cell counts as 0.");
    EXPECT_EQ(says("UNCERTAINTY", {std::string("charcoal"), 0.15, 0.01}),
              "function name is \"charcoal\", which is none of: the functions of the README.");
}

TEST(ExplainReasons, AWholeNumberInATextIsThatNumberAndAllOtherTextsAreNone) {
    EXPECT_EQ(number("BOILINGPOINT", {"1240"}), number("BOILINGPOINT", {1240}));
    EXPECT_EQ(number("BOILINGPOINT", {"-400"}), number("BOILINGPOINT", {-400}));
    for (char const* text : {"", " ", "1240.5", "1240,5", "1240 m", "2e3", "+1240", "altitude", "99999999999999999999"})
        EXPECT_EQ(reason("BOILINGPOINT", {text}), Reason::text_for_number) << text;
    EXPECT_EQ(explained("BOILINGPOINT", {"1240.5"}), "altitude is the text \"1240.5\"; a number is needed.");
}

TEST(ExplainReasons, ArgumentsThatMayBeLeftOutAreShownInBrackets) {
    auto const shown = [](char const* function, std::size_t place) {
        return shown_name(function_named(function).arguments[place], Language::french);
    };
    EXPECT_EQ(shown("BOILINGPOINT", 0), "altitude");
    EXPECT_EQ(shown("BOILINGPOINT", 1), "[pression au niveau de la mer]");
    EXPECT_EQ(shown("EXPLAIN", 1), "[arguments]");
}

TEST(ExplainReasons, NumbersAreWrittenTheSameEverywhere) {
    EXPECT_EQ(hearthcell::in_words(92.31628), "92.3163");
    EXPECT_EQ(hearthcell::in_words(0.12), "0.12");
    EXPECT_EQ(hearthcell::in_words(1e7), "10000000");
    EXPECT_EQ(hearthcell::in_words(999999.7), "1000000");
    EXPECT_EQ(hearthcell::in_words(999999.2), "999999");
    EXPECT_EQ(hearthcell::in_words(-3e6), "-3000000");
    EXPECT_EQ(hearthcell::in_words(1e300), "1e+300");
    EXPECT_EQ(quantity(Speaker(Language::english), 95, Measure::temperature), "95 °C");
}

} // namespace
} // namespace hearthcell::tests
