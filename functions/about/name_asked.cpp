#include "functions/about/name_asked.hpp"

#include "functions/catalogue/names.hpp"

#include <algorithm>

namespace hearthcell {

NameAsked read_name_asked(std::string_view text) {
    NameAsked asked{text.substr(0, text.find(':'))};
    for (std::size_t colon = text.find(':'); colon != std::string_view::npos; colon = text.find(':', colon + 1)) {
        std::string_view const word = text.substr(colon + 1, text.find(':', colon + 1) - colon - 1);
        auto const language =
            std::ranges::find_if(languages, [&](Language spoken) { return same_name(code_of(spoken), word); });
        if (language != languages.end()) {
            asked.language = *language;
        } else if (same_name(word, "check")) {
            asked.for_check = true;
        } else {
            asked.unknown = word;
            asked.is_known = false;
        }
    }
    return asked;
}

} // namespace hearthcell
