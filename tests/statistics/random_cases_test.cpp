// Some thousand random cases against R and against Python, which compute them in other ways; see references.py and
// references.R. Both write their files anew before the tests run.

#include "calls.hpp"
#include "references.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace hearthcell::tests {
namespace {

struct Case {
    std::string line;
    std::string function;
    std::vector<Value> arguments;
};

std::vector<Case> cases() {
    std::vector<Case> result;
    for (std::string const& line : lines_of("cases.csv")) {
        std::vector<std::string> const fields = split(line, ';');
        Case one{line, fields.front(), {}};
        for (std::size_t i = 1; i + 1 < fields.size(); ++i)
            one.arguments.push_back(column(numbers_of(fields[i])));
        for (double const number : numbers_of(fields.back()))
            one.arguments.emplace_back(number);
        result.push_back(one);
    }
    return result;
}

std::vector<double> answer(Case const& asked) {
    Function const& function = *find_function(asked.function);
    Outcome const result = outcome(asked.function, asking_for_all(function, asked.arguments));
    if (Block const* block = std::get_if<Block>(&result))
        return block->numbers;
    double const* const number = std::get_if<double>(&result);
    return {number != nullptr ? *number : failure(std::get<Failure>(result).reason)};
}

bool is_probability(Function const& function, std::size_t part) {
    return function.result.parts.size() > part && function.result.parts[part].name.english == "p";
}

/// Limits and differences are sums: what cancels in them is as exact as the largest of them.
double scale_of(Function const& function, std::vector<double> const& expected, std::size_t part) {
    bool const is_sum =
        function.result.parts.size() > part && (function.result.parts[part].name.english.ends_with("limit") ||
                                                function.result.parts[part].name.english == "difference" ||
                                                function.result.parts[part].name.english == "saving");
    double scale = std::fabs(expected[part]);
    for (std::size_t i = 0; is_sum && i < 6 && i < expected.size(); ++i)
        if (!is_absent(expected[i]) && function.result.parts[i].name.english.ends_with("limit"))
            scale = std::max(scale, std::fabs(expected[i]));
    return is_sum && function.name.ends_with("SAVING") ? std::max(scale, 1.0)
                                                       : scale; // 1 is what a saving is taken from
}

/// Whether all parts agree. The tolerances are those of the references among themselves (2e-12, p 3e-12) rounded up:
/// p is the exponential of something, and in R and Python the means are summed in double.
void expect_agreement(Case const& asked, std::vector<double> const& expected, char const* by) {
    Function const& function = *find_function(asked.function);
    std::vector<double> const given = answer(asked);
    ASSERT_EQ(given.size(), expected.size()) << by << " " << asked.line;
    for (std::size_t part = 0; part < given.size(); ++part) {
        ASSERT_EQ(failed(given[part]), is_absent(expected[part])) << by << ", part " << part + 1 << ", " << asked.line;
        if (failed(given[part]))
            continue;
        double const tolerance = is_probability(function, part) ? 1e-11 : 5e-12;
        EXPECT_NEAR(given[part], expected[part], tolerance * scale_of(function, expected, part))
            << by << ", part " << part + 1 << ", " << asked.line;
    }
}

constexpr std::size_t cases_in_all = 6400;

void expect_all_agree(std::string const& file, char const* by) {
    std::vector<Case> const asked = cases();
    std::vector<std::string> const expected = lines_of(file);
    ASSERT_EQ(asked.size(), cases_in_all);
    ASSERT_EQ(expected.size(), asked.size());
    for (std::size_t i = 0; i < asked.size(); ++i)
        expect_agreement(asked[i], numbers_of(expected[i]), by);
}

} // namespace

TEST(RandomCases, AgreeWithR) {
    expect_all_agree("r.csv", "R");
}

TEST(RandomCases, AgreeWithPython) {
    expect_all_agree("scipy.csv", "Python");
}

TEST(RandomCases, CoverWhatCanHappen) {
    std::map<std::string, int> asked, failures, zeros;
    for (Case const& one : cases()) {
        std::vector<double> const given = answer(one);
        ++asked[one.function];
        failures[one.function] += std::any_of(given.begin(), given.end(), [](double x) { return failed(x); }) ? 1 : 0;
        zeros[one.function] += given.front() == 0 ? 1 : 0;
    }
    for (char const* function : {"SERIES", "DIFFERENCE", "SAVING", "OUTLIER", "PAIREDDIFFERENCE", "PAIREDSAVING"})
        EXPECT_EQ(asked[function], 1000) << function;
    EXPECT_EQ(asked["RUNSNEEDED"], 400);
    EXPECT_GE(failures["SAVING"], 10) << "unbounded limits";
    EXPECT_GE(failures["PAIREDSAVING"], 10) << "unbounded limits";
    EXPECT_GE(failures["RUNSNEEDED"], 10) << "too many runs";
    EXPECT_GE(zeros["OUTLIER"], 100) << "no run apart";
    EXPECT_LE(zeros["OUTLIER"], 900) << "a run apart";
}

} // namespace hearthcell::tests
