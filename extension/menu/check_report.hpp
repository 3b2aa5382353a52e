#pragma once
// The workbook that shows what came of a check.

#include "extension/checking/result.hpp"
#include "extension/menu/surroundings.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

namespace hearthcell::menu {

/// Which document was checked.
struct CheckedDocument {
    rtl::OUString name;    // as its window calls it
    rtl::OUString address; // empty where it was never saved: then there are no links
    rtl::OUString id;      // as long as it is open
};

/// Opens it as a new document, out of sight where nobody attends.
void open_check_report(Surroundings const& surroundings, CheckedDocument const& document,
                       checking::Result const& result);

/// What was typed into such a workbook: the marks of the remarks that were seen, and of which document they are.
struct SeenInReport {
    rtl::OUString id, address;
    checking::Seen marks;
};
/// Nothing where the document is no such workbook.
std::optional<SeenInReport>
seen_in_report(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& report);

} // namespace hearthcell::menu
