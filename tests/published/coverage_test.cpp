// That nothing was forgotten: every function has published values.

#include "functions/catalogue/catalogue.hpp"
#include "functions/catalogue/names.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace hearthcell::tests {
namespace {

/// What is computed from many readings is checked whole in a folder of its own: tests/statistics, log, diagnosis,
/// times, uncertainty.
constexpr std::string_view checked_elsewhere[] = {"A temperature log", "Repeated runs", "Variants compared",
                                                  "The record itself"};

TEST(Coverage, EveryFunctionHasAtLeastThreePublishedValues) {
    for (Group const& group : catalogue()) {
        if (std::ranges::find(checked_elsewhere, group.title.english) != std::end(checked_elsewhere))
            continue;
        for (Function const& function : group.functions) {
            // What gives words has its sentences checked elsewhere.
            if (std::holds_alternative<Wordy>(function.kernel))
                continue;
            int values = 0;
            for (PublishedTable const* table : all_tables())
                for (Row const& row : table->rows())
                    if (same_name(row.function, function.name) && row.expected.kind != ExpectedKind::error)
                        ++values;
            EXPECT_GE(values, 3) << function.name << " needs rows in a PublishedTable of its subject's test";
        }
    }
}

TEST(Coverage, EveryPublishedValueNamesItsSource) {
    for (PublishedTable const* table : all_tables())
        for (Row const& row : table->rows())
            EXPECT_FALSE(row.from.empty()) << row.function;
}

} // namespace
} // namespace hearthcell::tests
