#include "functions/catalogue/subjects.hpp"

#include "functions/catalogue/arguments/emissions.hpp"
#include "functions/catalogue/arguments/log.hpp"
#include "functions/catalogue/arguments/part.hpp"
#include "functions/catalogue/room_concentration.hpp"
#include "functions/diagnosis/emission_remarks.hpp"
#include "functions/kernels/carbon_balance.hpp"
#include "functions/kernels/log/hood.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace sources;

constexpr Wording monoxide_kills{"Carbon monoxide kills unseen: ventilate, have an alarm.",
                                 "Le monoxyde de carbone tue sans prévenir\u00a0: aérez, ayez un détecteur.",
                                 "El monóxido de carbono mata sin avisar: ventile y tenga una alarma.",
                                 "Kaboni monoksidi huua bila kuonekana: ingiza hewa, uwe na king’ora."};

// Invented: a fire of 45 minutes below a hood, and the readings of an analyser in its duct.
constexpr std::array<double, 3> dioxide_in_smoke{8200.0, 9800.0, 9000.0};
constexpr std::array<double, 3> monoxide_in_smoke{350.0, 420.0, 370.0};
constexpr std::array<Expected, 3> gases_of_a_fire{{{665.29246, 5e-5}, {18.720175, 5e-6}, {0.95766129, 5e-8}}};
constexpr std::array<double, 6> minutes_of_fire{0.0, 5.0, 15.0, 25.0, 40.0, 45.0};
constexpr std::array<double, 6> monoxide_in_duct{12.0, 96.0, 74.0, 88.0, 61.0, 14.0};
constexpr std::array<double, 6> flow_in_duct{5.1, 5.0, 5.0, 4.9, 5.0, 5.1};
constexpr std::array<double, 6> clean_air{0.0, 0.0, 0.0, 0.0, 0.0, 0.0};

