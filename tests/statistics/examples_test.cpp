// The examples of the catalogue's group, every element of a block included.

#include "calls.hpp"

#include "functions/explain/reasons.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

Value value_of(Cell const& cell) {
    switch (cell.kind) {
    case Cell::Kind::omitted:
        return {};
    case Cell::Kind::number:
        return cell.number;
    case Cell::Kind::text:
        return std::string(cell.text);
    case Cell::Kind::column:
        break;
    }
    std::vector<double> values;
    for (double const number : cell.column)
        values.push_back(std::isnan(number) ? absent : number);
    return column(values);
}

/// A coded number is what stands in a block's cell.
void expect_cell(Expected const& expected, double given, std::string const& what) {
    Failure const why = failure_of(given);
    if (expected.kind == Expected::Kind::error) {
        ASSERT_NE(why.reason, Reason::none) << what << " gave " << given;
        EXPECT_EQ(error_of(why.reason), expected.error) << what;
        return;
    }
    ASSERT_EQ(why.reason, Reason::none) << what;
    EXPECT_NEAR(given, expected.number, expected.tolerance) << what;
}

double coded(Outcome const& outcome) {
    if (double const* number = std::get_if<double>(&outcome))
        return *number;
    Failure const* why = std::get_if<Failure>(&outcome);
    return why != nullptr ? failure(why->reason, why->argument) : failure(Reason::internal);
}

void expect_agreement(Function const& function, Example const& example) {
    std::vector<Value> arguments;
    for (Cell const& cell : example.arguments)
        arguments.push_back(value_of(cell));
    Outcome const outcome = call(function, arguments);
    std::string const what = std::string(function.name) + ": " + std::string(example.from);
    if (example.expected.kind != Expected::Kind::block)
        return expect_cell(example.expected, coded(outcome), what);
    Block const* const block = std::get_if<Block>(&outcome);
    ASSERT_NE(block, nullptr) << what;
    ASSERT_EQ(block->rows, example.expected.rows) << what;
    ASSERT_EQ(block->columns, example.expected.columns) << what;
    for (std::size_t i = 0; i < block->numbers.size(); ++i)
        expect_cell(example.expected.elements[i], block->numbers[i], what + ", element " + std::to_string(i + 1));
}

} // namespace

TEST(ExamplesOfRepeatedRuns, GiveWhatTheyMust) {
    for (Function const& function : repeated_runs())
        for (Example const& example : function.examples)
            expect_agreement(function, example);
}

TEST(ExamplesOfRepeatedRuns, ShowEveryPartOfEveryBlock) {
    for (Function const& function : repeated_runs()) {
        bool shown = function.result.parts.empty();
        for (Example const& example : function.examples) {
            if (example.expected.kind != Expected::Kind::block)
                continue;
            EXPECT_EQ(example.expected.columns, function.result.parts.size()) << function.name;
            shown = true;
        }
        EXPECT_TRUE(shown) << function.name;
    }
}

} // namespace hearthcell::tests
