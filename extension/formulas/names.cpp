#include "extension/formulas/names.hpp"

#include "extension/formulas/letters.hpp"
#include "extension/formulas/quotes.hpp"
#include "extension/formulas/reference.hpp"

namespace hearthcell::formulas {

Names::Names(std::vector<Definition> definitions) : definitions_(std::move(definitions)), users_(definitions_.size()) {
    for (std::size_t at = 0; at < definitions_.size(); ++at) {
        by_name_.emplace(std::pair(folded(definitions_[at].sheet), folded(definitions_[at].name)), at);
        contents_.push_back(tokens_without_blanks(definitions_[at].content));
    }
    for (std::size_t at = 0; at < definitions_.size(); ++at) {
        std::set<std::size_t> used;
        for (Token const& token : contents_[at])
            if (auto const name = meant(token, definitions_[at].sheet))
                used.insert(*name);
        for (std::size_t const name : used)
            users_[name].push_back(at);
    }
}

std::optional<std::size_t> Names::find(std::string_view sheet, std::string_view name) const {
    auto const found = by_name_.find(std::pair(folded(sheet), folded(name)));
    return found == by_name_.end() ? std::nullopt : std::optional(found->second);
}

std::optional<std::size_t> Names::meant(Token const& word, std::string_view sheet) const {
    if (by_name_.empty() || (word.kind != TokenKind::name && word.kind != TokenKind::reference))
        return std::nullopt;
    if (auto const own = find(sheet, word.text))
        return own;
    if (auto const everywhere = find({}, word.text))
        return everywhere;
    auto const local = local_name_in(word.text);
    return local ? find(unquoted(local->sheet), local->name) : std::nullopt;
}

} // namespace hearthcell::formulas
