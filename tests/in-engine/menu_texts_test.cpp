#include "extension/checking/texts.hpp"
#include "extension/menu/commands.hpp"
#include "tests/support/terms_kept.hpp"
#include "tests/support/words_shut_out.hpp"

#include <gtest/gtest.h>

#include <set>

namespace hearthcell::tests {

namespace {

std::string without_mark(std::string_view label) {
    std::string text(label);
    std::erase(text, '~');
    return text;
}

/// Of one text in all languages: that each has it, in the glossary's words and with the same places.
template <class In> void expect_well_spoken(In const& in) {
    std::string_view const english = in(Language::english);
    for (Language const language : languages) {
        std::string_view const text = in(language);
        EXPECT_FALSE(text.empty()) << english;
        for (std::string_view const word : words_shut_out(std::string(text), language))
            ADD_FAILURE() << "the glossary has another word for " << word << ": " << text;
        for (std::string_view const term : terms_lost(without_mark(english), without_mark(text), language))
            ADD_FAILURE() << "the glossary has another word for \"" << term << "\": " << text;
        for (char const* const mark : {"%1", "%2", "%3", "%4", "~"})
            EXPECT_EQ(text.find(mark) == std::string_view::npos, english.find(mark) == std::string_view::npos) << text;
    }
}

} // namespace

TEST(TheMenusTexts, AreThereInEveryLanguageWithTheSamePlacesForNames) {
    for (std::size_t place = 0; place < menu::text_count; ++place)
        expect_well_spoken([place](Language language) { return menu::text(menu::Text(place), language); });
}

TEST(TheChecksTexts, AreThereInEveryLanguageWithTheSamePlacesForNames) {
    for (std::size_t place = 0; place < std::size_t(checking::Text::count); ++place)
        expect_well_spoken([place](Language language) { return checking::text(checking::Text(place), language); });
}

TEST(TheMenusTexts, GiveEachCommandALetterOfItsOwn) {
    for (Language const language : languages) {
        std::set<char> letters;
        for (menu::Entry const& entry : menu::entries) {
            std::string_view const label = menu::text(entry.label, language);
            std::size_t const mark = label.find('~');
            ASSERT_LT(mark + 1, label.size()) << label;
            EXPECT_TRUE(letters.insert(char(label[mark + 1] | ' ')).second) << label;
        }
    }
}

} // namespace hearthcell::tests
