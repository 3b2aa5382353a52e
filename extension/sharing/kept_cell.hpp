#pragma once
// What stays of a cell when its formula goes.

#include <com/sun/star/sheet/FormulaToken.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/uno/Sequence.hxx>
#include <rtl/ustring.hxx>

namespace hearthcell::sharing {

struct KeptCell {
    sal_Int32 column = 0, row = 0;
    com::sun::star::uno::Any value = {}; // a double, a text, or void for an error
    sal_Int32 error = 0;
    rtl::OUString error_shown = {};
    rtl::OUString formula = {}; // as the user sees it; known only where a comment tells it
    sal_Int32 speaks_for = 1;   // cells down from this one whose formula its comment tells; 0: another speaks for it

    /// Ready for the cell's comment: the formula, the error where the cell shows another one now, the cells that were
    /// filled with it, the edition.
    [[nodiscard]] rtl::OUString note(rtl::OUString const& edition) const;
};

/// value: what XCellRangeData says of the cell.
KeptCell read_cell(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet, sal_Int32 column,
                   sal_Int32 row, com::sun::star::uno::Any const& value);

/// The formula of the cell as the user sees it.
rtl::OUString read_formula(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet,
                           KeptCell const& cell);

/// LibreOffice takes some 2 ms to make and save a comment: where there are more formulas than this, those that were
/// filled down share one.
inline constexpr sal_Int32 most_comments_of_their_own = 1000;

/// Lets the first cell of each run down a column, in which one formula was filled down, speak for the others.
class SharedComments {
public:
    explicit SharedComments(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet);

    /// The next cell of the sheet: down one column after the other. It must stay where it is.
    void add(KeptCell& cell);

private:
    using Tokens = com::sun::star::uno::Sequence<com::sun::star::sheet::FormulaToken>;

    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> sheet_;
    KeptCell* first_ = nullptr; // of the run
    Tokens tokens_;             // of its formula
};

} // namespace hearthcell::sharing
