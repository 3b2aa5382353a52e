#pragma once
// Heat of evaporation along the saturation line: IAPWS SR1-86(1992) (Wagner and Pruss, J. Phys. Chem. Ref. Data 22
// (1993) 783). Explicit, no iteration; within 0.21 kJ/kg of IAPWS-95 between 80 and 100 °C.

#include "functions/number/powers.hpp"
#include "functions/number/reason.hpp"

namespace hearthcell::kernels {

namespace saturated {
inline constexpr double critical_kelvin = 647.096;  // K
inline constexpr double critical_pressure = 22.064; // MPa
inline constexpr double critical_density = 322;     // kg/m³
inline constexpr double a1 = -7.85951783, a2 = 1.84408259, a3 = -11.7866497, a4 = 22.6807411, a5 = -15.9618719,
                        a6 = 1.80122502;
inline constexpr double b1 = 1.99274064, b2 = 1.09965342, b3 = -0.510839303, b4 = -1.75493479, b5 = -45.5170352,
                        b6 = -6.74694450e5;
inline constexpr double c1 = -2.03150240, c2 = -2.68302940, c3 = -5.38626492, c4 = -17.2991605, c5 = -44.7586581,
                        c6 = -63.9201063;

/// What the equations are written in: τ = 1 - T/Tc and its roots.
template <class Real> struct Distance {
    Real tau, half, third, sixth;
    explicit Distance(Real const& kelvin)
        : tau(1 - kelvin / critical_kelvin), half(root2(tau)), third(cube_root(tau)), sixth(cube_root(half)) {}
    static Real root2(Real const& x) {
        using std::sqrt;
        return sqrt(x);
    }
};

/// ln(p/pc) · T/Tc.
template <class Real> Real pressure_sum(Distance<Real> const& d) {
    return a1 * d.tau + a2 * (d.tau * d.half) + a3 * power<3>(d.tau) + a4 * (power<3>(d.tau) * d.half) +
           a5 * power<4>(d.tau) + a6 * (power<7>(d.tau) * d.half);
}

/// Density of the boiling liquid, kg/m³.
template <class Real> Real liquid_density(Distance<Real> const& d) {
    Real const& t = d.third;
    return critical_density * (1 + b1 * t + b2 * power<2>(t) + b3 * power<5>(t) + b4 * power<16>(t) +
                               b5 * power<43>(t) + b6 * power<110>(t));
}

/// Density of the dry saturated steam, kg/m³.
template <class Real> Real steam_density(Distance<Real> const& d) {
    using std::exp;
    Real const& t = d.sixth;
    return critical_density * exp(Real(c1 * power<2>(t) + c2 * power<4>(t) + c3 * power<8>(t) + c4 * power<18>(t) +
                                       c5 * power<37>(t) + c6 * power<71>(t)));
}
} // namespace saturated

/// Heat of evaporation in kJ/kg at a boiling point in °C, r = T dp/dT (1/ρ'' - 1/ρ').
template <class Real> Real latent_heat(Real const& boiling_point) {
    using namespace saturated;
    using std::exp;
    Real const kelvin = boiling_point + 273.15;
    Distance<Real> const d(kelvin);
    Real const log_pressure = critical_kelvin / kelvin * pressure_sum(d);
    Real const pressure = critical_pressure * exp(log_pressure);
    Real const slope_sum = a1 + 1.5 * a2 * d.half + 3 * a3 * power<2>(d.tau) + 3.5 * a4 * (power<2>(d.tau) * d.half) +
                           4 * a5 * power<3>(d.tau) + 7.5 * a6 * (power<6>(d.tau) * d.half);
    Real const slope_times_kelvin = -pressure * (log_pressure + slope_sum); // MPa
    return 1000 * slope_times_kelvin * (1 / steam_density(d) - 1 / liquid_density(d));
}

} // namespace hearthcell::kernels
