#pragma once
// The standard atmosphere, shifted to the day's sea-level pressure as an altimeter is.

#include "functions/number/reason.hpp"

namespace hearthcell::kernels {

namespace atmosphere {
// ISO 2533:1975. The altitude of a map is geometric; the equation wants the geopotential one.
inline constexpr double earth_radius = 6356766;    // m
inline constexpr double sea_level_kelvin = 288.15; // K
inline constexpr double sea_level_hpa = 1013.25;   // hPa
inline constexpr double lapse = 0.0065;            // K/m
inline constexpr double gravity = 9.80665;         // m/s²
inline constexpr double gas_constant = 287.05287;  // J/(kg K)
inline constexpr double exponent = gravity / (gas_constant * lapse);
} // namespace atmosphere

/// The share of the sea-level temperature by which the standard column has cooled at a geometric altitude in m.
template <class Real> Real standard_cooling(Real const& altitude) {
    Real const geopotential = atmosphere::earth_radius * altitude / (atmosphere::earth_radius + altitude);
    return atmosphere::lapse * geopotential / atmosphere::sea_level_kelvin;
}

/// Air pressure in hPa at an altitude in m, when the sea-level pressure (QNH, ICAO standard column) is given in hPa.
/// Source: ISO 2533:1975; the shift is that of an altimeter setting (WMO-No. 8).
template <class Real> Real air_pressure(Real const& altitude, Real const& sea_level_pressure) {
    using std::pow;
    // Scaling the column's cooling by (p0/QNH)^(1/n) is what moves the standard column up or down to that QNH.
    Real const shift = pow(Real(atmosphere::sea_level_hpa / sea_level_pressure), 1 / atmosphere::exponent);
    return sea_level_pressure * pow(Real(1 - standard_cooling(altitude) * shift), atmosphere::exponent);
}

/// The inverse: the sea-level pressure in hPa that goes with a station pressure in hPa at an altitude in m.
template <class Real> Real sea_level_pressure(Real const& station_pressure, Real const& altitude) {
    using std::pow;
    Real const shift = pow(Real(atmosphere::sea_level_hpa / station_pressure), 1 / atmosphere::exponent);
    return station_pressure * pow(Real(1 + standard_cooling(altitude) * shift), atmosphere::exponent);
}

} // namespace hearthcell::kernels
