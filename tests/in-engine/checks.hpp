#pragma once
// What the tests of the check of a workbook have in common.

#include "calc.hpp"

#include "extension/checking/check.hpp"

namespace hearthcell::tests {

/// Checks an open document from outside of the office, as hearthcell-archive does.
checking::Result checked(Document const& document, Language language = Language::english,
                         std::vector<formulas::Range> const& selection = {});

/// Each remark as "D2 STOVE.DRYMASS #NUM! sentence [effect]".
std::vector<std::string> remarks_of(checking::Result const& result);

/// All of a result, for messages.
std::string in_words(checking::Result const& result);

} // namespace hearthcell::tests
