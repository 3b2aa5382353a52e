#pragma once
// The formula cells of a workbook that is open in an office.

#include "extension/archive/files/value.hpp"
#include "extension/office/document.hpp"

#include <com/sun/star/table/XCellRange.hpp>

#include <functional>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// Every formula cell of an open workbook, sheet by sheet, with its present result. The formula's text is fetched only
/// when it is asked for.
using Formula = std::function<std::string const&()>;
void visit_formulas(office::Document const& workbook,
                    std::function<void(Place const&, Value const&, Formula const&)> const& visit);

/// What a cell holds or shows; nothing where it is empty or shows an empty text.
Value value_in(com::sun::star::uno::Reference<com::sun::star::table::XCell> const& cell);
/// The same of a block, row by row.
std::vector<std::vector<Value>>
values_in(com::sun::star::uno::Reference<com::sun::star::table::XCellRange> const& cells);

} // namespace hearthcell::archive
