#include "functions/catalogue/subjects.hpp"

#include "functions/catalogue/arguments/households.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/diagnosis/correction_remarks.hpp"
#include "functions/kernels/corrected_reading.hpp"
#include "functions/kernels/household.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace sources;

// Invented: a probe in ice, at room temperature beside a thermometer that was calibrated, and in boiling water.
constexpr std::array<double, 3> probe_read{0.4, 22.1, 94.9}, probe_truth{0.0, 21.6, 93.7};
constexpr std::array<double, 2> two_days_read{93.0, 93.4}, two_days_truth{93.6, 93.7};

constexpr Function functions[] = {
    {.name = "STANDARDADULTS",
     .stored = "standardAdults",
     .summary = {"How many standard adults ate", "Combien d’adultes équivalents ont mangé",
                 "Cuántos adultos equivalentes comieron", "Watu wazima linganifu wangapi walikula"},
     .arguments = {children, women, men, older_men},
     .result = {.name = Term("standard adults"), .measure = Measure::people, .low = 0.01, .high = 4000},
     .kernel = numeric<[]<class Real>(Real const& young, Real const& female, Real const& male, Real const& old) {
         return kernels::standard_adults(young, female, male, old);
     }>,
     .equations = {Label{"0.5 × children + 0.8 × women + men + 0.8 × older men",
                         "0,5 × enfants + 0,8 × femmes + hommes + 0,8 × hommes âgés",
                         "0,5 × niños + 0,8 × mujeres + hombres + 0,8 × hombres mayores",
                         "0.5 × watoto + 0.8 × wanawake + wanaume + 0.8 × wanaume wazee"}},
     .sources = {standard_adult},
     .examples = {{{3, 2, 1, 1}, {4.9, 1e-12}, "1.5 + 1.6 + 1 + 0.8, by hand"},
                  {{2.5, 1, 0, 0}, {2.05, 1e-12}, "A child that ate every second day, by hand"},
                  {{0, 0, 0, 0}, {Error::number}, "Nobody ate, or empty cells"}}},
    {.name = "FUELPERSTANDARDADULT",
     .stored = "fuelPerStandardAdult",
     .summary = {"Dry fuel of a household per standard adult and day",
                 "Combustible sec d’un ménage par adulte équivalent et par jour",
                 "Combustible seco de un hogar por adulto equivalente y día",
                 "Fueli kavu ya kaya kwa mtu mzima linganifu kwa siku"},
     .arguments = {fuel_of_household, days, standard_adults},
     .result = {.name = {"dry fuel per standard adult", "combustible sec par adulte équivalent",
                         "combustible seco por adulto equivalente", "fueli kavu kwa mtu mzima linganifu"},
                .measure = Measure::fuel_per_adult,
                .low = 0,
                .high = 100000},
     .kernel = numeric<[]<class Real>(Real const& fuel, Real const& time, Real const& adults) {
         return kernels::fuel_per_adult(fuel, time, adults);
     }>,
     .equations = {Label{"dry mass/(days × standard adults)", "masse sèche/(jours × adultes équivalents)",
                         "masa seca/(días × adultos equivalentes)", "uzito mkavu/(siku × watu wazima linganifu)"}},
     .sources = {definition},
     .examples = {{{21400, 3, 4.9}, {1455.7823, 5e-5}, "21400/14.7, by hand"},
                  {{52500, 7, 5.2}, {1442.3077, 5e-5}, "52500/36.4, by hand"},
                  {{21400, 3, 0}, {Error::number}, "An empty cell"}}},
    {.name = "CORRECTEDREADING",
     .stored = "correctedReading",
     .summary = {"A reading corrected by what the instrument read where the truth was known",
                 "Une mesure corrigée par ce que l’instrument indiquait là où la vérité était connue",
                 "Una lectura corregida por lo que indicó el instrumento donde se conocía la verdad",
                 "Usomaji uliosahihishwa kwa kile chombo kilichosoma pale ukweli ulipojulikana"},
     .arguments = {reading, indicated_values, true_values},
     .result = {.name = {"corrected reading", "mesure corrigée", "lectura corregida", "usomaji uliosahihishwa"},
                .measure = Measure::ratio,
                .low = -1e10,
                .high = 1e10},
     .kernel = Columnar{kernels::answer_corrected_reading, diagnosis::remark_on_correction},
     .equations = {Label{"the least-squares line of true over indicated values; where only one truth is known, reading "
                         "+ mean of (true - indicated)",
                         "la droite des moindres carrés des valeurs vraies selon les indiquées\u00a0; si une seule "
                         "vérité est connue, mesure + moyenne de (vraie - indiquée)",
                         "la recta de mínimos cuadrados de los valores verdaderos según los indicados; si solo se "
                         "conoce una verdad, lectura + media de (verdadero - indicado)",
                         "mstari wa miraba midogo kabisa wa thamani za kweli kwa zilizoonyeshwa; ukweli mmoja tu "
                         "ukijulikana, usomaji + wastani wa (kweli - iliyoonyeshwa)"}},
     .sources = {least_squares},
     .examples = {{{94.2, 93.0, 93.6}, {94.8, 1e-12}, "A probe that read 0.6 K low in boiling water, by hand"},
                  {{60, probe_read, probe_truth}, {59.117280, 5e-6}, "numpy.polyfit"},
                  {{20, two_days_read, two_days_truth}, {Error::not_available}, "No line from 93 down to 20"},
                  {{60, probe_read, two_days_truth}, {Error::value}, "A check point short"}}},
};

} // namespace

std::span<Function const> households() {
    return functions;
}

} // namespace hearthcell
