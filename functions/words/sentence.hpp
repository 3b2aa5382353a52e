#pragma once
// A whole sentence in every language, with places for values: "{argument} is {given}, outside {allowed}." Each language
// puts them where it wants them; all have the same, or it does not compile.

#include "functions/words/language.hpp"

namespace hearthcell {

/// The next "{place}" of a text from `at` on, with its braces; empty where there is none.
constexpr std::string_view next_place(std::string_view text, std::size_t at) {
    std::size_t const start = text.find('{', at), end = text.find('}', start);
    return end == std::string_view::npos ? std::string_view() : text.substr(start, end + 1 - start);
}

/// Whether every place of one text is a place of the other.
constexpr bool holds_places_of(std::string_view text, std::string_view other) {
    for (std::string_view place = next_place(other, 0); !place.empty();
         place = next_place(other, std::size_t(place.data() + place.size() - other.data())))
        if (text.find(place) == std::string_view::npos)
            return false;
    return true;
}

/// Whether each language has a text, and all texts the same places.
constexpr bool is_whole(Wording const& words) {
    for (Language const language : languages)
        if (words.in(language).empty() || !holds_places_of(words.in(language), words.english) ||
            !holds_places_of(words.english, words.in(language)))
            return false;
    return true;
}

struct Sentence : Wording {
    consteval Sentence(char const* in_english, char const* in_french, char const* in_spanish, char const* in_swahili)
        : Wording(in_english, in_french, in_spanish, in_swahili) {
        if (!is_whole(*this))
            throw "a language has no text, or other places than English";
    }
};

} // namespace hearthcell
