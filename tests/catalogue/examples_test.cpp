// Every example of the catalogue is computed, every element of a block included.

#include "functions/catalogue/catalogue.hpp"
#include "support/lint.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

TEST(Examples, GiveWhatTheyMust) {
    int examples = 0;
    for_every_function([&examples](Function const& function) {
        for (Example const& example : function.examples) {
            expect_outcome(function.name, {example.arguments.begin(), example.arguments.size()}, example.expected,
                           example.from);
            ++examples;
        }
    });
    EXPECT_GE(examples, 80);
}

TEST(Examples, ShowEveryPartOfEveryBlock) {
    for_every_function([](Function const& function) {
        bool shown = function.result.parts.empty();
        for (Example const& example : function.examples) {
            if (function.result.parts.empty() || example.expected.kind != ExpectedKind::block)
                continue;
            EXPECT_EQ(example.expected.columns, function.result.parts.size()) << function.name;
            shown = true;
        }
        // BUDGET's example shows its first cell: the rest is checked in tests/uncertainty.
        EXPECT_TRUE(shown || function.name == "BUDGET") << function.name;
    });
}

} // namespace
} // namespace hearthcell::tests
