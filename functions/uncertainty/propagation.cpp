#include "functions/uncertainty/propagation.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell {
namespace {

double correlation(Inputs const& inputs, std::size_t i, std::size_t j) {
    if (i == j)
        return 1;
    return inputs.correlations.empty() ? 0 : inputs.correlations[i * inputs.numbers.size() + j];
}

/// The gradient with one number moved.
double gradient_aside(Numeric const& equation, Inputs const& inputs, std::size_t moved, double by,
                      std::array<double, most_arguments>& slopes) {
    std::array<double, most_arguments> numbers{};
    std::ranges::copy(inputs.numbers, numbers.begin());
    numbers[moved] += by;
    return equation.gradient(numbers.data(), inputs.choices.data(), slopes.data());
}

} // namespace

Propagated propagate(Numeric const& equation, Inputs const& inputs) {
    Propagated result;
    result.value = equation.gradient(inputs.numbers.data(), inputs.choices.data(), result.slopes.data());
    if (failed(result.value))
        return result;
    std::size_t const count = inputs.numbers.size();
    std::array<double, most_arguments> signed_contributions{};
    for (std::size_t i = 0; i < count; ++i) {
        double& slope = result.slopes[i];
        if (inputs.uncertainties[i] == 0) { // its slope may be anything: it may have been left out
            slope = std::isfinite(slope) ? slope : failure(Reason::no_finite_slope);
            continue;
        }
        signed_contributions[i] = slope * inputs.uncertainties[i];
        if (!std::isfinite(signed_contributions[i])) {
            result.value = failure(Reason::no_finite_slope, unsigned(i));
            return result;
        }
        result.contributions[i] = std::abs(signed_contributions[i]);
    }

    double variance = 0;
    for (std::size_t i = 0; i < count; ++i) {
        double with_all = 0;
        for (std::size_t j = 0; j < count; ++j)
            with_all += signed_contributions[j] * correlation(inputs, i, j);
        result.shares[i] = signed_contributions[i] * with_all;
        variance += result.shares[i];
    }
    // Full correlation can cancel everything; rounding then leaves a trifle on either side of 0.
    variance = std::max(variance, 0.0);
    result.uncertainty = std::sqrt(variance);
    for (double& share : result.shares)
        share = variance > 0 ? share / variance : 0;
    return result;
}

// Small, so that what the differences leave out is of no account (its square, times the next terms of the series); not
// so small that rounding is (its inverse square, times the last bit of a slope).
constexpr double part_of_uncertainty = 1.0 / 64;

SecondOrder second_order(Numeric const& equation, Inputs const& inputs, Propagated const& first) {
    SecondOrder result;
    std::size_t const count = inputs.numbers.size();
    for (std::size_t j = 0; j < count; ++j) {
        double const u = inputs.uncertainties[j];
        if (u == 0)
            continue;
        std::array<double, most_arguments> below{}, above{};
        for (double const away : {-u, u}) {
            double const value = gradient_aside(equation, inputs, j, away, below);
            if (failed(value)) {
                result.failure = failure_of(value);
                result.number = unsigned(j);
                return result;
            }
        }
        double const step = u * part_of_uncertainty;
        gradient_aside(equation, inputs, j, -step, below);
        gradient_aside(equation, inputs, j, step, above);
        for (std::size_t i = 0; i < count; ++i) {
            if (inputs.uncertainties[i] == 0)
                continue;
            double const second = (above[i] - below[i]) / (2 * step);
            double const third = (above[i] - 2 * first.slopes[i] + below[i]) / (step * step);
            double const scale = inputs.uncertainties[i] * u;
            result.variance += (0.5 * second * second + first.slopes[i] * third) * scale * scale;
        }
    }
    return result;
}

} // namespace hearthcell
