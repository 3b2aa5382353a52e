// NIST/ITL Statistical Reference Datasets with their certified values. Certified are 15 digits of the decimal data; the
// tolerance of each set says how far decimal data survive as doubles. PiDigits is left out: its certified mean, 4.5348,
// is not that of the first 5000 digits of pi, 4.5358, so that its data cannot be computed.

#include "calls.hpp"
#include "nist_data.hpp"
#include "references.hpp"

#include "functions/number/distributions.hpp"

#include <algorithm>
#include <cmath>
#include <span>

namespace hearthcell::tests {
namespace {

std::vector<double> scaled(std::span<int const> whole, double offset, double divisor) {
    std::vector<double> numbers;
    for (int const one : whole)
        numbers.push_back((one + offset) / divisor); // one rounding: the double nearest to the decimal
    return numbers;
}

/// first, then (low, high) so many times: the pattern of the sets that try out numerical accuracy.
std::vector<double> alternating(double first, double low, double high, int times) {
    std::vector<double> numbers{first};
    for (int i = 0; i < times; ++i) {
        numbers.push_back(low);
        numbers.push_back(high);
    }
    return numbers;
}

/// Tells one set of data from another, since it depends on every reading and on their order.
double lag_1_autocorrelation(std::span<double const> x, double mean) {
    double products = 0, squares = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        squares += (x[i] - mean) * (x[i] - mean);
        if (i > 0)
            products += (x[i] - mean) * (x[i - 1] - mean);
    }
    return products / squares;
}

struct Certified {
    char const* name;
    std::vector<double> data;
    double mean, deviation, autocorrelation;
    double exactness; ///< of the standard deviation, relative
};

std::vector<Certified> certified() {
    std::vector<double> michelso;
    for (double const speed : numbers_of(lines_of("morley.csv").at(0)))
        michelso.push_back((speed + 299000) / 1000);
    // 1e-14: whole numbers, or a double's own digits. Else half a last digit of the data against their scatter.
    return {{"Lottery", scaled(lottery, 0, 1), 518.958715596330, 291.699727470969, -0.120948622967393, 1e-14},
            {"Lew", scaled(lew, 0, 1), -177.435000000000, 277.332168044316, -0.307304800605679, 1e-14},
            {"Mavro", scaled(mavro, 200000, 100000), 2.00185600000000, 0.000429123454003053, 0.937989183438248, 2e-13},
            {"Michelso", michelso, 299.852400000000, 0.0790105478190518, 0.535199668621283, 1e-13},
            {"NumAcc1", {10000001, 10000003, 10000002}, 10000002, 1, -0.5, 0},
            {"NumAcc2", alternating(1.2, 1.1, 1.3, 500), 1.2, 0.1, -0.999, 1e-14},
            {"NumAcc3", alternating(1000000.2, 1000000.1, 1000000.3, 500), 1000000.2, 0.1, -0.999, 4e-10},
            {"NumAcc4", alternating(10000000.2, 10000000.1, 10000000.3, 500), 10000000.2, 0.1, -0.999, 6e-9}};
}

} // namespace

TEST(Series, HasTheCertifiedMeanAndStandardDeviationOfEverySet) {
    for (Certified const& set : certified()) {
        auto const row = parts("SERIES", {column(set.data)});
        ASSERT_EQ(row.size(), 7U) << set.name;
        EXPECT_EQ(row[1], double(set.data.size())) << set.name;
        EXPECT_NEAR(row[0], set.mean, 1e-15 * std::fabs(set.mean)) << set.name;
        EXPECT_NEAR(row[2], set.deviation, set.exactness * set.deviation) << set.name;
        EXPECT_NEAR(lag_1_autocorrelation(set.data, row[0]), set.autocorrelation, 1e-7) << set.name;
    }
}

TEST(Series, IsAsExactAsTheDataAreWhereTheyAreNot) {
    // 0.1 and 0.3 above ten millions are no doubles; the standard deviation of the doubles that they become, worked out
    // in fractions, is this.
    auto const millions = parts("SERIES", {column(alternating(1000000.2, 1000000.1, 1000000.3, 500))});
    EXPECT_NEAR(millions.at(2), 0.10000000003492459656, 2e-17);
    auto const ten_millions = parts("SERIES", {column(alternating(10000000.2, 10000000.1, 10000000.3, 500))});
    EXPECT_NEAR(ten_millions.at(2), 0.10000000055879354477, 2e-17);
}

TEST(SeriesAndDifference, HaveTheCertifiedAnalysisOfVariance) {
    // 1e-13: fractions of tens of readings; 1e-9: seven digits of AtmWtAg, one of SmLs04, are all that scatters.
    std::vector<std::string> const sets = lines_of("anova.csv");
    ASSERT_EQ(sets.size(), 4U);
    for (std::string const& line : sets) {
        std::vector<std::string> const fields = split(line, ';');
        double const f = numbers_of(fields[1]).at(0), residual = numbers_of(fields[2]).at(0);
        std::vector<Value> groups;
        double squares = 0, degrees = 0;
        for (std::size_t i = 3; i < fields.size(); ++i) {
            groups.push_back(column(numbers_of(fields[i])));
            auto const row = parts("SERIES", {groups.back()});
            ASSERT_EQ(row.size(), 7U);
            squares += (row[1] - 1) * row[2] * row[2];
            degrees += row[1] - 1;
        }
        EXPECT_NEAR(std::sqrt(squares / degrees), residual, 1e-9 * residual) << fields[0];
        if (groups.size() != 2)
            continue;
        // Two groups of one size: Welch's t is the pooled one, and its square is F.
        auto const row = parts("DIFFERENCE", groups);
        double const t = row.at(0) * t_exceeded(0.05, row.at(4)) / ((row.at(2) - row.at(1)) / 2);
        EXPECT_NEAR(t * t, f, 1e-9 * f) << fields[0];
    }
}

} // namespace hearthcell::tests
