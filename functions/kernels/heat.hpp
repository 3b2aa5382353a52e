#pragma once
// The heat that water and pot take up.

#include "functions/kernels/constants.hpp"
#include "functions/kernels/latent_heat.hpp"
#include "functions/kernels/liquid_water.hpp"
#include "functions/kernels/method.hpp"

namespace hearthcell::kernels {

/// Heat in kJ that water of a mass in g takes up from one temperature to another in °C; negative when it cools.
template <class Real> Real water_heat(Real const& mass, Real const& start, Real const& end, Method method) {
    switch (method) {
    case Method::properties:
        return mass / 1000 * (liquid_enthalpy(end) - liquid_enthalpy(start));
    case Method::iso_19867_1:
        return mass / 1000 * (iso_19867_1::specific_heat * (end - start));
    default:
        return mass / 1000 * (wbt::specific_heat * (end - start));
    }
}

/// Heat in kJ that evaporated a mass in g at a boiling point in °C.
template <class Real> Real evaporation_heat(Real const& mass, Real const& boiling_point, Method method) {
    if (is_wbt(method))
        return mass / 1000 * wbt::evaporation;
    return mass / 1000 * latent_heat(boiling_point);
}

/// Heat in kJ in a pot of a mass in g and a specific heat in kJ/(kg K).
template <class Real> Real pot_heat(Real const& mass, Real const& specific_heat, Real const& start, Real const& end) {
    return mass / 1000 * specific_heat * (end - start);
}

/// Sensible and evaporation heat in kJ: masses in g, temperatures in °C. The boiling point may be absent: then the
/// water boiled at its end temperature.
template <class Real>
Real useful_heat(Real const& water, Real const& start, Real const& end, Real const& evaporated,
                 Real const& boiling_point, Method method) {
    if (value_of(evaporated) > value_of(water))
        return failure(Reason::evaporated_more_than_water);
    Real const boils_at = is_absent(boiling_point) ? end : boiling_point;
    return water_heat(water, start, end, method) + evaporation_heat(evaporated, boils_at, method);
}

} // namespace hearthcell::kernels
