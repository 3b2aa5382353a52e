#pragma once
// Moisture and energy of wood. Masses in g, calorific values in MJ/kg (the same as kJ/g), moisture as a fraction.

#include "functions/kernels/constants.hpp"
#include "functions/kernels/method.hpp"
#include "functions/number/reason.hpp"

namespace hearthcell::kernels {

enum class Basis { wet, dry };

/// Moisture from two weighings, each with the container; the oven at 105 °C to constant mass (ISO 18134).
template <class Real> Real moisture(Real const& as_fired, Real const& oven_dry, Real const& container, Basis basis) {
    if (value_of(oven_dry) > value_of(as_fired))
        return failure(Reason::dry_above_wet);
    if (value_of(container) >= value_of(oven_dry))
        return failure(Reason::container_above_dry);
    Real const water = as_fired - oven_dry;
    return water / ((basis == Basis::wet ? as_fired : oven_dry) - container);
}

template <class Real> Real wet_basis(Real const& dry_basis) {
    return dry_basis / (1 + dry_basis);
}
template <class Real> Real dry_basis(Real const& wet_basis) {
    return wet_basis / (1 - wet_basis);
}
template <class Real> Real dry_mass(Real const& mass, Real const& moisture) {
    return mass * (1 - moisture);
}

/// Net from gross calorific value of dry fuel at constant pressure; hydrogen and oxygen + nitrogen as mass fractions
/// of the dry fuel. Source: the form of ISO 18125:2017 (coefficients from memory, re-derived).
template <class Real> Real net_from_gross(Real const& gross, Real const& hydrogen, Real const& oxygen_nitrogen) {
    return gross - iso_18125::per_hydrogen * hydrogen - iso_18125::per_oxygen_and_nitrogen * oxygen_nitrogen;
}

/// Net calorific value as fired: the moisture neither burns nor keeps its heat of evaporation (at 25 °C).
template <class Real> Real net_as_fired(Real const& net_dry, Real const& moisture) {
    return net_dry * (1 - moisture) - iso_18125::evaporation * moisture;
}

/// Energy in kJ of moist wood. WBT 4.2.3 warms the moisture from the air's temperature to the boiling point and wants
/// both; WBT 3 takes 12 % more than the moisture off the mass.
template <class Real>
Real wood_energy(Real const& mass, Real const& moisture, Real const& net_dry, Real const& boiling_point,
                 Real const& air, Method method) {
    switch (method) {
    case Method::wbt_4_2_3:
        if (is_absent(boiling_point))
            return failure(Reason::boiling_point_missing);
        if (is_absent(air))
            return failure(Reason::air_missing);
        return mass *
               (net_dry * (1 - moisture) -
                moisture * ((wbt::specific_heat * (boiling_point - air) + wbt_4_2_3::evaporation_of_moisture) / 1000));
    case Method::wbt_3:
        return mass * ((1 - wbt_3::lost_to_moisture * moisture) * net_dry);
    default:
        return mass * net_as_fired(net_dry, moisture);
    }
}

/// Energy in kJ left in char; a negative mass is char that was burned.
template <class Real> Real char_energy(Real const& char_mass, Real const& char_value) {
    return char_mass * char_value;
}

/// Mass in g of dry wood that holds the energy which was set free: wood burned less the char that it left.
template <class Real>
Real equivalent_dry_wood(Real const& burned, Real const& moisture, Real const& net_dry, Real const& net_char,
                         Real const& char_value, Real const& boiling_point, Real const& air, Method method) {
    if (method == Method::iso_19867_1)
        return failure(Reason::method_undefined);
    if (method == Method::wbt_3) // char counted as a mass of wood
        return burned * (1 - wbt_3::lost_to_moisture * moisture) - wbt_3::wood_by_char * net_char;
    Real const energy = wood_energy(burned, moisture, net_dry, boiling_point, air, method);
    if (failed(energy))
        return energy;
    return (energy - char_energy(net_char, char_value)) / net_dry;
}

/// Energy in kJ that a fan drew: power in W, time in min, and the share of the charging energy that reached it.
template <class Real> Real auxiliary_energy(Real const& watts, Real const& minutes, Real const& charging) {
    return watts * minutes * 60 / 1000 / charging;
}

} // namespace hearthcell::kernels
