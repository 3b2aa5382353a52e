#pragma once
// Boiling temperature and pressure of water: IAPWS R7-97(2012), region 4, from 273.15 K to 647.096 K.

#include "functions/kernels/atmosphere.hpp"
#include "functions/number/reason.hpp"

namespace hearthcell::kernels {

namespace saturation {
// Table 34 of the release (number of the table from memory; the values checked against python3-iapws).
inline constexpr double n1 = 0.11670521452767e4, n2 = -0.72421316703206e6, n3 = -0.17073846940092e2,
                        n4 = 0.12020824702470e5, n5 = -0.32325550322333e7, n6 = 0.14915108613530e2,
                        n7 = -0.48232657361591e4, n8 = 0.40511340542057e6, n9 = -0.23855557567849,
                        n10 = 0.65017534844798e3;

/// Equation 31: temperature in K from pressure in MPa.
template <class Real> Real kelvin(Real const& megapascal) {
    using std::sqrt;
    Real const beta = sqrt(Real(sqrt(megapascal)));
    Real const e = beta * beta + n3 * beta + n6;
    Real const f = n1 * (beta * beta) + n4 * beta + n7;
    Real const g = n2 * (beta * beta) + n5 * beta + n8;
    Real const d = 2 * g / (-f - sqrt(Real(f * f - 4 * e * g)));
    Real const sum = n10 + d;
    return (sum - sqrt(Real(sum * sum - 4 * (n9 + n10 * d)))) / 2;
}
} // namespace saturation

/// Boiling point in °C under an absolute pressure in hPa.
template <class Real> Real boiling_point_at(Real const& pressure) {
    return saturation::kelvin(Real(pressure / 1e4)) - 273.15;
}

/// Boiling point in °C at an altitude in m under a sea-level pressure in hPa.
template <class Real> Real boiling_point(Real const& altitude, Real const& sea_level_pressure, Real const& air) {
    return boiling_point_at(air_pressure(altitude, sea_level_pressure, air));
}

/// Boiling point in °C from a station pressure in hPa. With the altitude in m it refuses a reading that the weather
/// cannot give there, as when the sea-level pressure of a forecast was typed.
template <class Real> Real boiling_point_at_station(Real const& station_pressure, Real const& altitude) {
    if (!is_absent(altitude)) {
        double const implied = sea_level_pressure(value_of(station_pressure), value_of(altitude));
        // The lowest and highest sea-level pressures on record are about 870 and 1085 hPa (from memory).
        if (implied < 870 || implied > 1085)
            return failure(Reason::sea_level_pressure_at_station);
    }
    return boiling_point_at(station_pressure);
}

} // namespace hearthcell::kernels
