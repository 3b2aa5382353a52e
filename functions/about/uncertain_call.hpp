#pragma once
// What STOVE.UNCERTAINTY, STOVE.BUDGET and STOVE.MONTECARLO are asked: read, checked and ready for propagation.

#include "functions/call/scalar.hpp"
#include "functions/uncertainty/monte_carlo.hpp"

namespace hearthcell {

/// The order of their arguments.
namespace uncertainty_argument {
enum : unsigned { function_name, values, uncertainties, coverage, correlations, draws };
}

/// A call of a function whose arguments are uncertain, as a cell asks about it. Kept on the stack but for the
/// correlations.
struct UncertainCall {
    Function const* function = nullptr;
    std::size_t given = 0; ///< arguments of that function up to the last that is not blank
    Resolved at;
    std::array<double, most_arguments> uncertainties{}; ///< one a number of the kernel
    std::array<unsigned, most_arguments> number_of{};   ///< the kernel's number of each argument; no_argument: none
    std::array<bool, most_arguments> known{};           ///< whether an argument was given as a number
    std::vector<double> correlations;                   ///< a row for each number of the kernel, or empty
    double coverage = 1;                                ///< the factor; of MONTECARLO the probability
    Failure failure;                                    ///< of the question itself
    bool inside = false; ///< the failure is that of the function asked about, not of the question

    Numeric const& equation() const { return *differentiable_equation(*function); }
    Measure measure() const; ///< of the result, or of that part of it that is asked for
    Inputs inputs() const;
    Bounds bounds() const;
    /// Whether an argument is a number that was not given as one: a constant default, or a name of a table.
    bool is_assumed(std::size_t place) const;
    std::size_t place_of(unsigned number) const; ///< the argument that the kernel takes as this number
};

/// Reads what a cell asks. The arguments have been through the checks of a wordy call.
UncertainCall read_uncertain_call(std::span<Value const> given);

/// A failure of the function asked about keeps its kind; which of its arguments is to blame, EXPLAIN finds again.
Failure as_a_cell_sees_it(UncertainCall const& asked);

/// The first-order result; a failure of the equation or of its range becomes one of the question.
Propagated propagate(UncertainCall& asked);

/// The values as arguments of the function asked about: what EXPLAIN would be given.
std::vector<Value> inner_arguments(Block const& values);

} // namespace hearthcell
