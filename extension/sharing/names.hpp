#pragma once
// The names that a document defines.

#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <rtl/ustring.hxx>

#include <functional>
#include <map>
#include <set>
#include <vector>

namespace hearthcell::sharing {

/// In lower case.
using Names = std::set<rtl::OUString>;
using Definitions = std::map<rtl::OUString, rtl::OUString>;

std::vector<com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet>>
sheets_of(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

/// Of the whole document or of a sheet.
std::vector<com::sun::star::uno::Reference<com::sun::star::sheet::XNamedRange>>
names_of(com::sun::star::uno::Reference<com::sun::star::uno::XInterface> const& document_or_sheet);

/// Of the document and of all its sheets. Two sheets may each have a name of their own that is spelled the same: their
/// definitions stand side by side.
Definitions definitions_in(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

/// The names whose definition has a property, be it because it uses other names that have it.
Names names_that(Definitions const& definitions,
                 std::function<bool(rtl::OUString const& definition, Names const& known)> const& have_it);

/// A name that belongs to a sheet can stand behind the sheet's name and a dot.
bool is_one_of(Names const& names, rtl::OUString const& word);

} // namespace hearthcell::sharing
