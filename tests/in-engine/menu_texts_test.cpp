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

} // namespace

TEST(TheMenusTexts, AreThereInEveryLanguageWithTheSamePlacesForNames) {
    for (std::size_t place = 0; place < menu::text_count; ++place) {
        std::string_view const english = menu::text(menu::Text(place), Language::english);
        for (Language const language : languages) {
            std::string_view const text = menu::text(menu::Text(place), language);
            EXPECT_FALSE(text.empty()) << english;
            for (std::string_view const word : words_shut_out(std::string(text), language))
                ADD_FAILURE() << "the glossary has another word for " << word << ": " << text;
            for (std::string_view const term : terms_lost(without_mark(english), without_mark(text), language))
                ADD_FAILURE() << "the glossary has another word for \"" << term << "\": " << text;
            for (char const* const mark : {"%1", "%2", "~"})
                EXPECT_EQ(text.find(mark) == std::string_view::npos, english.find(mark) == std::string_view::npos)
                    << text;
        }
    }
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
