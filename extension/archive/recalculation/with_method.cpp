#include "extension/archive/recalculation/with_method.hpp"

#include "extension/formulas/calls.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/quotes.hpp"
#include "extension/formulas/tokens.hpp"

#include <algorithm>
#include <span>
#include <vector>

namespace hearthcell::archive {
namespace {

using formulas::Token;
using formulas::TokenKind;
using Words = std::span<Token const>;

/// A part of the formula, from one byte to another, and what is to stand there.
struct Edit {
    std::size_t start, end;
    std::string text;
};

/// Where the method of a call stands among what is between its brackets; through EACHROW behind the function's name.
std::optional<std::size_t> place_in_call(Function const& called, std::vector<Words> const& arguments) {
    if (called.name != "EACHROW")
        return place_of_method(called);
    bool const is_named = arguments[0].size() == 1 && arguments[0][0].kind == TokenKind::text;
    Function const* const function = is_named ? find_function(formulas::unquoted(arguments[0][0].text)) : nullptr;
    auto const place = function != nullptr ? place_of_method(*function) : std::nullopt;
    return place ? std::optional(*place + 1) : std::nullopt;
}

std::optional<Edit> edit_of_call(Words tokens, std::size_t call, std::string const& method) {
    Function const* const function = formulas::function_called(tokens[call]);
    std::size_t const close = function != nullptr ? formulas::end_of_call(tokens, call) : tokens.size();
    if (close >= tokens.size())
        return std::nullopt;
    auto const arguments = formulas::arguments_in(tokens.subspan(call + 2, close - call - 2));
    auto const place = place_in_call(*function, arguments);
    if (!place)
        return std::nullopt;
    if (*place >= arguments.size())
        return Edit{tokens[close].start, tokens[close].start, std::string(*place - arguments.size() + 1, ';') + method};
    Words const there = arguments[*place];
    if (!there.empty())
        return Edit{there.front().start, there.back().end(), method};
    // Left out: in front of the bracket or separator behind it.
    std::size_t const at =
        *place + 1 == arguments.size() ? tokens[close].start : (arguments[*place + 1].data() - 1)->start;
    return Edit{at, at, method};
}

} // namespace

std::optional<std::size_t> place_of_method(Function const& function) {
    for (std::size_t place = 0; place < function.arguments.size(); ++place)
        if (function.arguments[place].name == "method")
            return place;
    return std::nullopt;
}

std::optional<std::string> with_method(std::string_view formula, std::string_view method) {
    auto const tokens = formulas::tokens_without_blanks(formula);
    std::vector<Edit> edits;
    for (std::size_t at = 0; at < tokens.size(); ++at)
        if (auto edit = edit_of_call(tokens, at, formulas::quoted(method, '"')))
            edits.push_back(std::move(*edit));
    std::sort(edits.begin(), edits.end(), [](Edit const& a, Edit const& b) { return a.start < b.start; });
    std::string text;
    std::size_t done = 0;
    for (Edit const& edit : edits) {
        if (edit.start < done) // inside a method that was replaced
            continue;
        text.append(formula.substr(done, edit.start - done)).append(edit.text);
        done = edit.end;
    }
    return edits.empty() ? std::nullopt : std::optional(text.append(formula.substr(done)));
}

} // namespace hearthcell::archive
