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

std::size_t end_of_call(std::vector<Token> const& tokens, std::size_t call) {
    int open = 0;
    for (std::size_t at = call + 1; at < tokens.size(); ++at) {
        if (tokens[at].kind == TokenKind::open)
            ++open;
        else if (tokens[at].kind == TokenKind::close && --open == 0)
            return at;
    }
    return tokens.size();
}

} // namespace hearthcell::formulas
