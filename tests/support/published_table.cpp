#include "support/published_table.hpp"

#include "functions/number/meaning.hpp"
#include "support/calls.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace hearthcell::tests {

std::vector<PublishedTable const*>& all_tables() {
    static std::vector<PublishedTable const*> tables;
    return tables;
}

PublishedTable::PublishedTable(std::initializer_list<Row> table_rows) : values(table_rows) {
    all_tables().push_back(this);
}

void PublishedTable::check() const {
    for (Row const& row : values)
        expect_outcome(row.function, std::span(row.arguments.begin(), row.arguments.size()), row.expected, row.from);
}

namespace {

/// One element of a block against what is expected of it.
void expect_element(Block const& block, std::size_t place, Expected const& expected, std::string const& message) {
    double const number = block.numbers.at(place);
    if (expected.kind == ExpectedKind::number) {
        EXPECT_LE(std::abs(number - expected.number), expected.tolerance) << message << ", element " << place + 1;
    } else if (expected.kind == ExpectedKind::error) {
        ASSERT_TRUE(failed(number)) << message << ", element " << place + 1;
        EXPECT_EQ(error_of(failure_of(number).reason), expected.error) << message << ", element " << place + 1;
    } else {
        auto const text = std::ranges::find(block.texts, place, &Block::Text::place);
        ASSERT_NE(text, block.texts.end()) << message << ", element " << place + 1;
        EXPECT_EQ(text->text, expected.text) << message;
    }
}

void expect_block(Outcome const& outcome, Expected const& expected, std::string const& message) {
    Block const* const block = std::get_if<Block>(&outcome);
    ASSERT_NE(block, nullptr) << message;
    ASSERT_EQ(block->rows, expected.rows) << message;
    ASSERT_EQ(block->columns, expected.columns) << message;
    for (std::size_t place = 0; place < expected.rows * expected.columns; ++place)
        expect_element(*block, place, expected.elements[place], message);
}

/// A single cell shows a block's first element.
Outcome in_a_single_cell(Outcome outcome) {
    Block const* const block = std::get_if<Block>(&outcome);
    if (block == nullptr)
        return outcome;
    for (Block::Text const& text : block->texts)
        if (text.place == 0)
            return text.text;
    double const first = block->numbers.at(0);
    return failed(first) ? Outcome(failure_of(first)) : Outcome(first);
}

} // namespace

void expect_outcome(std::string_view function, std::span<Cell const> arguments, Expected const& expected,
                    std::string_view from) {
    Outcome outcome = call(function_named(function), values_of(arguments));
    if (expected.kind != ExpectedKind::block)
        outcome = in_a_single_cell(std::move(outcome));
    auto const message = [&] {
        return in_words(function, arguments) + " gives " + in_words(outcome) + "; from: " + std::string(from);
    };
    if (expected.kind == ExpectedKind::number) {
        double const* const result = std::get_if<double>(&outcome);
        ASSERT_NE(result, nullptr) << message();
        EXPECT_LE(std::abs(*result - expected.number), expected.tolerance)
            << message() << "; must be " << expected.number << " within " << expected.tolerance;
    } else if (expected.kind == ExpectedKind::text) {
        std::string const* const result = std::get_if<std::string>(&outcome);
        ASSERT_NE(result, nullptr) << message();
        EXPECT_EQ(*result, expected.text) << message();
    } else if (expected.kind == ExpectedKind::error) {
        Failure const* const why = std::get_if<Failure>(&outcome);
        ASSERT_NE(why, nullptr) << message();
        EXPECT_EQ(error_of(why->reason), expected.error) << message();
    } else {
        expect_block(outcome, expected, message());
    }
}

} // namespace hearthcell::tests
