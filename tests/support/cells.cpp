#include "support/cells.hpp"

#include <cmath>

namespace hearthcell::tests {

Value value_of_cell(Cell const& cell) {
    switch (cell.kind) {
    case CellKind::number:
        return cell.number;
    case CellKind::text:
        return std::string(cell.text);
    case CellKind::column: {
        Block block{cell.column.size(), 1, {cell.column.begin(), cell.column.end()}, {}};
        for (double& reading : block.numbers)
            reading = std::isnan(reading) ? absent : reading;
        return block;
    }
    case CellKind::omitted:
        break;
    }
    return {};
}

std::vector<Value> values_of(std::span<Cell const> cells) {
    std::vector<Value> values;
    for (Cell const& cell : cells)
        values.push_back(value_of_cell(cell));
    return values;
}

} // namespace hearthcell::tests
