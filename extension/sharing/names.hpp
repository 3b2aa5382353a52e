#pragma once
// The sheets of a document and the names that it defines.

#include "extension/formulas/names.hpp"

#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <string>
#include <vector>

namespace hearthcell::sharing {

std::vector<com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet>>
sheets_of(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

/// "Sheet1"
std::string name_of(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet);

/// Of the whole document or of a sheet.
std::vector<com::sun::star::uno::Reference<com::sun::star::sheet::XNamedRange>>
names_of(com::sun::star::uno::Reference<com::sun::star::uno::XInterface> const& document_or_sheet);

/// Of the document and of all its sheets.
std::vector<formulas::Definition>
definitions_in(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

} // namespace hearthcell::sharing
