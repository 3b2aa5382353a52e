// Every function as an argument of every other: a call inside a call gives what the same number in a cell would give.

#include "calls.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

Measure measure_of(Function const& function) {
    return function.result.parts.empty() ? function.result.measure : function.result.parts[0].measure;
}

Example const* example_of_a_number(Function const& function) {
    for (Example const& example : function.examples)
        if (example.expected.kind == ExpectedKind::number)
            return &example;
    return nullptr;
}

/// Whether the result of one function may stand in the place of an argument of another.
bool makes_sense(Function const& inner, double result, Argument const& argument) {
    bool const is_number = argument.kind == ArgumentKind::number || argument.kind == ArgumentKind::number_or_name;
    return is_number && !inner.result.list && measure_of(inner) == argument.measure && result >= argument.low &&
           result <= argument.high;
}

class NestedCalls : public Calc {
protected:
    struct Pair {
        std::string nested, through_a_cell;
    };

    /// A call of `outer` in which its argument at `place` is the other call, and the same with that in a cell.
    Pair pair(Function const& outer, std::size_t place, std::string const& inner, std::string const& cell) {
        Call call = calls.of(outer, sound_example(outer));
        call.texts.resize(std::max(call.texts.size(), place + 1));
        call.texts[place] = inner;
        std::string const nested = call.formula();
        call.texts[place] = cell;
        return {nested, call.formula()};
    }

    Calls calls{sheet};
};

TEST_F(NestedCalls, GiveWhatTheirResultInACellWouldGive) {
    std::vector<std::string> inner_formulas, nested, through_cells;
    for (Group const& group : catalogue())
        for (Function const& inner : group.functions) {
            Example const* const example = example_of_a_number(inner);
            if (example == nullptr)
                continue;
            std::string const formula = calls.of(inner, *example).formula();
            inner_formulas.push_back(formula);
            std::string const cell = "$A$" + std::to_string(inner_formulas.size());
            for (Group const& others : catalogue())
                for (Function const& outer : others.functions)
                    for (std::size_t i = 0; i < outer.arguments.size(); ++i)
                        if (makes_sense(inner, example->expected.number, outer.arguments[i])) {
                            Pair const one = pair(outer, i, formula.substr(1), cell);
                            nested.push_back(one.nested);
                            through_cells.push_back(one.through_a_cell);
                        }
        }
    for (std::size_t i = 0; i < inner_formulas.size(); ++i)
        sheet.formula("A" + std::to_string(i + 1), inner_formulas[i]);
    auto const given = evaluate(nested), expected = evaluate(through_cells);
    ASSERT_GT(nested.size(), 200U);
    std::size_t numbers = 0;
    for (std::size_t i = 0; i < nested.size(); ++i) {
        EXPECT_EQ(given[i], expected[i]) << nested[i];
        numbers += std::holds_alternative<double>(given[i]) ? 1 : 0;
    }
    EXPECT_GT(numbers, nested.size() / 2) << "most of them give a number";
}

TEST_F(NestedCalls, TakeOnePartOfAFunctionWithSeveral) {
    sheet.formulas("B1", {{"31.2"}, {"30.8"}, {"32.1"}});
    auto const results = evaluate({"=STOVE.NORMALBOILTIME(STOVE.SERIES(B1:B3);14.5;95.85)",
                                   "=STOVE.NORMALBOILTIME(STOVE.SERIES(B1:B3;;\"upper limit\");14.5;95.85)",
                                   "=STOVE.NORMALBOILTIME(STOVE.SERIES(B1:B3;;\"all\");14.5;95.85)",
                                   "=STOVE.RUNSNEEDED(STOVE.SERIES(B1:B3;;\"coefficient of variation\");10%)"});
    EXPECT_NEAR(number(results[0]), (31.2 + 30.8 + 32.1) / 3 * 75 / (95.85 - 14.5), 1e-12);
    EXPECT_GT(number(results[1]), number(results[0]));
    EXPECT_EQ(results[2], CellValue(not_a_value)) << "a block where one value is wanted";
    EXPECT_EQ(number(results[3]), 3);
}

} // namespace
} // namespace hearthcell::tests
