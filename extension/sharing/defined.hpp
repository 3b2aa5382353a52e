#pragma once
// What the words of a document's formulas stand for: its sheets, names and tables.

#include "extension/formulas/names.hpp"
#include "extension/formulas/table.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <string>
#include <vector>

namespace hearthcell::sharing {

struct Defined {
    std::vector<std::string> sheets;
    std::vector<formulas::Definition> names; // those of tables among them
    std::vector<formulas::Table> tables;
};

Defined read_defined(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

} // namespace hearthcell::sharing
