#include "extension/checking/outside.hpp"

#include "extension/formulas/letters.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/formulas/table.hpp"
#include "extension/formulas/tokens.hpp"

#include <algorithm>
#include <array>

namespace hearthcell::checking {

using formulas::Token;
using formulas::TokenKind;

namespace {

template <std::size_t Count> bool is_one_of(Token const& token, std::array<std::string_view, Count> const& names) {
    return token.kind == TokenKind::function &&
           std::ranges::any_of(names, [&](std::string_view name) { return formulas::is_same_name(name, token.text); });
}

bool word_leads_outside(Token const& token) {
    constexpr std::array<std::string_view, 6> functions{"INDIRECT", "WEBSERVICE",          "DDE",
                                                        "TABLE",    "MULTIPLE.OPERATIONS", "COM.MICROSOFT.WEBSERVICE"};
    return is_one_of(token, functions) || !formulas::file_named_by(token).empty() || token.kind == TokenKind::unknown;
}

/// In a name's content a relative reference does; in a cell's formula it is written anew for each cell.
bool word_looks_at_its_cell(Token const& token) {
    constexpr std::array<std::string_view, 4> functions{"ROW", "COLUMN", "SHEET", "CELL"};
    return is_one_of(token, functions) ||
           (token.kind == TokenKind::table && formulas::table_reference_of(token).this_row);
}

bool is_relative(Token const& token) {
    if (token.kind != TokenKind::reference)
        return false;
    formulas::Reference const reference = formulas::reference_of(token);
    return std::ranges::any_of(std::array{reference.first, reference.last}, [](formulas::Corner const& corner) {
        return (corner.row && !corner.row_fixed) || (corner.column && !corner.column_fixed);
    });
}

} // namespace

bool leads_outside(std::string_view formula) {
    auto const tokens = formulas::tokens_of(formula);
    return std::ranges::any_of(tokens, word_leads_outside);
}

Outward::Outward(formulas::Names const& names)
    : names_(names), facts_(names, [](Token const& token) {
          std::vector<Fact> facts;
          if (word_leads_outside(token))
              facts.push_back(Fact::outside);
          if (word_looks_at_its_cell(token) || is_relative(token))
              facts.push_back(Fact::cell);
          return facts;
      }) {}

bool Outward::leads_outside(std::string_view formula, std::string_view sheet) const {
    return facts_.in(formula, sheet).count(Fact::outside) > 0;
}

bool Outward::looks_at_its_cell(std::string_view formula, std::string_view sheet) const {
    auto const tokens = formulas::tokens_without_blanks(formula);
    for (std::size_t at = 0; at < tokens.size(); ++at) {
        bool const of_another = at + 2 < tokens.size() && tokens[at + 2].kind != TokenKind::close; // ROW(A1), not ROW()
        if (names_.meant(tokens[at], sheet) ? facts_.in(tokens[at].text, sheet).count(Fact::cell) > 0
                                            : word_looks_at_its_cell(tokens[at]) && !of_another)
            return true;
    }
    return false;
}

} // namespace hearthcell::checking
