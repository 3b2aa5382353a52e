// Words that sheets use whatever their layout: units, and those of means and totals.

#include "extension/archive/example/labelled_sheet.hpp"
#include "extension/archive/inventory/words.hpp"

#include <algorithm>
#include <array>

namespace hearthcell::archive {
namespace {

/// As word_key gives them.
constexpr std::array<std::string_view, 76> units{
    "kilos",  "kilo",    "kg",     "kgs",     "kilogram", "kilograms", "kilogramme", "kilogrammes", "g",      "gr",
    "gram",   "grams",   "gramme", "grammes", "gramos",   "mg",        "t",          "lb",          "lbs",    "oz",
    "°c",     "ºc",      "degc",   "c",       "celsius",  "k",         "°f",         "f",           "degf",   "m",
    "ft",     "feet",    "cm",     "mm",      "min",      "mins",      "minutes",    "minutos",     "dakika", "s",
    "sec",    "seconds", "h",      "hours",   "heures",   "%",         "percent",    "kj",          "mj",     "j",
    "kcal",   "cal",     "wh",     "kwh",     "w",        "kw",        "l",          "litre",       "litres", "liters",
    "litros", "ml",      "hpa",    "mbar",    "kpa",      "pa",        "bar",        "mmhg",        "kj/kg",  "mj/kg",
    "kj/g",   "kcal/kg", "kwh/kg", "g/min",   "kg/h",     "g/l"};

/// Whole words, as word_key gives them.
constexpr std::array<std::string_view, 40> totals{
    "mean",     "means",   "average", "averages",  "avg",        "total",     "totals",  "sum",
    "subtotal", "sd",      "stdev",   "stddev",    "std",        "deviation", "median",  "min",
    "max",      "minimum", "maximum", "cv",        "cov",        "range",     "moyenne", "moyennes",
    "moy",      "somme",   "totaux",  "ecarttype", "ecart",      "mediane",   "media",   "medias",
    "promedio", "suma",    "totales", "mediana",   "desviacion", "wastani",   "jumla",   "mkengeuko"};

bool is_total(std::string_view word) {
    return std::ranges::find(totals, word) != totals.end();
}

} // namespace

bool is_unit(std::string_view key) {
    std::string bare;
    for (char const c : key)
        if (c != '(' && c != ')' && c != '[' && c != ']' && c != '.' && c != ',')
            bare += c;
    auto const is_one = [](std::string_view word) { return std::ranges::find(units, word) != units.end(); };
    return is_one(bare) || ((bare.starts_with("in") || bare.starts_with("en")) && is_one(bare.substr(2)));
}

bool says_total(std::string_view text) {
    std::string const key = word_key(text);
    if (key == "s.d." || key == "s.d" || key == "d.e." || key == "e.t." || key == "n" || is_total(key))
        return true;
    for (std::size_t at = 0; at < text.size();) {
        std::size_t const end = std::min(text.find_first_of(" \t\n,;:()/-.", at), text.size());
        std::string const word = word_key(text.substr(at, end - at));
        if (is_total(word) && word != "min" && word != "max" && word != "range")
            return true;
        at = end + 1;
    }
    return text.find("s.d.") != std::string_view::npos;
}

} // namespace hearthcell::archive
