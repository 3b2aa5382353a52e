#pragma once
// Words that the glossary shuts out, since it has another for the same thing; a list a language.

#include "functions/words/language.hpp"

#include <span>
#include <string>
#include <vector>

namespace hearthcell::tests {

/// Of the words that are shut out those that a text of that language holds.
inline std::vector<std::string_view> words_shut_out(std::string text, Language language) {
    static constexpr std::string_view french[] = {
        "masse d’eau normale", // de référence
        "essai à part",        // aberrant
        "à l’œuvre",           // actif
        "est pas un temps",    // une durée
        "mesures folles",      // valeurs aberrantes
        "en mots",             // en clair
        "incertitude type",    // incertitude-type
        "relevé d’essai",      // fiche d’essais: a relevé is a log
    };
    static constexpr std::string_view spanish[] = {
        "estufa",                 // cocina; of the oven: horno
        "hervor",                 // ebullición
        "prueba",                 // ensayo
        "incertidumbre estándar", // típica
        "desviación típica",      // desviación estándar
    };
    static constexpr std::string_view swahili[] = {
        "kanieneo",            // shinikizo
        "nambari",             // namba
        "mkaa",                // makaa
        "kumbukumbu",          // rekodi
        "joto la maji",        // halijoto
        "joto la hewa",        // halijoto
        "joto la kuchemka",    // kiwango cha kuchemka
        "thamani ya joto",     // thamani ya kalori
        "joto lililotumika",   // joto faafu
        "kizigeu",             // mgawo
        "mchepuko",            // mkengeuko
        "presha",              // shinikizo
        "kiwango cha mchemko", // kiwango cha kuchemka
        "logi",                // rekodi
    };
    std::span<std::string_view const> const words = language == Language::french    ? std::span(french)
                                                    : language == Language::spanish ? std::span(spanish)
                                                    : language == Language::swahili
                                                        ? std::span(swahili)
                                                        : std::span<std::string_view const>();
    for (char& c : text)
        c = c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c;
    constexpr std::string_view from_memory = "kwa kumbukumbu"; // which is no log
    if (std::size_t const at = text.find(from_memory); at != std::string::npos)
        text.erase(at, from_memory.size());
    std::vector<std::string_view> found;
    auto const is_letter = [](char c) { return c >= 'a' && c <= 'z'; };
    for (std::string_view const word : words)
        for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1))
            if (at == 0 || !is_letter(text[at - 1])) // not within another word, as in "comprueba"
                found.push_back(word);
    return found;
}

} // namespace hearthcell::tests
