// Which name a word is, and what formulas get to say through names.

#include "extension/formulas/calls.hpp"
#include "extension/formulas/names.hpp"

#include <gtest/gtest.h>

namespace hearthcell::formulas {
namespace {

std::string meaning(Names const& names, std::string_view word, std::string_view sheet = "Sheet1") {
    auto const tokens = tokens_of(word);
    if (tokens.size() != 1)
        return "several words";
    auto const found = names.meant(tokens[0], sheet);
    return found ? names.definition(*found).content : "none";
}

TEST(Names, BelongToTheWorkbookOrToASheet) {
    Names const names({{"mass", "", "1", {}},
                       {"mass", "Runs", "2", {}},
                       {"mass", "It's a. sheet", "3", {}},
                       {"site.boil", "", "4", {}},
                       {"fuel.T1", "", "5", {}},
                       {"Wärme", "", "6", {}},
                       {"site.boil", "Runs", "7", {}}});
    EXPECT_EQ(meaning(names, "mass"), "1");
    EXPECT_EQ(meaning(names, "MASS", "Runs"), "2") << "letter case does not count";
    EXPECT_EQ(meaning(names, "Runs.mass"), "2");
    EXPECT_EQ(meaning(names, "$runs.mass"), "2");
    EXPECT_EQ(meaning(names, "'It''s a. sheet'.mass"), "3");
    EXPECT_EQ(meaning(names, "$'It''s a. sheet'.mass"), "3");
    EXPECT_EQ(meaning(names, "site.boil"), "4");
    EXPECT_EQ(meaning(names, "Runs.site.boil"), "7");
    EXPECT_EQ(meaning(names, "fuel.T1"), "5") << "not the cell T1 of a sheet";
    EXPECT_EQ(meaning(names, "Wärme"), "6");
    for (char const* const other :
         {"masses", "boil", "Other.mass", "'file:///a.ods'#mass", "'mass'", "fuel.T2", "mass("})
        EXPECT_EQ(meaning(names, other).size() > 1, true) << other;
}

class Volatile : public ::testing::Test {
protected:
    static bool follows(std::vector<Definition> definitions, std::string_view formula,
                        std::string_view sheet = "Sheet1") {
        Names const names(std::move(definitions));
        Followed<bool> const followed(
            names, [](Token const& token) { return std::vector<bool>(is_volatile(token) ? 1 : 0, true); });
        return !followed.in(formula, sheet).empty();
    }
};

TEST_F(Volatile, IsWhatSaysSoItself) {
    EXPECT_TRUE(follows({}, "=NOW()"));
    EXPECT_FALSE(follows({}, "=today"));
}

TEST_F(Volatile, IsWhatUsesANameThatIs) {
    std::vector<Definition> const heute{{"heute", "", "TODAY()", {}}};
    EXPECT_TRUE(follows(heute, "=heute"));
    EXPECT_TRUE(follows(heute, "=A1+Heute*2"));
    EXPECT_FALSE(follows(heute, "=\"heute\""));
    EXPECT_FALSE(follows(heute, "=heute()"));
    EXPECT_FALSE(follows(heute, "=heute2"));
}

TEST_F(Volatile, IsWhatUsesANameThroughOthersWhateverTheirOrder) {
    std::vector<Definition> const chain{
        {"c", "", "b+1", {}}, {"a_", "", "NOW()", {}}, {"b", "", "a_+1", {}}, {"d", "", "1", {}}};
    EXPECT_TRUE(follows(chain, "=c"));
    EXPECT_FALSE(follows(chain, "=d"));
}

TEST_F(Volatile, IsNoNameOfAnotherSheetThatIsSpelledTheSame) {
    std::vector<Definition> const two{
        {"day", "Runs", "TODAY()", {}}, {"day", "", "43000", {}}, {"next", "Runs", "day+1", {}}};
    EXPECT_TRUE(follows(two, "=day", "Runs"));
    EXPECT_FALSE(follows(two, "=day", "Sheet1"));
    EXPECT_TRUE(follows(two, "=Runs.day", "Sheet1"));
    EXPECT_TRUE(follows(two, "=Runs.next", "Sheet1"));
}

TEST_F(Volatile, IsFoundInCirclesOfNames) {
    std::vector<Definition> const circle{
        {"a_", "", "b+c", {}}, {"b", "", "a_", {}}, {"c", "", "RAND()", {}}, {"self", "", "self+1", {}}};
    EXPECT_TRUE(follows(circle, "=a_"));
    EXPECT_TRUE(follows(circle, "=b"));
    EXPECT_FALSE(follows(circle, "=self"));
}

TEST_F(Volatile, IsFoundThroughAHundredThousandNames) {
    std::vector<Definition> chain;
    for (int number = 0; number < 100'000; ++number)
        chain.push_back({"n_" + std::to_string(number), "", "n_" + std::to_string(number + 1), {}});
    chain.back().content = "NOW()";
    EXPECT_TRUE(follows(std::move(chain), "=n_0"));
}

} // namespace
} // namespace hearthcell::formulas
