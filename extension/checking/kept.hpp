#pragma once
// Texts that a document keeps for us among its own properties, which its user sees and which are saved with it.

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <rtl/ustring.hxx>

namespace hearthcell::checking {

using KeepingDocument = com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument>;

rtl::OUString kept_text(KeepingDocument const& document, rtl::OUString const& name); ///< empty: it has none
void keep_text(KeepingDocument const& document, rtl::OUString const& name, rtl::OUString const& text);
void forget_text(KeepingDocument const& document, rtl::OUString const& name);

} // namespace hearthcell::checking
