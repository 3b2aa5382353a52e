#pragma once

#include "extension/sharing/names.hpp"
#include "extension/sharing/spare_cell.hpp"

#include <com/sun/star/sheet/XFormulaParser.hpp>

namespace hearthcell::sharing {

/// Puts values in the place of our functions' calls, in formulas that stand outside of cells.
class ValuesForCalls {
public:
    explicit ValuesForCalls(
        com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

    /// A formula, in English and without =, with a value for each call that gives one and the same value in every cell
    /// of the document, or of one sheet. What depends on the cell (A1, ROW()) stays.
    rtl::OUString in_document(rtl::OUString const& formula);
    rtl::OUString in_sheet(std::size_t sheet, rtl::OUString const& formula);

    /// What is tried out on a sheet is tried in here.
    SpareCell& spare_cell(std::size_t sheet);

private:
    rtl::OUString replace(rtl::OUString const& formula, std::size_t sheet, sal_Int32 varying_references);
    bool varies(rtl::OUString const& formula, sal_Int32 varying_references, Names const& varying);

    std::vector<com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet>> const sheets;
    std::size_t first_writable = 0;
    com::sun::star::uno::Reference<com::sun::star::sheet::XFormulaParser> parser;
    Names varying_names;
    std::map<std::size_t, SpareCell> spare_cells; // made where one is needed
};

} // namespace hearthcell::sharing
