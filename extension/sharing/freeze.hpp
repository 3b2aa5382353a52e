#pragma once
// Makes an open workbook one for people without Hearthcell.

#include "extension/sharing/conditional_formats.hpp"
#include "extension/sharing/replacement.hpp"
#include "extension/sharing/writable.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <rtl/ustring.hxx>

#include <deque>
#include <functional>
#include <memory>
#include <vector>

namespace hearthcell::sharing {

struct Frozen {
    sal_Int32 formulas = 0;     // of cells, replaced
    sal_Int32 left = 0;         // names, conditional formats and validity rules that still need Hearthcell
    rtl::OUString locked_sheet; // protected by a password and with formulas of ours: then nothing was replaced
    Held held;
};

/// What all formulas that need us show at one moment, sheet by sheet. Changes nothing, and has nothing recalculated: a
/// formula that chance or the clock feeds shows something else after every recalculation.
std::vector<SheetFormulas>
read_shown(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

/// Replaces every formula that needs Hearthcell by what its cell shows, array formulas included, and keeps the formula,
/// as the user sees it, and the edition in the cell's comment, below what the comment says already. Other formulas
/// stay. In defined names, conditional formats and validity rules our functions' calls become values, where these are
/// the same for all cells.
///
/// For a copy that can be written to, part after part; one that is left off halfway is good for nothing. Works in the
/// office's own process as well as from another. UNO's exceptions pass.
class Freezing {
public:
    /// shown: what the cells are to hold, as the document shows it or the one that it is a copy of.
    Freezing(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document,
             std::vector<SheetFormulas> shown, rtl::OUString const& edition);
    ~Freezing();
    Freezing(Freezing const&) = delete;
    Freezing& operator=(Freezing const&) = delete;

    /// A part of the work, of some hundredths of a second; false when all is done.
    bool go_on();

    /// From 0 to 1.
    [[nodiscard]] double done() const;

    /// When all is done.
    [[nodiscard]] Frozen const& result() const { return result_; }

private:
    /// Work on many things of a kind, from one number up to another.
    struct Work {
        std::size_t count, at_once;
        std::function<void(std::size_t, std::size_t)> part;
        std::size_t done = 0;
    };

    void add(std::size_t count, std::size_t at_once, std::function<void(std::size_t, std::size_t)> const& part);
    bool lift_protection();
    void plan_reading();
    void plan_replacement();
    void finish();

    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const document_;
    std::vector<com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet>> const sheets_;
    std::vector<SheetFormulas> shown_;
    rtl::OUString const edition_;
    Frozen result_;

    NoUndo const no_undo_;
    std::vector<std::unique_ptr<UnprotectedSheet>> unprotected_;
    std::unique_ptr<Calculation> calculation_;
    std::deque<SharedComments> shared_;
    std::deque<Replacement> replacements_;

    std::deque<Work> works_; // first those that read, then those that replace
    bool reading_ = true;
    std::size_t parts_done_ = 0, parts_ = 0; // of reading, or of replacing
};

/// All at once, with what the document itself shows.
Frozen freeze(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document,
              rtl::OUString const& edition);

} // namespace hearthcell::sharing
