// Reads every entry of the catalogue and grumbles where an order, a range or an example is not as all others are.

#include "functions/call/part.hpp"
#include "functions/catalogue/names.hpp"
#include "functions/number/meaning.hpp"
#include "functions/words/sentences.hpp"
#include "support/calls.hpp"
#include "support/lint.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace hearthcell::tests {
namespace {

TEST(CatalogueLint, RequiredArgumentsComeFirstAndTheMethodRightAfterThem) {
    for_every_function([](Function const& function) {
        bool optional_seen = false, rest_seen = false;
        std::size_t required = 0;
        for (Argument const& argument : function.arguments) {
            EXPECT_FALSE(rest_seen) << function.name << ": nothing can follow what takes any number of arguments";
            rest_seen = argument.kind == ArgumentKind::rest;
            EXPECT_FALSE(optional_seen && !argument.optional && !rest_seen)
                << function.name << ": " << argument.name.english << " is required, but stands after an optional one";
            optional_seen = optional_seen || argument.optional;
            required += optional_seen || rest_seen ? 0 : 1;
        }
        for (std::size_t i = 0; i < function.arguments.size(); ++i)
            if (function.arguments[i].name == "method") {
                EXPECT_EQ(i, required) << function.name << ": the method stands right after the required arguments";
            }
    });
}

TEST(CatalogueLint, NumericKernelsTakeAsManyNumbersAndChoicesAsThereAreArguments) {
    for_every_function([](Function const& function) {
        Columnar const* const columnar = std::get_if<Columnar>(&function.kernel);
        Numeric const* const numeric =
            columnar != nullptr ? columnar->equation : std::get_if<Numeric>(&function.kernel);
        if (numeric == nullptr)
            return;
        bool const of_columns = columnar != nullptr; // then it takes one reading of each, and the part
        std::size_t choices = 0;
        for (Argument const& argument : function.arguments) {
            bool const fits = argument.kind == ArgumentKind::number || argument.kind == ArgumentKind::number_or_name ||
                              argument.kind == ArgumentKind::name || argument.kind == ArgumentKind::choice ||
                              (of_columns && (argument.kind == ArgumentKind::column || is_chosen(argument.kind)));
            EXPECT_TRUE(fits) << function.name << ": a kernel of numbers cannot take " << argument.name.english;
            choices += is_chosen(argument.kind) ? 1 : 0;
        }
        EXPECT_EQ(numeric->choices, choices) << function.name;
        EXPECT_EQ(numeric->numbers, function.arguments.size() - choices) << function.name;
    });
}

TEST(CatalogueLint, RangesRunUpwardsAndHoldTheirDefaultsAndTables) {
    for_every_argument([](Function const&, Argument const& argument, std::string const& whose) {
        if (!has_range(argument))
            return;
        EXPECT_LT(argument.low, argument.high) << whose;
        if (!is_absent(argument.fallback)) {
            EXPECT_GE(argument.fallback, argument.low) << whose;
            EXPECT_LE(argument.fallback, argument.high) << whose;
        }
        if (argument.table != nullptr)
            for (Named const& row : argument.table->rows) {
                EXPECT_GE(row.value, argument.low) << whose << ", " << row.name.english;
                EXPECT_LE(row.value, argument.high) << whose << ", " << row.name.english;
            }
        if (argument.zero_is_doubtful) {
            EXPECT_TRUE(argument.low <= 0 && argument.high >= 0) << whose << ": 0 is not even allowed";
        }
    });
    for_every_function([](Function const& function) {
        if (function.result.measure != Measure::words && function.result.parts.empty()) {
            EXPECT_LT(function.result.low, function.result.high) << function.name;
        }
        expect_tidy(function.result.name, function.name);
    });
}

TEST(CatalogueLint, WhatLeavingAnArgumentOutMeansIsSaidOnceAndOnlyWhereItIsAllowed) {
    for_every_argument([](Function const&, Argument const& argument, std::string const& whose) {
        if (argument.kind == ArgumentKind::choice) {
            EXPECT_GE(argument.choices.size(), 2U) << whose;
            return;
        }
        if (argument.kind == ArgumentKind::part)
            return; // the first part, or all: said where the help is made
        bool const has_default = !is_absent(argument.fallback);
        if (argument.optional) {
            EXPECT_TRUE(has_default || !argument.absent_means.empty()) << whose << ": a default, or what absence means";
        } else {
            EXPECT_FALSE(has_default || !argument.absent_means.empty()) << whose << " cannot be left out";
        }
    });
}

TEST(CatalogueLint, AFunctionWithPartsToChooseTakesTheWordForOneAtItsEnd) {
    for_every_function([](Function const& function) {
        bool const takes_a_part =
            !function.arguments.empty() && function.arguments[function.arguments.size() - 1].kind == ArgumentKind::part;
        EXPECT_EQ(takes_a_part, has_parts_to_choose(function)) << function.name;
        std::vector<std::string_view> names;
        if (takes_a_part)
            for (Language const language : languages) {
                names.push_back(all_parts.in(language));
                for (Part const& part : function.result.parts)
                    names.push_back(part.name.in(language));
            }
        for (std::string_view const name : names) {
            bool const is_all = std::ranges::any_of(languages, [&](Language l) { return all_parts.in(l) == name; });
            EXPECT_NE(part_named(function, name).has_value(), is_all) << function.name << ": " << name;
        }
    });
}

TEST(CatalogueLint, EveryFunctionHasEquationsSourcesAndExamples) {
    for_every_function([](Function const& function) {
        std::size_t choices = 1;
        for (Argument const& argument : function.arguments)
            choices = argument.kind == ArgumentKind::choice ? argument.choices.size() : choices;
        EXPECT_TRUE(function.equations.size() == choices || function.name == "LOGCHECK") // its choice is a language
            << function.name << " needs an equation for each choice";
        for (Label const& equation : function.equations)
            for (Language const language : languages) {
                expect_tidy(equation.in(language), function.name);
                expect_functions_named_in(equation.in(language), function.name);
            }
        EXPECT_FALSE(function.sources.empty()) << function.name;
        for (Source const& source : function.sources)
            for (Language const language : languages)
                expect_tidy(source.title.in(language), function.name);
        EXPECT_FALSE(function.examples.empty()) << function.name;
    });
}

TEST(CatalogueLint, ExamplesFitTheirFunctionAndSayWhereTheyComeFrom) {
    for_every_function([](Function const& function) {
        bool const open =
            !function.arguments.empty() && function.arguments[function.arguments.size() - 1].kind == ArgumentKind::rest;
        std::size_t const parts = function.result.list ? 0 : function.result.parts.size();
        bool gives_a_result = false, shows_its_parts = parts == 0;
        for (Example const& example : function.examples) {
            bool const is_error = example.expected.kind == ExpectedKind::error;
            gives_a_result = gives_a_result || !is_error;
            if (parts > 0 && example.expected.kind == ExpectedKind::block) { // where all are asked for
                EXPECT_EQ(example.expected.columns, parts) << function.name;
                shows_its_parts = true;
            }
            expect_tidy(example.from, function.name);
            EXPECT_TRUE(open || example.arguments.size() <= function.arguments.size()) << function.name;
            for (std::size_t i = 0; i < example.arguments.size() && i < function.arguments.size() && !is_error; ++i) {
                Argument const& argument = function.arguments[i];
                Cell const& cell = example.arguments[i];
                if (cell.kind == CellKind::number && has_range(argument)) {
                    EXPECT_TRUE(cell.number >= argument.low && cell.number <= argument.high)
                        << function.name << ", " << argument.name.english << ": " << cell.number;
                }
                if (cell.kind == CellKind::omitted) {
                    EXPECT_TRUE(argument.optional) << function.name << ", " << argument.name.english;
                }
            }
            if (example.expected.kind != ExpectedKind::number)
                continue;
            bool const is_a_count = example.expected.number == std::floor(example.expected.number);
            EXPECT_GE(example.expected.tolerance, is_a_count ? 0 : 1e-300) << function.name;
            EXPECT_LE(example.expected.tolerance, 1e-3 * std::abs(example.expected.number))
                << function.name << ": a check that would pass anything";
            if (function.result.parts.empty() && function.result.measure != Measure::words) {
                EXPECT_TRUE(example.expected.number >= function.result.low &&
                            example.expected.number <= function.result.high)
                    << function.name;
            }
        }
        EXPECT_TRUE(gives_a_result) << function.name << " has no example that works";
        EXPECT_TRUE(shows_its_parts) << function.name << " has no example of all its parts";
    });
}

/// Whether an example expects a block of which an element has no value.
bool has_a_gap(Expected const& expected) {
    if (expected.kind != ExpectedKind::block)
        return false;
    std::span const elements(expected.elements, expected.rows * expected.columns);
    return std::ranges::any_of(elements, [](Expected const& one) { return one.kind == ExpectedKind::error; });
}

TEST(CatalogueLint, ExplainIsFineWithEveryExampleThatGivesAResult) {
    for_every_function([](Function const& function) {
        for (Example const& example : function.examples) {
            if (example.expected.kind == ExpectedKind::error || function.name == "EXPLAIN")
                continue;
            std::string const sentence =
                explained(function.name, std::span(example.arguments.begin(), example.arguments.size()));
            if (function.name == "PERFORMANCETIER" &&
                sentence.starts_with("Odd: value is within 5 % of a tier's limit"))
                continue; // an example that shows what holds at the limit
            EXPECT_TRUE(sentence.starts_with(has_a_gap(example.expected) ? "In part" : "Fine"))
                << function.name << ": " << sentence;
        }
    });
}

TEST(CatalogueLint, ExplainFindsTheFaultInEveryExampleThatGivesAnError) {
    for_every_function([](Function const& function) {
        for (Example const& example : function.examples) {
            if (example.expected.kind != ExpectedKind::error || function.name == "EXPLAIN")
                continue;
            std::string const sentence =
                explained(function.name, std::span(example.arguments.begin(), example.arguments.size()));
            EXPECT_FALSE(sentence.starts_with("Fine") || sentence.starts_with("Odd")) << function.name << sentence;
        }
    });
}

TEST(CatalogueLint, EveryReasonHasAMeaning) {
    for (Meaning const& meaning : meanings) {
        EXPECT_EQ(&meaning_of(meaning.reason), &meaning) << sentences::of(meaning.reason).english;
        EXPECT_EQ(failure_of(failure(meaning.reason, 7)).reason, meaning.reason);
        EXPECT_EQ(failure_of(failure(meaning.reason, 7)).argument, 7U);
    }
}

TEST(CatalogueLint, WhatIsNoFailureMeansAnInternalOneToACell) {
    EXPECT_EQ(meaning_of(Reason::none).reason, Reason::internal);
    EXPECT_EQ(meaning_of(Reason::absent).reason, Reason::internal);
    EXPECT_EQ(error_of(Reason::none), Error::value);
}

TEST(CatalogueLint, NamesAreKnownWhateverTheirLetterCaseAccentsHyphensAndBlanks) {
    EXPECT_TRUE(same_name(" wbt4.2.3 ", "WBT 4.2.3"));
    EXPECT_FALSE(same_name("WBT 4.2", "WBT 4.2.3"));
    EXPECT_FALSE(same_name("WBT 4.2.3", "WBT 4.2"));
    EXPECT_TRUE(same_name("ISO-19867-1", "iso 19867\u20111")); // a hyphen that does not break
    EXPECT_TRUE(same_name("ÉCORCE DE FEUILLUS", "ecorce-de\u00a0feuillus"));
    EXPECT_TRUE(same_name("lena", "Len\u0303a")); // the accent as a sign of its own
    EXPECT_TRUE(same_name("bois d’acacia", "Bois d'acacia"));
    EXPECT_TRUE(same_name("\u2002soft\u00adwood\u202f", "softwood"));
    EXPECT_FALSE(same_name("straße", "strase")); // a letter of its own
    EXPECT_FALSE(same_name("\u03b1", "a"));
    EXPECT_FALSE(same_name("caf\xC3", "cafe")); // cut off within a letter
    EXPECT_TRUE(same_name("", " -"));
    EXPECT_FALSE(same_name("  ", "WBT 3"));
    EXPECT_EQ(find_function("  stove.dryMass "), &function_named("DRYMASS"));
    EXPECT_EQ(find_function("STOVE.DRYWOOD"), &function_named("EQUIVALENTDRYFUEL")); // as it once was called
    for (std::string_view const none : {"", "  ", "STOVE.", "STOVE. DRYMASSES"})
        EXPECT_EQ(find_function(none), nullptr) << none;
}

TEST(CatalogueLint, EverySourceOfAFunctionIsNamed) {
    expect_outcome("SOURCE", std::array{Cell("WETBASIS")},
                   "Definition of the quantity; ISO 18134-1, oven-dry method (from memory)", "The catalogue");
    expect_outcome("SOURCE", std::array{Cell(" stove.airpressure ")},
                   "ISO 2533:1975, standard atmosphere; WMO-No. 8, reduction by the ICAO standard column (from "
                   "memory); Hydrostatic column at the air's mean temperature, without humidity (QFF)",
                   "The catalogue");
}

TEST(CatalogueLint, GroupsHaveTitlesAndFunctions) {
    for (Group const& group : catalogue()) {
        expect_tidy(group.title, "A group");
        EXPECT_FALSE(group.functions.empty()) << group.title.english;
    }
}

} // namespace
} // namespace hearthcell::tests
