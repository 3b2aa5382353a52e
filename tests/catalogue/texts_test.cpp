// Reads every name and text of the catalogue and grumbles where one is not as all others are.

#include "functions/catalogue/tables.hpp"
#include "manifest/generator/output.hpp"
#include "support/lint.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
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
        EXPECT_EQ(upper(function.stored), function.once_called.empty() ? function.name : function.once_called);
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
        for (Language const language : languages)
            expect_tidy(argument.name.in(language), whose);
        EXPECT_TRUE(std::ranges::all_of(argument.name.english, [](char c) {
            return is_lower(c) || c == ' ' || c == '-';
        })) << whose;
        EXPECT_TRUE(is_lower(argument.name.english[0])) << whose;
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

TEST(CatalogueTexts, NamesOfTablesAreTidyAndLowerCase) {
    for_every_argument([](Function const&, Argument const& argument, std::string const& whose) {
        bool const by_name = argument.kind == ArgumentKind::name || argument.kind == ArgumentKind::number_or_name;
        bool const may_have_one = by_name || argument.kind == ArgumentKind::column;
        EXPECT_TRUE(argument.table != nullptr ? may_have_one : !by_name) << whose;
        if (argument.table == nullptr)
            return;
        EXPECT_TRUE(argument.measure == argument.table->measure) << whose;
        for (Named const& row : argument.table->rows) {
            for (Language const language : languages) {
                std::string_view const name = row.name.in(language);
                expect_tidy(name, whose);
                expect_tidy(row.what.in(language), whose);
                bool const is_a_foreign_name = language == Language::swahili; // of a tree that does not grow there
                EXPECT_TRUE(is_a_foreign_name || std::ranges::none_of(name, is_upper)) << whose << ": " << name;
            }
            EXPECT_FALSE(row.source.title.empty()) << whose << ": " << row.name.english;
        }
    });
}

TEST(CatalogueTexts, EachTableIsShownWholeByTheFunctionThatOthersReferTo) {
    std::set<std::string_view> shown;
    for_every_argument([&](Function const& function, Argument const& argument, std::string const& whose) {
        if (!argument.lists_names)
            return;
        ASSERT_NE(argument.table, nullptr) << whose;
        EXPECT_EQ(argument.table->listed_by, function.name);
        shown.insert(function.name);
    });
    for_every_argument([&](Function const&, Argument const& argument, std::string const& whose) {
        if (argument.table != nullptr) {
            EXPECT_TRUE(shown.contains(argument.table->listed_by)) << whose;
        }
    });
}

TEST(CatalogueTexts, EveryRowAnswersToItsNameInEveryLanguageAndToThatAlone) {
    for (NameTable const* const table : name_tables)
        for (Named const& row : table->rows)
            for (Language const language : languages) {
                NamedRows const found = find_name(*table, row.name.in(language));
                EXPECT_EQ(found.first, &row) << row.name.in(language);
                EXPECT_EQ(found.count, 1U) << row.name.in(language) << " is ambiguous";
            }
}

TEST(CatalogueTexts, OtherNamesOfARowLeadToItAndAreWrittenOnce) {
    for (NameTable const* const table : name_tables)
        for (Named const& row : table->rows) {
            std::set<std::uint32_t> written;
            for (std::string_view const name : row.also) {
                expect_tidy(name, row.name);
                EXPECT_GE(find_name(*table, name).count, 1U) << name;
                EXPECT_TRUE(answers_to(row, name)) << name;
                EXPECT_TRUE(written.insert(fingerprint(name)).second) << row.name.english << ": " << name << " twice";
                for (Language const language : languages)
                    EXPECT_FALSE(same_name(row.name.in(language), name)) << name << " is the row's name already";
            }
        }
}

TEST(CatalogueTexts, NamesThatDifferHaveFingerprintsThatDiffer) {
    std::map<std::uint32_t, std::string_view> names;
    for (NameTable const* const table : name_tables)
        for (Named const& row : table->rows)
            for_every_name(row, [&](std::string_view name) {
                auto const [other, is_new] = names.emplace(fingerprint(name), name);
                EXPECT_TRUE(is_new || same_name(other->second, name)) << name << " and " << other->second;
            });
}

/// Whether a text holds a word of some language, not only signs and abbreviations.
bool holds_words(std::string_view text) {
    std::size_t letters = 0;
    for (char const c : text) {
        letters = is_lower(c) ? letters + 1 : 0;
        if (letters == 4)
            return true;
    }
    return false;
}

bool is_the_same_everywhere(Label const& label) {
    return std::ranges::all_of(languages, [&](Language language) { return label.in(language) == label.english; });
}

TEST(Texts, EquationsAndTitlesThatHoldWordsHoldThemInEveryLanguage) {
    static constexpr std::string_view document = "Water Boiling Test"; // is called so everywhere
    for_every_function([](Function const& function) {
        for (Label const& equation : function.equations)
            EXPECT_FALSE(is_the_same_everywhere(equation) && holds_words(equation.english))
                << function.name << ": " << equation.english;
        for (Source const& source : function.sources)
            EXPECT_FALSE(is_the_same_everywhere(source.title) && holds_words(source.title.english) &&
                         !source.title.english.starts_with(document))
                << source.title.english;
    });
    EXPECT_TRUE(holds_words("dry mass/time"));
    EXPECT_FALSE(holds_words("m c exp(-t UA/(m c + C)), IAPWS R7-97"));
}

} // namespace
} // namespace hearthcell::tests
