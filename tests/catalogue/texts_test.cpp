// Reads every name and text of the catalogue and grumbles where one is not as all others are.

#include "manifest/generator/output.hpp"
#include "support/lint.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace hearthcell::tests {
namespace {

std::string upper(std::string_view text) {
    std::string result(text);
    for (char& c : result)
        c = is_lower(c) ? char(c - 'a' + 'A') : c;
    return result;
}

TEST(CatalogueTexts, NamesAreUpperCaseAndStoredNamesAreTheSameInCamelCase) {
    std::set<std::string_view> names;
    for_every_function([&](Function const& function) {
        EXPECT_TRUE(names.insert(function.name).second) << function.name << " stands there twice";
        ASSERT_FALSE(function.name.empty());
        EXPECT_TRUE(is_upper(function.name[0])) << function.name;
        EXPECT_TRUE(std::ranges::all_of(function.name, [](char c) { return is_upper(c) || is_digit(c); }))
            << function.name;
        EXPECT_EQ(upper(function.stored), function.name);
        EXPECT_TRUE(is_lower(function.stored[0])) << function.stored;
    });
}

TEST(CatalogueTexts, NamesLookLikeNoCellReference) {
    // STOVE.X is safe, but the part after the dot is what people say and type: keep it from looking like AB12.
    for_every_function([](Function const& function) {
        auto const digits = std::ranges::find_if(function.name, is_digit);
        bool const like_a_cell = digits != function.name.end() && digits - function.name.begin() <= 3 &&
                                 std::all_of(digits, function.name.end(), is_digit);
        EXPECT_FALSE(like_a_cell) << function.name;
    });
}

TEST(CatalogueTexts, SummariesAreTidyAndStartWithACapital) {
    for_every_function([](Function const& function) {
        expect_tidy(function.summary, function.name);
        EXPECT_TRUE(is_upper(function.summary.english[0])) << function.name << ": " << function.summary.english;
        EXPECT_LE(function.summary.english.size(), 100U) << function.name << ": too long for a table";
        expect_functions_named_in(function.summary, function.name);
    });
}

TEST(CatalogueTexts, HelpTextsAreTidyAndStartWithACapital) {
    for_every_argument([](Function const&, Argument const& argument, std::string const& whose) {
        expect_tidy(argument.help, whose);
        EXPECT_TRUE(is_upper(argument.help.english[0])) << whose << ": " << argument.help.english;
        expect_functions_named_in(argument.help, whose);
        if (!argument.absent_means.empty())
            expect_tidy(argument.absent_means, whose);
    });
}

TEST(CatalogueTexts, ArgumentNamesAreLowerCaseWordsOrCommonSigns) {
    for_every_argument([](Function const&, Argument const& argument, std::string const& whose) {
        expect_tidy(argument.name, whose);
        EXPECT_TRUE(std::ranges::all_of(argument.name, [](char c) { return is_lower(c) || c == ' ' || c == '-'; }))
            << whose;
        EXPECT_TRUE(is_lower(argument.name[0])) << whose;
    });
}

TEST(CatalogueTexts, ArgumentNamesAreUniqueAndNoKeywordOfIdlOrCpp) {
    // What the names become in IDL and C++ must be no word of those languages; IDL's do not mind letter case.
    static std::set<std::string> const keywords{
        // IDL of the office
        "any", "attribute", "boolean", "bound", "byte", "char", "const", "constants", "constrained", "default",
        "double", "enum", "exception", "false", "float", "get", "hyper", "in", "inout", "interface", "long",
        "maybeambiguous", "maybedefault", "maybevoid", "module", "needs", "observes", "optional", "out", "property",
        "published", "raises", "readonly", "removable", "sequence", "service", "set", "short", "singleton", "string",
        "struct", "transient", "true", "type", "typedef", "union", "unsigned", "void",
        // C++
        "alignas", "alignof", "and", "asm", "auto", "bool", "break", "case", "catch", "class", "concept", "continue",
        "decltype", "delete", "do", "else", "explicit", "export", "extern", "for", "friend", "goto", "if", "inline",
        "int", "mutable", "namespace", "new", "noexcept", "not", "nullptr", "operator", "or", "private", "protected",
        "public", "register", "requires", "return", "signed", "sizeof", "static", "switch", "template", "this", "throw",
        "try", "typename", "using", "virtual", "volatile", "while", "xor"};
    for_every_function([&](Function const& function) {
        std::set<std::string> seen;
        for (Argument const& argument : function.arguments) {
            std::string const name = generator::identifier(argument.name);
            EXPECT_TRUE(seen.insert(name).second) << function.name << " has two arguments " << name;
            EXPECT_FALSE(keywords.contains(name)) << function.name << ": " << name << " is a keyword";
        }
    });
}

TEST(CatalogueTexts, NamesOfTablesAreTidyLowerCaseAndUnique) {
    for_every_argument([](Function const&, Argument const& argument, std::string const& whose) {
        bool const by_name = argument.kind == ArgumentKind::name || argument.kind == ArgumentKind::number_or_name;
        EXPECT_EQ(argument.table != nullptr, by_name) << whose;
        if (argument.table == nullptr)
            return;
        std::set<std::string_view> names;
        for (Named const& row : argument.table->rows) {
            expect_tidy(row.name, whose);
            EXPECT_TRUE(std::ranges::none_of(row.name, is_upper)) << whose << ": " << row.name;
            EXPECT_TRUE(names.insert(row.name).second) << whose << ": " << row.name << " stands there twice";
            EXPECT_FALSE(row.source.title.empty()) << whose << ": " << row.name;
        }
    });
}

} // namespace
} // namespace hearthcell::tests
