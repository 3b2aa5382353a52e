#include "extension/archive/recalculation/assignment.hpp"

#include "extension/formulas/number.hpp"
#include "extension/formulas/quotes.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/formulas/tokens.hpp"

#include <optional>
#include <stdexcept>

namespace hearthcell::archive {
namespace {

std::optional<double> number_in(std::string_view text) {
    bool const is_per_cent = text.ends_with('%');
    auto const number = formulas::number_in(text.substr(0, text.size() - (is_per_cent ? 1 : 0)));
    return number && is_per_cent ? *number / 100 : number;
}

/// What can be seen of a formula without an office: each bracket and quotation mark has its other one.
void check_formula(std::string const& formula) {
    using formulas::TokenKind;
    int open = 0, words = 0;
    for (formulas::Token const& token : formulas::tokens_without_blanks(formula)) {
        words += token.kind == TokenKind::start ? 0 : 1;
        open += token.kind == TokenKind::open ? 1 : token.kind == TokenKind::close ? -1 : 0;
        if (open < 0 || token.kind == TokenKind::unknown)
            throw std::invalid_argument("the formula '" + formula + "' cannot be read from '" +
                                        formula.substr(token.start) + "' on");
    }
    if (words == 0)
        throw std::invalid_argument("behind '" + formula + "' there is no formula");
    if (open > 0)
        throw std::invalid_argument("a bracket of the formula '" + formula + "' is not closed");
}

/// A sheet's name in quotes may hold the sign, too. npos where there is none.
std::size_t sign_after_name(std::string const& text) {
    auto const after_quotes = text.starts_with('\'') ? formulas::past_quotes(text, 0) : 0;
    return text.find('=', after_quotes == std::string::npos ? 0 : after_quotes);
}

std::pair<int, int> size_of(formulas::Address const& address) {
    return {address.block.bottom - address.block.top, address.block.right - address.block.left};
}

} // namespace

Assignment read_assignment(std::string const& text) {
    auto const sign = sign_after_name(text);
    if (sign == std::string::npos || sign == 0)
        throw std::invalid_argument("'" + text + "' is not NAME=VALUE");
    std::string const value = text.substr(sign + 1);
    if (value.starts_with('=')) {
        check_formula(value);
        return {text.substr(0, sign), TypedFormula{value}};
    }
    if (auto const number = number_in(value))
        return {text.substr(0, sign), *number};
    return {text.substr(0, sign), value};
}

ComparedPair read_pair(std::string const& text) {
    auto const sign = sign_after_name(text);
    if (sign == std::string::npos || sign == 0 || sign + 1 == text.size())
        throw std::invalid_argument("'" + text + "' is not NEW=OLD");
    ComparedPair const pair{text.substr(0, sign), text.substr(sign + 1)};
    auto const now = formulas::address_in(pair.now), old = formulas::address_in(pair.old);
    if (now && old && size_of(*now) != size_of(*old))
        throw std::invalid_argument(pair.now + " and " + pair.old + " are blocks of different size");
    return pair;
}

std::vector<std::string> split_names(std::string const& list) {
    std::vector<std::string> names(1);
    bool quoted = false;
    for (char const letter : list) {
        quoted = quoted != (letter == '\'');
        if (letter == ',' && !quoted)
            names.emplace_back();
        else
            names.back() += letter;
    }
    std::erase(names, std::string());
    return names;
}

} // namespace hearthcell::archive
