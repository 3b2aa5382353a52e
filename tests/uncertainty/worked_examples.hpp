#pragma once
// Worked examples of JCGM 100:2008 and JCGM 101:2008 as kernels. Both documents are quoted from memory.

#include "functions/uncertainty/propagation.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {

/// An example's numbers and standard uncertainties; nothing correlated, no choices.
struct Example {
    Numeric equation;
    std::vector<double> numbers, uncertainties, correlations{};

    Inputs inputs() const { return {numbers, {}, uncertainties, correlations}; }
    Propagated first() const { return propagate(equation, inputs()); }
};

/// JCGM 100, H.1: an end gauge by comparison. Length of the standard and difference in nm, deviations of temperature in
/// °C: (l_s + d - l_s (δα θ + α δθ)).
inline Example end_gauge() {
    return {
        numeric<[]<class Real>(Real const& standard, Real const& difference, Real const& expansion_difference,
                               Real const& temperature, Real const& expansion, Real const& temperature_difference) {
            return Real(standard + difference -
                        standard * (expansion_difference * temperature + expansion * temperature_difference));
        }>,
        {50000623, 215, 0, -0.1, 11.5e-6, 0},
        // As the guide rounds them: rectangular limits of 1e-6, 2e-6 and 0.05; the temperature 0.2 and 0.35 together.
        {25, 9.68, 0.58e-6, 0.41, 1.2e-6, 0.029}};
}

/// JCGM 101, 9.3: calibration of a 100 g mass, deviation in mg.
inline Example mass_calibration() {
    return {numeric<[]<class Real>(Real const& reference, Real const& added, Real const& air, Real const& density,
                                   Real const& reference_density) {
                return Real((reference + added) * (1 + (air - 1.2) * (1 / density - 1 / reference_density)) - 100000);
            }>,
            {100000, 1.234, 1.2, 8000, 8000},
            // Rectangular: air 1.1 to 1.3, weight 7000 to 9000, reference 7950 to 8050 kg/m³.
            {0.05, 0.02, 0.057735, 577.35, 28.868}};
}

/// JCGM 101, 9.2: a sum of four.
inline Example sum_of_four(double first_uncertainty) {
    return {numeric<[]<class Real>(Real const& a, Real const& b, Real const& c, Real const& d) {
                return Real(a + b + c + d);
            }>,
            {0, 0, 0, 0},
            {first_uncertainty, 1, 1, 1}};
}

} // namespace hearthcell::tests
