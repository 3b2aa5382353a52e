#pragma once
// Calls of functions in formulas, as far as it takes no catalogue to know them.

#include "extension/formulas/token.hpp"

#include <span>
#include <vector>

namespace hearthcell::formulas {

/// Whether a function is one of ours, also one that this edition does not have: by its name in files,
/// HEARTHCELL.STOVE.BOILINGPOINT, or by the one in the cell, which is what is left of a call where the package is
/// missing.
bool is_ours(Token const& function);

/// Whether a function's result changes by itself: the clock, chance, or what the office says of itself.
bool is_volatile(Token const& function);

/// The bracket that closes the one at `open`; the number of tokens where nothing does.
std::size_t closing_bracket(std::span<Token const> tokens, std::size_t open);

/// The bracket that closes the call which the function at `call` opens; the number of tokens where nothing does.
std::size_t end_of_call(std::span<Token const> tokens, std::size_t call);

/// What stands between the brackets of a call, argument by argument.
std::vector<std::span<Token const>> arguments_in(std::span<Token const> brackets);

} // namespace hearthcell::formulas
