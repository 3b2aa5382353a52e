#pragma once
// Liquid water at 0.1 MPa: IAPWS SR6-08(2011), good from -20 to 110 °C. It describes the metastable liquid too, so
// a probe that reads half a degree above the boiling point does not fall into steam. Between 0.06 and 0.1 MPa the
// enthalpy changes by less than 0.04 kJ/kg, so that one pressure serves all altitudes.

#include "functions/number/powers.hpp"
#include "functions/number/reason.hpp"

namespace hearthcell::kernels {

namespace liquid {
inline constexpr double gas_constant = 0.46151805; // kJ/(kg K)
inline constexpr double reference = 10;            // K
inline constexpr double pressure = 100;            // kPa
inline constexpr double a1 = -1.661470539e5, a2 = 2.708781640e6, a3 = -1.557191544e8, a5 = 1.93763157e-2,
                        a6 = 6.74458446e3, a7 = -2.22521604e5, a8 = 1.00231247e8, a9 = -1.63552118e9,
                        a10 = 8.32299658e9;
inline constexpr double b1 = -8.237426256e-1, b2 = 1.908956353, b3 = -2.017597384, b4 = 8.546361348e-1,
                        b5 = 5.78545292e-3, b6 = -1.53195665e-2, b7 = 3.11337859e-2, b8 = -4.23546241e-2,
                        b9 = 3.38713507e-2, b10 = -1.19946761e-2;
inline constexpr double c1 = -2.452093414e2, c3 = -8.983025854;

template <class Real> Real alpha(Real const& kelvin) {
    return reference / (593 - kelvin);
}
template <class Real> Real beta(Real const& kelvin) {
    return reference / (kelvin - 232);
}
} // namespace liquid

/// Specific enthalpy in kJ/kg at a temperature in °C.
template <class Real> Real liquid_enthalpy(Real const& temperature) {
    using namespace liquid;
    Real const kelvin = temperature + 273.15;
    Real const tau = kelvin / reference;
    Real const a = alpha(kelvin);
    Real const b = beta(kelvin);
    // h = g + T s. In T s every term of g in τ and in τ ln τ cancels, except -c3 τ.
    Real const g = c1 + a1 * power<4>(a) + a2 * power<5>(a) + a3 * power<7>(a) + b1 * power<2>(b) + b2 * power<3>(b) +
                   b3 * power<4>(b) + b4 * power<5>(b);
    Real const s = c3 + 4 * a1 * power<5>(a) + 5 * a2 * power<6>(a) + 7 * a3 * power<8>(a) - 2 * b1 * power<3>(b) -
                   3 * b2 * power<4>(b) - 4 * b3 * power<5>(b) - 5 * b4 * power<6>(b);
    return gas_constant * reference * (g - tau * s);
}

/// Density in kg/L at a temperature in °C.
template <class Real> Real liquid_density(Real const& temperature) {
    using namespace liquid;
    Real const kelvin = temperature + 273.15;
    Real const a = alpha(kelvin);
    Real const b = beta(kelvin);
    Real const sum = a5 + a6 * power<4>(a) + a7 * power<5>(a) + a8 * power<7>(a) + a9 * power<8>(a) +
                     a10 * power<9>(a) + b5 * b + b6 * power<2>(b) + b7 * power<3>(b) + b8 * power<4>(b) +
                     b9 * power<5>(b) + b10 * power<6>(b);
    return pressure / (gas_constant * reference * sum) / 1000;
}

} // namespace hearthcell::kernels
