#include "extension/archive/recalculation/meanings.hpp"

#include "extension/formulas/calls.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/office/text.hpp"
#include "extension/sharing/names.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XDatabaseRange.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using hearthcell::formulas::Token;
using hearthcell::office::narrow;

namespace hearthcell::archive {

namespace {

std::vector<std::string> sheet_names(office::Document const& workbook) {
    std::vector<std::string> names;
    for (auto const& sheet : sharing::sheets_of(workbook.model()))
        names.push_back(sharing::name_of(sheet));
    return names;
}

Reference<css::table::XCellRange> cells_at(office::Document const& workbook, css::table::CellRangeAddress const& area) {
    return sharing::sheets_of(workbook.model())
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
void read_tables(office::Document const& workbook, std::vector<formulas::Table>& tables,
                 std::vector<formulas::Definition>& definitions) {
    Reference<css::beans::XPropertySet> const properties(workbook.model(), UNO_QUERY_THROW);
    Reference<css::container::XNameAccess> const ranges(properties->getPropertyValue("DatabaseRanges"),
                                                        UNO_QUERY_THROW);
    for (rtl::OUString const& name : ranges->getElementNames()) {
        auto const area =
            Reference<css::sheet::XDatabaseRange>(ranges->getByName(name), UNO_QUERY_THROW)->getDataArea();
        auto const cells = cells_at(workbook, area);
        definitions.push_back({narrow(name), {}, absolute_name(cells), {}});
        tables.push_back({narrow(name),
                          {{area.Sheet, area.StartRow, area.StartColumn}, {area.Sheet, area.EndRow, area.EndColumn}},
                          first_row(cells, area.EndColumn - area.StartColumn)});
    }
}

} // namespace

Meanings::Defined Meanings::read(office::Document const& workbook) {
    return office::asking("reading the names of the workbook", [&] {
        Defined defined{sheet_names(workbook), sharing::definitions_in(workbook.model()), {}};
        read_tables(workbook, defined.tables, defined.names);
        return defined;
    });
}

Meanings::Meanings(office::Document const& workbook) : Meanings(read(workbook)) {}

Meanings::Meanings(Defined defined)
    : sheets_(std::move(defined.sheets)), tables_(std::move(defined.tables)), names_(std::move(defined.names)),
      volatile_(names_,
                [](Token const& token) { return std::vector<bool>(formulas::is_volatile(token) ? 1 : 0, true); }),
      functions_(names_,
                 [](Token const& token) {
                     Function const* const function = formulas::function_called(token);
                     return std::vector<Function const*>(function == nullptr ? 0 : 1, function);
                 }),
      reads_(sheets_, names_, tables_) {}

std::string const& Meanings::sheet(formulas::Place const& cell) const {
    return sheets_.at(std::size_t(cell.sheet));
}

bool Meanings::is_volatile(std::string const& formula, formulas::Place const& cell) const {
    return !volatile_.in(formula, sheet(cell)).empty();
}

std::set<Function const*> Meanings::functions(std::string const& formula, formulas::Place const& cell) const {
    return functions_.in(formula, sheet(cell));
}

std::vector<formulas::Range> Meanings::reads(std::string const& formula, formulas::Place const& cell) const {
    return reads_.of(formula, cell);
}

} // namespace hearthcell::archive
