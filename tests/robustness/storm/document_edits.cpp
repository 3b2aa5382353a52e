#include "document_edits.hpp"

#include "extension/office/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <com/sun/star/sheet/XSpreadsheets.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>

#include <fstream>
#include <unistd.h>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::storm {
namespace {

using office::asking;
using office::wide;

Reference<css::table::XTableRows> rows_of(office::Document const& document, int sheet) {
    auto const found = document.model()->getSheets()->getByName(wide(sheet_names[sheet]));
    return Reference<css::table::XColumnRowRange>(found, UNO_QUERY_THROW)->getRows();
}

Reference<css::document::XUndoManager> undo_manager(office::Document const& document) {
    return Reference<css::document::XUndoManagerSupplier>(document.model(), UNO_QUERY_THROW)->getUndoManager();
}

/// $Data.$A$1:$A$5, so that the name means the same cells wherever it is used.
std::string absolute(Area const& area) {
    auto const corner = [](int row, int column) {
        return "$" + column_letters(column) + "$" + std::to_string(row + 1);
    };
    std::string const first = "$" + std::string(sheet_names[area.sheet]) + "." + corner(area.top, area.left);
    return area.one_cell ? first : first + ":" + corner(area.bottom, area.right);
}

} // namespace

office::Document new_document(office::Office& office, std::vector<NamedArea> const& names) {
    office::Document document = office::Document::blank(office);
    asking("making sheets and names", [&] {
        auto const all = document.model()->getSheets();
        for (sal_Int16 sheet = 0; sheet < sheets; ++sheet)
            all->insertNewByName(wide(sheet_names[sheet]), sheet);
        Reference<css::beans::XPropertySet> const properties(document.model(), UNO_QUERY_THROW);
        Reference<css::sheet::XNamedRanges> const ranges(properties->getPropertyValue("NamedRanges"), UNO_QUERY_THROW);
        for (NamedArea const& named : names)
            ranges->addNewByName(wide(named.name), wide(absolute(named.area)), {}, 0);
    });
    return document;
}

void insert_rows(office::Document const& document, int sheet, int row, int count) {
    asking("inserting rows", [&] { rows_of(document, sheet)->insertByIndex(row, count); });
}

void delete_rows(office::Document const& document, int sheet, int row, int count) {
    asking("deleting rows", [&] { rows_of(document, sheet)->removeByIndex(row, count); });
}

int undo_steps(office::Document const& document) {
    return asking("looking at what can be undone",
                  [&] { return int(undo_manager(document)->getAllUndoActionTitles().getLength()); });
}

void undo(office::Document const& document, int steps) {
    asking("undoing", [&] {
        for (int step = 0; step < steps; ++step)
            undo_manager(document)->undo();
    });
}

double resident_megabytes(pid_t process) {
    std::ifstream pages("/proc/" + std::to_string(process) + "/statm");
    double all = 0, resident = 0;
    pages >> all >> resident;
    return resident * double(::sysconf(_SC_PAGESIZE)) / 1e6;
}

} // namespace hearthcell::storm
