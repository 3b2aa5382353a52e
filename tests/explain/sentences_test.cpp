// Every sentence that a cell can say, in every language: its words, its places and its signs.

#include "functions/words/sentences.hpp"
#include "functions/words/speaker.hpp"
#include "support/lint.hpp"
#include "support/terms_kept.hpp"
#include "support/words_shut_out.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace hearthcell::tests {
namespace {

struct NamedSentence {
    std::string_view name;
    Sentence const& sentence;
};
constexpr NamedSentence all_sentences[] = {
#define SENTENCE(name, ...) {#name, sentences::name},
#include "functions/words/sentences/all.inc"
#undef SENTENCE
#define SENTENCE(name, ...) {#name, sentences::reasons::name},
#include "functions/words/sentences/reasons.inc"
#undef SENTENCE
};

void for_every_text(std::function<void(std::string_view, Language, std::string const&)> const& act) {
    for (NamedSentence const& named : all_sentences)
        for (Language const language : languages)
            act(named.sentence.in(language), language,
                std::string(named.name) + ": " + std::string(named.sentence.in(language)));
}

/// A blank at which a line may break before a sign of French.
bool lets_a_sign_slip(std::string_view text) {
    constexpr std::string_view pairs[] = {" ;", " :", " ?", " !", " %", " »", "« "};
    return std::ranges::any_of(pairs, [&](std::string_view pair) { return text.find(pair) != std::string_view::npos; });
}

/// What each ? closes, each ¿ opens.
bool opens_its_questions(std::string_view text) {
    std::ptrdiff_t open = 0;
    for (std::size_t at = text.find("¿"); at != std::string_view::npos; at = text.find("¿", at + 1))
        ++open;
    return open == std::ranges::count(text, '?');
}

TEST(Sentences, KeepToTheGlossary) {
    for (NamedSentence const& named : all_sentences)
        for (Language const language : languages) {
            std::string_view const text = named.sentence.in(language);
            for (std::string_view const word : words_shut_out(std::string(text), language))
                ADD_FAILURE() << named.name << " says \"" << word << "\": " << text;
            for (std::string_view const term : terms_lost(named.sentence.english, text, language))
                ADD_FAILURE() << named.name << " has another word for \"" << term << "\": " << text;
        }
}

TEST(Sentences, NameFunctionsThatAreThereAndLeaveNoBracketOpen) {
    for_every_text([](std::string_view text, Language, std::string const& whose) {
        expect_functions_named_in(text, whose);
        EXPECT_EQ(text.find("  "), std::string_view::npos) << whose;
        EXPECT_EQ(std::ranges::count(text, '('), std::ranges::count(text, ')')) << whose;
        EXPECT_EQ(std::ranges::count(text, '{'), std::ranges::count(text, '}')) << whose;
    });
}

TEST(Sentences, EndAlikeInEveryLanguage) {
    for (NamedSentence const& named : all_sentences)
        for (Language const language : languages)
            EXPECT_EQ(named.sentence.in(language).ends_with('.'), named.sentence.english.ends_with('.'))
                << named.name << ": " << named.sentence.in(language);
}

TEST(Sentences, KeepTheSignsOfFrenchAndSpanish) {
    for (NamedSentence const& named : all_sentences) {
        std::string_view const french = named.sentence.french, spanish = named.sentence.spanish;
        EXPECT_FALSE(lets_a_sign_slip(french)) << french << " wants a blank that does not break (U+00A0)";
        bool const has_apostrophe = french.find('\'') != std::string_view::npos;
        EXPECT_EQ(has_apostrophe, french.find("12'45") != std::string_view::npos) << french << " wants ’";
        EXPECT_TRUE(opens_its_questions(spanish)) << spanish << " wants ¿";
    }
    EXPECT_TRUE(lets_a_sign_slip("Bien : 95"));
    EXPECT_FALSE(opens_its_questions("es en MJ?"));
}

TEST(Sentences, WriteDecimalsAsTheirLanguageDoes) {
    auto const has_decimal = [](std::string_view text, char sign) {
        for (std::size_t i = 1; i + 1 < text.size(); ++i)
            if (text[i] == sign && is_digit(text[i - 1]) && is_digit(text[i + 1]))
                return true;
        return false;
    };
    for (NamedSentence const& named : all_sentences) {
        bool const names_a_document = named.sentence.english.find("JCGM") != std::string_view::npos ||
                                      named.sentence.english.find("WBT") != std::string_view::npos;
        if (names_a_document) // whose clauses are numbered with points
            continue;
        for (Language const language : {Language::french, Language::spanish})
            EXPECT_FALSE(has_decimal(named.sentence.in(language), '.')) << named.sentence.in(language);
        for (Language const language : {Language::english, Language::swahili})
            EXPECT_FALSE(has_decimal(named.sentence.in(language), ',')) << named.sentence.in(language);
    }
}

TEST(Speaker, FillsPlacesOnceAndLeavesThoseThatItIsGivenNothingFor) {
    Speaker const say(Language::french);
    EXPECT_EQ(say(sentences::in_row, {{"row", "{row}"}}), " à la ligne {row}"); // as someone typed it
    EXPECT_EQ(say(sentences::in_row), " à la ligne {row}");
    EXPECT_EQ(say(sentences::fine), "Bien.");
}

TEST(Speaker, WritesNumbersAsTheLanguageDoes) {
    EXPECT_EQ(Speaker(Language::english).number(95.85034), "95.8503");
    EXPECT_EQ(Speaker(Language::french).number(95.85034), "95,8503");
    EXPECT_EQ(Speaker(Language::spanish).tenths(-0.25), "-0,3");
    EXPECT_EQ(Speaker(Language::swahili).hundredths(31.666), "31.67");
    EXPECT_EQ(Speaker(Language::french).number(std::nan("")), "pas un nombre");
}

TEST(Sentences, AreSaidInOneWayEach) {
    std::set<std::string_view> english;
    for (NamedSentence const& named : all_sentences)
        EXPECT_TRUE(english.insert(named.sentence.english).second) << named.name << " stands there twice";
}

} // namespace
} // namespace hearthcell::tests
