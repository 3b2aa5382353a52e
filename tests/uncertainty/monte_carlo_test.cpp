// JCGM 101: the distribution of a result is drawn, number by number, and its standard deviation compared with what
// UNCERTAINTY computes. Independent of all derivatives.

#include "support/asking.hpp"

#include "functions/contract/kernel.hpp"

#include <cmath>
#include <random>
#include <set>

namespace hearthcell::tests {
namespace {

constexpr int draws = 100000;
constexpr double relative_uncertainty = 0.005; // small, so that the functions are near-linear

Value value_of(Cell const& cell) {
    switch (cell.kind) {
    case CellKind::number:
        return cell.number;
    case CellKind::text:
        return std::string(cell.text);
    default:
        return empty;
    }
}

/// An example of the catalogue's, each of its numbers uncertain.
struct Case {
    Function const& function;
    std::vector<Value> values;

    std::vector<double> uncertainties() const {
        std::vector<double> list;
        for (Value const& value : values) {
            double const* number = std::get_if<double>(&value);
            list.push_back(number != nullptr ? std::abs(*number) * relative_uncertainty : 0);
        }
        return list;
    }
    Value doubts() const {
        std::vector<Value> cells;
        for (double const u : uncertainties())
            cells.emplace_back(u);
        return column(cells);
    }
    /// Every two numbers correlated alike; nothing with a text or a blank.
    Value correlations(double r) const {
        std::vector<Value> cells;
        for (std::size_t i = 0; i < values.size(); ++i) {
            for (std::size_t j = 0; j < values.size(); ++j) {
                bool const both =
                    std::holds_alternative<double>(values[i]) && std::holds_alternative<double>(values[j]);
                if (both)
                    cells.emplace_back(i == j ? 1.0 : r);
                else
                    cells.emplace_back(empty);
            }
        }
        return square(cells);
    }
};

/// All examples that give a number, of all functions that are equations of numbers.
std::vector<Case> cases() {
    std::vector<Case> list;
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            for (hearthcell::Example const& example : function.examples) {
                if (!is_differentiable(function) || example.expected.kind != ExpectedKind::number)
                    continue;
                Case one{function, {}};
                for (Cell const& cell : example.arguments)
                    one.values.push_back(value_of(cell));
                list.push_back(one);
            }
    return list;
}

/// Standard deviation of the results of normal draws, all pairs of numbers with the same correlation.
double drawn_deviation(Case const& one, double correlation) {
    std::vector<double> const uncertainties = one.uncertainties();
    std::mt19937_64 generator(20240607);
    std::normal_distribution<double> normal;
    double mean = 0, squares = 0;
    for (int draw = 1; draw <= draws; ++draw) {
        std::vector<Value> values = one.values;
        double const common = std::sqrt(correlation) * normal(generator);
        for (std::size_t i = 0; i < values.size(); ++i)
            if (double* number = std::get_if<double>(&values[i]))
                *number += uncertainties[i] * (common + std::sqrt(1 - correlation) * normal(generator));
        Outcome const outcome = call(one.function, values);
        double const* result = std::get_if<double>(&outcome);
        if (result == nullptr) {
            ADD_FAILURE() << "a draw failed: reason " << int(failure_in(outcome).reason);
            return 0;
        }
        double const step = *result - mean;
        mean += step / draw;
        squares += step * (*result - mean);
    }
    return std::sqrt(squares / (draws - 1));
}

/// Four standard deviations of a drawn standard deviation, and a twentieth of a per cent for what is not linear.
double tolerance(double uncertainty) {
    return uncertainty * (4 / std::sqrt(2.0 * draws) + 0.0005);
}

void compare(double correlation) {
    std::set<std::string_view> functions;
    int compared = 0;
    for (Case const& one : cases()) {
        SCOPED_TRACE(std::string(one.function.name) + ", example " + std::to_string(compared));
        Value const correlations = correlation == 0 ? Value() : one.correlations(correlation);
        double const u = number(ask(
            "UNCERTAINTY", {std::string(one.function.name), column(one.values), one.doubts(), empty, correlations}));
        EXPECT_NEAR(u, drawn_deviation(one, correlation), tolerance(u));
        functions.insert(one.function.name);
        ++compared;
    }
    std::size_t numeric_functions = 0;
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            numeric_functions += is_differentiable(function) ? 1 : 0;
    EXPECT_EQ(functions.size(), numeric_functions); // every one has been through it
    EXPECT_GE(numeric_functions, 29U);              // as many as there were when this was written
}

TEST(MonteCarlo, AgreesWithTheUncertaintyOfEveryFunction) {
    compare(0);
}

TEST(MonteCarlo, AgreesWithTheUncertaintyOfEveryFunctionWhenAllNumbersAreCorrelated) {
    compare(0.6);
}

} // namespace
} // namespace hearthcell::tests
