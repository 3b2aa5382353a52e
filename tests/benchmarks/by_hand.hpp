#pragma once
// What our functions do, written out in Calc's own.

#include <string>
#include <vector>

namespace hearthcell::benchmarks {

/// A function of ours and the same maths written out with Calc's own operators and functions, for people without an
/// add-in. The numbers stand in A1, B1, C1 …; several formulas are helper columns from R on, the last is the result.
struct ByHand {
    std::string what, call;
    std::vector<std::string> formulas;
    std::vector<double> inputs;
};

std::vector<ByHand> written_by_hand();

} // namespace hearthcell::benchmarks
