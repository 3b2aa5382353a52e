#pragma once
// The constants of published methods, each named once. Documents and equations are from memory until someone has opened
// them; f fuel, m water and e water evaporated, M moisture on wet basis, as in README.md.

namespace hearthcell::kernels {

// ISO 18125:2017, net calorific value at constant pressure: H = gross - 21.22 [H] - 0.08 [O + N] of the dry fuel, and
// H (1 - M) - 2.443 M of the fuel as fired. MJ/kg, mass fractions.
namespace iso_18125 {
inline constexpr double per_hydrogen = 21.22;
inline constexpr double per_oxygen_and_nitrogen = 0.08;
inline constexpr double evaporation = 2.443; // of water at 25 °C
} // namespace iso_18125

// ISO 19867-1:2018, useful energy: c m (T2 - T1) + e r.
namespace iso_19867_1 {
inline constexpr double specific_heat = 4.18; // c of water, kJ/(kg K)
} // namespace iso_19867_1

// Water Boiling Test 4.2.3 (2014) and 3.0 (2007), thermal efficiency: [4.186 m (T2 - T1) + 2260 e]/(dry wood × H).
namespace wbt {
inline constexpr double specific_heat = 4.186; // of water, kJ/(kg K)
inline constexpr double evaporation = 2260;    // of water, kJ/kg
} // namespace wbt

// Water Boiling Test 4.2.3, effective calorific value: H (1 - M) - M [4.186 (Tb - Ta) + 2257].
namespace wbt_4_2_3 {
inline constexpr double evaporation_of_moisture = 2257; // kJ/kg
} // namespace wbt_4_2_3

// Water Boiling Test 3.0, equivalent dry wood: f (1 - 1.12 M) - 1.5 × char.
namespace wbt_3 {
inline constexpr double lost_to_moisture = 1.12; // fuel by moisture, both as mass: it is no wood, and has to evaporate
inline constexpr double wood_by_char = 1.5;      // wood that has the energy of as much char
} // namespace wbt_3

} // namespace hearthcell::kernels
