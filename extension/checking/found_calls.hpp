#pragma once
// The calls of our functions in a formula, one by one, with what has to hold before Calc comes to them.

#include "extension/formulas/token.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <string>
#include <vector>

namespace hearthcell::checking {

/// A condition above a call: that of an IF, or what lets IFERROR, IFS or CHOOSE take another way.
struct Condition {
    std::string formula; // without =
    bool holds;          // whether the call is reached when it does, or when it does not
};

struct FoundCall {
    std::string name;                   // DRYMASS, or what stands there instead
    Function const* function = nullptr; // null where no function has that name
    std::vector<std::string> arguments; // as they are written; empty where one is left out
    std::vector<Condition> conditions;  // the outermost first
    bool in_block = false;              // inside a function that works on whole blocks, as SUMPRODUCT
};

/// All of them, also those inside the arguments of others; but those that say something about functions (EXPLAIN,
/// SOURCE, VERSION) are left out.
std::vector<FoundCall> calls_in(std::string_view formula);

/// The formula with all references in it as they are seen from a cell, so that those which were filled down are the
/// same; calls of a function alike in all but their arguments' numbers and texts stay apart.
std::string form_of(std::string_view formula, int column, int row);

} // namespace hearthcell::checking
