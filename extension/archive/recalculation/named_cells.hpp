#pragma once
// What a name or address of the command line means in an open workbook: "efficiency", "Sheet.B4", "Sheet.A5:P14".

#include "extension/archive/files/value.hpp"
#include "extension/office/document.hpp"

#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/table/XCellRange.hpp>

#include <optional>
#include <string>

namespace hearthcell::archive {

/// A name stands for cells, or for a constant or formula of its own.
struct Target {
    com::sun::star::uno::Reference<com::sun::star::table::XCellRange> cells;
    com::sun::star::uno::Reference<com::sun::star::sheet::XNamedRange> constant;
    formulas::Range place = {};

    [[nodiscard]] bool is_one_cell() const { return cells.is() && place.first == place.last; }
};

/// Nothing where the workbook has no such name or sheet. Of whole columns and rows, the part that the sheet uses.
std::optional<Target> target_of(office::Document const& workbook, std::string const& name);

} // namespace hearthcell::archive
