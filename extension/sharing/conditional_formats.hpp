#pragma once
// A sheet's conditional formats, asked for in a way that ends no office.

#include <com/sun/star/sheet/XConditionalFormats.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>

#include <vector>

namespace hearthcell::sharing {

/// When the last reference to a sheet's conditional formats goes, LibreOffice takes them out of their document's
/// listeners without its lock: where the reference is another process's, in a thread of its own, beside whatever is
/// done to the document just then, and that can end the office. Another process keeps these until the document is
/// closed, as far as nothing is thrown before; what runs in the office's main thread need not.
using Held = std::vector<com::sun::star::uno::Reference<com::sun::star::uno::XInterface>>;

/// UNO's exceptions pass.
com::sun::star::uno::Reference<com::sun::star::sheet::XConditionalFormats>
conditional_formats_of(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet, Held& held);

} // namespace hearthcell::sharing
