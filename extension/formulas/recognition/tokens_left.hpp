#pragma once
// The tokens of a formula that are still to be read.

#include "extension/formulas/calls.hpp"
#include "extension/formulas/recognition/polynomial.hpp"

#include <span>

namespace hearthcell::formulas {

using Tokens = std::span<Token const>;

struct TokensLeft {
    Tokens rest_;

    [[nodiscard]] bool is_next(std::string_view operation) const {
        return !rest_.empty() && rest_[0].kind == TokenKind::operation && rest_[0].text == operation;
    }

    bool take(std::string_view operation) {
        bool const is_there = is_next(operation);
        rest_ = rest_.subspan(is_there ? 1 : 0);
        return is_there;
    }

    /// Takes a bracket with what stands in it, which it gives. Throws NoPolynomial where nothing closes it.
    Tokens take_brackets() {
        std::size_t const end = closing_bracket(rest_, 0);
        if (end == rest_.size())
            throw NoPolynomial();
        Tokens const inside = rest_.subspan(1, end - 1);
        rest_ = rest_.subspan(end + 1);
        return inside;
    }
};

} // namespace hearthcell::formulas
