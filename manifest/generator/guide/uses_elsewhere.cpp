// In a house, and with an instrument that is not quite right.

#include "functions/catalogue/glossary.hpp"
#include "manifest/generator/guide/uses.hpp"

namespace hearthcell::generator::guide {
namespace {

constexpr Line household[] = {
    {Term("children"),
     "3",
     {},
     {"below 15; those who ate, not those who live there",
      "de moins de 15 ans\u00a0; ceux qui ont mangé, non les habitants",
      "menores de 15; los que comieron, no los que viven allí", "chini ya miaka 15; waliokula, si wanaoishi pale"}},
    {Term("women"), "2"},
    {Term("men"), "1", {}, {"15 to 59", "de 15 à 59 ans", "de 15 a 59 años", "miaka 15 hadi 59"}},
    {Term("older men"), "1"},
    {Term("standard adults"), "=STOVE.STANDARDADULTS({1}; {2}; {3}; {4})", {}, {}, {}, 1},
    {{"wood at the start, and brought", "bois au début, et apporté", "leña al inicio, y traída",
      "kuni mwanzoni, na zilizoletwa"},
     "27800",
     "g"},
    {Term("wood left"), "3000", "g"},
    {Term("moisture"), "14%"},
    {Term("dry mass"), "=STOVE.DRYMASS({6} - {7}; {8})", "g", {}, {}, 0},
    {Term("days"), "3"},
    {{"for each adult and day", "par adulte et par jour", "por adulto y día", "kwa kila mtu mzima kwa siku"},
     "=STOVE.FUELPERSTANDARDADULT({9}; {10}; {5})",
     "g/d",
     {},
     {},
     0},
};

constexpr Line checked_probe[] = {
    {{"indicated and true, in ice", "indiqué et vrai, dans la glace", "indicado y verdadero, en hielo",
      "iliyoonyeshwa na ya kweli, kwenye barafu"},
     "0.4",
     {},
     {},
     "0"},
    {{"the same in boiling water", "de même dans l’eau bouillante", "lo mismo en agua hirviendo",
      "vivyo hivyo kwenye maji yanayochemka"},
     "96.5",
     {},
     {"true is the boiling point of the place, not 100 °C", "vrai est le point d’ébullition du lieu, non 100 °C",
      "lo verdadero es el punto de ebullición del lugar, no 100 °C",
      "ya kweli ni kiwango cha kuchemka cha mahali, si 100 °C"},
     "95.9"},
    {Term("reading"), "94.2", "°C"},
    {{"corrected", "corrigé", "corregido", "iliyosahihishwa"},
     "=STOVE.CORRECTEDREADING({3}; {1:2}; {1:2'})",
     "°C",
     {"one point moves all readings alike, two or more a line",
      "un point décale toutes les mesures, deux ou plus donnent une droite",
      "un punto desplaza todas las medidas, dos o más dan una recta",
      "nukta moja husogeza vipimo vyote sawa, mbili au zaidi hutoa mstari"},
     {},
     1},
};

constexpr Use other_uses[] = {
    {{"A household and its wood", "Un ménage et son bois", "Un hogar y su leña", "Kaya na kuni zake"}, household},
    {{"A thermometer that was checked", "Un thermomètre vérifié", "Un termómetro comprobado",
      "Kipimajoto kilichokaguliwa"},
     checked_probe},
};

} // namespace

std::span<Use const> uses_elsewhere() {
    return other_uses;
}

} // namespace hearthcell::generator::guide
