#pragma once
// What a function gives, in UNO's binary form and with Calc's own error codes, as a cell shows it.

#include "extension/addin/type.hpp"

#include "functions/contract/values.hpp"

#include <uno/any2.h>

namespace hearthcell::addin {

/// The NaN that makes a cell show the error of a failure.
double cell_error(Failure const& why);

/// A number or a coded failure, as a kernel gives it.
inline double cell_number(double result) {
    return failed(result) ? cell_error(failure_of(result)) : result;
}

double cell_number(Outcome const& outcome);

/// Makes values of any kind. It holds the types of blocks, which to look up for each call would cost more than the
/// call.
class Results {
public:
    /// Into a place that holds nothing yet.
    void make(Outcome const& outcome, uno_Any* place) const;

private:
    void make(Block const& block, uno_Any* place) const;

    Type row_{typelib_TypeClass_SEQUENCE, "[]any"};
    Type block_{typelib_TypeClass_SEQUENCE, "[][]any"};
};

} // namespace hearthcell::addin