constexpr Function functions[] = {
    {.name = "GASCONCENTRATION",
     .stored = "gasConcentration",
     .summary = {"Mass of a gas in a cubic metre, from parts per million",
                 "Masse d’un gaz dans un mètre cube, d’après les parties par million",
                 "Masa de un gas en un metro cúbico, a partir de partes por millón",
                 "Uzito wa gesi katika mita ya ujazo, kutokana na sehemu kwa milioni"},
     .arguments = {parts_per_million, gas, temperature_of_gas, pressure_of_gas},
     .result = {.name = {"mass concentration", "concentration massique", "concentración másica", "ukolezi wa uzito"},
                .measure = Measure::concentration,
                .low = 0,
                .high = 1e7},
     .kernel = numeric<[]<class Real>(Real const& ppm, Real const& molar, Real const& warm, Real const& pressure) {
         return kernels::gas_concentration(ppm, molar, warm, pressure);
     }>,
     .equations = {Label{"ppm × molar mass × pressure/(R T)", "ppm × masse molaire × pression/(R T)",
                         "ppm × masa molar × presión/(R T)", "ppm × uzito wa moli × shinikizo/(R T)"}},
     .sources = {ideal_gas, atomic_weights},
     .caution = monoxide_kills,
     .examples = {{{35, "CO", 25, 1013.25},
                   {40.0708695, 5e-7},
                   "35 × 28.010 × 101.325/(8.314462618 × 298.15), by hand"},
                  {{35, "Monóxido de carbono", 22, 820.77}, {32.7888100, 5e-7}, "The same reading at 1900 m, by hand"},
                  {{4200, 44.009, 60, 1000}, {6672.9334, 5e-4}, "By hand"},
                  {{35, "smoke", 25, 1013.25}, {Error::not_available}, "No such gas"}}},
    {.name = "FUELCARBON",
     .stored = "fuelCarbon",
     .summary = {"Carbon of the fuel that left as gas", "Carbone du combustible parti sous forme de gaz",
                 "Carbono del combustible que salió como gas", "Kaboni ya fueli iliyotoka kama gesi"},
     .arguments = {dry_mass_burned, carbon_share, optional(net_char, 0), char_carbon_share},
     .result = {.name = Term("carbon"), .measure = Measure::gas_mass, .low = 0, .high = 100000},
     .kernel = numeric<[]<class Real>(Real const& fuel, Real const& share, Real const& coal, Real const& in_coal) {
         return kernels::fuel_carbon(fuel, share, coal, in_coal);
     }>,
     .equations = {Label{"dry mass × carbon share - net char × char carbon share",
                         "masse sèche × part de carbone - charbon net × part de carbone du charbon",
                         "masa seca × fracción de carbono - carbón neto × fracción de carbono del carbón",
                         "uzito mkavu × sehemu ya kaboni - makaa halisi × sehemu ya kaboni ya makaa"}},
     .sources = {carbon_balance, iso_17225, common_practice},
     .caution = {"Never give STOVE.EQUIVALENTDRYFUEL: its char would be taken off twice.",
                 "Ne donnez jamais STOVE.EQUIVALENTDRYFUEL\u00a0: son charbon serait déduit deux fois.",
                 "No dé nunca STOVE.EQUIVALENTDRYFUEL: su carbón se descontaría dos veces.",
                 "Usitoe kamwe STOVE.EQUIVALENTDRYFUEL: makaa yake yatatolewa mara mbili."},
     .examples = {{{447.2, 0.5, 40}, {189.6, 1e-9}, "447.2 × 0.5 - 40 × 0.85, by hand"},
                  {{433, "softwood", 35, 0.88}, {190.03, 1e-9}, "433 × 0.51 - 35 × 0.88, by hand"},
                  {{364.8, "charcoal"}, {328.32, 1e-9}, "364.8 × 0.9, by hand"},
                  {{330, 0.5, -25}, {186.25, 1e-9}, "A simmer that burned 25 g of earlier char, by hand"},
                  {{447.2, 50}, {Error::number}, "50 is 5000 %"},
                  {{40, 0.5, 40}, {Error::number}, "As much carbon in the char as in the fuel"}}},
    {.name = "CARBONBALANCE",
     .stored = "carbonBalance",
     .summary = {"Carbon dioxide and monoxide that a fuel’s carbon became",
                 "Dioxyde et monoxyde de carbone issus du carbone d’un combustible",
                 "Dióxido y monóxido de carbono en que acabó el carbono de un combustible",
                 "Kaboni dioksidi na monoksidi zilizotokana na kaboni ya fueli"},
     .arguments = {carbon, carbon_dioxide, carbon_monoxide, background_carbon_dioxide, background_carbon_monoxide,
                   part},
     .result = {.name = {"gases of the fire", "gaz du feu", "gases del fuego", "gesi za moto"},
                .low = 0,
                .high = 400000,
                .parts = {{{"CO2", "CO2", "CO2", "CO2"}, Measure::gas_mass},
                          {{"CO", "CO", "CO", "CO"}, Measure::gas_mass},
                          {Term("modified combustion efficiency"), Measure::share}}},
     .kernel = Columnar{kernels::answer_carbon_balance, diagnosis::remark_on_carbon_balance,
                        &numeric<[]<class Real>(Real const& carbon, Real const& dioxide, Real const& monoxide,
                                                Real const& air_dioxide, Real const& air_monoxide, Choice part) {
                            return kernels::gas_of_fire(carbon, dioxide, monoxide, air_dioxide, air_monoxide, part);
                        }>},
     .equations = {Label{"modified combustion efficiency e = CO2/(CO2 + CO), both above their background; CO2 = C e "
                         "44.009/12.011, CO = C (1 - e) 28.010/12.011",
                         "rendement de combustion modifié e = CO2/(CO2 + CO), tous deux au-dessus de l’ambiant\u00a0; "
                         "CO2 = C e 44,009/12,011, CO = C (1 - e) 28,010/12,011",
                         "rendimiento de combustión modificado e = CO2/(CO2 + CO), ambos por encima del fondo; CO2 = C "
                         "e 44,009/12,011, CO = C (1 - e) 28,010/12,011",
                         "ufanisi wa mwako uliorekebishwa e = CO2/(CO2 + CO), zote mbili juu ya za hewani; CO2 = C e "
                         "44.009/12.011, CO = C (1 - e) 28.010/12.011"}},
     .sources = {carbon_balance, atomic_weights},
     .caution = {"Soot and other gases are left out: both come out high by them.",
                 "Suie et autres gaz sont négligés\u00a0: d’où deux valeurs trop fortes.",
                 "No cuenta hollín ni otros gases: ambos salen altos por ello.",
                 "Masizi na gesi nyingine hazihesabiwi: zote mbili huzidi kwa hizo."},
     .examples = {{{189.6, 9000, 380, 450, 2}, {665.29246, 5e-5}, "Computed apart"},
                  {{189.6, dioxide_in_smoke, monoxide_in_smoke, 450, 2, "all"}, gases_of_a_fire, "Computed apart"},
                  {{189.6, 9000, 380, 450, 2, "CO"}, {18.720175, 5e-6}, "378/8928 of the carbon, by hand"},
                  {{189.6, 0.9, 380, 450}, {Error::number}, "Per cent for ppm"},
                  {{189.6, 450, 380, 9000}, {Error::number}, "Smoke and background are swapped"}}},
    {.name = "HOODEMISSION",
     .stored = "hoodEmission",
     .summary = {"Mass that a hood caught, from concentration and flow in its duct",
                 "Masse captée par une hotte, d’après la concentration et le débit du conduit",
                 "Masa que captó una campana, según la concentración y el caudal del conducto",
                 "Uzito ulionaswa na kofia ya moshi, kutokana na ukolezi na mtiririko wa bomba"},
     .arguments = {times, concentrations, flow, background, from_minute, to_minute},
     .result = {.name = Term("mass emitted"), .measure = Measure::gas_mass, .low = 0, .high = 1e6},
     .kernel = Columnar{kernels::answer_hood, diagnosis::remark_on_hood},
     .equations = {Label{
         "∫ (concentration - background) flow dt by trapezoids", "∫ (concentration - ambiante) débit dt par trapèzes",
         "∫ (concentración - fondo) caudal dt por trapecios", "∫ (ukolezi - wa hewani) mtiririko dt kwa trapeza"}},
     .sources = {definition},
     .caution = {"Concentration and flow must be at the same temperature and pressure.",
                 "Concentration et débit doivent être à la même température et pression.",
                 "Concentración y caudal deben estar a la misma temperatura y presión.",
                 "Ukolezi na mtiririko lazima viwe kwa halijoto na shinikizo moja."},
     .examples = {{{minutes_of_fire, monoxide_in_duct, 5}, {16.175, 1e-9}, "5 × 3235 mg, by hand"},
                  {{minutes_of_fire, monoxide_in_duct, flow_in_duct, 2}, {15.623, 1e-9}, "numpy, trapezoids"},
                  {{minutes_of_fire, monoxide_in_duct, 5, omitted, 5, 40}, {13.8875, 1e-9}, "5 × 2777.5 mg, by hand"},
                  {{minutes_of_fire, monoxide_in_duct, 5000}, {Error::number}, "Litres a minute"},
                  {{minutes_of_fire, clean_air, 5, 2}, {Error::number}, "Less than the background"}}},
    {.name = "FILTEREMISSION",
     .stored = "filterEmission",
     .summary = {"Mass of particles that passed a duct, from a filter",
                 "Masse de particules passée par un conduit, d’après un filtre",
                 "Masa de partículas que pasó por un conducto, según un filtro",
                 "Uzito wa chembe zilizopita kwenye bomba, kutokana na kichujio"},
     .arguments = {filter_gain, duct_flow, sample_flow, blank_gain},
     .result = {.name = {"particles emitted", "particules émises", "partículas emitidas", "chembe zilizotolewa"},
                .measure = Measure::filter_mass,
                .low = 0,
                .high = 1e7},
     .kernel =
         numeric<[]<class Real>(Real const& gain, Real const& duct, Real const& sample, Real const& blank_gained) {
             return kernels::filter_emission(gain, duct, sample, blank_gained);
         }>,
     .equations = {Label{"(filter gain - blank gain) × duct flow/sample flow",
                         "(gain du filtre - gain du témoin) × débit du conduit/débit prélevé",
                         "(ganancia del filtro - del testigo) × caudal del conducto/de muestreo",
                         "(ongezeko la kichujio - la cha kulinganisha) × mtiririko wa bomba/wa sampuli"}},
     .sources = {definition},
     .examples = {{{1.42, 5, 16.7, 0.02}, {419.16168, 5e-5}, "1.40 × 5000/16.7, by hand"},
                  {{1.42, 5, 16.7, -0.02}, {431.13772, 5e-5}, "A blank that lost mass, by hand"},
                  {{1.42, 5000, 16.7}, {Error::number}, "Litres a minute"},
                  {{0.02, 5, 16.7, 0.02}, {Error::number}, "No more than the blank"}}},
    {.name = "EMISSIONFACTOR",
     .stored = "emissionFactor",
     .summary = {"Mass emitted per kilogram of dry fuel, in its own unit",
                 "Masse émise par kilogramme de combustible sec, dans son unité",
                 "Masa emitida por kilogramo de combustible seco, en su unidad",
                 "Uzito uliotolewa kwa kilo ya fueli kavu, kwa kizio chake"},
     .arguments = {mass_emitted, dry_mass_burned},
     .result = {.name = {"emission factor", "facteur d’émission", "factor de emisión", "utoaji kwa kilo ya fueli"},
                .measure = Measure::ratio,
                .low = 0,
                .high = 1e7},
     .kernel =
         numeric<[]<class Real>(Real const& mass, Real const& fuel) { return kernels::per_thousand(mass, fuel); }>,
     .equations = {Label{"mass emitted/dry mass", "masse émise/masse sèche", "masa emitida/masa seca",
                         "uzito uliotolewa/uzito mkavu"}},
     .sources = {definition},
     .examples = {{{18.720175, 447.2}, {41.860856, 5e-6}, "18.720175 g/0.4472 kg, by hand"},
                  {{419.16168, 447.2}, {937.30251, 5e-5}, "419.16168 mg/0.4472 kg, by hand"}}},
    {.name = "EMISSIONPERENERGY",
     .stored = "emissionPerEnergy",
     .summary = {"Mass emitted per megajoule that reached the pot, in its own unit",
                 "Masse émise par mégajoule reçu par la marmite, dans son unité",
                 "Masa emitida por megajulio que llegó a la olla, en su unidad",
                 "Uzito uliotolewa kwa megajuli iliyofika sufuriani, kwa kizio chake"},
     .arguments = {mass_emitted, useful_heat},
     .result = {.name = {"emission per energy delivered", "émission par énergie utile", "emisión por energía útil",
                         "utoaji kwa nishati iliyofika"},
                .measure = Measure::ratio,
                .low = 0,
                .high = 1e7},
     .kernel =
         numeric<[]<class Real>(Real const& mass, Real const& heat) { return kernels::per_thousand(mass, heat); }>,
     .equations = {Label{"mass emitted/useful heat", "masse émise/chaleur utile", "masa emitida/calor útil",
                         "uzito uliotolewa/joto faafu"}},
     .sources = {definition, iso_19867_1},
     .examples = {{{18.720175, 1657.3415}, {11.295303, 5e-6}, "18.720175 g/1.6573415 MJ, by hand"},
                  {{419.16168, 1657.3415}, {252.91208, 5e-5}, "419.16168 mg/1.6573415 MJ, by hand"}}},
    {.name = "EMISSIONRATE",
     .stored = "emissionRate",
     .summary = {"Mass emitted per minute, in its own unit", "Masse émise par minute, dans son unité",
                 "Masa emitida por minuto, en su unidad", "Uzito uliotolewa kwa dakika, kwa kizio chake"},
     .arguments = {mass_emitted, minutes},
     .result = {.name = Term("emission rate"), .measure = Measure::ratio, .low = 0, .high = 1e7},
     .kernel = numeric<[]<class Real>(Real const& mass, Real const& time) { return Real(mass / time); }>,
     .equations = {Label{"mass emitted/time", "masse émise/durée", "masa emitida/tiempo", "uzito uliotolewa/muda"}},
     .sources = {definition},
     .examples = {{{419.16168, 45}, {9.314704, 5e-7}, "419.16168 mg/45 min, by hand"},
                  {{18720.175, 45}, {416.00389, 5e-5}, "18.720175 g as mg, by hand"}}},
    room_concentration_function,
};

} // namespace

std::span<Function const> emissions() {
    return functions;
}

} // namespace hearthcell
