#pragma once
// The old sheet that a document was started from, as the document remembers it.

#include "extension/menu/surroundings.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

namespace hearthcell::menu {

/// Where the original lay, and what its bytes were like. Data from a file: whoever opens the document sees it, and
/// nothing is done with it before somebody agreed.
struct Original {
    rtl::OUString path;   // empty: the document remembers none
    rtl::OUString digest; // of the file at that time

    /// Whether a file, wherever it is, is what the original was then; true where nothing is known.
    [[nodiscard]] bool is_still(rtl::OUString const& file) const;
};

/// In the document's own properties, which are saved with it; whether it counts as changed stays as it is.
void remember_original(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document,
                       rtl::OUString const& path);
/// For a copy that others get: a path says who somebody is and where the files lie.
void forget_original(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);
Original original_of(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

} // namespace hearthcell::menu
