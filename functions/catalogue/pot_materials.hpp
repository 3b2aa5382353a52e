#pragma once
// The materials of pots and lids that a name stands for, with their specific heats.

#include "functions/catalogue/names.hpp"
#include "functions/catalogue/sources.hpp"

namespace hearthcell {

inline constexpr Wording near_room_temperature{"near 25 °C", "vers 25 °C", "cerca de 25 °C", "karibu na 25 °C"};

/// kJ/(kg K). A word that stands in several rows is ambiguous, and refused.
inline constexpr Named pot_material_rows[] = {
    {.name = {"aluminium", "aluminium", "aluminio", "alumini"},
     .value = 0.897,
     .source = sources::handbook_heats,
     .what = near_room_temperature,
     .also = {"aluminum", "cast aluminium", "cast aluminum", "alu", "fonte d’aluminium", "aluminio fundido"}},
    {.name = {"stainless steel", "acier inoxydable", "acero inoxidable", "chuma cha pua"},
     .value = 0.50,
     .source = sources::handbook_heats,
     .what = near_room_temperature,
     .also = {"stainless", "inox", "acier inox", "acero inox", "steel", "acier", "acero", "chuma"}},
    {.name = {"mild steel", "acier doux", "acero dulce", "chuma laini"},
     .value = 0.46,
     .source = sources::handbook_heats,
     .what = near_room_temperature,
     .also = {"carbon steel", "acier au carbone", "acero al carbono", "steel", "acier", "acero", "chuma"}},
    {.name = {"enamelled steel", "acier émaillé", "acero esmaltado", "chuma chenye enameli"},
     .value = 0.50,
     .source = sources::handbook_heats,
     .what = near_room_temperature,
     .also = {"enameled steel", "enamel", "émail", "tôle émaillée", "esmalte", "steel", "acier", "acero", "chuma"}},
    {.name = {"iron", "fer", "hierro", "chuma halisi"},
     .value = 0.449,
     .source = sources::handbook_heats,
     .what = near_room_temperature,
     .also = {"pure iron", "chuma"}},
    {.name = {"cast iron", "fonte", "hierro fundido", "chuma cha kusubu"},
     .value = 0.46,
     .source = sources::handbook_heats,
     .what = near_room_temperature,
     .also = {"fonte de fer", "hierro colado", "fundición"}},
    {.name = {"copper", "cuivre", "cobre", "shaba nyekundu"},
     .value = 0.385,
     .source = sources::handbook_heats,
     .what = near_room_temperature,
     .also = {"shaba"}},
    {.name = {"brass", "laiton", "latón", "shaba ya njano"},
     .value = 0.38,
     .source = sources::handbook_heats,
     .what = near_room_temperature,
     .also = {"shaba"}},
    {.name = {"earthenware", "terre cuite", "barro cocido", "udongo wa kuchoma"},
     .value = 0.85,
     .source = sources::handbook_heats,
     .what = near_room_temperature,
     .also = {"clay", "fired clay", "terracotta", "ceramic", "argile cuite", "céramique", "barro", "cerámica", "udongo",
              "chungu"}},
    {.name = {"glass", "verre", "vidrio", "kioo"},
     .value = 0.83,
     .source = sources::handbook_heats,
     .what = near_room_temperature,
     .also = {"soda glass"}},
};
inline constexpr auto pot_material_fingerprints = fingerprints_of<pot_material_rows>();
inline constexpr NameTable pot_material_table{"POTHEAT", Measure::specific_heat, pot_material_rows,
                                              pot_material_fingerprints};

} // namespace hearthcell
