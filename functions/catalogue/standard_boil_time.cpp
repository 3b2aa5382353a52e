#include "functions/catalogue/subjects.hpp"

#include "functions/catalogue/arguments/performance.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/kernels/boil_time.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace sources;

constexpr Function functions[] = {
    {.name = "NORMALBOILTIME",
     .stored = "normalBoilTime",
     .summary = {"Boil time scaled to a standard rise and mass of water",
                 "Temps d’ébullition ramené à une élévation et à une masse d’eau normalisées",
                 "Tiempo de ebullición ajustado a una elevación y una masa de agua estándar",
                 "Muda wa kuchemka kwa ongezeko la halijoto na uzito wa maji sanifu"},
     .arguments = {minutes, start, end, optional(standard_rise, 75),
                   optional(water_mass, {"the time is not scaled by mass", "le temps n’est pas ramené à une masse",
                                         "el tiempo no se ajusta por la masa", "muda haulinganishwi kwa uzito"}),
                   optional(standard_mass, {"the time is not scaled by mass", "le temps n’est pas ramené à une masse",
                                            "el tiempo no se ajusta por la masa", "muda haulinganishwi kwa uzito"})},
     .result = {.name = {"normalised boil time", "temps d’ébullition normalisé", "tiempo de ebullición normalizado",
                         "muda wa kuchemka uliosanifishwa"},
                .measure = Measure::minutes,
                .low = 0.1,
                .high = 14400},
     .kernel = numeric<[]<class Real>(Real const& time, Real const& from, Real const& to, Real const& rise,
                                      Real const& water, Real const& standard) {
         return kernels::normal_boil_time(time, from, to, rise, water, standard);
     }>,
     .equations = {Label{
         "time × standard rise/(end - start), × standard mass/water mass where given",
         "durée × élévation de référence/(fin - début), × masse de référence/masse d’eau si elles sont données",
         "tiempo × elevación de referencia/(final - inicio), × masa de referencia/masa de agua si se dan",
         "muda × ongezeko la rejeleo/(mwisho - mwanzo), × uzito wa rejeleo/uzito wa maji zikitolewa"}},
     .sources = {wbt_3, wbt_4_2_3},
     .examples = {{{32, 14.5, 95.85}, {29.502151, 5e-7}, "32 × 75/81.35, by hand"},
                  {{22.5, 24, 89.5, 75, 3000, 3600}, {30.916031, 5e-7}, "22.5 × 75/65.5 × 3.6/3, by hand"},
                  {{22.5, 24, 89.5}, {25.763359, 5e-7}, "22.5 × 75/65.5, by hand"},
                  {{22.5, 95, 14.5}, {Error::number}, "The water did not warm up"}}},
    {.name = "MODELBOILTIME",
     .stored = "modelBoilTime",
     .summary = {"Boil time under standard conditions, with heat loss",
                 "Temps d’ébullition dans des conditions normalisées, avec perte de chaleur",
                 "Tiempo de ebullición en condiciones estándar, con pérdida de calor",
                 "Muda wa kuchemka katika hali sanifu, pamoja na upotevu wa joto"},
     .arguments = {minutes, start, end, air, water_mass, heat_loss, pot_capacity,
                   optional(named(start, "standard start",
                                  {"Start temperature that the time is carried to",
                                   "Température de départ à laquelle le temps est ramené",
                                   "Temperatura inicial a la que se ajusta el tiempo",
                                   "Halijoto ya mwanzo ambayo muda unalinganishwa nayo"}),
                            25),
                   optional(named(end, "standard end",
                                  {"End temperature that the time is carried to",
                                   "Température finale à laquelle le temps est ramené",
                                   "Temperatura final a la que se ajusta el tiempo",
                                   "Halijoto ya mwisho ambayo muda unalinganishwa nayo"}),
                            100),
                   optional(standard_mass, {"the mass of water of the test", "la masse d’eau de l’essai",
                                            "la masa de agua del ensayo", "uzito wa maji ya jaribio"}),
                   optional(named(air, "standard air",
                                  {"Temperature of the air that the time is carried to",
                                   "Température de l’air à laquelle le temps est ramené",
                                   "Temperatura del aire a la que se ajusta el tiempo",
                                   "Halijoto ya hewa ambayo muda unalinganishwa nayo"}),
                            {"the standard start temperature", "la température de départ normalisée",
                             "la temperatura inicial estándar", "halijoto sanifu ya mwanzo"})},
     .result = {.name = {"boil time under standard conditions", "temps d’ébullition dans des conditions normalisées",
                         "tiempo de ebullición en condiciones estándar", "muda wa kuchemka katika hali sanifu"},
                .measure = Measure::minutes,
                .low = 0.1,
                .high = 14400},
     .kernel =
         numeric<[]<class Real>(Real const& time, Real const& from, Real const& to, Real const& ambient,
                                Real const& water, Real const& loss, Real const& pot, Real const& standard_from,
                                Real const& standard_to, Real const& standard_water, Real const& standard_ambient) {
             kernels::Heating<Real> const test{water, from, to, ambient};
             kernels::Heating<Real> const standard{is_absent(standard_water) ? water : standard_water, standard_from,
                                                   standard_to,
                                                   is_absent(standard_ambient) ? standard_from : standard_ambient};
             return kernels::model_boil_time(time, test, standard, loss, pot);
         }>,
     .equations = {Label{
         "C dT/dt = P - UA (T - air): P from the test, the time from P at standard conditions",
         "C dT/dt = P - UA (T - air)\u00a0: P d’après l’essai, la durée d’après P aux conditions de référence",
         "C dT/dt = P - UA (T - aire): P del ensayo, el tiempo de P en condiciones de referencia",
         "C dT/dt = P - UA (T - hewa): P kutoka jaribio, muda kutoka P kwa hali za rejeleo"}},
     .sources = {lumped_heating, iapws_liquid},
     .examples =
         {{{32, 14.5, 95.85, 16, 3600, 4, 380}, {29.121158, 5e-7}, "The closed form, computed apart"},
          {{22.5, 24, 94.5, 23, 3000, 4, 380, 25, 98, 3500}, {27.143943, 5e-7}, "The closed form, computed apart"},
          {{22.5, 24, 94.5, 23, 3000, 8, 380, 25, 98, 3500}, {27.279083, 5e-7}, "The closed form, computed apart"},
          {{90, 14.5, 78, 16, 3600, 14, 380}, {Error::number}, "874.7 W against a loss of 1050 W: never boils"}}},
};

} // namespace

std::span<Function const> standard_boil_time() {
    return functions;
}

} // namespace hearthcell
