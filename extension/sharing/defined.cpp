#include "extension/sharing/defined.hpp"

#include "extension/office/text.hpp"
#include "extension/sharing/names.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XDatabaseRange.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::narrow;

namespace hearthcell::sharing {
namespace {

std::vector<std::string> sheet_names(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    std::vector<std::string> names;
    for (auto const& sheet : sheets_of(document))
        names.push_back(name_of(sheet));
    return names;
}

Reference<css::table::XCellRange> cells_at(Reference<css::sheet::XSpreadsheetDocument> const& document,
                                           css::table::CellRangeAddress const& area) {
    return sheets_of(document)
        .at(std::size_t(area.Sheet))
        ->getCellRangeByPosition(area.StartColumn, area.StartRow, area.EndColumn, area.EndRow);
}

std::vector<std::string> first_row(Reference<css::table::XCellRange> const& cells, sal_Int32 last_column) {
    Reference<css::sheet::XCellRangeData> const row(cells->getCellRangeByPosition(0, 0, last_column, 0),
                                                    UNO_QUERY_THROW);
    css::uno::Sequence<css::uno::Sequence<css::uno::Any>> const contents = row->getDataArray();
    std::vector<std::string> texts;
    for (css::uno::Any const& content : contents[0]) {
        rtl::OUString text;
        content >>= text;
        texts.push_back(narrow(text));
    }
    return texts;
}

/// "$Runs.$A$1:$C$20"
std::string absolute_name(Reference<css::table::XCellRange> const& cells) {
    rtl::OUString name;
    Reference<css::beans::XPropertySet>(cells, UNO_QUERY_THROW)->getPropertyValue("AbsoluteName") >>= name;
    return narrow(name);
}

/// Calc keeps the tables of .xlsx and the database ranges of its own files in one place. A table's name alone stands
/// for its cells, unless the workbook defines it otherwise.
void read_tables(Reference<css::sheet::XSpreadsheetDocument> const& document, std::vector<formulas::Table>& tables,
                 std::vector<formulas::Definition>& definitions) {
    Reference<css::beans::XPropertySet> const properties(document, UNO_QUERY_THROW);
    Reference<css::container::XNameAccess> const ranges(properties->getPropertyValue("DatabaseRanges"),
                                                        UNO_QUERY_THROW);
    for (rtl::OUString const& name : ranges->getElementNames()) {
        auto const area =
            Reference<css::sheet::XDatabaseRange>(ranges->getByName(name), UNO_QUERY_THROW)->getDataArea();
        auto const cells = cells_at(document, area);
        definitions.push_back({narrow(name), {}, absolute_name(cells), {}});
        tables.push_back({narrow(name),
                          {{area.Sheet, area.StartRow, area.StartColumn}, {area.Sheet, area.EndRow, area.EndColumn}},
                          first_row(cells, area.EndColumn - area.StartColumn)});
    }
}

} // namespace

Defined read_defined(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    Defined defined{sheet_names(document), definitions_in(document), {}};
    read_tables(document, defined.tables, defined.names);
    return defined;
}

} // namespace hearthcell::sharing
