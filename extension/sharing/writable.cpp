#include "extension/sharing/writable.hpp"

#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/lang/IllegalArgumentException.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::sharing {

NoUndo::NoUndo(Reference<css::sheet::XSpreadsheetDocument> const& document)
    : undo_(Reference<css::document::XUndoManagerSupplier>(document, UNO_QUERY_THROW)->getUndoManager()) {
    undo_->lock();
}

NoUndo::~NoUndo() {
    try {
        undo_->unlock();
    } catch (css::uno::Exception const&) { // the document is gone
    }
}

Calculation::Calculation(Reference<css::sheet::XSpreadsheetDocument> const& of_document, bool automatic)
    : document_(of_document, UNO_QUERY_THROW), before_(document_->isAutomaticCalculationEnabled()) {
    document_->enableAutomaticCalculation(automatic);
}

Calculation::~Calculation() {
    try {
        document_->enableAutomaticCalculation(before_);
    } catch (css::uno::Exception const&) { // the document is gone
    }
}

UnprotectedSheet::UnprotectedSheet(Reference<css::sheet::XSpreadsheet> const& sheet)
    : protection_(sheet, UNO_QUERY_THROW), was_protected_(protection_->isProtected()) {
    if (!was_protected_)
        return;
    try {
        protection_->unprotect({});
    } catch (css::lang::IllegalArgumentException const&) { // the password is another than none
    }
    writable_ = !protection_->isProtected();
}

UnprotectedSheet::~UnprotectedSheet() {
    try {
        if (was_protected_ && writable_)
            protection_->protect({});
    } catch (css::uno::Exception const&) { // the document is gone
    }
}

} // namespace hearthcell::sharing
