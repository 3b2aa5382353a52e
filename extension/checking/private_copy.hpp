#pragma once
// A copy of a document that holds nothing but values, and a place beside them where formulas are tried.

#include "extension/checking/contents.hpp"

#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <memory>

namespace hearthcell::checking {

/// What a formula gives, as a text; nothing for an error.
using Answer = std::optional<std::string>;

/// A formula, and the sheet on which it is tried. Written as the user's formulas are, so that A1 means the same cell.
struct Trial {
    int sheet = 0;
    std::string formula;          // without =
    bool as_array = false;        // what is worked out for each cell of a block is worked out for all of them
    std::optional<Place> in_cell; // only there it means what it means
};

/// Formulas that are tried at once, at the most.
inline constexpr std::size_t most_at_once = 500;

/// Made of values only, it holds no formula, no link and no macro of the document: nothing is fetched for it and
/// nothing in it changes by itself. Out of sight, closed with this object.
class PrivateCopy {
public:
    PrivateCopy(com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> const& context,
                Contents const& contents);
    ~PrivateCopy();
    PrivateCopy(PrivateCopy const&) = delete;
    PrivateCopy& operator=(PrivateCopy const&) = delete;

    /// Writes a number of cells; false when all are there.
    bool go_on();
    [[nodiscard]] double done() const;

    /// What formulas of one sheet give. When all cells are there.
    std::vector<Answer> answers(int sheet, std::vector<std::string> const& formulas);
    /// What one does that needs more than a place beside the cells.
    Answer answer(Trial const& trial);
    /// A formula as the user sees it, as the others are written. Nothing where it cannot be read.
    std::optional<std::string> in_english(int sheet, std::string const& formula);

private:
    class Implementation;
    std::unique_ptr<Implementation> implementation_;
};

} // namespace hearthcell::checking
