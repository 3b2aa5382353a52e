#pragma once
// Of gases and particles: what an analyser, a filter and a hood read, and the room.

#include "functions/catalogue/arguments/performance.hpp"
#include "functions/catalogue/carbon_shares.hpp"
#include "functions/catalogue/gases.hpp"

namespace hearthcell::arguments {

inline constexpr Argument parts_per_million{
    .name = "parts per million",
    .measure = Measure::gas_share,
    .low = 0,
    .high = 1e6,
    .help = {"Share of the gas in the air's volume", "Part du gaz dans le volume d’air",
             "Fracción del gas en el volumen del aire", "Sehemu ya gesi katika ujazo wa hewa"},
    .zero_is_doubtful = true,
};
inline constexpr Argument gas{
    .name = "gas",
    .measure = Measure::molar_mass,
    .low = 2,
    .high = 200,
    .help = {"The gas, as \"CO\", or its molar mass", "Le gaz, comme \"CO\", ou sa masse molaire",
             "El gas, como \"CO\", o su masa molar", "Gesi, kama \"CO\", au uzito wa moli yake"},
    .kind = ArgumentKind::number_or_name,
    .table = &gas_table,
    .lists_names = true,
};
inline constexpr Argument temperature_of_gas{
    .name = "temperature",
    .measure = Measure::temperature,
    .low = -40,
    .high = 1200,
    .help = {"Temperature of the cubic metre", "Température du mètre cube", "Temperatura del metro cúbico",
             "Halijoto ya mita hiyo ya ujazo"},
    .optional = true,
    .fallback = 25,
    .zero_is_doubtful = true,
};
inline constexpr Argument pressure_of_gas = optional(named(station_pressure, "air pressure",
                                                           {"Pressure of the air at the place, see STOVE.AIRPRESSURE",
                                                            "Pression de l’air sur place, voir STOVE.AIRPRESSURE",
                                                            "Presión del aire en el lugar, véase STOVE.AIRPRESSURE",
                                                            "Shinikizo la hewa mahali hapo, tazama STOVE.AIRPRESSURE"}),
                                                     1013.25);

// The carbon of the fuel, and the gases that it became.
inline constexpr Argument dry_mass_burned =
    named(wood_mass, "dry mass",
          {"Dry mass of the fuel burned, see STOVE.DRYMASS", "Masse sèche du combustible brûlé, voir STOVE.DRYMASS",
           "Masa seca del combustible quemado, véase STOVE.DRYMASS",
           "Uzito mkavu wa fueli iliyoungua, tazama STOVE.DRYMASS"});
inline constexpr Argument carbon_share{
    .name = "carbon share",
    .measure = Measure::mass_fraction,
    .low = 0.2,
    .high = 0.99,
    .help = {"Carbon by mass of dry fuel, or a name", "Carbone par masse de combustible sec, ou un nom",
             "Carbono por masa de combustible seco, o un nombre", "Kaboni kwa uzito wa fueli kavu, au jina"},
    .kind = ArgumentKind::number_or_name,
    .table = &carbon_table,
    .lists_names = true,
    .optional = true,
    .fallback = 0.5,
};
inline constexpr Argument char_carbon_share{
    .name = "char carbon share",
    .measure = Measure::mass_fraction,
    .low = 0.3,
    .high = 0.99,
    .help = {"Carbon by mass of char", "Carbone par masse de charbon", "Carbono por masa de carbón",
             "Kaboni kwa uzito wa makaa"},
    .optional = true,
    .fallback = 0.85,
};
inline constexpr Argument carbon{
    .name = "carbon",
    .measure = Measure::gas_mass,
    .low = 1,
    .high = 100000,
    .help = {"Carbon that left as gas, see STOVE.FUELCARBON", "Carbone parti en gaz, voir STOVE.FUELCARBON",
             "Carbono que salió como gas, véase STOVE.FUELCARBON",
             "Kaboni iliyotoka kama gesi, tazama STOVE.FUELCARBON"},
};
inline constexpr Argument carbon_dioxide{
    .name = "carbon dioxide",
    .measure = Measure::carbon_dioxide_share,
    .low = 100,
    .high = 250000,
    .help = {"Readings in the smoke, or their mean", "Mesures dans la fumée, ou leur moyenne",
             "Lecturas en el humo, o su media", "Vipimo ndani ya moshi, au wastani wao"},
    .kind = ArgumentKind::column,
    .headed = true,
};
inline constexpr Argument carbon_monoxide{
    .name = "carbon monoxide",
    .measure = Measure::gas_share,
    .low = 0,
    .high = 200000,
    .help = {"Readings in the same rows", "Mesures sur les mêmes lignes", "Lecturas en las mismas filas",
             "Vipimo katika safu mlalo zile zile"},
    .kind = ArgumentKind::column,
    .zero_is_doubtful = true,
    .headed = true,
};
inline constexpr Argument background_carbon_dioxide{
    .name = "background carbon dioxide",
    .measure = Measure::carbon_dioxide_share,
    .low = 0,
    .high = 250000,
    .help = {"Readings in the air that the stove draws in", "Mesures dans l’air aspiré par le foyer",
             "Lecturas en el aire que toma la cocina", "Vipimo katika hewa inayovutwa na jiko"},
    .kind = ArgumentKind::column,
    .zero_is_doubtful = true,
    .headed = true,
};
inline constexpr Argument background_carbon_monoxide{
    .name = "background carbon monoxide",
    .measure = Measure::gas_share,
    .low = 0,
    .high = 200000,
    .help = {"Readings in that air", "Mesures dans cet air", "Lecturas en ese aire", "Vipimo katika hewa hiyo"},
    .kind = ArgumentKind::column,
    .optional = true,
    .fallback = 0,
    .headed = true,
};

// A hood and a filter.
inline constexpr Argument concentrations{
    .name = "concentrations",
    .measure = Measure::concentration,
    .low = 0,
    .high = 2e6,
    .help = {"Readings in the duct, in the same rows as the times",
             "Mesures dans le conduit, sur les mêmes lignes que les temps",
             "Lecturas en el conducto, en las mismas filas que los tiempos",
             "Vipimo ndani ya bomba, katika safu mlalo zile zile za nyakati"},
    .kind = ArgumentKind::column,
    .headed = true,
};
inline constexpr Argument flow{
    .name = "flow",
    .measure = Measure::gas_flow,
    .low = 0.05,
    .high = 500,
    .help = {"Flow in the duct, velocity × area: one value or a column",
             "Débit du conduit, vitesse × section\u00a0: une valeur ou une colonne",
             "Caudal del conducto, velocidad × sección: un valor o una columna",
             "Mtiririko wa bomba, kasi × eneo: thamani moja au safu wima"},
    .kind = ArgumentKind::column,
    .headed = true,
};
inline constexpr Argument background{
    .name = "background",
    .measure = Measure::concentration,
    .low = 0,
    .high = 100000,
    .help = {"Concentration without the stove", "Concentration sans le foyer", "Concentración sin la cocina",
             "Ukolezi bila jiko"},
    .optional = true,
    .fallback = 0,
};
inline constexpr Argument filter_gain{
    .name = "filter gain",
    .measure = Measure::filter_mass,
    .low = 0.0001,
    .high = 10000,
    .help = {"Mass of the filter after, less its mass before", "Masse du filtre après, moins sa masse avant",
             "Masa del filtro después, menos su masa antes", "Uzito wa kichujio baadaye, kutoa uzito wake kabla"},
};
inline constexpr Argument duct_flow{
    .name = "duct flow",
    .measure = Measure::gas_flow,
    .low = 0.05,
    .high = 500,
    .help = {"Flow in the duct, velocity × area", "Débit du conduit, vitesse × section",
             "Caudal del conducto, velocidad × sección", "Mtiririko wa bomba, kasi × eneo"},
};
inline constexpr Argument sample_flow{
    .name = "sample flow",
    .measure = Measure::sample_flow,
    .low = 0.05,
    .high = 2000,
    .help = {"Flow through the filter, for as long as the stove emitted",
             "Débit à travers le filtre, tant que le foyer émettait",
             "Caudal a través del filtro, mientras la cocina emitía",
             "Mtiririko kupitia kichujio, muda wote jiko lilipotoa moshi"},
};
inline constexpr Argument blank_gain{
    .name = "blank gain",
    .measure = Measure::filter_mass,
    .low = -100,
    .high = 100,
    .help = {"Gain of a filter that only travelled along; may be negative",
             "Gain d’un filtre qui a seulement fait le voyage\u00a0; peut être négatif",
             "Ganancia de un filtro que solo hizo el viaje; puede ser negativa",
             "Ongezeko la kichujio kilichosafiri tu; linaweza kuwa hasi"},
    .optional = true,
    .fallback = 0,
};
inline constexpr Argument mass_emitted{
    .name = "mass emitted",
    .measure = Measure::ratio,
    .low = 1e-6,
    .high = 1e9,
    .help = {"What the stove emitted, in g or mg: the result is in the same",
             "Ce que le foyer a émis, en g ou mg\u00a0: le résultat est dans la même unité",
             "Lo que emitió la cocina, en g o mg: el resultado va en lo mismo",
             "Kilichotolewa na jiko, kwa g au mg: tokeo liko katika kizio hicho"},
};

} // namespace hearthcell::arguments
