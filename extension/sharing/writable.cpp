#include "extension/sharing/writable.hpp"

#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/lang/IllegalArgumentException.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::sharing {

QuietDocument::QuietDocument(Reference<css::sheet::XSpreadsheetDocument> const& document)
    : calculation(document, UNO_QUERY_THROW),
      undo(Reference<css::document::XUndoManagerSupplier>(document, UNO_QUERY_THROW)->getUndoManager()),
      calculates_by_itself(calculation->isAutomaticCalculationEnabled()) {
    undo->lock();
    calculation->enableAutomaticCalculation(false);
}

QuietDocument::~QuietDocument() {
    try {
        calculation->enableAutomaticCalculation(calculates_by_itself);
        undo->unlock();
    } catch (css::uno::Exception const&) { // the document is gone
    }
}

UnprotectedSheet::UnprotectedSheet(Reference<css::sheet::XSpreadsheet> const& sheet)
    : protection(sheet, UNO_QUERY_THROW), was_protected(protection->isProtected()) {
    if (!was_protected)
        return;
    try {
        protection->unprotect({});
    } catch (css::lang::IllegalArgumentException const&) { // the password is another than none
    }
    writable = !protection->isProtected();
}

UnprotectedSheet::~UnprotectedSheet() {
    try {
        if (was_protected && writable)
            protection->protect({});
    } catch (css::uno::Exception const&) { // the document is gone
    }
}

} // namespace hearthcell::sharing
