#pragma once
// All tables of names, for whoever looks a name up wherever it may stand.

#include "functions/catalogue/carbon_shares.hpp"
#include "functions/catalogue/fuels.hpp"
#include "functions/catalogue/gases.hpp"
#include "functions/catalogue/pot_materials.hpp"

namespace hearthcell {

inline constexpr std::array<NameTable const*, 4> name_tables{&fuel_table, &carbon_table, &pot_material_table,
                                                             &gas_table};

} // namespace hearthcell
