#pragma once
// What the tests that read every entry of the catalogue share.

#include "functions/catalogue/catalogue.hpp"

#include <functional>
#include <string>

namespace hearthcell::tests {

void for_every_function(std::function<void(Function const&)> const& act);
/// The text names function and argument, for messages.
void for_every_argument(std::function<void(Function const&, Argument const&, std::string const&)> const& act);

constexpr bool is_upper(char c) {
    return c >= 'A' && c <= 'Z';
}
constexpr bool is_lower(char c) {
    return c >= 'a' && c <= 'z';
}
constexpr bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// A text that others are glued to: no stop and no blank at either end, no double blank, no quotation mark or bracket
/// left open.
void expect_tidy(std::string_view text, std::string_view whose);

/// Every STOVE.NAME in a text is a function.
void expect_functions_named_in(std::string_view text, std::string_view whose);

/// Whether a number given for this argument is held against a range.
constexpr bool has_range(Argument const& argument) {
    return argument.kind == ArgumentKind::number || argument.kind == ArgumentKind::number_or_name ||
           argument.kind == ArgumentKind::name || argument.kind == ArgumentKind::column ||
           argument.kind == ArgumentKind::matrix;
}

} // namespace hearthcell::tests
