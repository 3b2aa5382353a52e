// EXPLAIN says what a name in the place of a number stands for, once for each.

#include "tests/support/asking.hpp"

namespace hearthcell::tests {
namespace {

std::size_t times(std::string const& words, std::string const& text) {
    std::size_t count = 0;
    for (std::size_t at = text.find(words); at != std::string::npos; at = text.find(words, at + 1))
        ++count;
    return count;
}

std::string const pine = "pine", twice = "\"pine\" stands for";

TEST(NamesGiven, AreSaidOnceWithTheirValues) {
    EXPECT_EQ(times(twice, explained("WOODENERGY", {520.0, 0.14, pine})), 1U);
    EXPECT_EQ(times(twice, explained("FUELENERGY", {column({300.0, 250.0}), 0.12, pine})), 1U);
    EXPECT_EQ(times(twice, explained("FUELENERGY", {column({300.0, 250.0}), 0.12, column({pine, pine})})), 1U);
    EXPECT_EQ(times("stands for", explained("FUELENERGY", {column({300.0, 250.0}), 0.12, column({pine, 18.7})})), 1U);
}

TEST(NamesGiven, AreNoneWhereANumberIsATextOrNone) {
    EXPECT_EQ(times("stands for", explained("WOODENERGY", {520.0, 0.14, std::string("19")})), 0U);
    EXPECT_EQ(times("stands for", explained("WOODENERGY", {520.0, 0.14, 19.0})), 0U);
}

} // namespace
} // namespace hearthcell::tests
