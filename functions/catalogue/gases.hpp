#pragma once
// The gases that a name stands for, with their molar masses.

#include "functions/catalogue/names.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/kernels/gas.hpp"

namespace hearthcell {

inline constexpr Wording of_its_atoms{"the sum of its atoms", "la somme de ses atomes", "la suma de sus átomos",
                                      "jumla ya atomi zake"};

/// g/mol.
inline constexpr Named gas_rows[] = {
    {.name = {"carbon monoxide", "monoxyde de carbone", "monóxido de carbono", "kaboni monoksidi"},
     .value = kernels::molecule::carbon_monoxide,
     .source = sources::atomic_weights,
     .what = of_its_atoms,
     .also = {"CO", "monoxyde", "monóxido", "monoksidi ya kaboni", "kabonimonoksaidi"}},
    {.name = {"carbon dioxide", "dioxyde de carbone", "dióxido de carbono", "kaboni dioksidi"},
     .value = kernels::molecule::carbon_dioxide,
     .source = sources::atomic_weights,
     .what = of_its_atoms,
     .also = {"CO2", "CO₂", "gaz carbonique", "anhídrido carbónico", "gas carbónico", "dioksidi ya kaboni",
              "kabonidioksaidi"}},
    {.name = {"methane", "méthane", "metano", "methani"},
     .value = kernels::molecule::methane,
     .source = sources::atomic_weights,
     .what = of_its_atoms,
     .also = {"CH4", "CH₄", "metani"}},
    {.name = {"nitric oxide", "monoxyde d’azote", "monóxido de nitrógeno", "nitrojeni monoksidi"},
     .value = kernels::molecule::nitric_oxide,
     .source = sources::atomic_weights,
     .what = of_its_atoms,
     .also = {"NO", "nitrogen monoxide", "oxyde nitrique", "óxido nítrico", "monoksidi ya nitrojeni"}},
    {.name = {"nitrogen dioxide", "dioxyde d’azote", "dióxido de nitrógeno", "nitrojeni dioksidi"},
     .value = kernels::molecule::nitrogen_dioxide,
     .source = sources::atomic_weights,
     .what = of_its_atoms,
     .also = {"NO2", "NO₂", "dioksidi ya nitrojeni"}},
    {.name = {"sulphur dioxide", "dioxyde de soufre", "dióxido de azufre", "salfa dioksidi"},
     .value = kernels::molecule::sulphur_dioxide,
     .source = sources::atomic_weights,
     .what = of_its_atoms,
     .also = {"SO2", "SO₂", "sulfur dioxide", "anhydride sulfureux", "dioksidi ya salfa", "sulfuri dioksidi"}},
};
inline constexpr auto gas_fingerprints = fingerprints_of<gas_rows>();
inline constexpr NameTable gas_table{"GASCONCENTRATION", Measure::molar_mass, gas_rows, gas_fingerprints};

} // namespace hearthcell
