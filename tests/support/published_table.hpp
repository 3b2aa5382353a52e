#pragma once
// Tables of published values: inputs, the value that must come out, how exact the source is, and where it stands.

#include "functions/catalogue/catalogue.hpp"

#include <span>
#include <vector>

namespace hearthcell::tests {

/// How exact a source is: half a unit of its last printed digit, with a hair for the rounding of our own arithmetic.
constexpr double half(double last_digit) {
    return last_digit * 0.5000001;
}

struct Row {
    std::string_view function;
    List<Cell, most_arguments> arguments;
    Expected expected;
    std::string_view from; ///< where the value stands, and how it was got
};

/// Rows that are checked together. Every table is known to all_tables(), so that a test can count what is covered.
class PublishedTable {
public:
    PublishedTable(std::initializer_list<Row> table_rows);
    /// Calls every row's function through the catalogue and compares.
    void check() const;
    [[nodiscard]] std::vector<Row> const& rows() const { return values; }

private:
    std::vector<Row> values;
};

std::vector<PublishedTable const*>& all_tables();

/// Compares what a call gives with what it must give; the message names both.
void expect_outcome(std::string_view function, std::span<Cell const> arguments, Expected const& expected,
                    std::string_view from);

} // namespace hearthcell::tests
