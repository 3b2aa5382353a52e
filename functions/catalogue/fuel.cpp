#include "functions/catalogue/subjects.hpp"

#include "functions/catalogue/arguments/performance.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/kernels/fuel.hpp"
#include "functions/kernels/fuel_batches.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace sources;

constexpr std::array<double, 3> batch_masses{420.0, 360.0, 170.0};
constexpr std::array<double, 3> batch_moistures{0.14, 0.18, 0.25};
constexpr std::array<double, 3> batch_left{110.0, blank, blank};
constexpr std::array<double, 5> spare_masses{420.0, 360.0, blank, 170.0, blank};
constexpr std::array<double, 5> spare_moistures{0.14, 0.18, blank, 0.25, blank};
constexpr std::array<double, 3> half_empty_moistures{0.14, blank, 0.25};

constexpr Function functions[] = {
    {.name = "CALORIFICVALUE",
     .stored = "calorificValue",
     .summary = {"Typical net calorific value of a dry fuel",
                 "Pouvoir calorifique inférieur typique d’un combustible sec",
                 "Poder calorífico inferior típico de un combustible seco",
                 "Thamani halisi ya kalori ya kawaida kwa fueli kavu"},
     .arguments = {fuel_name},
     .result = {.name = {"net calorific value, dry", "pouvoir calorifique inférieur, sec",
                         "poder calorífico inferior, seco", "thamani halisi ya kalori, kavu"},
                .measure = Measure::calorific_value,
                .low = 5,
                .high = 50},
     .kernel = numeric<[]<class Real>(Real const& value) { return value; }>,
     .equations = {"a table of typical values"},
     .sources = {iso_17225, ipcc_2006},
     .examples = {{{"coniferous wood"}, {19.1, 1e-12}, "ISO 17225-1, annex B (from memory)"},
                  {{"Leña dura"}, {18.9, 1e-12}, "Broad-leaf wood: ISO 17225-1, annex B (from memory)"},
                  {{"charcoal"}, {29.5, 1e-12}, "IPCC 2006, volume 2, table 1.2 (from memory)"},
                  {{"bark"}, {Error::not_available}, "Of conifers or of broad-leaf trees?"},
                  {{"old boots"}, {Error::not_available}, "No such name in the table"}}},
    {.name = "NETFROMGROSS",
     .stored = "netFromGross",
     .summary = {"Net calorific value of a dry fuel from its gross value",
                 "Pouvoir calorifique inférieur d’un combustible sec d’après le pouvoir supérieur",
                 "Poder calorífico inferior de un combustible seco a partir del superior",
                 "Thamani halisi ya kalori ya fueli kavu kutokana na thamani yake ya jumla"},
     .arguments = {gross, optional(hydrogen, 0.062), optional(oxygen_and_nitrogen, 0.441)},
     .result = {.name = {"net calorific value, dry", "pouvoir calorifique inférieur, sec",
                         "poder calorífico inferior, seco", "thamani halisi ya kalori, kavu"},
                .measure = Measure::calorific_value,
                .low = 1,
                .high = 55},
     .kernel = numeric<[]<class Real>(Real const& gross, Real const& hydrogen, Real const& rest) {
         return kernels::net_from_gross(gross, hydrogen, rest);
     }>,
     .equations = {"gross - 21.22 H - 0.08 (O + N)"},
     .sources = {iso_18125, iso_17225},
     .examples = {{{20.5, 0.063, 0.421},
                   {19.12946, 5e-6},
                   "ISO 18125 form: 20.5 - 2.122 × 0.63 - 0.08 × 0.421, by hand"},
                  {{20.0}, {18.64908, 5e-6}, "H 6.2 %, O + N 44.1 % of broad-leaf wood, by hand"}}},
    {.name = "NETASFIRED",
     .stored = "netAsFired",
     .summary = {"Net calorific value of moist fuel", "Pouvoir calorifique inférieur d’un combustible humide",
                 "Poder calorífico inferior de un combustible húmedo",
                 "Thamani halisi ya kalori ya fueli yenye unyevu"},
     .arguments = {net_dry, moisture},
     .result = {.name = {"net calorific value as fired", "pouvoir calorifique inférieur tel que brûlé",
                         "poder calorífico inferior tal como se quema", "thamani halisi ya kalori kama inavyochomwa"},
                .measure = Measure::calorific_value,
                .low = 0.1,
                .high = 50},
     .kernel = numeric<[]<class Real>(Real const& dry, Real const& m) { return kernels::net_as_fired(dry, m); }>,
     .equations = {"H (1 - M) - 2.443 M"},
     .sources = {iso_18125},
     .examples = {{{19.1, 0.2}, {14.7914, 5e-5}, "ISO 18125 form, by hand"},
                  {{18.7, 0.14}, {15.73998, 5e-6}, "ISO 18125 form, by hand"}}},
    {.name = "WOODENERGY",
     .stored = "woodEnergy",
     .summary = {"Energy of moist wood", "Énergie d’un bois humide", "Energía de la leña húmeda",
                 "Nishati ya kuni zenye unyevu"},
     .arguments = {wood_mass, moisture, net_dry, method, boils_at, air_of_method},
     .result = {.name = Term("fuel energy"), .measure = Measure::energy, .low = 0.1, .high = 1e7},
     .kernel = numeric<[]<class Real>(Real const& mass, Real const& m, Real const& dry, Real const& boils,
                                      Real const& ambient, Choice how) {
         return kernels::wood_energy(mass, m, dry, boils, ambient, method_of(how));
     }>,
     .equations = {"f [H (1 - M) - 2.443 M]", "f [H (1 - M) - 2.443 M]",
                   "f [H (1 - M) - M (4.186 (boiling point - air) + 2257)/1000]", "f (1 - 1.12 M) H"},
     .sources = {iso_18125, iso_19867_1, wbt_4_2_3, wbt_3},
     .examples = {{{520, 0.14, 18.7}, {8184.7896, 5e-5}, "520 × 15.73998, by hand"},
                  {{520, 0.14, 18.7, "WBT 4.2.3", 95.85, 14.5}, {8173.5397, 5e-5}, "Equation of the method, by hand"},
                  {{520, 0.14, 18.7, "WBT 3"}, {8199.2768, 1e-9}, "Equation of the method, by hand"},
                  {{520, 0.14, "pine"}, {8377.0856, 5e-5}, "520 × (19.13 × 0.86 - 2.443 × 0.14), by hand"},
                  {{520, 0.14, 18.7, "WBT 4.2.3"}, {Error::number}, "This method needs boiling point and air"},
                  {{520, 0.14, "LPG"}, {Error::number}, "Bottled gas holds no moisture that could be taken off"}}},
    {.name = "FUELENERGY",
     .stored = "fuelEnergy",
     .summary = {"Energy of weighed batches of fuel", "Énergie de charges de combustible pesées",
                 "Energía de cargas de combustible pesadas", "Nishati ya mafungu ya fueli yaliyopimwa"},
     .arguments =
         {column(wood_mass, "masses",
                 {"Mass of each batch laid out, moisture included",
                  "Masse de chaque charge préparée, humidité comprise", "Masa de cada carga preparada, con su humedad",
                  "Uzito wa kila fungu lililoandaliwa, pamoja na unyevu wake"}),
          column(moisture, "moistures",
                 {"Moisture of each batch (wet basis), or one for all",
                  "Humidité de chaque charge (base humide), ou une seule pour toutes",
                  "Humedad de cada carga (base húmeda), o una para todas",
                  "Unyevu wa kila fungu (msingi mbichi), au mmoja kwa yote"}),
          column(net_dry, "net calorific values",
                 {"Net calorific value of each dry batch, or its fuel's name; or one for all",
                  "Pouvoir calorifique inférieur de chaque charge sèche, ou nom du combustible\u00a0; ou un seul",
                  "Poder calorífico inferior de cada carga seca, o nombre del combustible; o uno para todas",
                  "Thamani halisi ya kalori ya kila fungu kavu, au jina la fueli; au moja kwa yote"}),
          method,
          optional(column(wood_left, "masses left",
                          {"Mass left over of each batch; empty where nothing was",
                           "Masse restante de chaque charge\u00a0; vide s’il ne reste rien",
                           "Masa sobrante de cada carga; vacío si no sobró nada",
                           "Uzito uliobaki wa kila fungu; tupu pale ambapo hakuna kilichobaki"}),
                   {"nothing was left", "il n’est rien resté", "no sobró nada", "hakuna kilichobaki"}),
          boils_at, air_of_method},
     .result = {.name = Term("fuel energy"), .measure = Measure::energy, .low = 0.1, .high = 1e7},
     .kernel = Columnar{kernels::fuel_energy},
     .equations = {"Σ f [H (1 - M) - 2.443 M]", "Σ f [H (1 - M) - 2.443 M]",
                   "Σ f [H (1 - M) - M (4.186 (boiling point - air) + 2257)/1000]", "Σ f (1 - 1.12 M) H"},
     .sources = {iso_18125, iso_19867_1, wbt_4_2_3, wbt_3},
     .examples = {{{batch_masses, batch_moistures, 18.7}, {14253.148, 5e-4}, "Three batches, by hand"},
                  {{spare_masses, spare_moistures, 18.7}, {14253.148, 5e-4}, "The same with unused rows"},
                  {{batch_masses, batch_moistures, 18.7, omitted, batch_left},
                   {12521.750, 5e-4},
                   "110 g of the first batch left, by hand"},
                  {{batch_masses, half_empty_moistures, 18.7}, {Error::value}, "A moisture is missing"}}},
    {.name = "CHARENERGY",
     .stored = "charEnergy",
     .summary = {"Energy left in the char", "Énergie restée dans le charbon", "Energía que queda en el carbón",
                 "Nishati iliyobaki katika makaa"},
     .arguments = {net_char, char_value},
     .result = {.name = Term("char energy"), .measure = Measure::energy, .low = -3e6, .high = 3e6},
     .kernel =
         numeric<[]<class Real>(Real const& mass, Real const& value) { return kernels::char_energy(mass, value); }>,
     .equations = {"net char × calorific value"},
     .sources = {definition, ipcc_2006},
     .examples = {{{40}, {1180, 1e-9}, "40 g × 29.5 MJ/kg, by hand"},
                  {{-25, 28}, {-700, 1e-9}, "A simmer that burned 25 g of earlier char, by hand"}}},
    {.name = "EQUIVALENTDRYFUEL",
     .stored = "dryWood",
     .once_called = "DRYWOOD",
     .summary = {"Dry fuel with the energy that a run set free",
                 "Combustible sec de même énergie que celle libérée par un essai",
                 "Combustible seco con la misma energía que liberó un ensayo",
                 "Fueli kavu yenye nishati sawa na iliyotolewa katika jaribio"},
     .arguments = {burned, moisture, net_dry, net_char, method, char_value, boils_at, air_of_method},
     .result = {.name = Term("equivalent dry fuel"), .measure = Measure::wood_mass, .low = 0, .high = 200000},
     .kernel = numeric<[]<class Real>(Real const& wood, Real const& m, Real const& dry, Real const& coal,
                                      Real const& coal_value, Real const& boils, Real const& ambient, Choice how) {
         return kernels::equivalent_dry_wood(wood, m, dry, coal, coal_value, boils, ambient, method_of(how));
     }>,
     .equations = {"(E - net char × char value)/H, E as in STOVE.WOODENERGY", "not defined by this standard",
                   "(E - net char × char value)/H, E as in STOVE.WOODENERGY", "f (1 - 1.12 M) - 1.5 net char"},
     .sources = {iso_18125, wbt_4_2_3, wbt_3},
     .examples = {{{520, 0.14, 18.7, 40}, {374.5877, 5e-5}, "(8184.7896 - 1180)/18.7, by hand"},
                  {{520, 0.14, 18.7, 40, "WBT 4.2.3", omitted, 95.85, 14.5}, {373.9861, 5e-5}, "By hand"},
                  {{520, 0.14, 18.7, 40, "WBT 3"}, {378.464, 1e-9}, "520 × 0.8432 - 60, by hand"},
                  {{330, 0.14, 18.7, -25, "WBT 4.2.3", omitted, 95.85, 14.5}, {316.8211, 5e-5}, "A simmer, by hand"},
                  {{520, 0.14, 18.7, 40, "ISO 19867-1"}, {Error::not_available}, "Not defined by this standard"}}},
    {.name = "AUXILIARYENERGY",
     .stored = "auxiliaryEnergy",
     .summary = {"Energy that a fan drew", "Énergie consommée par un ventilateur", "Energía que consumió un ventilador",
                 "Nishati iliyotumiwa na feni"},
     .arguments = {fan_power, minutes, optional(charging, 1)},
     .result = {.name = Term("auxiliary energy"), .measure = Measure::energy, .low = 0, .high = 1e6},
     .kernel = numeric<[]<class Real>(Real const& watts, Real const& time, Real const& charging) {
         return kernels::auxiliary_energy(watts, time, charging);
     }>,
     .equations = {"P t/efficiency of charging"},
     .sources = {definition},
     .examples = {{{3, 40}, {7.2, 1e-12}, "3 W for 40 min, by hand"}, {{3, 40, 0.8}, {9, 1e-12}, "By hand"}}},
};

} // namespace

std::span<Function const> fuel() {
    return functions;
}

} // namespace hearthcell
