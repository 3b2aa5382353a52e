// Four kinds of stove on the bench: a fan at altitude, one load lit on top, charcoal, two pots.

#include "functions/catalogue/glossary.hpp"
#include "manifest/generator/guide/uses.hpp"

namespace hearthcell::generator::guide {
namespace {

constexpr Line fan_at_altitude[] = {
    {Term("altitude"), "1240", "m"},
    {Term("sea-level pressure"),
     "1008",
     "hPa",
     {"of a weather report; an airfield’s goes without the air",
      "d’un bulletin météo\u00a0; celle d’un aérodrome va sans l’air",
      "de un parte meteorológico; la de un aeródromo va sin el aire",
      "ya taarifa ya hali ya hewa; ya uwanja wa ndege huenda bila hewa"}},
    {Term("air temperature"), "24", "°C"},
    {Term("boiling point"), "=STOVE.BOILINGPOINT({1}; {2}; {3})", "°C", {}, {}, 2},
    {Term("fan power"), "2", "W"},
    {{"minutes that it ran", "minutes de marche", "minutos en marcha", "dakika ilizofanya kazi"}, "31.67", "min"},
    {Term("auxiliary energy"), "=STOVE.AUXILIARYENERGY({5}; {6})", "kJ", {}, {}, 2},
    {Term("useful heat"), "1657", "kJ"},
    {Term("fuel energy"), "8185", "kJ"},
    {Term("char energy"), "1180", "kJ"},
    {Term("efficiency"),
     "=STOVE.EFFICIENCY({8}; {9}; {10}; {7})",
     "%",
     {"the fan’s energy is the fourth argument", "l’énergie du ventilateur est le quatrième argument",
      "la energía del ventilador es el cuarto argumento", "nishati ya feni ni hoja ya nne"}},
    {{"the same without the fan", "le même sans le ventilateur", "lo mismo sin el ventilador", "hiyo hiyo bila feni"},
     "=STOVE.EFFICIENCY({8}; {9}; {10})",
     "%",
     {"report both", "donnez les deux", "dé ambas", "toa zote mbili"}},
};

constexpr Line one_load[] = {
    {Term("pot empty"), "760", "g"},
    {Term("pot and water at start"), "4360", "g"},
    {Term("water start"), "14.5", "°C"},
    {Term("wood laid out"), "900", "g", {"the whole load", "toute la charge", "toda la carga", "fungu lote"}},
    {Term("water end"), "95.85", "°C"},
    {Term("pot and water at end"), "3990", "g"},
    {Term("wood left"), "60", "g", {"what did not burn", "ce qui n’a pas brûlé", "lo que no ardió", "kisichoungua"}},
    {Term("moisture"), "12%"},
    {Term("net calorific value"), "18.7", "MJ/kg"},
    {Term("net char"),
     "150",
     "g",
     {"what turned into char", "ce qui est devenu charbon", "lo que se hizo carbón", "kilichogeuka makaa"}},
    {Term("minutes"),
     "38",
     "min",
     {"to the end of the flame: char that glows on would dilute the power",
      "jusqu’à la fin de la flamme\u00a0: le charbon qui couve diluerait la puissance",
      "hasta el fin de la llama: el carbón que sigue en brasa diluiría la potencia",
      "hadi mwisho wa mwali: makaa yanayoendelea kuwaka hupunguza nguvu"}},
    {Term("efficiency"), "=STOVE.BENCHEFFICIENCY({1}; {2}; {3}; {4}; {5}; {6}; {7}; {8}; {9}; \"properties\"; {10})",
     "%"},
    {{"firepower", "puissance de feu", "potencia de fuego", "nguvu ya moto"},
     "=STOVE.FIREPOWER(STOVE.WOODENERGY({4} - {7}; {8}; {9}); {11}; STOVE.CHARENERGY({10}))",
     "kW",
     {},
     {},
     2},
};

constexpr Line on_charcoal[] = {
    {{"charcoal laid out", "charbon de bois préparé", "carbón vegetal preparado", "makaa yaliyoandaliwa"}, "380", "g"},
    {{"charcoal left", "charbon de bois restant", "carbón vegetal sobrante", "makaa yaliyobaki"},
     "120",
     "g",
     {"is fuel left, not char: nothing is credited",
      "c’est du combustible restant, pas du charbon formé\u00a0: rien n’est déduit",
      "es combustible sobrante, no carbón formado: no se abona nada",
      "ni fueli iliyobaki, si makaa mapya: hakuna kinachopunguzwa"}},
    {Term("moisture"), "4%"},
    {{"that stands for", "ce qui équivaut à", "que equivale a", "sawa na"},
     "={2} / (1 - {3})",
     "g",
     {"of what was laid out, for in the fire it has dried", "de ce qui était préparé, car il a séché au feu",
      "de lo preparado, pues en el fuego se secó", "ya yaliyoandaliwa, kwa kuwa yamekauka motoni"},
     {},
     1},
    {Term("net calorific value"), "\"charcoal\""},
    {Term("fuel energy"), "=STOVE.WOODENERGY({1} - {4}; {3}; {5})", "kJ", {}, {}, 0},
    {Term("useful heat"), "1657", "kJ"},
    {Term("efficiency"), "=STOVE.EFFICIENCY({7}; {6})", "%"},
    {Term("carbon"),
     "=STOVE.FUELCARBON(STOVE.DRYMASS({1} - {4}; {3}); {5})",
     "g",
     {"the dry mass that burned, and no net char", "la masse sèche brûlée, et pas de charbon net",
      "la masa seca quemada, y ningún carbón neto", "uzito mkavu ulioungua, bila makaa halisi"},
     {},
     1},
};

constexpr Line two_pots[] = {
    {{"first pot: water mass", "première marmite\u00a0: masse d’eau", "primera olla: masa de agua",
      "sufuria ya kwanza: uzito wa maji"},
     "3600",
     "g"},
    {Term("water start"), "14.5", "°C"},
    {Term("water end"), "95.85", "°C"},
    {Term("mass evaporated"), "190", "g"},
    {Term("useful heat"), "=STOVE.USEFULHEAT({1}; {2}; {3}; ; {4})", "kJ", {}, {}, 0},
    {{"second pot: water mass", "deuxième marmite\u00a0: masse d’eau", "segunda olla: masa de agua",
      "sufuria ya pili: uzito wa maji"},
     "2000",
     "g"},
    {Term("water end"),
     "62.6",
     "°C",
     {"from the same start", "depuis le même début", "desde el mismo inicio", "tangu mwanzo ule ule"}},
    {Term("useful heat"), "=STOVE.USEFULHEAT({6}; {2}; {7})", "kJ", {}, {}, 0},
    {Term("fuel energy"), "8185", "kJ", {"of the one fire", "de l’unique feu", "del único fuego", "ya moto mmoja"}},
    {Term("efficiency"),
     "=STOVE.EFFICIENCY({5} + {8}; {9})",
     "%",
     {"the sum of both pots; the boil time is the first pot’s",
      "la somme des deux marmites\u00a0; le temps d’ébullition est celui de la première",
      "la suma de ambas ollas; el tiempo de ebullición es el de la primera",
      "jumla ya sufuria zote mbili; muda wa kuchemka ni wa ya kwanza"}},
    {Term("minutes"), "31.67", "min"},
    {{"cooking power", "puissance de cuisson", "potencia de cocción", "nguvu ya kupikia"},
     "=STOVE.COOKINGPOWER({5} + {8}; {11})",
     "kW",
     {},
     {},
     2},
};

constexpr Use bench_uses[] = {
    {{"A fan stove at altitude", "Un foyer à ventilateur en altitude", "Una cocina con ventilador en altitud",
      "Jiko la feni kwenye mwinuko"},
     fan_at_altitude},
    {{"A stove loaded once and lit on top", "Un foyer chargé une fois, allumé par le haut",
      "Una cocina cargada una vez y encendida por arriba", "Jiko lililojazwa mara moja, likawashwa juu"},
     one_load},
    {{"A charcoal stove", "Un foyer à charbon de bois", "Una cocina de carbón vegetal", "Jiko la makaa"}, on_charcoal},
    {{"A stove with two pots", "Un foyer à deux marmites", "Una cocina con dos ollas", "Jiko la sufuria mbili"},
     two_pots},
};

} // namespace

std::span<Use const> uses_on_the_bench() {
    return bench_uses;
}

} // namespace hearthcell::generator::guide
