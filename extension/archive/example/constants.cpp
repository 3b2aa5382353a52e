#include "extension/archive/example/constants.hpp"

#include "extension/formulas/calls.hpp"
#include "extension/formulas/number.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/tokens.hpp"

#include <algorithm>
#include <array>
#include <span>

namespace hearthcell::archive {
namespace {

using formulas::Token;
using formulas::TokenKind;
using Tokens = std::span<Token const>;

bool is_literal(Token const& token) {
    return token.kind == TokenKind::number || token.kind == TokenKind::text;
}

std::string text_of(Tokens tokens) {
    std::string text;
    for (Token const& token : tokens)
        text += token.text;
    return text;
}

/// A number with its sign and per cent, or a text, and nothing else.
bool is_whole_literal(Tokens tokens) {
    if (!tokens.empty() && tokens.front().kind == TokenKind::operation &&
        (tokens.front().text == "-" || tokens.front().text == "+"))
        tokens = tokens.subspan(1);
    if (tokens.size() == 2 && tokens.back().text == "%")
        tokens = tokens.first(1);
    return tokens.size() == 1 && is_literal(tokens.front());
}

/// A number of units that make another one, multiplied or divided by.
bool is_factor(Tokens tokens, std::size_t at) {
    constexpr std::array factors{1000.0, 0.001, 60.0, 100.0, 0.01, 3600.0, 1440.0, 24.0};
    auto const number = formulas::number_in(tokens[at].text);
    auto const is_there = [&](std::size_t place, std::string_view operation) {
        return place < tokens.size() && tokens[place].text == operation;
    };
    bool const scales = (at > 0 && (is_there(at - 1, "*") || is_there(at - 1, "/"))) || is_there(at + 1, "*");
    return number && scales && std::ranges::find(factors, *number) != factors.end();
}

class Finding {
public:
    std::vector<Constant> found;

    void look(Tokens tokens, Function const* function, std::string const& argument) {
        if (function != nullptr && is_whole_literal(tokens)) {
            found.push_back({std::string(function->name), argument, text_of(tokens), true, false, tokens.front().start,
                             tokens.back().end() - tokens.front().start});
            return;
        }
        for (std::size_t at = 0; at < tokens.size(); ++at) {
            Function const* const called = formulas::function_called(tokens[at]);
            if (called != nullptr) {
                std::size_t const end = formulas::end_of_call(tokens, at);
                look_at_call(tokens.subspan(at + 2, end - std::min(end, at + 2)), *called);
                at = end;
            } else if (is_literal(tokens[at]) && tokens[at].text != "\"\"")
                found.push_back({function == nullptr ? std::string() : std::string(function->name),
                                 function == nullptr ? std::string() : argument + " (" + text_of(tokens) + ")",
                                 std::string(tokens[at].text), false, is_factor(tokens, at), tokens[at].start,
                                 tokens[at].text.size()});
        }
    }

private:
    void look_at_call(Tokens brackets, Function const& function) {
        auto const arguments = formulas::arguments_in(brackets);
        for (std::size_t at = 0; at < arguments.size(); ++at) {
            std::string const name = at < function.arguments.size() ? std::string(function.arguments[at].name.english)
                                                                    : "argument " + std::to_string(at + 1);
            if (!arguments[at].empty())
                look(arguments[at], &function, name);
        }
    }
};

std::vector<Token> inner_tokens(std::string_view formula) {
    std::vector<Token> tokens = formulas::tokens_without_blanks(formula);
    std::erase_if(tokens,
                  [](Token const& token) { return token.kind == TokenKind::start || token.kind == TokenKind::end; });
    return tokens;
}

struct Question { // that an argument raises
    std::string_view argument, holds;
};
constexpr std::array questions{
    Question{"moisture", "wet basis: a share of the wood as it lies. Of a meter that reads dry basis: STOVE.WETBASIS"},
    Question{"moistures", "wet basis: a share of the wood as it lies. Of a meter that reads dry basis: STOVE.WETBASIS"},
    Question{"net calorific value", "net, of the dry fuel. Of a gross value: STOVE.NETFROMGROSS"},
    Question{"mass evaporated", "all that the pot lost in weight went off as steam: nothing was taken out, boiled over "
                                "or ran down the lid"},
};

} // namespace

std::vector<Constant> constants_in(std::string_view formula) {
    Finding finding;
    std::vector<Token> const tokens = inner_tokens(formula);
    finding.look(tokens, nullptr, {});
    return std::move(finding.found);
}

std::vector<Assumption> assumptions_of(std::string_view formula) {
    std::vector<Assumption> found;
    for (Token const& token : inner_tokens(formula))
        if (Function const* const function = formulas::function_called(token))
            for (Argument const& argument : function->arguments)
                for (Question const& question : questions)
                    if (argument.name == question.argument)
                        found.push_back(
                            {std::string(function->name), std::string(question.argument), std::string(question.holds)});
    return found;
}

} // namespace hearthcell::archive
