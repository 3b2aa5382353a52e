#pragma once
// Values as formulas write them, in the English of XCell::setFormula.

#include <rtl/ustring.hxx>

#include <optional>

namespace hearthcell::sharing {

rtl::OUString number_constant(double number);
rtl::OUString text_constant(rtl::OUString const& text);

/// Nothing for errors, such as Err:504, that are LibreOffice's own and would not be understood elsewhere.
std::optional<rtl::OUString> error_constant(sal_Int32 code);

} // namespace hearthcell::sharing
