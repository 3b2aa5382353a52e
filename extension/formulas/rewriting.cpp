#include "extension/formulas/rewriting.hpp"

#include "extension/formulas/quotes.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/formulas/tokens.hpp"

namespace hearthcell::formulas {

std::string rewritten(std::string_view formula,
                      std::function<std::optional<std::string>(Token const&)> const& replace) {
    std::string text;
    for (Token const& token : tokens_of(formula))
        if (auto const other = replace(token))
            text += *other;
        else
            text += token.text;
    return text;
}

std::string with_replacements(std::string_view text, std::vector<Replacement> const& replacements) {
    std::string result;
    std::size_t done = 0;
    for (auto const& [part, other] : replacements) {
        auto const start = static_cast<std::size_t>(part.data() - text.data());
        result += text.substr(done, start - done);
        result += other;
        done = start + part.size();
    }
    return result += text.substr(done);
}

std::optional<std::string>
with_other_sheets(Token const& token,
                  std::function<std::optional<std::string>(std::string const& sheet)> const& other_name) {
    std::vector<std::string_view> sheets;
    if (token.kind == TokenKind::reference) {
        auto const [file, first, last] = reference_of(token);
        if (!file.empty())
            return std::nullopt;
        sheets.push_back(first.sheet);
        if (last.sheet.data() != first.sheet.data())
            sheets.push_back(last.sheet);
    } else if (token.kind == TokenKind::name) {
        if (auto const local = local_name_in(token.text))
            sheets.push_back(local->sheet);
    }
    std::vector<Replacement> replacements;
    for (std::string_view const sheet : sheets)
        if (!sheet.empty())
            if (auto const other = other_name(unquoted(sheet)))
                replacements.push_back({sheet, quoted(*other, '\'')});
    return with_replacements(token.text, replacements);
}

} // namespace hearthcell::formulas
