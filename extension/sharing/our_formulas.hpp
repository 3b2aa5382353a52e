#pragma once
// Which formulas cannot be worked out where Hearthcell is missing.

#include "extension/formulas/names.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <rtl/ustring.hxx>

#include <string>

namespace hearthcell::sharing {

/// With the names that a document has at the time.
class OurFormulas {
public:
    explicit OurFormulas(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);
    OurFormulas(OurFormulas const&) = delete; // one part of it refers to another
    OurFormulas& operator=(OurFormulas const&) = delete;

    /// Whether a formula, as XCell::getFormula writes it, calls a function of ours, be it through names.
    /// MULTIPLE.OPERATIONS counts as well: it works other cells' formulas out anew with other inputs, and where these
    /// are values by then it would quietly give a wrong number.
    [[nodiscard]] bool need_us(rtl::OUString const& formula, std::string const& sheet) const;

private:
    formulas::Names names_;
    formulas::Followed<bool> calls_;
};

} // namespace hearthcell::sharing
