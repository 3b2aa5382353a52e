#pragma once
// A cell to try formulas in.

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <rtl/ustring.hxx>

#include <optional>

namespace hearthcell::sharing {

/// A cell outside the used part of a sheet, in which formulas are tried; empty again when this object goes.
/// On a sheet without room, or a protected one, nothing can be tried.
class SpareCell {
public:
    explicit SpareCell(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet);
    ~SpareCell();
    SpareCell(SpareCell const&) = delete;
    SpareCell& operator=(SpareCell const&) = delete;

    /// What a formula without its = gives, as formulas write it: 92.3 "a text" #NUM!. Nothing for a block of values, or
    /// where only LibreOffice knows the error.
    std::optional<rtl::OUString> value_of(rtl::OUString const& formula);

    /// As XCell::getFormula writes it, a formula that is written as the user sees it; both without the =.
    std::optional<rtl::OUString> in_english(rtl::OUString const& formula);

private:
    bool is_block(rtl::OUString const& formula);

    com::sun::star::uno::Reference<com::sun::star::table::XCell> cell_;
    com::sun::star::uno::Reference<com::sun::star::beans::XPropertySet> properties_;
    com::sun::star::uno::Any number_format_; // as it was, since a formula brings its own
};

} // namespace hearthcell::sharing
