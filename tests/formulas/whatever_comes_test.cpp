// Formulas come out of files of any origin: nothing may crash, hang or take long.

#include "extension/formulas/names.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/reads.hpp"
#include "extension/formulas/recognition/recognised.hpp"
#include "extension/formulas/rewriting.hpp"

#include <gtest/gtest.h>

#include <ctime>
#include <functional>
#include <random>

namespace hearthcell::formulas {
namespace {

std::string joined(std::string_view formula) {
    std::string text;
    for (Token const& token : tokens_of(formula)) {
        EXPECT_EQ(token.start, text.size());
        EXPECT_FALSE(token.text.empty()) << formula;
        text += token.text;
    }
    return text;
}

/// All that the room can be asked of a formula.
void ask_everything(std::string const& formula) {
    ASSERT_EQ(joined(formula), formula);
    std::vector<std::string> const sheets{"Sheet1", "It's"};
    std::vector<Table> const tables{{"Runs", {{0, 0, 0}, {0, 9, 2}}, {"Mass"}}};
    Names const names({{"first", "", "A1", {}}, {"all", "", formula, {}}, {"site.T1", "It's", "all", {}}});
    (void)Reads(sheets, names, tables).of(formula, {1, 2, 2});
    Reads const reads(sheets, names, tables);
    (void)reads.of("=all", {1, 2, 2});
    auto const nothing_typed = [](Place const&) { return std::optional<double>(); };
    (void)recognised(formula, {1, 2, 2}, {reads, nothing_typed, [&](Place const&) { return formula; }});
    (void)Followed<bool>(names, [](Token const&) { return std::vector<bool>(); }).in(formula, "Sheet1");
    (void)as_shown(formula);
    (void)only_call(formula);
    (void)address_in(formula);
    EXPECT_EQ(rewritten(formula,
                        [](Token const& token) {
                            return with_other_sheets(token,
                                                     [](std::string const&) { return std::optional<std::string>(); });
                        }),
              formula);
}

TEST(WhateverComes, IsGivenBackWhole) {
    std::vector<std::string> const parts{"=",          "{=",
                                         "of:=",       "'",
                                         "\"",         "''",
                                         "[",          "]",
                                         "(",          ")",
                                         "{",          "}",
                                         "$",          ".",
                                         ":",          "#",
                                         "#REF!",      "Err:5",
                                         "A1",         "Sheet1",
                                         "It''s",      "file:///",
                                         "1",          "1E",
                                         "+",          "-",
                                         ";",          "|",
                                         "!",          "~",
                                         " ",          "\u00A0",
                                         "é",          "\xC3",
                                         "\x80",       std::string(1, '\0'),
                                         "STOVE.",     "BOILINGPOINT",
                                         "NOW",        "Runs",
                                         "[Mass]",     "[#This Row]",
                                         "site.T1",    "first",
                                         "all",        "@",
                                         "?",          "\\",
                                         "&",          "<",
                                         ">",          "=",
                                         "%",          "A:A",
                                         "1:1",        ".A1",
                                         "XFD1048576", "99999999999999999999"};
    std::mt19937 chance(1); // the same formulas each time
    for (int round = 0; round < 20'000; ++round) {
        std::string formula;
        for (auto left = chance() % 12; left > 0; --left)
            formula += parts[chance() % parts.size()];
        ask_everything(formula);
    }
    for (int byte = 0; byte < 256; ++byte)
        ask_everything("=A1" + std::string(3, static_cast<char>(byte)) + "A1");
}

std::string repeated(std::string_view part, std::size_t size) {
    std::string text;
    while (text.size() < size)
        text += part;
    return text;
}

/// Of the processor, since other programs may be at work beside this one.
double seconds_for(std::function<void()> const& work) {
    std::clock_t const start = std::clock();
    work();
    return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

TEST(WhateverComes, TakesTimeThatGrowsNoFasterThanItsLength) {
    constexpr std::size_t megabyte = 1 << 20;
    constexpr double most = 32; // times as long for 8 times as much; 64 times where it grew with the square
    constexpr double unmeasurable = 0.02;
    for (std::string_view const part :
         {"A1+", "a",      "a.",     "a.b",     "$",          "'",      "''",     "'a'.",  "'a'#",  "'a'.A1:",
          "\"",  "\"a\"",  "[",      "]",       "[[",         "a[",     "a['",    "[.A1]", "[.A1:", "[.A1",
          "['",  "(",      "SUM(",   ")",       "{",          "}",      "{=",     "1",     "1:",    "1E",
          "1.",  "#",      "#REF!",  "#REF",    "#A",         "A#REF!", "Err:",   "Err:5", ":",     "A1:",
          "A:",  "A1:B2:", "a:'",    " ",       "a ",         "A1 ",    "\u00A0", "\x80",  "é",     "+",
          "<",   "all+",   "first:", "site.T1", "Runs[Mass]", "Runs[",  "$'",     "a$",    "|"}) {
        std::string const formula = repeated(part, megabyte), eighth = repeated(part, megabyte / 8);
        double const taken = seconds_for([&] { (void)tokens_of(formula); });
        EXPECT_LT(taken, most * (seconds_for([&] { (void)tokens_of(eighth); }) + unmeasurable)) << part;
        std::string const shorter = repeated(part, megabyte / 64);
        double const asked = seconds_for([&] { ask_everything(eighth); });
        EXPECT_LT(asked, most * (seconds_for([&] { ask_everything(shorter); }) + unmeasurable)) << part;
    }
}

} // namespace
} // namespace hearthcell::formulas
