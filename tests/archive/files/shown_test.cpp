// Names and texts from elsewhere, as they are shown.

#include "extension/archive/files/shown.hpp"

#include <gtest/gtest.h>

#include <set>

namespace hearthcell::tests::archive {
namespace {

using namespace hearthcell::archive;

/// No byte that a terminal could obey, and each letter whole.
bool is_quiet(std::string const& text) {
    for (char const byte : text)
        if ((byte >= 0 && byte < 0x20) || byte == 0x7F)
            return false;
    return harmless(text) == text;
}

} // namespace

TEST(ANameThatIsShown, IsAnotherOneForEachName) {
    std::set<std::string> names;
    for (int byte = 1; byte < 256; ++byte)
        names.insert(std::string("run") + static_cast<char>(byte));
    for (char const* name :
         {"run\\x1b", "run\\\\x1b", "run\\", "run\\\\", "run\u009b", "run\\u009b", "run\u202e", "run\u200b",
          "run\ufeff", "run\xc0\x80", "run\xed\xa0\x80", "run\xf4\x90\x80\x80", "run\xe2\x82", "runé"})
        names.insert(name);
    std::set<std::string> seen;
    for (std::string const& name : names) {
        EXPECT_TRUE(seen.insert(shown(name)).second) << shown(name);
        EXPECT_TRUE(is_quiet(shown(name))) << shown(name);
    }
}

TEST(ANameThatIsShown, IsItselfWhereThereIsNothingToHide) {
    for (char const* name : {"run 1.ods", "Größen/湯沸かし 试验.xlsx", "a\u200cb", "👍", "=1+1", "it's \"hot\""})
        EXPECT_EQ(shown(name), name);
    EXPECT_EQ(shown("a\x1b[2J\xff\u202e\nb"), "a\\x1b[2J\\xff\\u202e\\x0ab");
}

TEST(ATextThatIsShown, KeepsItsLinesAndLosesItsOrders) {
    EXPECT_EQ(harmless("two\r\n\tlines \\ here"), "two\r\n\tlines \\ here");
    EXPECT_EQ(harmless("a\x1b]8;;b\x07\u0085\x80"), "a\\x1b]8;;b\\x07\\u0085\\x80");
}

TEST(ALine, IsCutBetweenTwoLettersAndSaysSo) {
    std::string many;
    for (int letter = 0; letter < 300; ++letter)
        many += "é";
    EXPECT_EQ(line_of(many), many.substr(0, 400) + "… (cut)");
    EXPECT_EQ(line_of(many.substr(0, 400)), many.substr(0, 400));
    EXPECT_EQ(line_of("two\nlines"), "two\\x0alines");
}

} // namespace hearthcell::tests::archive
