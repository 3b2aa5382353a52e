#pragma once
// All tables of names, for whoever looks a name up wherever it may stand.

#include "functions/catalogue/fuels.hpp"
#include "functions/catalogue/pot_materials.hpp"

namespace hearthcell {

inline constexpr std::array<NameTable const*, 2> name_tables{&fuel_table, &pot_material_table};

} // namespace hearthcell
