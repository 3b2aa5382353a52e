#pragma once
// Typical values that a name stands for. All from memory of the handbooks named; measure your own fuel where you can.

#include "functions/catalogue/sources.hpp"

namespace hearthcell {

/// Net calorific value of the dry fuel, MJ/kg.
inline constexpr Named fuel_rows[] = {
    {"coniferous wood", 19.1, sources::iso_17225},
    {"broad-leaf wood", 18.9, sources::iso_17225},
    {"coniferous bark", 19.2, sources::iso_17225},
    {"broad-leaf bark", 19.0, sources::iso_17225},
    {"coniferous logging residues", 19.2, sources::iso_17225},
    {"broad-leaf logging residues", 18.7, sources::iso_17225},
    {"willow", 18.4, sources::iso_17225},
    {"poplar", 18.4, sources::iso_17225},
    {"straw", 17.4, sources::iso_17225},
    {"charcoal", 29.5, sources::ipcc_2006},
    {"kerosene", 43.8, sources::ipcc_2006},
    {"liquefied petroleum gas", 47.3, sources::ipcc_2006},
    {"paraffin wax", 42.0, sources::wax},
};
inline constexpr NameTable fuel_table{"fuel", fuel_rows};

/// Specific heat near 25 °C, kJ/(kg K).
inline constexpr Named pot_material_rows[] = {
    {"aluminium", 0.897, sources::handbook_heats},  {"stainless steel", 0.50, sources::handbook_heats},
    {"mild steel", 0.46, sources::handbook_heats},  {"enamelled steel", 0.50, sources::handbook_heats},
    {"iron", 0.449, sources::handbook_heats},       {"cast iron", 0.46, sources::handbook_heats},
    {"copper", 0.385, sources::handbook_heats},     {"brass", 0.38, sources::handbook_heats},
    {"earthenware", 0.85, sources::handbook_heats}, {"glass", 0.83, sources::handbook_heats},
};
inline constexpr NameTable pot_material_table{"pot material", pot_material_rows};

} // namespace hearthcell
