#include "extension/sharing/writable.hpp"

#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/lang/IllegalArgumentException.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::sharing {

NoUndo::NoUndo(Reference<css::sheet::XSpreadsheetDocument> const& document)
    : undo(Reference<css::document::XUndoManagerSupplier>(document, UNO_QUERY_THROW)->getUndoManager()) {
    undo->lock();
}

NoUndo::~NoUndo() {
    try {
        undo->unlock();
    } catch (css::uno::Exception const&) { // the document is gone
    }
}

Calculation::Calculation(Reference<css::sheet::XSpreadsheetDocument> const& of_document, bool automatic)
    : document(of_document, UNO_QUERY_THROW), before(document->isAutomaticCalculationEnabled()) {
    document->enableAutomaticCalculation(automatic);
}

Calculation::~Calculation() {
    try {
        document->enableAutomaticCalculation(before);
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
