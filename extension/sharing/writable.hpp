#pragma once
// States of a document that are changed for as long as an object lives.

#include <com/sun/star/document/XUndoManager.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <memory>

namespace hearthcell::sharing {

/// Changes are not remembered for undo.
class NoUndo {
public:
    explicit NoUndo(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);
    ~NoUndo();
    NoUndo(NoUndo const&) = delete;
    NoUndo& operator=(NoUndo const&) = delete;

private:
    com::sun::star::uno::Reference<com::sun::star::document::XUndoManager> undo_;
};

/// The document recalculates at each change, or does not.
class Calculation {
public:
    Calculation(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document,
                bool automatic);
    ~Calculation();
    Calculation(Calculation const&) = delete;
    Calculation& operator=(Calculation const&) = delete;

private:
    com::sun::star::uno::Reference<com::sun::star::sheet::XCalculatable> document_;
    bool before_;
};

/// Lifts the protection of a sheet that has no password, and puts it back.
class UnprotectedSheet {
public:
    explicit UnprotectedSheet(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet);
    ~UnprotectedSheet();
    UnprotectedSheet(UnprotectedSheet const&) = delete;
    UnprotectedSheet& operator=(UnprotectedSheet const&) = delete;

    /// Not where a password keeps it locked.
    [[nodiscard]] bool is_writable() const { return writable_; }

private:
    com::sun::star::uno::Reference<com::sun::star::util::XProtectable> protection_;
    bool was_protected_;
    bool writable_ = true;
};

} // namespace hearthcell::sharing
