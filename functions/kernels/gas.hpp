#pragma once
// Gases: molar masses, how much of one stands in a volume of air, and where the carbon of a fuel went.

#include "functions/number/reason.hpp"

namespace hearthcell::kernels {

/// g/mol. IUPAC standard atomic weights 2021; of the elements whose weight is an interval, its conventional value.
namespace atom {
inline constexpr double hydrogen = 1.008, carbon = 12.011, nitrogen = 14.007, oxygen = 15.999, sulphur = 32.06;
}
/// g/mol, made of its atoms, so that what goes in comes out again.
namespace molecule {
inline constexpr double carbon_monoxide = atom::carbon + atom::oxygen;
inline constexpr double carbon_dioxide = atom::carbon + 2 * atom::oxygen;
inline constexpr double methane = atom::carbon + 4 * atom::hydrogen;
inline constexpr double nitric_oxide = atom::nitrogen + atom::oxygen;
inline constexpr double nitrogen_dioxide = atom::nitrogen + 2 * atom::oxygen;
inline constexpr double sulphur_dioxide = atom::sulphur + 2 * atom::oxygen;
} // namespace molecule

inline constexpr double molar_gas_constant = 8.31446261815324; // J/(mol K), exact in the SI of 2019

/// mg/m³ of an ideal gas: parts per million of the volume, g/mol, °C and hPa of the air that holds it.
template <class Real>
Real gas_concentration(Real const& ppm, Real const& molar_mass, Real const& temperature, Real const& pressure) {
    return 0.1 * (ppm * molar_mass * pressure) / (molar_gas_constant * (temperature + 273.15));
}

/// g of carbon that left the stove: that of the dry fuel less that of the char; masses in g, shares as fractions.
template <class Real>
Real fuel_carbon(Real const& dry_fuel, Real const& share, Real const& net_char, Real const& char_share) {
    Real const carbon = dry_fuel * share - net_char * char_share;
    return value_of(carbon) > 0 ? carbon : Real(failure(Reason::char_holds_the_carbon));
}

/// What a fire made of its carbon: masses in g, and the share of it that burned to the end.
template <class Real> struct BurnedCarbon { Real dioxide, monoxide, efficiency; };

/// All carbon left as one of the two gases, in the proportion of what each stands above its background. ppm; a failure
/// in all places where one does not stand above it.
template <class Real>
BurnedCarbon<Real> burned_carbon(Real const& carbon, Real const& dioxide, Real const& monoxide,
                                 Real const& background_dioxide, Real const& background_monoxide) {
    Real const more_dioxide = dioxide - background_dioxide, more_monoxide = monoxide - background_monoxide;
    if (value_of(more_dioxide) <= 0 || value_of(more_monoxide) < 0) {
        Real const none = failure(Reason::background_above_reading, value_of(more_dioxide) <= 0 ? 1 : 2);
        return {none, none, none};
    }
    Real const efficiency = more_dioxide / (more_dioxide + more_monoxide);
    Real const moles = carbon / atom::carbon;
    return {moles * efficiency * molecule::carbon_dioxide, moles * (1 - efficiency) * molecule::carbon_monoxide,
            efficiency};
}

/// mg that passed a duct, from what a filter caught of a sample: mg, m³/min, L/min.
template <class Real>
Real filter_emission(Real const& gain, Real const& duct_flow, Real const& sample_flow, Real const& blank_gain) {
    if (value_of(gain) <= value_of(blank_gain))
        return failure(Reason::filter_below_blank);
    if (value_of(sample_flow) >= 1000 * value_of(duct_flow))
        return failure(Reason::sample_above_duct);
    return (gain - blank_gain) * (1000 * duct_flow / sample_flow);
}

/// Of what a kilogram or a megajoule gives, from grams or kilojoules.
template <class Real> Real per_thousand(Real const& mass, Real const& amount) {
    return 1000 * mass / amount;
}

} // namespace hearthcell::kernels
