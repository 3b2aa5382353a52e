#include "extension/sharing/replacement.hpp"

#include "extension/sharing/constants.hpp"

#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XSheetAnnotationsSupplier.hpp>
#include <com/sun/star/sheet/XSheetOperation.hpp>
#include <com/sun/star/text/XSimpleText.hpp>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::sharing {
namespace {

constexpr std::size_t longest_piece = 1000;

OUString text_of(KeptCell const& cell) {
    OUString words;
    cell.value >>= words;
    return words;
}

bool is_number(KeptCell const& cell) {
    return cell.value.getValueTypeClass() == css::uno::TypeClass_DOUBLE;
}

/// What no plain value can be. An error stays an error, as a constant (=#NUM!): as a text it would be skipped by a sum
/// or an average over the column, which would turn an error into a wrong number. And an empty cell would count as 0
/// where a text of no length is an error.
OUString constant_formula(KeptCell const& cell) {
    if (cell.value.hasValue())
        return "=\"\"";
    return "=" + error_constant(cell.error).value_or("#VALUE!");
}

bool needs_formula(KeptCell const& cell) {
    return !is_number(cell) && text_of(cell).isEmpty();
}

void write_alone(Reference<css::table::XCell> const& to, KeptCell const& cell) {
    double number = 0;
    if (needs_formula(cell))
        to->setFormula(constant_formula(cell));
    else if (cell.value >>= number)
        to->setValue(number); // shown as before: Calc has given the cell the number format of the formula's result
    else
        Reference<css::text::XTextRange>(to, UNO_QUERY_THROW)->setString(text_of(cell)); // also "12" stays a text
}

template <class Value, class ValueOf>
Sequence<Sequence<Value>> column_of(KeptCell const* cells, std::size_t count, ValueOf value_of) {
    Sequence<Sequence<Value>> rows(static_cast<sal_Int32>(count));
    Sequence<Value>* row = rows.getArray();
    for (std::size_t index = 0; index < count; ++index) {
        Value const value = value_of(cells[index]);
        row[index] = {&value, 1};
    }
    return rows;
}

} // namespace

Replacement::Replacement(Reference<css::sheet::XSpreadsheet> const& of_document, SheetFormulas const& to_replace)
    : sheet_(of_document), formulas_(to_replace),
      comments_(Reference<css::sheet::XSheetAnnotationsSupplier>(sheet_, UNO_QUERY_THROW)->getAnnotations()) {
    for (sal_Int32 index = 0; index < comments_->getCount(); ++index) {
        Reference<css::sheet::XSheetAnnotation> const comment(comments_->getByIndex(index), UNO_QUERY_THROW);
        auto const position = comment->getPosition();
        own_comments_[{position.Column, position.Row}] = comment;
    }
    for (std::size_t cell = 0; cell < formulas_.cells.size(); ++cell) {
        bool const below = goes_on(cell);
        if (below)
            ++runs_.back().count;
        else
            runs_.push_back({cell, 1, Way::alone});
        Way const way = way_of(formulas_.cells[cell]);
        if (below && way != Way::alone && way == pieces_.back().way && pieces_.back().count < longest_piece)
            ++pieces_.back().count;
        else
            pieces_.push_back({cell, 1, way});
    }
}

/// Whether a cell stands right below the one before it.
bool Replacement::goes_on(std::size_t cell) const {
    auto const& cells = formulas_.cells;
    return cell > 0 && cells[cell].column == cells[cell - 1].column && cells[cell].row == cells[cell - 1].row + 1;
}

Replacement::Way Replacement::way_of(KeptCell const& cell) const {
    // A block that is written takes the comments of its cells away, and makes one line of a text of several.
    if (own_comments_.count({cell.column, cell.row}) > 0 || text_of(cell).indexOf('\n') >= 0)
        return Way::alone;
    return needs_formula(cell) ? Way::formulas : Way::values;
}

Reference<css::table::XCellRange> Replacement::range(Piece const& piece) const {
    KeptCell const& first = formulas_.cells[piece.first];
    return sheet_->getCellRangeByPosition(first.column, first.row, first.column,
                                          first.row + sal_Int32(piece.count) - 1);
}

void Replacement::clear(std::size_t from, std::size_t to) const {
    auto const clear = [](Reference<css::table::XCellRange> const& cells) {
        Reference<css::sheet::XSheetOperation>(cells, UNO_QUERY_THROW)
            ->clearContents(css::sheet::CellFlags::FORMULA); // formats and comments stay
    };
    // A part of an array formula's block cannot be cleared: the block goes as a whole.
    if (from == 0)
        for (css::table::CellRangeAddress const& block : formulas_.blocks)
            clear(sheet_->getCellRangeByPosition(block.StartColumn, block.StartRow, block.EndColumn, block.EndRow));
    for (std::size_t run = from; run < to; ++run)
        clear(range(runs_[run]));
}

void Replacement::write(std::size_t from, std::size_t to) const {
    for (std::size_t place = from; place < to; ++place) {
        Piece const& piece = pieces_[place];
        KeptCell const* const cells = &formulas_.cells[piece.first];
        if (piece.way == Way::alone)
            write_alone(sheet_->getCellByPosition(cells->column, cells->row), *cells);
        else if (piece.way == Way::values)
            Reference<css::sheet::XCellRangeData>(range(piece), UNO_QUERY_THROW)
                ->setDataArray(column_of<Any>(cells, piece.count, [](KeptCell const& cell) { return cell.value; }));
        else
            Reference<css::sheet::XCellRangeFormula>(range(piece), UNO_QUERY_THROW)
                ->setFormulaArray(column_of<OUString>(cells, piece.count, constant_formula));
    }
}

void Replacement::work_out(std::size_t from, std::size_t to) const {
    for (std::size_t place = from; place < to; ++place)
        if (needs_formula(formulas_.cells[pieces_[place].first]))
            Reference<css::sheet::XCellRangeData>(range(pieces_[place]), UNO_QUERY_THROW)->getDataArray();
}

void Replacement::comment(std::size_t from, std::size_t to, OUString const& edition) const {
    auto const sheet = Reference<css::sheet::XCellRangeAddressable>(sheet_, UNO_QUERY_THROW)->getRangeAddress().Sheet;
    for (std::size_t place = from; place < to; ++place) {
        KeptCell const& cell = formulas_.cells[place];
        if (cell.speaks_for == 0)
            continue;
        auto const there = own_comments_.find({cell.column, cell.row});
        if (there == own_comments_.end()) {
            comments_->insertNew({sheet, cell.column, cell.row}, cell.note(edition));
        } else {
            Reference<css::text::XSimpleText> const words(there->second, UNO_QUERY_THROW);
            words->setString(words->getString() + "\n\n" + cell.note(edition));
        }
    }
}

} // namespace hearthcell::sharing
