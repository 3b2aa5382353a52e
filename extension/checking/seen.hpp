#pragma once
// Remarks that were seen and are to be left out: kept in a document's own properties.

#include "extension/checking/result.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

namespace hearthcell::checking {

Seen seen_in(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

/// Adds some. The document has to be saved for them to be remembered.
void keep_seen(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document,
               Seen const& more);

} // namespace hearthcell::checking
