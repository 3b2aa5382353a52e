#pragma once
// What the tests of the template for comparisons share: it is filled with the runs of the demonstration, in each
// language.

#include "extension/demonstration/demo_data.hpp"
#include "templates.hpp"

namespace hearthcell::tests {

inline constexpr int first_run = 16, last_run = 30; // rows of the sheet Runs that the demonstration fills

inline std::string cell(char column, int row) {
    return column + std::to_string(row);
}

/// One row of the sheet Comparison.
struct Expected {
    double difference, lower, upper, change, least, most;
    char const *p, *verdict;
    double runs_needed;
};

class ComparisonTemplate : public testing::TestWithParam<std::string_view> {
protected:
    ComparisonTemplate() {
        fill(workbook, demo_data("comparison"));
        workbook.recalculate();
    }

    [[nodiscard]] static std::string said_here(std::string const& english) {
        return said(english, GetParam(), "comparison");
    }
    /// A sentence with what stands in its places {1}, {2} …
    [[nodiscard]] static std::string sentence(std::string const& english, std::vector<std::string> const& values) {
        std::string text = said_here(english);
        for (std::size_t i = values.size(); i-- > 0;) {
            std::string const place = "{" + std::to_string(i + 1) + "}";
            for (std::size_t at = text.find(place); at != std::string::npos; at = text.find(place))
                text.replace(at, place.size(), values[i]);
        }
        return text;
    }
    void in_each_run(char column, std::string const& text) {
        for (int row = first_run; row <= last_run; ++row)
            runs.text(cell(column, row), text);
    }
    void expect(int row, Expected const& expected) const {
        auto const line = comparison.values(cell('D', row) + ":" + cell('I', row))[0];
        EXPECT_NEAR(number(line[0]), expected.difference, 1e-9) << row;
        EXPECT_NEAR(number(line[1]), expected.lower, 1e-9) << row;
        EXPECT_NEAR(number(line[2]), expected.upper, 1e-9) << row;
        EXPECT_NEAR(number(line[3]), expected.change, 1e-10) << row;
        EXPECT_NEAR(number(line[4]), expected.least, 1e-10) << row;
        EXPECT_NEAR(number(line[5]), expected.most, 1e-10) << row;
        EXPECT_EQ(comparison.shown(cell('J', row)), expected.p) << row;
        EXPECT_EQ(comparison.shown(cell('K', row)), said_here(expected.verdict)) << row;
        EXPECT_EQ(number(comparison.value(cell('L', row))), expected.runs_needed) << row;
    }
    [[nodiscard]] std::string errors() const {
        std::string all;
        for (int sheet = 0; sheet < workbook.sheets(); ++sheet)
            all += errors_on(workbook, sheet);
        return all;
    }

    Document workbook =
        Document::open(office_with_package(), template_file(GetParam(), "comparison"), office::Access::read_write);
    Sheet runs = workbook.sheet(0), comparison = workbook.sheet(1), summary = workbook.sheet(2);
};

inline std::string const flat = "chimney stove, flat grate", ribbed = "chimney stove, ribbed grate",
                         baffle = "chimney stove, baffle";
inline constexpr char by_day[] =
    "By day: difference, limits and p leave out what the days did. The relative change is a share "
    "of the mean of the baseline as measured.";

} // namespace hearthcell::tests
