#pragma once
// States of a document that are changed for as long as an object lives.

#include <com/sun/star/document/XUndoManager.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <memory>

namespace hearthcell::sharing {

/// Neither recalculates at each change nor remembers the changes for undo.
class QuietDocument {
public:
    explicit QuietDocument(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);
    ~QuietDocument();
    QuietDocument(QuietDocument const&) = delete;
    QuietDocument& operator=(QuietDocument const&) = delete;

private:
    com::sun::star::uno::Reference<com::sun::star::sheet::XCalculatable> calculation;
    com::sun::star::uno::Reference<com::sun::star::document::XUndoManager> undo;
    bool calculates_by_itself;
};

/// Lifts the protection of a sheet that has no password, and puts it back.
class UnprotectedSheet {
public:
    explicit UnprotectedSheet(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet);
    ~UnprotectedSheet();
    UnprotectedSheet(UnprotectedSheet const&) = delete;
    UnprotectedSheet& operator=(UnprotectedSheet const&) = delete;

    /// Not where a password keeps it locked.
    [[nodiscard]] bool is_writable() const { return writable; }

private:
    com::sun::star::uno::Reference<com::sun::star::util::XProtectable> protection;
    bool was_protected;
    bool writable = true;
};

} // namespace hearthcell::sharing
