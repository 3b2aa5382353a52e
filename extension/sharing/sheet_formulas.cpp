#include "extension/sharing/sheet_formulas.hpp"

#include "extension/sharing/names.hpp"

#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetAnnotation.hpp>
#include <com/sun/star/sheet/XSheetAnnotations.hpp>
#include <com/sun/star/sheet/XSheetAnnotationsSupplier.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSheetOperation.hpp>
#include <com/sun/star/text/XSimpleText.hpp>

#include <map>
#include <set>
#include <utility>

namespace css = com::sun::star;
using css::table::CellRangeAddress;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::sharing {
namespace {

using Place = std::pair<sal_Int32, sal_Int32>; // column, row

template <class Interface, class From> Reference<Interface> as(Reference<From> const& object) {
    return Reference<Interface>(object, UNO_QUERY_THROW);
}

auto range_at(Reference<css::sheet::XSpreadsheet> const& sheet, CellRangeAddress const& at) {
    return sheet->getCellRangeByPosition(at.StartColumn, at.StartRow, at.EndColumn, at.EndRow);
}

/// The whole block of the array formula that a cell belongs to.
CellRangeAddress block_around(Reference<css::sheet::XSpreadsheet> const& sheet, Place place) {
    auto const cell = sheet->getCellRangeByPosition(place.first, place.second, place.first, place.second);
    auto const cursor = sheet->createCursorByRange(as<css::sheet::XSheetCellRange>(cell));
    cursor->collapseToCurrentArray();
    return as<css::sheet::XCellRangeAddressable>(cursor)->getRangeAddress();
}

class Reader {
public:
    Reader(Reference<css::sheet::XSpreadsheet> const& sheet, OurFormulas const& of_document)
        : ours_(of_document), name_(name_of(sheet)) {
        found.sheet = sheet;
    }

    /// An area full of formulas, ours and others.
    void read(CellRangeAddress const& area) {
        auto const range = range_at(found.sheet, area);
        auto const formulas = as<css::sheet::XCellRangeFormula>(range)->getFormulaArray();
        Sequence<Sequence<Any>> values; // asked for only where there is a formula of ours
        for (sal_Int32 row = 0; row < formulas.getLength(); ++row)
            for (sal_Int32 column = 0; column < formulas[row].getLength(); ++column) {
                OUString const& formula = formulas[row][column];
                if (!ours_.need_us(formula, name_))
                    continue;
                if (!values.hasElements())
                    values = as<css::sheet::XCellRangeData>(range)->getDataArray();
                keep({area.StartColumn + column, area.StartRow + row}, formula, values[row][column]);
            }
    }

    SheetFormulas found;

private:
    void keep(Place place, OUString const& formula, Any const& value) {
        found.cells.push_back(read_cell(found.sheet, place.first, place.second, value));
        if (!formula.startsWith("{") || in_a_block_.count(place) > 0)
            return;
        CellRangeAddress const block = block_around(found.sheet, place);
        found.blocks.push_back(block);
        for (sal_Int32 column = block.StartColumn; column <= block.EndColumn; ++column)
            for (sal_Int32 row = block.StartRow; row <= block.EndRow; ++row)
                in_a_block_.insert({column, row});
    }

    OurFormulas const& ours_;
    std::string const name_;
    std::set<Place> in_a_block_; // of an array formula that is known already
};

std::map<Place, Reference<css::sheet::XSheetAnnotation>>
comments_of(Reference<css::sheet::XSheetAnnotations> const& annotations) {
    std::map<Place, Reference<css::sheet::XSheetAnnotation>> comments;
    for (sal_Int32 index = 0; index < annotations->getCount(); ++index) {
        Reference<css::sheet::XSheetAnnotation> const comment(annotations->getByIndex(index), UNO_QUERY_THROW);
        auto const position = comment->getPosition();
        comments[{position.Column, position.Row}] = comment;
    }
    return comments;
}

void write_comments(SheetFormulas const& formulas, OUString const& edition) {
    auto const annotations = as<css::sheet::XSheetAnnotationsSupplier>(formulas.sheet)->getAnnotations();
    auto const comments = comments_of(annotations);
    auto const sheet = as<css::sheet::XCellRangeAddressable>(formulas.sheet)->getRangeAddress().Sheet;
    for (KeptCell const& cell : formulas.cells) {
        if (cell.speaks_for == 0)
            continue;
        auto const there = comments.find({cell.column, cell.row});
        if (there == comments.end()) {
            annotations->insertNew({sheet, cell.column, cell.row}, cell.note(edition));
        } else {
            auto const words = as<css::text::XSimpleText>(there->second);
            words->setString(words->getString() + "\n\n" + cell.note(edition));
        }
    }
}

} // namespace

SheetFormulas read_formulas(Reference<css::sheet::XSpreadsheet> const& sheet, OurFormulas const& ours) {
    Reader reader(sheet, ours);
    auto const areas =
        as<css::sheet::XCellRangesQuery>(sheet)->queryContentCells(css::sheet::CellFlags::FORMULA)->getRangeAddresses();
    for (CellRangeAddress const& area : areas)
        reader.read(area);
    return std::move(reader.found);
}

void replace_formulas(SheetFormulas const& formulas, OUString const& edition) {
    // A cell of an array formula cannot be written to: the block goes as a whole, and its comments and formats stay.
    for (CellRangeAddress const& block : formulas.blocks)
        as<css::sheet::XSheetOperation>(range_at(formulas.sheet, block))->clearContents(css::sheet::CellFlags::FORMULA);
    for (KeptCell const& cell : formulas.cells)
        write_cell(formulas.sheet, cell);
    write_comments(formulas, edition);
}

} // namespace hearthcell::sharing
