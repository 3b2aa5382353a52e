#pragma once
// A boil time as it would have been from other temperatures and with another mass of water. Times in min,
// temperatures in °C, masses in g.

#include "functions/kernels/liquid_water.hpp"
#include "functions/kernels/quotients.hpp"

namespace hearthcell::kernels {

/// The protocols' linear correction: exact when the net heating rate is constant.
template <class Real>
Real normal_boil_time(Real const& minutes, Real const& start, Real const& end, Real const& standard_rise,
                      Real const& water, Real const& standard_water) {
    if (is_absent(water) != is_absent(standard_water))
        return failure(Reason::standard_mass_missing);
    if (value_of(end) <= value_of(start))
        return failure(Reason::end_not_above_start);
    Real const result = minutes * standard_rise / (end - start);
    return is_absent(water) ? result : result * (standard_water / water);
}

/// Heat capacity in J/K of water, mean between two temperatures.
template <class Real> Real water_capacity(Real const& mass, Real const& start, Real const& end) {
    return mass * (liquid_enthalpy(end) - liquid_enthalpy(start)) / (end - start);
}

/// A pot of water over a fire: what it held, where it began and ended, and the air that it lost heat to.
template <class Real> struct Heating { Real water, start, end, air; };

/// Boil time with heat loss, C dT/dt = P - UA (T - air): the power P that explains the test gives the time that the
/// standard conditions would have taken. loss = UA in W/K, pot = the pot's own heat capacity in J/K.
template <class Real>
Real model_boil_time(Real const& minutes, Heating<Real> const& test, Heating<Real> const& standard, Real const& loss,
                     Real const& pot) {
    if (value_of(test.end) <= value_of(test.start) || value_of(standard.end) <= value_of(standard.start))
        return failure(Reason::end_not_above_start);
    Real const seconds = minutes * 60;
    Real const rise = test.end - test.start;
    Real const capacity = water_capacity(test.water, test.start, test.end) + pot;
    // Both steps are written with quotients that stay exact as the loss goes to zero.
    Real const power =
        capacity * rise / seconds / growth_quotient(Real(-loss * seconds / capacity)) + loss * (test.start - test.air);
    Real const first = power - loss * (standard.start - standard.air); // W into the pot as it starts
    Real const last = power - loss * (standard.end - standard.air);    // W into the pot as it boils
    // The first is above the last.
    if (value_of(last) <= 0)
        return failure(Reason::never_boils);
    Real const standard_rise = standard.end - standard.start;
    Real const standard_capacity = water_capacity(standard.water, standard.start, standard.end) + pot;
    return standard_capacity * standard_rise / first * logarithm_quotient(Real(-loss * standard_rise / first)) / 60;
}

} // namespace hearthcell::kernels
