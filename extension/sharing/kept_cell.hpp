#pragma once
// What stays of a cell when its formula goes.

#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <rtl/ustring.hxx>

namespace hearthcell::sharing {

struct KeptCell {
    sal_Int32 column = 0, row = 0;
    com::sun::star::uno::Any value = {}; // a double, a text, or void for an error
    sal_Int32 error = 0;
    rtl::OUString error_shown = {};
    rtl::OUString formula = {}; // as the user sees it
    sal_Int32 speaks_for = 1; // cells down from this one whose formula its comment tells; 0: another cell speaks for it

    /// Ready for the cell's comment: the formula, the error where the cell shows another one now, the cells that were
    /// filled with it, the edition.
    [[nodiscard]] rtl::OUString note(rtl::OUString const& edition) const;
};

/// value: what XCellRangeData says of the cell.
KeptCell read_cell(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet, sal_Int32 column,
                   sal_Int32 row, com::sun::star::uno::Any const& value);

/// Makes the cell hold and show without a formula of ours what it held and showed with it.
///
/// An error stays an error, as a constant (=#NUM!): as a text it would be skipped by a sum or an average over the
/// column, which would turn an error into a wrong number.
void write_cell(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet, KeptCell const& kept);

} // namespace hearthcell::sharing
