#pragma once
// The names that a workbook defines, and what they pass on to formulas that use them.

#include "extension/formulas/place.hpp"
#include "extension/formulas/tokens.hpp"

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace hearthcell::formulas {

/// A word to which a workbook gives a meaning of its own.
struct Definition {
    std::string name;
    std::string sheet;   // in whose formulas alone it counts; empty: in all
    std::string content; // a formula without its =
    Place seen_from;     // from where the content's relative references are seen
};

class Names {
public:
    explicit Names(std::vector<Definition> definitions = {});
    Names(Names&&) = default;
    Names& operator=(Names&&) = default;
    Names(Names const&) = delete; // the tokens are parts of the definitions' own texts
    Names& operator=(Names const&) = delete;
    ~Names() = default;

    [[nodiscard]] std::size_t size() const { return definitions_.size(); }
    [[nodiscard]] Definition const& definition(std::size_t index) const { return definitions_[index]; }
    /// Without blanks.
    [[nodiscard]] std::vector<Token> const& content(std::size_t index) const { return contents_[index]; }
    /// The definitions in which this one is used.
    [[nodiscard]] std::vector<std::size_t> const& users(std::size_t index) const { return users_[index]; }

    /// What a word means in a formula of a sheet: its index. A name of a sheet goes before one of the workbook and can
    /// be used on other sheets behind the sheet's name and a dot. What looks like site.T1 may be a name as well.
    [[nodiscard]] std::optional<std::size_t> meant(Token const& word, std::string_view sheet) const;

private:
    [[nodiscard]] std::optional<std::size_t> find(std::string_view sheet, std::string_view name) const;

    std::vector<Definition> definitions_;
    std::vector<std::vector<Token>> contents_;
    std::vector<std::vector<std::size_t>> users_;
    std::map<std::pair<std::string, std::string>, std::size_t> by_name_; // sheet and name, folded
};

/// What the words of formulas say, such as that a function is volatile, with what the names say that they use, and the
/// names that those use. There must be few different things to say.
template <class Fact> class Followed {
public:
    using Says = std::function<std::vector<Fact>(Token const&)>; // of a word that is no name of the workbook

    Followed(Names const& names, Says says) : names_(names), says_(std::move(says)), facts_(names.size()) {
        std::vector<std::size_t> changed;
        for (std::size_t at = 0; at < names.size(); ++at) {
            for (Token const& token : names.content(at))
                if (!names.meant(token, names.definition(at).sheet))
                    add(facts_[at], says_(token));
            if (!facts_[at].empty())
                changed.push_back(at);
        }
        while (!changed.empty()) {
            std::size_t const name = changed.back();
            changed.pop_back();
            for (std::size_t const user : names.users(name))
                if (add(facts_[user], facts_[name]))
                    changed.push_back(user);
        }
    }

    /// In a formula of a sheet.
    [[nodiscard]] std::set<Fact> in(std::string_view formula, std::string_view sheet) const {
        std::set<Fact> all;
        for (Token const& token : tokens_of(formula))
            if (auto const name = names_.meant(token, sheet))
                add(all, facts_[*name]);
            else
                add(all, says_(token));
        return all;
    }

private:
    /// Whether any of them is new.
    template <class Facts> static bool add(std::set<Fact>& known, Facts const& more) {
        std::size_t const before = known.size();
        known.insert(more.begin(), more.end());
        return known.size() > before;
    }

    Names const& names_;
    Says const says_;
    std::vector<std::set<Fact>> facts_; // of each definition
};

} // namespace hearthcell::formulas
