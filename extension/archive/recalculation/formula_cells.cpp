#include "extension/archive/recalculation/formula_cells.hpp"

#include "extension/office/text.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/text/XTextRange.hpp>

#include <algorithm>
#include <cstdint>
#include <optional>
#include <vector>

namespace css = com::sun::star;
using css::table::CellRangeAddress;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::narrow;

namespace hearthcell::archive {
namespace {

// Each question to the office takes some 50 µs however much it brings, so that cells are read in blocks; and a block
// must not be so large that two processes hold it in memory at once.
constexpr std::int64_t most_cells_at_once = 50'000;
constexpr std::int64_t allowed_waste = 4; // cells read for one that is wanted

std::int64_t cells_in(CellRangeAddress const& range) {
    return (std::int64_t{1} + range.EndRow - range.StartRow) * (std::int64_t{1} + range.EndColumn - range.StartColumn);
}

CellRangeAddress around(CellRangeAddress a, CellRangeAddress const& b) {
    a.StartRow = std::min(a.StartRow, b.StartRow);
    a.EndRow = std::max(a.EndRow, b.EndRow);
    a.StartColumn = std::min(a.StartColumn, b.StartColumn);
    a.EndColumn = std::max(a.EndColumn, b.EndColumn);
    return a;
}

/// What is read in one go, and the parts of it that hold formulas.
struct Block {
    CellRangeAddress bounds;
    std::vector<CellRangeAddress> parts;
};

std::vector<CellRangeAddress> cut(CellRangeAddress const& range) {
    std::vector<CellRangeAddress> pieces;
    auto const width = 1 + range.EndColumn - range.StartColumn;
    auto const rows = static_cast<sal_Int32>(std::max<std::int64_t>(1, most_cells_at_once / width));
    for (sal_Int32 row = range.StartRow; row <= range.EndRow; row += rows) {
        CellRangeAddress piece = range;
        piece.StartRow = row;
        piece.EndRow = std::min(row + rows - 1, range.EndRow);
        pieces.push_back(piece);
    }
    return pieces;
}

std::vector<Block> blocks_of(Sequence<CellRangeAddress> const& ranges) {
    std::vector<CellRangeAddress> pieces;
    for (CellRangeAddress const& range : ranges)
        for (CellRangeAddress const& piece : cut(range))
            pieces.push_back(piece);
    std::sort(pieces.begin(), pieces.end(), [](CellRangeAddress const& a, CellRangeAddress const& b) {
        return std::pair(a.StartRow, a.StartColumn) < std::pair(b.StartRow, b.StartColumn);
    });
    std::vector<Block> blocks;
    std::int64_t wanted = 0;
    for (CellRangeAddress const& piece : pieces) {
        if (!blocks.empty()) {
            CellRangeAddress const both = around(blocks.back().bounds, piece);
            std::int64_t const size = cells_in(both);
            if (size <= most_cells_at_once && size <= allowed_waste * (wanted + cells_in(piece)) + 256) {
                blocks.back().bounds = both;
                blocks.back().parts.push_back(piece);
                wanted += cells_in(piece);
                continue;
            }
        }
        blocks.push_back({piece, {piece}});
        wanted = cells_in(piece);
    }
    return blocks;
}

class BlockReader {
public:
    BlockReader(Reference<css::table::XCellRange> const& sheet, CellRangeAddress const& bounds)
        : bounds_(bounds),
          cells_(sheet->getCellRangeByPosition(bounds.StartColumn, bounds.StartRow, bounds.EndColumn, bounds.EndRow)),
          data_(Reference<css::sheet::XCellRangeData>(cells_, UNO_QUERY_THROW)->getDataArray()) {}

    Value value(sal_Int32 row, sal_Int32 column) {
        Any const& content = data_[row - bounds_.StartRow][column - bounds_.StartColumn];
        double number = 0;
        rtl::OUString text;
        if (content >>= number)
            return number;
        if (content >>= text)
            return narrow(text);
        // A void stands for an error and does not say which.
        int const code = cells_->getCellByPosition(column - bounds_.StartColumn, row - bounds_.StartRow)->getError();
        return Fault{code, error_text(code)};
    }

    std::string const& formula(sal_Int32 row, sal_Int32 column) {
        if (!formulas_)
            formulas_ = Reference<css::sheet::XCellRangeFormula>(cells_, UNO_QUERY_THROW)->getFormulaArray();
        return formula_ = narrow(std::as_const(*formulas_)[row - bounds_.StartRow][column - bounds_.StartColumn]);
    }

private:
    CellRangeAddress bounds_;
    Reference<css::table::XCellRange> cells_;
    Sequence<Sequence<Any>> const data_;
    std::optional<Sequence<Sequence<rtl::OUString>>> formulas_;
    std::string formula_;
};

} // namespace

Value value_in(Reference<css::table::XCell> const& cell) {
    if (int const code = cell->getError(); code != 0)
        return Fault{code, error_text(code)};
    Sequence<Sequence<Any>> const data = Reference<css::sheet::XCellRangeData>(cell, UNO_QUERY_THROW)->getDataArray();
    double number = 0;
    rtl::OUString text;
    if (data[0][0] >>= number)
        return number;
    data[0][0] >>= text;
    return text.isEmpty() ? Value() : Value(narrow(text));
}

std::vector<std::vector<Value>> values_in(Reference<css::table::XCellRange> const& cells) {
    auto const size = Reference<css::sheet::XCellRangeAddressable>(cells, UNO_QUERY_THROW)->getRangeAddress();
    BlockReader reader(cells, {size.Sheet, 0, 0, size.EndColumn - size.StartColumn, size.EndRow - size.StartRow});
    std::vector<std::vector<Value>> rows;
    for (sal_Int32 row = 0; row <= size.EndRow - size.StartRow; ++row) {
        std::vector<Value>& values = rows.emplace_back();
        for (sal_Int32 column = 0; column <= size.EndColumn - size.StartColumn; ++column) {
            Value const value = reader.value(row, column);
            auto const* const text = std::get_if<std::string>(&value);
            values.push_back(text != nullptr && text->empty() ? Value() : value);
        }
    }
    return rows;
}

void visit_formulas(office::Document const& workbook,
                    std::function<void(Place const&, Value const&, Formula const&)> const& visit) {
    office::asking("reading the results", [&] {
        Reference<css::container::XIndexAccess> const sheets(workbook.model()->getSheets(), UNO_QUERY_THROW);
        for (sal_Int32 index = 0; index < sheets->getCount(); ++index) {
            Reference<css::table::XCellRange> const sheet(sheets->getByIndex(index), UNO_QUERY_THROW);
            auto const formulas = Reference<css::sheet::XCellRangesQuery>(sheet, UNO_QUERY_THROW)
                                      ->queryContentCells(css::sheet::CellFlags::FORMULA);
            for (Block const& block : blocks_of(formulas->getRangeAddresses())) {
                BlockReader reader(sheet, block.bounds);
                for (CellRangeAddress const& part : block.parts)
                    for (sal_Int32 row = part.StartRow; row <= part.EndRow; ++row)
                        for (sal_Int32 column = part.StartColumn; column <= part.EndColumn; ++column)
                            visit({static_cast<int>(index), row, column}, reader.value(row, column),
                                  [&]() -> std::string const& { return reader.formula(row, column); });
            }
        }
    });
}

} // namespace hearthcell::archive
