#include "extension/formulas/our_functions.hpp"

#include "extension/formulas/calls.hpp"
#include "extension/formulas/rewriting.hpp"
#include "extension/formulas/tokens.hpp"

namespace hearthcell::formulas {
namespace {

constexpr std::string_view shown_prefix = "STOVE.";

} // namespace

Function const* function_called(Token const& token) {
    if (!is_ours(token))
        return nullptr;
    return find_function(token.text.substr(token.text.rfind('.') + 1));
}

std::string as_shown(std::string_view formula) {
    return rewritten(formula, [](Token const& token) -> std::optional<std::string> {
        Function const* const function = function_called(token);
        if (function == nullptr)
            return std::nullopt;
        return std::string(shown_prefix) + std::string(function->name);
    });
}

Function const* only_call(std::string_view formula) {
    std::vector<Token> tokens = tokens_without_blanks(formula);
    std::erase_if(tokens,
                  [](Token const& token) { return token.kind == TokenKind::start || token.kind == TokenKind::end; });
    bool const is_whole = !tokens.empty() && end_of_call(tokens, 0) + 1 == tokens.size();
    return is_whole ? function_called(tokens[0]) : nullptr;
}

} // namespace hearthcell::formulas
