// Gases and particles: an analyser, a carbon balance, a hood, a filter, a room.

#include "functions/catalogue/glossary.hpp"
#include "manifest/generator/guide/uses.hpp"

namespace hearthcell::generator::guide {
namespace {

constexpr Line analyser[] = {
    {{"CO that an alarm or an analyser shows", "CO qu’affiche un détecteur ou un analyseur",
      "CO que muestra un detector o un analizador", "CO inayoonyeshwa na kengele au kichanganuzi"},
     "35",
     "ppm"},
    {Term("altitude"), "1240", "m"},
    {Term("air pressure"), "=STOVE.AIRPRESSURE({2})", "hPa", {}, {}, 1},
    {Term("air temperature"), "22", "°C"},
    {{"concentration", "concentration", "concentración", "mkusanyiko"},
     "=STOVE.GASCONCENTRATION({1}; \"CO\"; {4}; {3})",
     "mg/m³",
     {"always with the pressure of the place: without it, it comes out a sixth too high here",
      "toujours avec la pression du lieu\u00a0: sans elle, un sixième de trop ici",
      "siempre con la presión del lugar: sin ella sale un sexto de más aquí",
      "daima pamoja na shinikizo la mahali: bila hilo huzidi kwa sehemu moja ya sita hapa"},
     {},
     2},
};

constexpr Line carbon_balance_of_a_run[] = {
    {Term("dry mass"),
     "447.2",
     "g",
     {"of the fuel that burned", "du combustible brûlé", "del combustible quemado", "ya fueli iliyoungua"}},
    {Term("carbon share"), "50%"},
    {Term("net char"), "40", "g"},
    {Term("carbon"),
     "=STOVE.FUELCARBON({1}; {2}; {3})",
     "g",
     {"the fuel’s, less what stayed in the char: take it off here only",
      "celui du combustible, moins celui resté dans le charbon\u00a0: à ôter ici seulement",
      "el del combustible, menos el que quedó en el carbón: se quita solo aquí",
      "ya fueli, bila iliyobaki kwenye makaa: iondolewe hapa tu"},
     {},
     1},
    {{"CO2 in the smoke", "CO2 dans la fumée", "CO2 en el humo", "CO2 kwenye moshi"}, "9000", "ppm"},
    {{"CO in the smoke", "CO dans la fumée", "CO en el humo", "CO kwenye moshi"}, "380", "ppm"},
    {{"CO2 in the air", "CO2 dans l’air", "CO2 en el aire", "CO2 kwenye hewa"}, "450", "ppm"},
    {{"CO in the air", "CO dans l’air", "CO en el aire", "CO kwenye hewa"}, "2", "ppm"},
    {Term("carbon monoxide"), "=STOVE.CARBONBALANCE({4}; {5}; {6}; {7}; {8}; \"CO\")", "g", {}, {}, 2},
    {Term("modified combustion efficiency"),
     "=STOVE.CARBONBALANCE({4}; {5}; {6}; {7}; {8}; \"modified combustion efficiency\")", "%"},
    {{"a kg of dry fuel", "par kg de combustible sec", "por kg de combustible seco", "kwa kg ya fueli kavu"},
     "=STOVE.EMISSIONFACTOR({9}; {1})",
     "g/kg",
     {},
     {},
     1},
    {Term("useful heat"), "1657", "kJ"},
    {{"a MJ delivered", "par MJ utile", "por MJ útil", "kwa MJ faafu"},
     "=STOVE.EMISSIONPERENERGY({9}; {12})",
     "g/MJ",
     {"the useful heat, not the fuel’s", "la chaleur utile, non celle du combustible",
      "el calor útil, no el del combustible", "joto faafu, si la fueli"},
     {},
     2},
    {Term("minutes"), "31.67", "min"},
    {{"a minute", "par minute", "por minuto", "kwa dakika"}, "=STOVE.EMISSIONRATE({9}; {14})", "g/min", {}, {}, 2},
};

constexpr Line hood[] = {
    {{"minutes, and mg/m³ in the duct", "minutes, et mg/m³ dans le conduit", "minutos, y mg/m³ en el conducto",
      "dakika, na mg/m³ kwenye bomba"},
     "0",
     {},
     {},
     "40"},
    {{}, "5", {}, {}, "160"},
    {{}, "10", {}, {}, "210"},
    {{}, "15", {}, {}, "180"},
    {{}, "20", {}, {}, "120"},
    {{}, "25", {}, {}, "60"},
    {Term("duct flow"),
     "5",
     "m³/min",
     {"velocity × area, at the temperature and pressure of the concentrations",
      "vitesse × section, à la température et à la pression des concentrations",
      "velocidad × sección, a la temperatura y la presión de las concentraciones",
      "kasi × eneo, kwa halijoto na shinikizo la mikusanyiko"}},
    {{"what the hood caught", "ce que la hotte a capté", "lo que captó la campana", "kilichonaswa na kofia ya moshi"},
     "=STOVE.HOODEMISSION({1:6}; {1:6'}; {7})",
     "g",
     {},
     {},
     2},
};

constexpr Line filter_of_a_run[] = {
    {Term("filter gain"), "1.42", "mg"},
    {Term("blank gain"),
     "0.02",
     "mg",
     {"of a filter that was carried along unused", "d’un filtre emporté sans servir", "de un filtro llevado sin usar",
      "wa kichujio kilichobebwa bila kutumika"}},
    {Term("duct flow"), "5", "m³/min"},
    {Term("sample flow"), "16.7", "L/min"},
    {Term("mass emitted"), "=STOVE.FILTEREMISSION({1}; {3}; {4}; {2})", "mg", {}, {}, 0},
    {Term("minutes"), "31.67", "min"},
    {Term("emission rate"),
     "=STOVE.EMISSIONRATE({5}; {6})",
     "mg/min",
     {"milligrams in, milligrams out", "des milligrammes donnent des milligrammes", "de miligramos salen miligramos",
      "miligramu huingia, miligramu hutoka"},
     {},
     1},
    {Term("useful heat"), "1657", "kJ"},
    {{"a MJ delivered", "par MJ utile", "por MJ útil", "kwa MJ faafu"},
     "=STOVE.EMISSIONPERENERGY({5}; {8})",
     "mg/MJ",
     {},
     {},
     0},
};

constexpr Line kitchen[] = {
    {Term("emission rate"), "13.2", "mg/min"},
    {Term("room volume"), "24", "m³"},
    {Term("air changes"), "10", "1/h"},
    {Term("minutes"), "31.67", "min"},
    {Term("background"), "0.04", "mg/m³"},
    {Term("share entering"),
     "1",
     {},
     {"1 without a chimney", "1 sans cheminée", "1 sin chimenea", "1 bila bomba la moshi"}},
    {Term("mean"), "=STOVE.ROOMCONCENTRATION({1}; {2}; {3}; {4}; {5}; {6}; \"mean\")", "mg/m³", {}, {}, 2},
    {Term("at the end"), "=STOVE.ROOMCONCENTRATION({1}; {2}; {3}; {4}; {5}; {6}; \"at the end\")", "mg/m³", {}, {}, 2},
    {Term("in the long run"),
     "=STOVE.ROOMCONCENTRATION({1}; {2}; {3}; {4}; {5}; {6}; \"in the long run\")",
     "mg/m³",
     {"one well-mixed room: says nothing of who leans over the fire",
      "une pièce bien mélangée\u00a0: ne dit rien de qui se penche sur le feu",
      "un cuarto bien mezclado: no dice nada de quien se inclina sobre el fuego",
      "chumba chenye hewa iliyochanganyika: hakisemi lolote la anayeinamia moto"},
     {},
     2},
};

constexpr Use gas_uses[] = {
    {{"Gas: from ppm to mg/m³", "Gaz\u00a0: des ppm aux mg/m³", "Gas: de ppm a mg/m³", "Gesi: kutoka ppm hadi mg/m³"},
     analyser},
    {{"Carbon monoxide by the carbon of the fuel", "Monoxyde de carbone par le carbone du combustible",
      "Monóxido de carbono por el carbono del combustible", "Kaboni monoksidi kwa kaboni ya fueli"},
     carbon_balance_of_a_run},
    {{"A hood with an analyser", "Une hotte avec un analyseur", "Una campana con un analizador",
      "Kofia ya moshi yenye kichanganuzi"},
     hood},
    {{"Particles on a filter", "Particules sur un filtre", "Partículas en un filtro", "Chembe kwenye kichujio"},
     filter_of_a_run},
    {{"A kitchen’s air", "L’air d’une cuisine", "El aire de una cocina cerrada", "Hewa ya jikoni"}, kitchen},
};

} // namespace

std::span<Use const> uses_of_gases() {
    return gas_uses;
}

} // namespace hearthcell::generator::guide
