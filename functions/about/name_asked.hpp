#pragma once
// The first argument of EXPLAIN: a name, and behind colons what is asked of it: "DRYMASS:fr" in another language,
// "DRYMASS:check:fr" for the check of a workbook. A cell's text must not change with the office that opens it; so it is
// English, unless the name itself says otherwise.

#include "functions/catalogue/names.hpp"
#include "functions/words/language.hpp"

#include <algorithm>
#include <optional>

namespace hearthcell {

struct NameAsked {
    std::string_view name;
    Language language = Language::english;
    bool for_check = false;                    ///< lines for a program instead of sentences, see check_call
    std::optional<std::string_view> unknown{}; ///< what stands behind a colon and is neither, be it empty
};

inline NameAsked read_name_asked(std::string_view text) {
    NameAsked asked{text.substr(0, text.find(':'))};
    for (std::size_t colon = text.find(':'); colon != std::string_view::npos; colon = text.find(':', colon + 1)) {
        std::string_view const word = text.substr(colon + 1, text.find(':', colon + 1) - colon - 1);
        auto const language =
            std::ranges::find_if(languages, [&](Language spoken) { return same_name(code_of(spoken), word); });
        if (language != languages.end())
            asked.language = *language;
        else if (same_name(word, "check"))
            asked.for_check = true;
        else
            asked.unknown = word;
    }
    return asked;
}

} // namespace hearthcell
