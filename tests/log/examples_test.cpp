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

/// Of a block one element.
Outcome element_of(Outcome const& outcome, std::size_t place) {
    Block const* block = std::get_if<Block>(&outcome);
    if (block == nullptr)
        return outcome;
    for (Block::Text const& text : block->texts)
        if (text.place == place)
            return text.text;
    return block->numbers.at(place);
}

void expect(Outcome const& result, Expected const& expected, std::string const& what) {
    switch (expected.kind) {
    case Expected::Kind::error:
        EXPECT_NE(reason_of(result), Reason::none) << what;
        EXPECT_EQ(error_of(reason_of(result)), expected.error) << what;
        break;
    case Expected::Kind::text:
        EXPECT_EQ(std::get<std::string>(result), expected.text) << what;
        break;
    case Expected::Kind::number:
        EXPECT_NEAR(number_of(result), expected.number, expected.tolerance) << what;
        break;
    case Expected::Kind::block:
        ADD_FAILURE() << "a block within a block";
    }
}

} // namespace

TEST(TemperatureLog, GivesWhatItsExamplesSay) {
    int checked = 0;
    for (Function const& function : temperature_log()) {
        for (Example const& example : function.examples) {
            std::vector<Value> values;
            for (Cell const& cell : example.arguments)
                values.push_back(value_of(cell));
            Outcome const result = call(function, values);
            std::string const what = std::string(function.name) + ": " + std::string(example.from);
            Expected const& expected = example.expected;
            if (expected.kind != Expected::Kind::block)
                expect(element_of(result, 0), expected, what);
            else
                for (std::size_t i = 0; i < expected.rows * expected.columns; ++i)
                    expect(element_of(result, i), expected.elements[i], what);
            ++checked;
        }
    }
    EXPECT_GT(checked, 25);
}

} // namespace hearthcell::tests
