#pragma once
// Calls of catalogue functions as a cell would make them, without a cell.

#include "functions/call/call.hpp"
#include "support/cells.hpp"

#include <initializer_list>
#include <string>
#include <vector>

namespace hearthcell::tests {

/// One of the catalogue's functions; a test that names a function which is not there ends with a message.
Function const& function_named(std::string_view name);

Outcome called(std::string_view name, std::initializer_list<Cell> arguments);

/// What a function of one number gives; fails the running test, and is NaN, where it gives anything else.
double number(std::string_view name, std::initializer_list<Cell> arguments);

/// The reason why a call gives no number; fails the running test where it gives one.
Reason reason(std::string_view name, std::initializer_list<Cell> arguments);

/// What EXPLAIN says of a call.
std::string explained(std::string_view name, std::span<Cell const> arguments);
std::string explained(std::string_view name, std::initializer_list<Cell> arguments);

/// "BOILINGPOINT(1000; 1013.25)", for messages.
std::string in_words(std::string_view name, std::span<Cell const> arguments);
std::string in_words(Outcome const& outcome);

} // namespace hearthcell::tests
