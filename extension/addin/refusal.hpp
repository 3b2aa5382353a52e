#pragma once
// The only exceptions that leave the add-in: UNO's own.

#include <uno/any2.h>

namespace hearthcell::addin {

/// Thrown inside of the add-in, and turned into an exception of UNO where a call ends.
struct Refusal {
    char const* type;
    char const* words;
};

inline constexpr char runtime_exception[] = "com.sun.star.uno.RuntimeException";
inline constexpr char illegal_argument[] = "com.sun.star.lang.IllegalArgumentException";

/// Makes the exception in a place that holds nothing yet.
void raise(Refusal const& refusal, uno_Any* place);

} // namespace hearthcell::addin
