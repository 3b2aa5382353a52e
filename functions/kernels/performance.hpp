#pragma once
// What a test says of the stove: efficiency, power and fuel use. Masses in g, energies in kJ, times in min.

#include "functions/kernels/fuel.hpp"
#include "functions/kernels/heat.hpp"

namespace hearthcell::kernels {

template <class Real>
Real efficiency(Real const& useful, Real const& fuel, Real const& char_energy, Real const& auxiliary) {
    Real const spent = fuel - char_energy + auxiliary;
    if (value_of(spent) <= 0)
        return failure(Reason::char_exceeds_fuel);
    return useful / spent;
}

/// One run's raw readings, in the order in which they are taken.
template <class Real> struct BenchReadings {
    Real const &pot_empty, &pot_water_start, &water_start, &wood_laid, &water_end, &pot_water_end, &wood_left;
    Real const &moisture, &net_dry, &net_char, &char_value, &boiling_point, &air, &other_energy;
};

/// Whether the weighings can be true together; Reason::none when they can.
template <class Real> Reason check_weighings(BenchReadings<Real> const& r) {
    constexpr double least_water = 50; // g, as for every mass of water
    if (value_of(r.pot_water_start) < value_of(r.pot_empty) + least_water)
        return Reason::pot_and_water_too_light;
    if (value_of(r.pot_water_end) > value_of(r.pot_water_start))
        return Reason::pot_gained_mass;
    if (value_of(r.pot_water_end) < value_of(r.pot_empty))
        return Reason::pot_lost_mass;
    if (value_of(r.wood_left) > value_of(r.wood_laid))
        return Reason::more_left_than_laid;
    if (value_of(r.wood_left) == value_of(r.wood_laid))
        return Reason::nothing_burned;
    return Reason::none;
}

/// Efficiency of one run. Absent: char = not credited, boiling point = end temperature, air = start temperature.
template <class Real> Real bench_efficiency(BenchReadings<Real> const& r, Method method) {
    if (Reason const reason = check_weighings(r); reason != Reason::none)
        return failure(reason);
    if (is_wbt(method) && is_absent(r.net_char))
        return failure(Reason::char_missing);
    Real const boils_at = is_absent(r.boiling_point) ? r.water_end : r.boiling_point;
    Real const air = is_absent(r.air) ? r.water_start : r.air;
    Real const water = r.pot_water_start - r.pot_empty;
    Real const evaporated = r.pot_water_start - r.pot_water_end;
    Real const useful = useful_heat(water, r.water_start, r.water_end, evaporated, boils_at, method);
    Real const burned = r.wood_laid - r.wood_left;
    Real const fuel = wood_energy(burned, r.moisture, r.net_dry, boils_at, air, method);
    if (is_absent(r.net_char))
        return efficiency(useful, fuel, Real(0.0), r.other_energy);
    Real const credit =
        method == Method::wbt_3 ? wbt_3::wood_by_char * r.net_char * r.net_dry : char_energy(r.net_char, r.char_value);
    return efficiency(useful, fuel, credit, r.other_energy);
}

/// Mean power in kW from an energy in kJ and a time in min.
template <class Real> Real mean_power(Real const& energy, Real const& minutes) {
    return energy / (minutes * 60);
}

/// Mean power in kW of a fire, with the energy of the char that it left behind taken off, as the efficiency takes it.
template <class Real> Real firepower(Real const& fuel, Real const& minutes, Real const& char_energy) {
    if (value_of(char_energy) >= value_of(fuel))
        return failure(Reason::char_exceeds_fuel);
    return mean_power(Real(fuel - char_energy), minutes);
}

/// Fuel use in g per kg of water. Start, end and boiling point in °C make it the effective water of WBT 4.2.3; the
/// standard rise in K scales it to that rise. All four may be absent: a plain division, as for a simmer.
template <class Real>
Real specific_fuel(Real const& dry_wood, Real const& water_left, Real const& start, Real const& end,
                   Real const& boiling_point, Real const& standard_rise, Method method) {
    if (method == Method::iso_19867_1)
        return failure(Reason::method_undefined);
    bool const has_rise = !is_absent(start) && !is_absent(end);
    bool const wants_rise =
        !is_absent(start) || !is_absent(end) || !is_absent(boiling_point) || !is_absent(standard_rise);
    if (wants_rise && !has_rise)
        return failure(Reason::temperatures_missing);
    if (has_rise && value_of(end) <= value_of(start))
        return failure(Reason::end_not_above_start);
    Real result = dry_wood / (water_left / 1000);
    if (method == Method::wbt_4_2_3 && has_rise) {
        if (is_absent(boiling_point))
            return failure(Reason::boiling_point_missing);
        if (value_of(boiling_point) <= value_of(start))
            return failure(Reason::boiling_point_not_above_start);
        result = result / ((end - start) / (boiling_point - start));
    }
    return is_absent(standard_rise) ? result : result * (standard_rise / (end - start));
}

/// Low-power fuel use in MJ/(min L): dry wood in g, calorific value in MJ/kg, water left in g, time in min.
template <class Real>
Real simmer_energy(Real const& dry_wood, Real const& net_dry, Real const& water_left, Real const& minutes) {
    return dry_wood / 1000 * net_dry / (water_left / 1000 * minutes);
}

} // namespace hearthcell::kernels
