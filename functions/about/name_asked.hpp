#pragma once
// The first argument of EXPLAIN: a name, and behind colons what is asked of it: "DRYMASS:fr" in another language,
// "DRYMASS:check:fr" for the check of a workbook. A cell's text must not change with the office that opens it; so it is
// English, unless the name itself says otherwise.

#include "functions/words/language.hpp"

namespace hearthcell {

struct NameAsked {
    std::string_view name;
    Language language = Language::english;
    bool for_check = false;     ///< lines for a program instead of sentences, see check_call
    std::string_view unknown{}; ///< what stands behind a colon and is neither
    bool is_known = true;       ///< false where there is something unknown, be it empty
};

NameAsked read_name_asked(std::string_view text);

} // namespace hearthcell
