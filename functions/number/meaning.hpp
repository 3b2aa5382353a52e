#pragma once
// What each reason means to a cell, from the one table of them.

#include "functions/number/reason.hpp"

#include <string_view>

namespace hearthcell {

/// What kind of error a cell shows.
enum class Error {
    value,         ///< #VALUE!
    number,        ///< #NUM!
    not_available, ///< #N/A
    parameters,    ///< Err:504, as Calc itself says of a wrong number of arguments
};

/// As a cell shows it.
constexpr std::string_view sign_of(Error error) {
    constexpr std::string_view signs[] = {"#VALUE!", "#NUM!", "#N/A", "Err:504"};
    return signs[static_cast<std::size_t>(error)];
}

struct Meaning {
    Reason reason;
    Error error;
};

inline constexpr Meaning meanings[] = {
#define REASON(name, error) {Reason::name, Error::error},
#include "functions/number/reasons.inc"
#undef REASON
};

/// What is no failure, or none of ours, means an internal one: the last of the table.
constexpr Meaning const& meaning_of(Reason reason) {
    auto const code = static_cast<std::size_t>(reason), first = static_cast<std::size_t>(meanings[0].reason);
    bool const is_failure = code >= first && code < static_cast<std::size_t>(Reason::count);
    return meanings[is_failure ? code - first : std::size(meanings) - 1];
}

constexpr Error error_of(Reason reason) {
    return meaning_of(reason).error;
}

} // namespace hearthcell
