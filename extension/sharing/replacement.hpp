#pragma once
// How a sheet's formulas become values and comments, part by part.

#include "extension/sharing/sheet_formulas.hpp"

#include <com/sun/star/sheet/XSheetAnnotation.hpp>
#include <com/sun/star/sheet/XSheetAnnotations.hpp>

#include <map>
#include <utility>

namespace hearthcell::sharing {

/// Puts what they show in the place of a sheet's formulas, and the formulas into comments: first clear all, then write
/// all. Each in parts, from one number up to another, so that others get their turn in between.
///
/// A formula that was filled down is one thing to Calc: taken out cell by cell, it is split in two each time, which
/// takes longer the longer the column is. So a run of formulas goes as a whole, and values come in whole blocks.
class Replacement {
public:
    /// formulas: must stay where they are.
    Replacement(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet,
                SheetFormulas const& formulas);

    [[nodiscard]] std::size_t to_clear() const { return runs_.size(); }
    void clear(std::size_t from, std::size_t to) const;

    [[nodiscard]] std::size_t to_write() const { return pieces_.size(); }
    void write(std::size_t from, std::size_t to) const;
    /// Of what is written, the constant formulas: as long as nobody asks for what they give, it is stored as 0.
    void work_out(std::size_t from, std::size_t to) const;

    [[nodiscard]] std::size_t to_comment() const { return formulas_.cells.size(); }
    void comment(std::size_t from, std::size_t to, rtl::OUString const& edition) const;

private:
    /// How cells are written.
    enum class Way { values, formulas, alone };
    /// Cells one below the other.
    struct Piece {
        std::size_t first, count;
        Way way;
    };
    using Place = std::pair<sal_Int32, sal_Int32>; // column, row

    [[nodiscard]] bool goes_on(std::size_t cell) const;
    [[nodiscard]] Way way_of(KeptCell const& cell) const;
    [[nodiscard]] com::sun::star::uno::Reference<com::sun::star::table::XCellRange> range(Piece const& piece) const;

    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const sheet_;
    SheetFormulas const& formulas_;
    com::sun::star::uno::Reference<com::sun::star::sheet::XSheetAnnotations> const comments_;
    std::map<Place, com::sun::star::uno::Reference<com::sun::star::sheet::XSheetAnnotation>> own_comments_;
    std::vector<Piece> runs_, pieces_;
};

} // namespace hearthcell::sharing
