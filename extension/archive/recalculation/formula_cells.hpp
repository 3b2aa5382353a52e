#pragma once
// The formula cells of a workbook that is open in an office.

#include "extension/archive/files/value.hpp"
#include "extension/office/document.hpp"

#include <functional>
#include <string>

namespace hearthcell::archive {

/// Every formula cell of an open workbook, sheet by sheet, with its present result. The formula's text is fetched only
/// when it is asked for.
using Formula = std::function<std::string const&()>;
void visit_formulas(office::Document const& workbook,
                    std::function<void(Place const&, Value const&, Formula const&)> const& visit);

/// The result in one cell.
Value value_in(com::sun::star::uno::Reference<com::sun::star::table::XCell> const& cell);

} // namespace hearthcell::archive
