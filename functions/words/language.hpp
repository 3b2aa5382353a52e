#pragma once
// The languages that catalogue, menu and guide speak, and a text in all of them. The one list of languages: what needs
// them in any order takes it from here.

#include <array>
#include <string_view>

namespace hearthcell {

enum class Language { english, french, spanish, swahili };
inline constexpr std::array<Language, 4> languages{Language::english, Language::french, Language::spanish,
                                                   Language::swahili};

/// As configuration files call it: "en-US", "fr", "es", "sw".
constexpr std::string_view tag_of(Language language) {
    switch (language) {
    case Language::english:
        break;
    case Language::french:
        return "fr";
    case Language::spanish:
        return "es";
    case Language::swahili:
        return "sw";
    }
    return "en-US";
}

/// As a cell asks for it: "en", "fr", "es", "sw".
constexpr std::string_view code_of(Language language) {
    return tag_of(language).substr(0, 2);
}

/// What a locale such as "fr-BE" is read as; English where we have no better.
constexpr Language language_of(std::string_view locale) {
    for (Language const language : languages)
        if (locale.starts_with(code_of(language)) && (locale.size() == 2 || locale[2] == '-'))
            return language;
    return Language::english;
}

/// A text in every language, none of which can be forgotten. Where only one will do, it is the English one.
struct Wording {
    std::string_view english{}, french{}, spanish{}, swahili{};

    constexpr Wording() = default;
    constexpr Wording(std::string_view in_english, std::string_view in_french, std::string_view in_spanish,
                      std::string_view in_swahili)
        : english(in_english), french(in_french), spanish(in_spanish), swahili(in_swahili) {}

    constexpr operator std::string_view() const { return english; }
    [[nodiscard]] constexpr bool empty() const { return english.empty(); }
    [[nodiscard]] constexpr std::string_view in(Language language) const {
        switch (language) {
        case Language::english:
            break;
        case Language::french:
            return french;
        case Language::spanish:
            return spanish;
        case Language::swahili:
            return swahili;
        }
        return english;
    }
};

/// What may be the same everywhere, as most equations and titles of documents are: one text, or four where it holds
/// words of ours.
struct Label : Wording {
    using Wording::Wording;
    constexpr Label() = default;
    constexpr Label(char const* everywhere) : Wording(everywhere, everywhere, everywhere, everywhere) {}
};

} // namespace hearthcell
