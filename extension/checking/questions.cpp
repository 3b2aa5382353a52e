#include "extension/checking/questions.hpp"

#include "extension/formulas/quotes.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/formulas/tokens.hpp"

#include <algorithm>

namespace hearthcell::checking {

using formulas::Token;
using formulas::TokenKind;

namespace {

constexpr std::string_view explain = "HEARTHCELL.STOVE.EXPLAIN";

bool is_array_formula(std::string_view formula) {
    return formula.starts_with("{");
}

/// The one word that it is; null where it is more, or nothing.
std::optional<Token> only_token(std::string const& argument) {
    auto const tokens = formulas::tokens_without_blanks(argument);
    return tokens.size() == 1 ? std::optional(tokens[0]) : std::nullopt;
}

bool is_plain(std::vector<Token> const& tokens) {
    return std::ranges::none_of(tokens, [](Token const& token) { return token.kind == TokenKind::operation; });
}

/// The call as EXPLAIN is asked about it, and only where Calc comes to it. What is worked out for each cell of a block
/// is asked about once, for all of them.
std::string guarded(std::string question, std::vector<Condition> const& conditions, bool as_array) {
    std::string const otherwise = formulas::quoted(Question::not_reached, '"');
    for (auto condition = conditions.rbegin(); condition != conditions.rend(); ++condition) {
        std::string const any_or_all = condition->holds ? "OR(" : "AND(";
        std::string const holds = as_array ? any_or_all + condition->formula + ")" : condition->formula;
        question =
            "IF(" + holds + ";" + (condition->holds ? question + ";" + otherwise : otherwise + ";" + question) + ")";
    }
    return question;
}

std::size_t length_of(FoundCall const& call) {
    std::size_t length = 0;
    for (std::string const& argument : call.arguments)
        length += argument.size();
    for (Condition const& condition : call.conditions)
        length += condition.formula.size();
    return length;
}

/// Behind the function's name: that the check asks, and in which language.
std::string ending_for(Language language) {
    std::string ending(":check:");
    return ending.append(code_of(language));
}

} // namespace

Questions::Questions(Contents const& of_document, Language language)
    : contents_(of_document), name_ending_(ending_for(language)), names_(contents_.defined.names),
      reads_(contents_.defined.sheets, names_, contents_.defined.tables), outward_(names_) {}

/// Every cell of a block has the formula of the whole.
bool Questions::is_told_by_neighbour(Place const& cell, std::string const& formula) const {
    Content const* const left = contents_.at({cell.sheet, cell.row, cell.column - 1});
    Content const* const above = contents_.at({cell.sheet, cell.row - 1, cell.column});
    return (left != nullptr && left->formula == formula) || (above != nullptr && above->formula == formula);
}

std::string const& Questions::sheet_of(Place const& cell) const {
    return contents_.defined.sheets.at(std::size_t(cell.sheet));
}

void Questions::add(Place const& cell, std::string const& formula) {
    if (is_array_formula(formula) && is_told_by_neighbour(cell, formula))
        return;
    if (formula.size() > longest_formula) {
        ++not_looked_at.too_many;
        return;
    }
    for (FoundCall& call : calls_in(formula))
        add({cell, nullptr, std::move(call), formula, {}, {}}, is_array_formula(formula));
}

void Questions::add(Rule const& rule, std::string const& formula) {
    if (formula.size() > longest_formula) {
        ++not_looked_at.too_many;
        return;
    }
    for (FoundCall& call : calls_in(formula))
        add({rule.seen_from, &rule, std::move(call), formula, {}, {}}, false);
}

void Questions::add(Question question, bool is_array) {
    std::size_t const length = length_of(question.call);
    if (all.size() >= most_questions || length > longest_formula || asked_ > most_asked) {
        ++not_looked_at.too_many;
        return;
    }
    if (is_empty_row(question))
        return;
    std::string asked(explain);
    asked.append("(\"").append(question.call.name).append(name_ending_).append("\"");
    for (std::string const& argument : question.call.arguments)
        asked += ";" + argument_of(question, argument);
    asked += ")";
    question.trial.sheet = question.cell.sheet;
    question.trial.as_array = is_array || (question.call.in_block && !is_plain(formulas::tokens_of(asked)));
    asked = guarded(asked, question.call.conditions, question.trial.as_array);
    if (outward_.leads_outside(asked, sheet_of(question.cell))) {
        ++not_looked_at.outside;
        return;
    }
    if (outward_.looks_at_its_cell(asked, sheet_of(question.cell)))
        question.trial.in_cell = question.cell;
    question.trial.formula = std::move(asked);
    asked_ += 2 * length + question.formula.size();
    all.push_back(std::move(question));
}

/// A single reference to an empty cell is written as one to a range, so that it is seen as empty and not as 0.
std::string Questions::argument_of(Question const& question, std::string const& argument) const {
    std::optional<Place> const place = single_cell(argument, question.cell);
    if (!place || contents_.at(*place) != nullptr)
        return argument;
    std::string const cell = formulas::cell_name(place->column, place->row);
    return "$" + formulas::quoted(sheet_of(*place), '\'') + "." + cell + ":" + cell;
}

std::optional<Place> Questions::single_cell(std::string const& argument, Place const& from) const {
    std::optional<Token> const token = only_token(argument);
    if (!token || (token->kind != TokenKind::reference && token->kind != TokenKind::name))
        return std::nullopt;
    auto const ranges = reads_.of(argument, from);
    return ranges.size() == 1 && ranges[0].first == ranges[0].last ? std::optional(ranges[0].first) : std::nullopt;
}

/// Filled down ahead of its readings: nothing that a call reads of its own row is there.
bool Questions::is_empty_row(Question const& question) const {
    int cells = 0;
    for (std::string const& argument : question.call.arguments) {
        std::optional<Token> const token = only_token(argument);
        if (!token || token->kind != TokenKind::reference || formulas::reference_of(*token).first.row_fixed)
            continue;
        std::optional<Place> const place = single_cell(argument, question.cell);
        if (!place)
            continue;
        if (contents_.at(*place) != nullptr)
            return false;
        cells += has_typed(place->sheet, place->row) ? 1 : 2;
    }
    return cells > 1;
}

bool Questions::has_typed(int sheet, int row) const {
    auto const first = contents_.cells.lower_bound({sheet, row, 0});
    auto const last = contents_.cells.lower_bound({sheet, row + 1, 0});
    return std::any_of(first, last, [](auto const& cell) { return cell.second.formula.empty(); });
}

} // namespace hearthcell::checking
