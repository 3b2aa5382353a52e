#include "logs.hpp"

#include "functions/explain/reasons.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

Value value_of(Cell const& cell) {
    switch (cell.kind) {
    case Cell::Kind::number:
        return cell.number;
    case Cell::Kind::text:
        return std::string(cell.text);
    case Cell::Kind::column: {
        Block block{cell.column.size(), 1, {}, {}};
        for (double const reading : cell.column)
            block.numbers.push_back(std::isnan(reading) ? absent : reading);
        return block;
    }
    case Cell::Kind::omitted:
        break;
    }
    return {};
}

/// What a single cell shows: of a block its first element.
Outcome first_of(Outcome const& outcome) {
    Block const* block = std::get_if<Block>(&outcome);
    if (block == nullptr)
        return outcome;
    if (!block->texts.empty() && block->texts[0].place == 0)
        return block->texts[0].text;
    return block->numbers[0];
}

} // namespace

TEST(TemperatureLog, GivesWhatItsExamplesSay) {
    int checked = 0;
    for (Function const& function : temperature_log()) {
        for (Example const& example : function.examples) {
            std::vector<Value> values;
            for (Cell const& cell : example.arguments)
                values.push_back(value_of(cell));
            Outcome const result = first_of(call(function, values));
            if (example.expected.kind == Expected::Kind::error) {
                EXPECT_EQ(error_of(reason_of(result)), example.expected.error) << function.name << ": " << example.from;
                EXPECT_NE(reason_of(result), Reason::none) << function.name << ": " << example.from;
            } else if (example.expected.kind == Expected::Kind::text) {
                EXPECT_EQ(std::get<std::string>(result), example.expected.text) << example.from;
            } else {
                EXPECT_NEAR(number_of(result), example.expected.number, example.expected.tolerance)
                    << function.name << ": " << example.from;
            }
            ++checked;
        }
    }
    EXPECT_GT(checked, 25);
}

} // namespace hearthcell::tests
