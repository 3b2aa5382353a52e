#pragma once
// Formulas outside of cells: of names, conditional formats and validity rules.

#include "extension/formulas/place.hpp"
#include "extension/sharing/conditional_formats.hpp"
#include "extension/sharing/defined.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <string>
#include <vector>

namespace hearthcell::checking {

using formulas::Place;

/// A formula outside of cells.
struct Rule {
    enum class Kind { name, conditional_format, validity } kind;
    std::string name; // of a name; empty for the others
    Place seen_from;  // the cell that its references are seen from
    Place first;      // of the cells that it is for
    std::string formula;
    bool as_shown = false; // in the language of the office, as conditional formats tell it
};

/// Those that call a function of ours.
std::vector<Rule>
read_rules(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document,
           sharing::Defined const& defined, sharing::Held& held);

} // namespace hearthcell::checking
