// The glossary, and that what people read keeps to it.

#include "functions/catalogue/glossary.hpp"

#include "functions/catalogue/tables.hpp"
#include "manifest/generator/guide/words.hpp"
#include "manifest/generator/output.hpp"
#include "support/lint.hpp"
#include "support/terms_kept.hpp"
#include "support/words_shut_out.hpp"

#include <gtest/gtest.h>

#include <set>

namespace hearthcell::tests {
namespace {

TEST(Glossary, HasEachTermOnceAndInEveryLanguage) {
    std::set<std::string_view> english;
    for (Wording const& term : glossary) {
        EXPECT_TRUE(english.insert(term.english).second) << term.english << " stands there twice";
        EXPECT_EQ(find_term(term.english), &term);
        for (Language const language : languages)
            expect_tidy(term.in(language), term.english);
    }
    EXPECT_EQ(find_term("no such term"), nullptr);
}

TEST(Glossary, NamesTheArgumentsOfAFunctionDifferentlyInEveryLanguage) {
    for_every_function([](Function const& function) {
        for (Language const language : languages) {
            std::set<std::string_view> names;
            for (Argument const& argument : function.arguments)
                EXPECT_TRUE(names.insert(argument.name.in(language)).second)
                    << function.name << " has two arguments " << argument.name.in(language);
        }
    });
}

void expect_as_in_glossary(Wording const& words, std::string_view whose) {
    Wording const* const term = find_term(words.english);
    if (term == nullptr)
        return;
    for (Language const language : languages)
        EXPECT_EQ(words.in(language), term->in(language)) << whose;
}

TEST(Glossary, NamesResultsAndTheirParts) {
    for_every_function([](Function const& function) {
        expect_as_in_glossary(function.result.name, function.name);
        for (Part const& part : function.result.parts)
            expect_as_in_glossary(part.name, function.name);
    });
}

void expect_no_word_shut_out(std::string_view text, Language language, std::string_view whose) {
    for (std::string_view const word : words_shut_out(std::string(text), language))
        ADD_FAILURE() << whose << " says \"" << word << "\": " << text;
}

TEST(Glossary, ShutsWordsOutOfWizardGuideAndTables) {
    for (Language const language : languages) {
        for (Wording const& term : glossary)
            expect_no_word_shut_out(term.in(language), language, term.english);
        for_every_function([&](Function const& function) {
            expect_no_word_shut_out(generator::full_summary(function, language), language, function.name);
            expect_no_word_shut_out(function.result.name.in(language), language, function.name);
        });
        for_every_argument([&](Function const& function, Argument const& argument, std::string const& whose) {
            expect_no_word_shut_out(generator::full_help(function, argument, language), language, whose);
        });
        for (NameTable const* const table : name_tables)
            for (Named const& row : table->rows)
                expect_no_word_shut_out(row.name.in(language), language, row.name.english);
        for (std::size_t i = 0; i < std::size_t(generator::guide::Word::count); ++i)
            expect_no_word_shut_out(generator::guide::word(generator::guide::Word(i), language), language, "the guide");
    }
}

void expect_terms_kept(Wording const& words, std::string_view whose) {
    for (Language const language : languages)
        for (std::string_view const term : terms_lost(words.english, words.in(language), language))
            ADD_FAILURE() << whose << " has another word for \"" << term << "\": " << words.in(language) << " ("
                          << words.english << ")";
}

TEST(Glossary, GivesWizardAndGuideTheirTermsInEveryLanguage) {
    for (Wording const& term : glossary)
        expect_terms_kept(term, "The glossary");
    for_every_function([](Function const& function) {
        expect_terms_kept(function.summary, function.name);
        expect_terms_kept(function.result.name, function.name);
        expect_terms_kept(function.caution, function.name);
        for (Part const& part : function.result.parts)
            expect_terms_kept(part.name, function.name);
    });
    for_every_argument([](Function const&, Argument const& argument, std::string const& whose) {
        expect_terms_kept(argument.help, whose);
        expect_terms_kept(argument.absent_means, whose);
    });
    using namespace generator::guide;
    for (std::size_t i = 0; i < std::size_t(Word::count); ++i) {
        auto const in = [i](Language language) { return word(Word(i), language); };
        expect_terms_kept({in(Language::english), in(Language::french), in(Language::spanish), in(Language::swahili)},
                          "The guide");
    }
}

TEST(Glossary, NoticesATermThatIsSaidOtherwise) {
    EXPECT_EQ(terms_lost("The boiling point", "Le point d’ébullition", Language::french).size(), 0U);
    EXPECT_EQ(terms_lost("The boiling point", "L’ébullition", Language::french).size(), 1U);
    EXPECT_EQ(terms_lost("Rows left out", "safu zilizoachwa", Language::swahili).size(), 1U);
    EXPECT_EQ(terms_lost("fuel use", "matumizi ya kuni", Language::swahili).size(), 1U);
    EXPECT_EQ(terms_lost("Char and charcoal", "Charbon", Language::french).size(), 0U);
    EXPECT_EQ(terms_lost("STOVE.CHARENERGY of {fuel}, in characters", "…", Language::french).size(), 0U);
    EXPECT_EQ(terms_lost("Efficiency", "ÉTUVE, RENDEMENT", Language::french).size(), 0U);
}

TEST(Glossary, ShutsAWordOutWhereverItStands) {
    EXPECT_EQ(words_shut_out("Temperatura de la estufa", Language::spanish).size(), 1U);
    EXPECT_EQ(words_shut_out("Joto la maji", Language::swahili).size(), 1U);
    EXPECT_EQ(words_shut_out("kwa kumbukumbu", Language::swahili).size(), 0U); // from memory
    EXPECT_EQ(words_shut_out("En mots", Language::french).size(), 1U);
    EXPECT_EQ(words_shut_out("prueba", Language::english).size(), 0U);
    EXPECT_EQ(words_shut_out("Nouveau relevé d’essai", Language::french).size(), 1U);
    EXPECT_EQ(words_shut_out("Incertidumbre estándar de la prueba", Language::spanish).size(), 2U);
    EXPECT_EQ(words_shut_out("Kanieneo na nambari", Language::swahili).size(), 2U);
    EXPECT_EQ(words_shut_out("teknologia", Language::swahili).size(), 0U); // within another word
}

} // namespace
} // namespace hearthcell::tests
