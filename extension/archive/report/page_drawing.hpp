#pragma once
// The parts that pages are drawn of: blocks of cells, tables, charts.

#include "extension/archive/report/page.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <array>

namespace hearthcell::archive {

// Dark enough to be told apart on paper without colours, too.
inline constexpr sal_Int32 ink = 0x1E2A32, heading_ground = 0x20454E, band = 0xEFF3F1, faint = 0x5C6B70,
                           white = 0xFFFFFF;
inline constexpr sal_Int32 colour_lower = 0x2B6C99, colour_higher = 0xE8A13A;

/// A block of cells of a sheet.
struct Block {
    sal_Int32 column, row, columns, rows; // the first two from 0
};
com::sun::star::uno::Reference<com::sun::star::table::XCellRange>
cells(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet, Block const& block);

void set(com::sun::star::uno::Reference<com::sun::star::uno::XInterface> const& object, char const* property,
         com::sun::star::uno::Any const& value);

/// Number formats of a document, by what a column shows.
class Formats {
public:
    explicit Formats(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);
    [[nodiscard]] sal_Int32 of(Look look) const { return keys_.at(std::size_t(look)); }

private:
    std::array<sal_Int32, 5> keys_{};
};

/// A table with its heading; gives its block, with the heading.
Block draw_table(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet,
                 com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document,
                 PageTable const& table, sal_Int32 column, sal_Int32 row, Formats const& formats);

/// A chart over columns of a table's block, at a place in 1/100 mm.
struct Frame {
    sal_Int32 left, top, width, height;
};
void draw_chart(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet,
                PageChart const& chart, Block const& data, Frame const& frame, std::size_t number,
                Formats const& formats);

} // namespace hearthcell::archive
