#pragma once
// How an argument is made from one that is there already. Those that recur stand in arguments/, a file a subject:
// name, unit, range and help are written there once and reused. All of it is done by the compiler.

#include "functions/catalogue/argument.hpp"

namespace hearthcell::arguments {

/// The same argument, free to be left out: then it is `fallback`.
consteval Argument optional(Argument argument, double fallback) {
    argument.optional = true;
    argument.fallback = fallback;
    // An empty cell gives 0, which is not always what leaving the argument out gives.
    argument.zero_is_doubtful = argument.low <= 0 && fallback != 0;
    return argument;
}
/// The same argument, free to be left out, where that has a meaning of its own.
consteval Argument optional(Argument argument, Wording meaning) {
    argument.optional = true;
    argument.absent_means = meaning;
    return argument;
}
consteval Argument named(Argument argument, Term name, Wording help) {
    argument.name = name;
    argument.help = help;
    return argument;
}
/// A row or column of it.
consteval Argument column(Argument argument, Term name, Wording help) {
    argument = named(argument, name, help);
    argument.kind = ArgumentKind::column;
    return argument;
}

} // namespace hearthcell::arguments
