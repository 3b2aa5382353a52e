// A lone empty cell arrives as 0: in an optional argument where 0 cannot be it is as if nothing had been given.

#include "functions/explain/explain.hpp"
#include "support/calls.hpp"
#include "support/lint.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace hearthcell::tests {
namespace {

bool zero_cannot_be(Argument const& argument) {
    if (!argument.optional)
        return false;
    bool const is_number = argument.kind == ArgumentKind::number || argument.kind == ArgumentKind::number_or_name;
    return argument.kind == ArgumentKind::choice || (is_number && argument.low > 0);
}

std::string said_of(Outcome const& outcome) {
    Block const* const block = std::get_if<Block>(&outcome);
    if (block == nullptr)
        return in_words(outcome);
    std::string text;
    for (double const number : block->numbers)
        text += in_words(Outcome(number)) + " ";
    return text;
}

TEST(EmptyCells, LeaveAnOptionalArgumentOutWhereZeroCannotBe) {
    int checked = 0;
    for_every_function([&](Function const& function) {
        for (Example const& example : function.examples)
            for (std::size_t i = 0; i < function.arguments.size(); ++i) {
                if (!zero_cannot_be(function.arguments[i]))
                    continue;
                std::vector<Value> left_out = values_of({example.arguments.begin(), example.arguments.end()});
                left_out.resize(std::max(left_out.size(), i + 1));
                left_out[i] = Value();
                std::vector<Value> empty_cell = left_out;
                empty_cell[i] = 0.0;
                EXPECT_EQ(said_of(call(function, empty_cell)), said_of(call(function, left_out)))
                    << function.name << ", " << function.arguments[i].name.english;
                EXPECT_EQ(explain(function, empty_cell), explain(function, left_out)) << function.name;
                ++checked;
            }
    });
    EXPECT_GT(checked, 100);
}

TEST(EmptyCells, DoSoInTheNumbersOfACellToo) {
    Function const& boiling_point = function_named("BOILINGPOINT");
    Scalar const altitude{1900}, empty{0}, left_out{};
    EXPECT_EQ(call_numeric(boiling_point, std::array{altitude, empty, left_out}), number("BOILINGPOINT", {1900}));
}

TEST(EmptyCells, CountAsZeroWhereZeroCanBeAndAreErrorsWhereTheArgumentIsRequired) {
    EXPECT_EQ(number("EFFICIENCY", {2000, 9000, 0}), number("EFFICIENCY", {2000, 9000}));
    EXPECT_NE(number("NETFROMGROSS", {20, 0}), number("NETFROMGROSS", {20}));
    EXPECT_EQ(reason("DRYMASS", {0, 0.12}), Reason::out_of_range);
    EXPECT_EQ(reason("PERFORMANCETIER", {0, 0.3}), Reason::number_for_text);
    EXPECT_EQ(reason("WATERHEAT", {5000, 20, 95, 3}), Reason::number_for_text);
    EXPECT_EQ(reason("BOILINGPOINT", {1900, 5}), Reason::out_of_range);
}

} // namespace
} // namespace hearthcell::tests
