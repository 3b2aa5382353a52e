#pragma once
// Propagation of standard uncertainties through an equation, JCGM 100:2008 (from memory of its numbering): 5.1.2
// uncorrelated, 5.2.2 correlated, the note of 5.1.2 for the second-order terms. It knows kernels, but no cells.

#include "functions/contract/kernel.hpp"

#include <array>

namespace hearthcell {

/// Where an equation is computed and how well each of its numbers is known.
struct Inputs {
    std::span<double const> numbers;
    std::span<Choice const> choices;
    std::span<double const> uncertainties; ///< standard, one a number; 0 is exact
    std::span<double const> correlations;  ///< a row for each number; empty where nothing is correlated
};

struct Propagated {
    double value = 0;       ///< of the equation; a failure where it has none, and then nothing below counts
    double uncertainty = 0; ///< standard, first order
    std::array<double, most_arguments> slopes{};        ///< partial derivatives; a failure where one is not finite
    std::array<double, most_arguments> contributions{}; ///< |slope| × uncertainty
    std::array<double, most_arguments> shares{};        ///< of the variance; they add up to 1, or are all 0
};

/// Fails with Reason::no_finite_slope, naming the number, where an uncertain number has no finite slope.
Propagated propagate(Numeric const& equation, Inputs const& inputs);

/// What the second-order terms add to the variance; may be negative.
struct SecondOrder {
    double variance = 0;
    Failure failure;               ///< why the equation could not be computed one standard uncertainty aside
    unsigned number = no_argument; ///< … of this number
};

/// ΣΣ [½ (∂²f/∂xᵢ∂xⱼ)² + ∂f/∂xᵢ ∂³f/∂xᵢ∂xⱼ²] uᵢ² uⱼ², for normal and uncorrelated inputs, from central differences of
/// the exact gradient with steps of a part of the standard uncertainty.
SecondOrder second_order(Numeric const& equation, Inputs const& inputs, Propagated const& first);

/// From this share of the first-order variance on, first order is said not to be enough: the uncertainty itself is
/// then some 2.5 % off. The limit is this project's; JCGM 100 says only 'significant'.
inline constexpr double second_order_matters = 0.05;

} // namespace hearthcell
