#pragma once
// The air pressure at an altitude: the standard atmosphere, shifted to the day's sea-level pressure as an altimeter is;
// or the column that weather reports reduce by, with the air's own temperature.

#include "functions/number/reason.hpp"

namespace hearthcell::kernels {

namespace atmosphere {
// ISO 2533:1975. The altitude of a map is geometric; the equation wants the geopotential one.
inline constexpr double earth_radius = 6356766;    // m
inline constexpr double sea_level_kelvin = 288.15; // K
inline constexpr double zero_celsius = 273.15;     // K
inline constexpr double sea_level_hpa = 1013.25;   // hPa
inline constexpr double lapse = 0.0065;            // K/m
inline constexpr double gravity = 9.80665;         // m/s²
inline constexpr double gas_constant = 287.05287;  // J/(kg K)
inline constexpr double exponent = gravity / (gas_constant * lapse);
} // namespace atmosphere

/// The height in m that the equations want for a geometric one.
template <class Real> Real geopotential(Real const& altitude) {
    return atmosphere::earth_radius * altitude / (atmosphere::earth_radius + altitude);
}

/// The share of the sea-level temperature by which the standard column has cooled at a geometric altitude in m.
template <class Real> Real standard_cooling(Real const& altitude) {
    return atmosphere::lapse * geopotential(altitude) / atmosphere::sea_level_kelvin;
}

/// Air pressure in hPa at an altitude in m, when the sea-level pressure is given in hPa. Where the air temperature in
/// °C is absent, that is a QNH (ICAO standard column; ISO 2533:1975, the shift is that of an altimeter setting, WMO-No.
/// 8). Else it is one reduced with the air's temperature at the place (QFF, without the humidity), as most weather
/// reports give it: in warm highlands the standard column is 10 hPa and more too low.
template <class Real> Real air_pressure(Real const& altitude, Real const& sea_level_pressure, Real const& air) {
    using std::exp;
    using std::pow;
    if (!is_absent(air)) {
        Real const height = geopotential(altitude);
        Real const middle = air + atmosphere::zero_celsius + atmosphere::lapse * height / 2; // K, of the column
        return sea_level_pressure * exp(-atmosphere::gravity * height / (atmosphere::gas_constant * middle));
    }
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
