#include "functions/kernels/times/typed_time.hpp"

#include "functions/kernels/times/time_tokens.hpp"

#include <algorithm>

namespace hearthcell {
namespace {

using time_tokens::Token;
using time_tokens::TokenKind;
using time_tokens::Tokens;

constexpr double unclear = failure(Reason::time_unclear, 0);

/// Numbers between colons: all but the first have two digits, all but the last are whole, none but the first is
/// beyond 59. Their sum in the last one's unit.
double sexagesimal(std::span<Token const> tokens) {
    double sum = 0;
    bool too_large = false;
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        Token const& token = tokens[i];
        bool const colon_is_due = i % 2 == 1;
        if (colon_is_due != (token.kind == TokenKind::colon) || (!colon_is_due && token.kind != TokenKind::number))
            return unclear;
        if (colon_is_due)
            continue;
        if ((token.has_fraction && i + 1 != tokens.size()) || (i != 0 && token.digits != 2))
            return unclear;
        too_large |= i != 0 && token.number >= 60;
        sum = sum * 60 + token.number;
    }
    return too_large ? failure(Reason::time_part_too_large, 0) : sum;
}

double seconds_in(TokenKind unit) {
    return unit == TokenKind::hours ? 3600 : unit == TokenKind::minutes ? 60 : 1;
}

/// Numbers with units, from the largest to the smallest, each at most once; the last unit may be missing: 1h08.
double with_units(std::span<Token const> tokens) {
    double seconds = 0;
    TokenKind before = TokenKind::colon; // no unit yet; of units the smaller one is the greater kind
    bool too_large = false;
    for (std::size_t i = 0; i < tokens.size(); i += 2) {
        Token const& token = tokens[i];
        bool const is_last = i + 2 >= tokens.size();
        if (token.kind != TokenKind::number || (token.has_fraction && !is_last))
            return unclear;
        TokenKind unit = TokenKind::minutes;
        if (i + 1 < tokens.size()) {
            unit = tokens[i + 1].kind;
        } else {
            if (before == TokenKind::seconds || token.digits != 2)
                return unclear;
            unit = before == TokenKind::hours ? TokenKind::minutes : TokenKind::seconds;
        }
        if (unit <= before)
            return unclear;
        too_large |= before != TokenKind::colon && token.number >= 60;
        seconds += token.number * seconds_in(unit);
        before = unit;
    }
    return too_large ? failure(Reason::time_part_too_large, 0) : seconds / 60;
}

} // namespace

double minutes_of(std::string_view text, Typed typed) {
    Tokens const tokens = time_tokens::tokens_of(text);
    std::span<Token const> const all = tokens.all();
    if (all.empty())
        return unclear;
    bool const is_number = all.size() == 1 && all[0].kind == TokenKind::number;
    if (is_number)
        return typed == Typed::as_it_stands || typed == Typed::minutes ? all[0].number : unclear;
    if (all.size() < 2 || all[1].kind != TokenKind::colon)
        return with_units(all);
    bool const one_colon = all.size() == 3, two_colons = all.size() == 5;
    if ((!one_colon && !two_colons) || (one_colon && typed == Typed::minutes))
        return unclear;
    bool const last_are_minutes = one_colon && typed == Typed::hours_and_minutes;
    double const sum = sexagesimal(all);
    return failed(sum) || last_are_minutes ? sum : sum / 60;
}

bool has_one_colon(std::string_view text) {
    return std::ranges::count(text, ':') == 1;
}

} // namespace hearthcell
