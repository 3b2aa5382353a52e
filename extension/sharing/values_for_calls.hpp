#pragma once
// Values in the place of calls within a formula.

#include "extension/formulas/names.hpp"
#include "extension/sharing/spare_cell.hpp"
#include "extension/sharing/writable.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <map>
#include <optional>

namespace hearthcell::sharing {

/// In which way a formula's value is not the same everywhere.
enum class Varies { from_cell_to_cell, from_sheet_to_sheet };

/// Puts values in the place of our functions' calls, in formulas that stand outside of cells.
class ValuesForCalls {
public:
    explicit ValuesForCalls(
        com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);
    ValuesForCalls(ValuesForCalls const&) = delete; // one part of it refers to another
    ValuesForCalls& operator=(ValuesForCalls const&) = delete;

    /// A formula, in English and without =, with a value for each call that gives one and the same value in every cell
    /// of the document, or of one sheet. What depends on the cell (A1, ROW()) stays. `seen_from`: the sheet whose names
    /// the formula may use; empty: those of the document only.
    rtl::OUString in_document(rtl::OUString const& formula, std::string const& seen_from);
    rtl::OUString in_sheet(std::size_t sheet, rtl::OUString const& formula);

    /// What is tried out on a sheet is tried in here. From the first one on the document calculates by itself.
    SpareCell& spare_cell(std::size_t sheet);

private:
    rtl::OUString replace(rtl::OUString const& formula, std::size_t sheet, std::string const& seen_from,
                          std::set<Varies> const& may_vary);

    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const document_;
    std::vector<com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet>> const sheets_;
    std::size_t first_writable_ = 0;
    formulas::Names names_;
    formulas::Followed<Varies> varies_;
    std::optional<Calculation> by_itself_;
    std::map<std::size_t, SpareCell> spare_cells_; // made where one is needed
};

} // namespace hearthcell::sharing
