#pragma once
// A number type that differentiates by Boost.Math's autodiff: the independent check on Dual. Kernels are templates on
// the number type and run on it as they are.

#include <boost/math/differentiation/autodiff.hpp>

namespace hearthcell::tests {

/// Boost's type has no cube_root, expm1 and log1p, does not know value_of, and turns no double into itself unasked:
/// this wrapper adds just that. The missing functions are written with ones that Boost does have, not with derivatives
/// of our own.
class Autodiff {
public:
    using Boost = boost::math::differentiation::autodiff_fvar<double, 1>;

    Autodiff() = default;
    Autodiff(double constant) : number(constant) {} // implicit: constants mix with inputs in equations
    explicit Autodiff(Boost const& with_derivative) : number(with_derivative) {}

    static Autodiff input(double at) { return Autodiff(boost::math::differentiation::make_fvar<double, 1>(at)); }

    [[nodiscard]] double derivative() const { return number.derivative(1); }
    friend double value_of(Autodiff const& x) { return x.number.derivative(0); }

    friend Autodiff operator-(Autodiff const& x) { return Autodiff(Boost(-x.number)); }
    friend Autodiff operator+(Autodiff const& x, Autodiff const& y) { return Autodiff(Boost(x.number + y.number)); }
    friend Autodiff operator-(Autodiff const& x, Autodiff const& y) { return Autodiff(Boost(x.number - y.number)); }
    friend Autodiff operator*(Autodiff const& x, Autodiff const& y) { return Autodiff(Boost(x.number * y.number)); }
    friend Autodiff operator/(Autodiff const& x, Autodiff const& y) { return Autodiff(Boost(x.number / y.number)); }

    friend Autodiff sqrt(Autodiff const& x) { return Autodiff(Boost(sqrt(x.number))); }
    friend Autodiff exp(Autodiff const& x) { return Autodiff(Boost(exp(x.number))); }
    friend Autodiff log(Autodiff const& x) { return Autodiff(Boost(log(x.number))); }
    friend Autodiff pow(Autodiff const& x, double exponent) { return Autodiff(Boost(pow(x.number, exponent))); }
    friend Autodiff cube_root(Autodiff const& x) { return pow(x, 1.0 / 3); }
    /// e^x - 1 = 2 sinh(x/2) e^(x/2), which loses nothing near 0; far below it the sinh would leave the numbers.
    friend Autodiff expm1(Autodiff const& x) {
        if (value_of(x) < -1)
            return exp(x) - 1;
        Boost const half = x.number / 2.0;
        return Autodiff(Boost(2.0 * sinh(half) * exp(half)));
    }
    /// ln(1 + x) = 2 artanh(x/(2 + x)), which loses nothing near 0.
    friend Autodiff log1p(Autodiff const& x) {
        return Autodiff(Boost(2.0 * atanh(Boost(x.number / (2.0 + x.number)))));
    }

private:
    Boost number{};
};

} // namespace hearthcell::tests
