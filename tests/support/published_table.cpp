#include "support/published_table.hpp"

#include "functions/explain/reasons.hpp"
#include "support/calls.hpp"

#include <gtest/gtest.h>

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

void expect_outcome(std::string_view function, std::span<Cell const> arguments, Expected const& expected,
                    std::string_view from) {
    Outcome const outcome = call(function_named(function), values_of(arguments));
    auto const message = [&] {
        return in_words(function, arguments) + " gives " + in_words(outcome) + "; from: " + std::string(from);
    };
    if (expected.kind == Expected::Kind::number) {
        double const* const result = std::get_if<double>(&outcome);
        ASSERT_NE(result, nullptr) << message();
        EXPECT_LE(std::abs(*result - expected.number), expected.tolerance)
            << message() << "; must be " << expected.number << " within " << expected.tolerance;
    } else if (expected.kind == Expected::Kind::text) {
        std::string const* const result = std::get_if<std::string>(&outcome);
        ASSERT_NE(result, nullptr) << message();
        EXPECT_EQ(*result, expected.text) << message();
    } else if (expected.kind == Expected::Kind::error) {
        Failure const* const why = std::get_if<Failure>(&outcome);
        ASSERT_NE(why, nullptr) << message();
        EXPECT_EQ(error_of(why->reason), expected.error) << message();
    } else {
        FAIL() << "No comparison for what is expected of " << message();
    }
}

} // namespace hearthcell::tests
