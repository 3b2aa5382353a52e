#pragma once
// Terms that keep their word: where an English text has one of them, the same text in another language has the word
// that the glossary gives it there. A word may be short of its end, so that it is found in all its forms.

#include "functions/words/language.hpp"

#include <string>
#include <vector>

namespace hearthcell::tests {

struct KeptTerm {
    std::string_view english;                  ///< one or more of it
    std::string_view french, spanish, swahili; ///< one of these, with | between
};

inline constexpr KeptTerm kept_terms[] = {
    {"air", "air", "aire", "hewa"},
    {"altitude", "altitude", "altitud", "mwinuko"},
    {"bench record", "fiche", "registro", "rekodi"},
    {"boil", "ébullition|boui|bout", "ebullición|hierv|hirv|herv", "chemk|chems"},
    {"boiling point", "point d’ébullition", "punto de ebullición", "kiwango cha kuchemka"},
    {"calorific value", "pouvoir|PCI", "poder|PCI", "kalori"},
    {"char", "charbon", "carbón", "makaa"},
    {"charcoal", "charbon", "carbón", "makaa"},
    {"column", "colonne", "columna", "safu wima|mlalo au wima"},
    {"efficiency", "rendement", "rendimiento", "ufanisi"},
    {"fuel", "combustible|consommation", "combustible|consumo", "fueli"},
    {"lid", "couvercle", "tapa", "kifuniko"},
    {"log", "relevé", "registro", "rekodi"},
    {"mean", "moyenne", "media", "wastani"},
    {"moisture", "humidité", "humedad", "unyevu"},
    {"number", "nombre|numéro|entier|autant", "número|entero|tantos", "namba|zozote"},
    {"outlier", "aberrant", "atípico", "kawaida"},
    {"oven", "étuve", "horno", "tanuri"},
    {"pot", "marmite", "olla", "sufuria"},
    {"pressure", "pression", "presi", "shinikizo"},
    {"row", "ligne", "fila", "safu mlalo|wima au mlalo"},
    {"standard deviation", "écart-type", "desviación estándar", "mkengeuko sanifu"},
    {"standard uncertainty", "incertitude-type|incertitudes-types", "incertidumbre típica|incertidumbres típicas",
     "sanifu"},
    {"stove", "foyer", "cocina", "jiko"},
    {"temperature", "température|élévation", "temperatura|elevación", "halijoto"},
    {"tier", "niveau", "nivel", "daraja"},
    {"uncertainty", "incertitude", "incertidumbre", "ukosefu"},
    {"useful heat", "chaleur utile", "calor útil", "joto faafu"},
};

namespace detail {
inline std::string lower(std::string_view text) {
    std::string result(text);
    for (std::size_t i = 0; i < result.size(); ++i) {
        char& c = result[i];
        bool const is_accented =
            i > 0 && result[i - 1] == '\xC3' && static_cast<unsigned char>(c) <= 0x9E; // É becomes é
        c = (c >= 'A' && c <= 'Z') || is_accented ? char(c + ' ') : c;
    }
    return result;
}

inline bool holds_word(std::string_view text, std::string_view word) {
    auto const is_letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '-'; };
    for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
        std::size_t const end = at + word.size();
        std::size_t const after = end + (end < text.size() && text[end] == 's' ? 1 : 0);
        if ((at == 0 || !is_letter(text[at - 1])) && (after == text.size() || !is_letter(text[after])))
            return true;
    }
    return false;
}

inline bool holds_one_of(std::string const& text, std::string_view words) {
    for (std::size_t at = 0; at < words.size();) {
        std::size_t const end = std::min(words.find('|', at), words.size());
        if (text.find(lower(words.substr(at, end - at))) != std::string::npos)
            return true;
        at = end + 1;
    }
    return false;
}
} // namespace detail

/// Of the terms that the English text holds those that the other says otherwise. Names of functions and {places} do not
/// count.
inline std::vector<std::string_view> terms_lost(std::string_view english, std::string_view other, Language language) {
    std::vector<std::string_view> lost;
    if (language == Language::english)
        return lost;
    std::string plain; // English without {places}
    bool in_place = false;
    for (char const c : english) {
        in_place = in_place || c == '{';
        plain += in_place ? ' ' : c;
        in_place = in_place && c != '}';
    }
    for (KeptTerm const& term : kept_terms) {
        std::string capital(term.english);
        capital[0] = char(capital[0] - 'a' + 'A');
        std::string_view const wanted = language == Language::french    ? term.french
                                        : language == Language::spanish ? term.spanish
                                                                        : term.swahili;
        bool const is_said = detail::holds_word(plain, term.english) || detail::holds_word(plain, capital);
        if (is_said && !detail::holds_one_of(detail::lower(other), wanted))
            lost.push_back(term.english);
    }
    return lost;
}

} // namespace hearthcell::tests
