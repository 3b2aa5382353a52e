#include "extension/formulas/calls.hpp"

#include "extension/formulas/letters.hpp"

#include <algorithm>
#include <array>

namespace hearthcell::formulas {
namespace {

constexpr std::array<std::string_view, 9> volatile_functions{
    "NOW", "TODAY", "RAND", "RANDBETWEEN", "RAND.NV", "RANDBETWEEN.NV", "RANDARRAY", "INFO", "CELL"};

} // namespace

bool is_ours(Token const& function) {
    std::string const name = folded(function.text);
    return function.kind == TokenKind::function &&
           (name.starts_with("hearthcell.stove.") || name.starts_with("stove."));
}

bool is_volatile(Token const& function) {
    return function.kind == TokenKind::function &&
           std::any_of(volatile_functions.begin(), volatile_functions.end(),
                       [&](std::string_view name) { return is_same_name(name, function.text); });
}

std::size_t closing_bracket(std::span<Token const> tokens, std::size_t open) {
    int depth = 0;
    for (std::size_t at = open; at < tokens.size(); ++at) {
        if (tokens[at].kind == TokenKind::open)
            ++depth;
        else if (tokens[at].kind == TokenKind::close && --depth == 0)
            return at;
    }
    return tokens.size();
}

std::size_t end_of_call(std::span<Token const> tokens, std::size_t call) {
    return closing_bracket(tokens, call + 1);
}

std::vector<std::span<Token const>> arguments_in(std::span<Token const> brackets) {
    std::vector<std::span<Token const>> arguments;
    int open = 0;
    std::size_t start = 0;
    for (std::size_t at = 0; at < brackets.size(); ++at) {
        TokenKind const kind = brackets[at].kind;
        if (kind == TokenKind::open || kind == TokenKind::array_open)
            ++open;
        else if (kind == TokenKind::close || kind == TokenKind::array_close)
            --open;
        else if (kind == TokenKind::separator && open == 0) {
            arguments.push_back(brackets.subspan(start, at - start));
            start = at + 1;
        }
    }
    arguments.push_back(brackets.subspan(start));
    return arguments;
}

} // namespace hearthcell::formulas
