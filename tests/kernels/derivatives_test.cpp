// The two number types of every numeric kernel: double and dual give the same bits, and the dual's derivatives are
// those of Boost.Math's autodiff on the same kernel.

#include "functions/catalogue/catalogue.hpp"
#include "kernels/autodiff_kernels.hpp"
#include "support/calls.hpp"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <functional>
#include <random>

namespace hearthcell::tests {
namespace {

void for_every_equation(std::function<void(Function const&, Numeric const&)> const& act) {
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            if (Numeric const* numeric = differentiable_equation(function))
                act(function, *numeric);
}

/// What a kernel is given: numbers and choices. The draws are the same on every machine and in every run.
class Draws {
public:
    explicit Draws(Function const& drawn_for) : function(drawn_for) {}

    /// Anywhere in the ranges; what may be left out is left out now and then.
    Resolved anywhere() {
        return drawn([this](Argument const& argument, double) { return within(argument); });
    }

    /// Up to a fifth beside the numbers of a sound example, so that most draws make sense together.
    Resolved beside(Example const& example) {
        base = resolve(function, values_of({example.arguments.begin(), example.arguments.size()}));
        return drawn([this](Argument const& argument, double number) {
            double const near = is_absent(number) ? within(argument) : number * (0.8 + 0.4 * share());
            return std::clamp(near, argument.low, argument.high);
        });
    }

private:
    double share() { return double(generator() >> 11) * 0x1p-53; }
    double within(Argument const& argument) { return argument.low + share() * (argument.high - argument.low); }

    template <class Draw> Resolved drawn(Draw const& draw) {
        Resolved result;
        std::size_t number = 0, choice = 0;
        for (Argument const& argument : function.arguments) {
            if (is_chosen(argument.kind)) {
                bool const is_part = argument.kind == ArgumentKind::part;
                result.choices[choice++].index =
                    int(generator() % (is_part ? function.result.parts.size() : argument.choices.size()));
                continue;
            }
            bool const left_out = argument.optional && share() < 0.3;
            result.numbers[number] = left_out ? argument.fallback : draw(argument, base.numbers[number]);
            ++number;
        }
        return result;
    }

    Function const& function;
    Resolved base;
    std::mt19937_64 generator{20240229};
};

/// The examples as they are, draws beside each of those that give a number, and draws from anywhere in the ranges.
std::vector<Resolved> inputs_for(Function const& function) {
    std::vector<Resolved> inputs;
    Draws draws(function);
    for (Example const& example : function.examples) {
        Resolved const resolved = resolve(function, values_of({example.arguments.begin(), example.arguments.size()}));
        if (resolved.failure.reason != Reason::none)
            continue;
        inputs.push_back(resolved);
        if (example.expected.kind == ExpectedKind::number)
            for (int i = 0; i < 200; ++i)
                inputs.push_back(draws.beside(example));
    }
    for (int i = 0; i < 300; ++i)
        inputs.push_back(draws.anywhere());
    return inputs;
}

TEST(Dual, GivesTheSameBitsAsADouble) {
    int numbers = 0, failures = 0;
    for_every_equation([&](Function const& function, Numeric const& numeric) {
        for (Resolved const& input : inputs_for(function)) {
            std::array<double, most_arguments> partials;
            double const plain = numeric.value(input.numbers.data(), input.choices.data());
            double const dual = numeric.gradient(input.numbers.data(), input.choices.data(), partials.data());
            ASSERT_EQ(std::bit_cast<std::uint64_t>(plain), std::bit_cast<std::uint64_t>(dual)) << function.name;
            ASSERT_TRUE(failed(plain) || !std::isnan(plain)) << function.name << " gives a NaN without a reason";
            ++(failed(plain) ? failures : numbers);
        }
    });
    EXPECT_GT(numbers, 5000);
    EXPECT_GT(failures, 500); // failures, too, have to be the same
}

TEST(Dual, IsComparedForEveryFunction) {
    for_every_equation([](Function const& function, Numeric const&) {
        EXPECT_TRUE(autodiff_kernels().contains(function.name))
            << function.name << " needs a line in autodiff_kernels.cpp";
    });
    for (auto const& [name, kernel] : autodiff_kernels())
        EXPECT_NE(find_function(name), nullptr) << "A function that is no more: " << name;
}

/// Largest difference of two derivatives that rounding explains: relative to the larger of them, and to the value's
/// change over the input's own size, since terms of that size may cancel.
double rounding(double a, double b, double value, double input) {
    double const scale = std::abs(value) / std::max(std::abs(input), 1.0);
    return 1e-10 * std::max(std::abs(a), std::abs(b)) + 1e-11 * scale;
}

TEST(Dual, GivesTheDerivativesOfBoostsAutodiff) {
    for_every_equation([](Function const& function, Numeric const& numeric) {
        auto const boosts = autodiff_kernels().find(function.name);
        if (boosts == autodiff_kernels().end())
            return;
        int compared = 0;
        for (Resolved const& input : inputs_for(function)) {
            std::array<double, most_arguments> partials;
            double const value = numeric.gradient(input.numbers.data(), input.choices.data(), partials.data());
            if (failed(value))
                continue;
            for (std::size_t place = 0; place < numeric.numbers; ++place) {
                if (is_absent(input.numbers[place])) {
                    EXPECT_EQ(partials[place], 0) << function.name << ": what is left out has no influence";
                    continue;
                }
                std::array<Autodiff, most_arguments> numbers;
                for (std::size_t i = 0; i < numeric.numbers; ++i)
                    numbers[i] = i == place ? Autodiff::input(input.numbers[i]) : Autodiff(input.numbers[i]);
                Autodiff const expected = boosts->second(numbers.data(), input.choices.data());
                ASSERT_NEAR(value, value_of(expected), 1e-10 * std::abs(value)) << function.name;
                ASSERT_NEAR(partials[place], expected.derivative(),
                            rounding(partials[place], expected.derivative(), value, input.numbers[place]))
                    << function.name << ", by number " << place + 1 << ", at " << input.numbers[place];
                ++compared;
            }
        }
        EXPECT_GT(compared, 300) << function.name;
    });
}

TEST(Dual, GivesTheDerivativesThatDifferencesShow) {
    // A third opinion that shares no rule of differentiation with the other two: central differences of fourth order.
    for_every_equation([](Function const& function, Numeric const& numeric) {
        for (Example const& example : function.examples) {
            if (example.expected.kind != ExpectedKind::number)
                continue;
            Draws draws(function);
            Resolved input = draws.beside(example);
            std::array<double, most_arguments> partials;
            double const value = numeric.gradient(input.numbers.data(), input.choices.data(), partials.data());
            if (failed(value))
                continue;
            for (std::size_t place = 0; place < numeric.numbers; ++place) {
                double const x = input.numbers[place];
                if (is_absent(x))
                    continue;
                double const step = 1e-3 * std::max(std::abs(x), 0.1);
                auto const at = [&](double offset) {
                    input.numbers[place] = x + offset * step;
                    double const shifted = numeric.value(input.numbers.data(), input.choices.data());
                    input.numbers[place] = x;
                    return shifted;
                };
                double const slope = (8 * (at(1) - at(-1)) - (at(2) - at(-2))) / (12 * step);
                if (std::isnan(slope)) // a step beyond where the kernel has a value
                    continue;
                EXPECT_NEAR(partials[place], slope, 1e-8 * std::max(std::abs(slope), std::abs(value / step) * 1e-3))
                    << function.name << ", by number " << place + 1;
            }
        }
    });
}

} // namespace
} // namespace hearthcell::tests
