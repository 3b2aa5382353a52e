#include "functions/catalogue/subjects.hpp"

#include "functions/catalogue/arguments/performance.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/catalogue/pot_materials.hpp"
#include "functions/kernels/heat.hpp"
#include "functions/kernels/saturation.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace sources;

constexpr Argument altitude_of_reading =
    optional(altitude, {"the reading is taken as it is", "la lecture est prise telle quelle",
                        "la lectura se toma tal cual", "usomaji unachukuliwa kama ulivyo"});

constexpr Function functions[] = {
    {.name = "AIRPRESSURE",
     .stored = "airPressure",
     .summary = {"Air pressure at an altitude", "Pression de l’air à une altitude", "Presión del aire a una altitud",
                 "Shinikizo la hewa katika mwinuko fulani"},
     .arguments = {altitude, optional(sea_level_pressure, 1013.25), air_temperature},
     .result = {.name = {"air pressure", "pression de l’air", "presión del aire", "shinikizo la hewa"},
                .measure = Measure::pressure,
                .low = station_pressure.low,
                .high = station_pressure.high},
     .kernel = numeric<[]<class Real>(Real const& height, Real const& at_sea, Real const& ambient) {
         return kernels::air_pressure(height, at_sea, ambient);
     }>,
     .equations = {Label{
         "standard column of ISO 2533 on the geometric altitude, shifted to the sea-level pressure as an altimeter is; "
         "with an air temperature p exp(-g H/(R (T + 0.0065 H/2)))",
         "colonne normale de l’ISO 2533 sur l’altitude géométrique, calée sur la pression au niveau de la mer comme "
         "l’est un altimètre\u00a0; avec une température de l’air p exp(-g H/(R (T + 0,0065 H/2)))",
         "columna estándar de ISO 2533 sobre la altitud geométrica, ajustada a la presión al nivel del mar como un "
         "altímetro; con una temperatura del aire p exp(-g H/(R (T + 0,0065 H/2)))",
         "safu sanifu ya ISO 2533 juu ya mwinuko wa kijiometri, ikirekebishwa kwa shinikizo usawa wa bahari kama "
         "altimita; pamoja na halijoto ya hewa p exp(-g H/(R (T + 0.0065 H/2)))"}},
     .sources = {iso_2533, altimeter, reduction_with_air},
     .examples =
         {{{1240}, {872.914, 0.0005}, "US Standard Atmosphere 1976, the same column, recomputed with fluids 1.0.22"},
          {{3000}, {701.2115, 0.0005}, "US Standard Atmosphere 1976, the same column, recomputed with fluids 1.0.22"},
          {{1200.226573, 1008}, {872.4847, 0.00005}, "Altimeter form at 1200 geopotential m, worked by hand"},
          {{1660, 1013.25, 19}, {837.458, 0.0005}, "The column of warm air, computed apart"}}},
    {.name = "BOILINGPOINT",
     .stored = "boilingPoint",
     .summary = {"Boiling point of water at an altitude", "Point d’ébullition de l’eau à une altitude",
                 "Punto de ebullición del agua a una altitud", "Kiwango cha kuchemka kwa maji katika mwinuko fulani"},
     .arguments = {altitude, optional(sea_level_pressure, 1013.25), air_temperature},
     .result = {.name = Term("local boiling point"), .measure = Measure::temperature, .low = 60, .high = 106},
     .kernel = numeric<[]<class Real>(Real const& height, Real const& at_sea, Real const& ambient) {
         return kernels::boiling_point(height, at_sea, ambient);
     }>,
     .equations = {Label{"saturation temperature (IAPWS-IF97, equation 31) at the air pressure of that altitude",
                         "température de saturation (IAPWS-IF97, équation 31) à la pression de l’air de cette altitude",
                         "temperatura de saturación (IAPWS-IF97, ecuación 31) a la presión del aire de esa altitud",
                         "halijoto ya mvuke uliojaa (IAPWS-IF97, mlinganyo 31) kwa shinikizo la hewa la mwinuko huo"}},
     .sources = {iapws_saturation, iso_2533, reduction_with_air},
     .examples = {{{1240}, {95.850, 0.001}, "ISO 2533 with IAPWS R7-97, recomputed with fluids and iapws"},
                  {{3000}, {89.977, 0.001}, "ISO 2533 with IAPWS R7-97, recomputed with fluids and iapws"},
                  {{5000}, {83.268, 0.001}, "ISO 2533 with IAPWS R7-97, recomputed with fluids and iapws"},
                  {{1900, 1018, 22}, {94.1767, 0.00005}, "The column of warm air, computed apart, with iapws 1.5.3"}}},
    {.name = "BOILINGPOINTAT",
     .stored = "boilingPointAt",
     .summary = {"Boiling point of water under a measured air pressure",
                 "Point d’ébullition de l’eau sous une pression de l’air mesurée",
                 "Punto de ebullición del agua a una presión del aire medida",
                 "Kiwango cha kuchemka kwa maji chini ya shinikizo la hewa lililopimwa"},
     .arguments = {station_pressure, altitude_of_reading},
     .result = {.name = Term("local boiling point"), .measure = Measure::temperature, .low = 60, .high = 106},
     .kernel = numeric<[]<class Real>(Real const& pressure, Real const& height) {
         return kernels::boiling_point_at_station(pressure, height);
     }>,
     .equations = {Label{
         "saturation temperature, IAPWS-IF97 equation 31", "température de saturation, IAPWS-IF97 équation 31",
         "temperatura de saturación, IAPWS-IF97 ecuación 31", "halijoto ya mvuke uliojaa, IAPWS-IF97 mlinganyo 31"}},
     .sources = {iapws_saturation},
     .examples = {{{1000}, {99.605919, 1e-6}, "IAPWS R7-97(2012), table 36: 372.755919 K at 0.1 MPa"},
                  {{872.91, 1240}, {95.850, 0.001}, "IAPWS R7-97, recomputed with iapws 1.5.3"},
                  {{1013, 2000}, {Error::number}, "A sea-level pressure cannot be read at 2000 m"}}},
    {.name = "WATERDENSITY",
     .stored = "waterDensity",
     .summary = {"Density of liquid water", "Masse volumique de l’eau liquide", "Densidad del agua líquida",
                 "Msongamano wa maji"},
     .arguments = {temperature},
     .result = {.name = {"density", "masse volumique", "densidad", "msongamano"},
                .measure = Measure::density,
                .low = 0.9,
                .high = 1.01},
     .kernel = numeric<[]<class Real>(Real const& t) { return kernels::liquid_density(t); }>,
     .equations = {Label{"IAPWS SR6-08, volume at 0.1 MPa", "IAPWS SR6-08, volume à 0,1 MPa",
                         "IAPWS SR6-08, volumen a 0,1 MPa", "IAPWS SR6-08, ujazo kwa 0.1 MPa"}},
     .sources = {iapws_liquid},
     .examples = {{{14.5}, {0.999176, 1e-6}, "IAPWS SR6-08(2011), recomputed with iapws 1.5.3"},
                  {{95}, {0.961887, 1e-6}, "IAPWS SR6-08(2011), recomputed with iapws 1.5.3"}}},
    {.name = "WATERMASS",
     .stored = "waterMass",
     .summary = {"Mass of a volume of water", "Masse d’un volume d’eau", "Masa de un volumen de agua",
                 "Uzito wa maji ya ujazo fulani"},
     .arguments = {{.name = "volume",
                    .measure = Measure::volume,
                    .low = 0.05,
                    .high = 500,
                    .help = {"Volume of the water, read at its temperature", "Volume de l’eau, lu à sa température",
                             "Volumen del agua, leído a su temperatura", "Ujazo wa maji, uliosomwa kwa halijoto yake"}},
                   temperature},
     .result = {.name = {"mass of the water", "masse de l’eau", "masa del agua", "uzito wa maji"},
                .measure = Measure::water_mass,
                .low = 40,
                .high = 510000},
     .kernel = numeric<[]<class Real>(Real const& volume, Real const& t) {
         return Real(1000 * (volume * kernels::liquid_density(t)));
     }>,
     .equations = {Label{"volume × density (IAPWS SR6-08)", "volume × masse volumique (IAPWS SR6-08)",
                         "volumen × densidad (IAPWS SR6-08)", "ujazo × msongamano (IAPWS SR6-08)"}},
     .sources = {iapws_liquid},
     .examples = {{{3.6, 14.5}, {3597.034, 0.005}, "3.6 L at 0.999176 kg/L (IAPWS SR6-08)"},
                  {{3.6, 25}, {3589.369, 0.005}, "3.6 L at 0.997047 kg/L (IAPWS SR6-08)"}}},
    {.name = "WATERHEAT",
     .stored = "waterHeat",
     .summary = {"Heat that water takes up between two temperatures; negative when it cools",
                 "Chaleur reçue par l’eau entre deux températures\u00a0; négative si elle refroidit",
                 "Calor que recibe el agua entre dos temperaturas; negativo si se enfría",
                 "Joto linalopokewa na maji kati ya halijoto mbili; hasi yanapopoa"},
     .arguments = {water_mass, start, end, method},
     .result = {.name = {"sensible heat", "chaleur sensible", "calor sensible", "joto la kupasha maji"},
                .measure = Measure::energy,
                .low = -3e5,
                .high = 3e5},
     .kernel = numeric<[]<class Real>(Real const& mass, Real const& from, Real const& to, Choice how) {
         return kernels::water_heat(mass, from, to, method_of(how));
     }>,
     .equations = {Label{"m [h(end) - h(start)], enthalpy of IAPWS SR6-08",
                         "m [h(fin) - h(début)], enthalpie de l’IAPWS SR6-08",
                         "m [h(final) - h(inicio)], entalpía de IAPWS SR6-08",
                         "m [h(mwisho) - h(mwanzo)], enthalpia ya IAPWS SR6-08"},
                   Label{"4.18 m (end - start)", "4,18 m (fin - début)", "4,18 m (final - inicio)",
                         "4.18 m (mwisho - mwanzo)"},
                   Label{"4.186 m (end - start)", "4,186 m (fin - début)", "4,186 m (final - inicio)",
                         "4.186 m (mwisho - mwanzo)"},
                   Label{"4.186 m (end - start)", "4,186 m (fin - début)", "4,186 m (final - inicio)",
                         "4.186 m (mwisho - mwanzo)"}},
     .sources = {iapws_liquid, iso_19867_1, wbt_4_2_3, wbt_3},
     .examples = {{{3600, 14.5, 95}, {1213.6351, 0.0005}, "IAPWS SR6-08: 3.6 kg × (398.1013 - 60.9804) kJ/kg"},
                  {{3600, 14.5, 95.85}, {1226.5194, 0.00005}, "IAPWS SR6-08, computed apart"},
                  {{3600, 14.5, 95.85, "ISO 19867-1"}, {1224.1548, 0.00005}, "4.18 × 3.6 × 81.35, by hand"},
                  {{3600, 14.5, 95.85, "WBT 4.2.3"}, {1225.9120, 0.00005}, "4.186 × 3.6 × 81.35, by hand"}}},
    {.name = "EVAPORATIONHEAT",
     .stored = "evaporationHeat",
     .summary = {"Heat that left with the steam", "Chaleur partie avec la vapeur", "Calor que salió con el vapor",
                 "Joto lililotoka na mvuke"},
     .arguments = {evaporated, boiling_point, method},
     .result = {.name = {"heat of evaporation", "chaleur d’évaporation", "calor de evaporación", "joto la uvukizaji"},
                .measure = Measure::energy,
                .low = 0,
                .high = 2e6},
     .kernel = numeric<[]<class Real>(Real const& mass, Real const& boils_at, Choice how) {
         return kernels::evaporation_heat(mass, boils_at, method_of(how));
     }>,
     .equations = {Label{"e r(boiling point), latent heat of IAPWS SR1-86",
                         "e r(point d’ébullition), chaleur latente de l’IAPWS SR1-86",
                         "e r(punto de ebullición), calor latente de IAPWS SR1-86",
                         "e r(kiwango cha kuchemka), joto fiche la IAPWS SR1-86"},
                   Label{"e r(boiling point), latent heat of IAPWS SR1-86",
                         "e r(point d’ébullition), chaleur latente de l’IAPWS SR1-86",
                         "e r(punto de ebullición), calor latente de IAPWS SR1-86",
                         "e r(kiwango cha kuchemka), joto fiche la IAPWS SR1-86"},
                   "2260 e", "2260 e"},
     .sources = {iapws_steam, iso_19867_1, wbt_4_2_3, wbt_3},
     .examples = {{{190, 95.85}, {430.8221, 0.00005}, "IAPWS SR1-86(1992), computed apart"},
                  {{1000, 90}, {2282.645, 0.0005}, "IAPWS SR1-86(1992), computed apart; within 0.2 of IAPWS-95"},
                  {{190, 95.85, "WBT 4.2.3"}, {429.4, 1e-9}, "2260 × 0.19, by hand"}}},
    {.name = "POTHEAT",
     .stored = "potHeat",
     .summary = {"Heat that a pot or lid takes up; no part of the useful heat unless you add it",
                 "Chaleur reçue par une marmite ou un couvercle\u00a0; hors chaleur utile, sauf si vous l’ajoutez",
                 "Calor que recibe una olla o una tapa; no es parte del calor útil salvo que usted lo sume",
                 "Joto linalopokewa na sufuria au kifuniko; si sehemu ya joto faafu usipolijumlisha"},
     .arguments = {{.name = "mass",
                    .measure = Measure::metal_mass,
                    .low = 10,
                    .high = 200000,
                    .help = {"Mass of the empty pot or lid", "Masse de la marmite vide ou du couvercle",
                             "Masa de la olla vacía o de la tapa", "Uzito wa sufuria tupu au kifuniko"}},
                   {.name = "material",
                    .measure = Measure::specific_heat,
                    .low = 0.1,
                    .high = 2.5,
                    .help = {"A material's name, as \"aluminium\", or its specific heat",
                             "Le nom d’un matériau, comme \"aluminium\", ou sa chaleur massique",
                             "El nombre de un material, como \"aluminium\", o su calor específico",
                             "Jina la nyenzo, kama \"aluminium\", au joto lake mahususi"},
                    .kind = ArgumentKind::number_or_name,
                    .table = &pot_material_table,
                    .lists_names = true},
                   named(start, "start",
                         {"Temperature of the pot at the start", "Température de la marmite au début",
                          "Temperatura de la olla al inicio", "Halijoto ya sufuria mwanzoni"}),
                   named(end, "end",
                         {"Temperature of the pot at the end", "Température de la marmite à la fin",
                          "Temperatura de la olla al final", "Halijoto ya sufuria mwishoni"})},
     .result = {.name = {"heat in the pot", "chaleur dans la marmite", "calor en la olla", "joto katika sufuria"},
                .measure = Measure::energy,
                .low = -6e4,
                .high = 6e4},
     .kernel = numeric<[]<class Real>(Real const& mass, Real const& specific_heat, Real const& from, Real const& to) {
         return kernels::pot_heat(mass, specific_heat, from, to);
     }>,
     .equations = {Label{"m c (end - start)", "m c (fin - début)", "m c (final - inicio)", "m c (mwisho - mwanzo)"}},
     .sources = {definition, handbook_heats},
     .examples = {{{760, "aluminium", 14.5, 95}, {54.87846, 1e-9}, "0.76 × 0.897 × 80.5, by hand"},
                  {{1200, 0.5, 14.5, 94.5}, {48, 1e-9}, "1.2 × 0.5 × 80, by hand"},
                  {{760, "unobtainium", 14.5, 95}, {Error::not_available}, "No such name in the table"}}},
};

} // namespace

std::span<Function const> site_and_water() {
    return functions;
}

} // namespace hearthcell
