#pragma once
// A number that carries its partial derivatives with respect to N inputs (forward differentiation).
// Its value is computed by exactly the operations that a double goes through, so both give the same bits.

#include "functions/number/powers.hpp"

#include <array>
#include <cmath>
#include <cstddef>

namespace hearthcell {

template <std::size_t N> struct Dual {
    double value;
    std::array<double, N> slope{};

    constexpr Dual(double constant) : value(constant) {} // implicit: constants mix with inputs in equations
    constexpr Dual(double number, std::array<double, N> const& slopes) : value(number), slope(slopes) {}

    static constexpr Dual input(double number, std::size_t place) {
        Dual result(number);
        result.slope[place] = 1;
        return result;
    }
};

/// The chain rule for a function of one input: the result's value and the function's derivative there.
template <std::size_t N> constexpr Dual<N> chain(double value, double derivative, Dual<N> const& x) {
    Dual<N> result(value);
    for (std::size_t i = 0; i < N; ++i)
        result.slope[i] = derivative * x.slope[i];
    return result;
}

/// The chain rule for a function of two inputs.
template <std::size_t N>
constexpr Dual<N> chain(double value, double by_x, Dual<N> const& x, double by_y, Dual<N> const& y) {
    Dual<N> result(value);
    for (std::size_t i = 0; i < N; ++i)
        result.slope[i] = by_x * x.slope[i] + by_y * y.slope[i];
    return result;
}

template <std::size_t N> constexpr Dual<N> operator-(Dual<N> const& x) {
    return chain(-x.value, -1.0, x);
}

template <std::size_t N> constexpr Dual<N> operator+(Dual<N> const& x, Dual<N> const& y) {
    return chain(x.value + y.value, 1.0, x, 1.0, y);
}
template <std::size_t N> constexpr Dual<N> operator+(Dual<N> const& x, double c) {
    return chain(x.value + c, 1.0, x);
}
template <std::size_t N> constexpr Dual<N> operator+(double c, Dual<N> const& x) {
    return chain(c + x.value, 1.0, x);
}

template <std::size_t N> constexpr Dual<N> operator-(Dual<N> const& x, Dual<N> const& y) {
    return chain(x.value - y.value, 1.0, x, -1.0, y);
}
template <std::size_t N> constexpr Dual<N> operator-(Dual<N> const& x, double c) {
    return chain(x.value - c, 1.0, x);
}
template <std::size_t N> constexpr Dual<N> operator-(double c, Dual<N> const& x) {
    return chain(c - x.value, -1.0, x);
}

template <std::size_t N> constexpr Dual<N> operator*(Dual<N> const& x, Dual<N> const& y) {
    return chain(x.value * y.value, y.value, x, x.value, y);
}
template <std::size_t N> constexpr Dual<N> operator*(Dual<N> const& x, double c) {
    return chain(x.value * c, c, x);
}
template <std::size_t N> constexpr Dual<N> operator*(double c, Dual<N> const& x) {
    return chain(c * x.value, c, x);
}

template <std::size_t N> constexpr Dual<N> operator/(Dual<N> const& x, Dual<N> const& y) {
    double const quotient = x.value / y.value;
    return chain(quotient, 1 / y.value, x, -quotient / y.value, y);
}
template <std::size_t N> constexpr Dual<N> operator/(Dual<N> const& x, double c) {
    return chain(x.value / c, 1 / c, x);
}
template <std::size_t N> constexpr Dual<N> operator/(double c, Dual<N> const& x) {
    double const quotient = c / x.value;
    return chain(quotient, -quotient / x.value, x);
}

template <std::size_t N> Dual<N> sqrt(Dual<N> const& x) {
    double const root = std::sqrt(x.value);
    return chain(root, 0.5 / root, x);
}
template <std::size_t N> Dual<N> cube_root(Dual<N> const& x) {
    double const root = cube_root(x.value);
    return chain(root, 1 / (3 * root * root), x);
}
template <std::size_t N> Dual<N> exp(Dual<N> const& x) {
    double const power = std::exp(x.value);
    return chain(power, power, x);
}
template <std::size_t N> Dual<N> expm1(Dual<N> const& x) {
    return chain(std::expm1(x.value), std::exp(x.value), x);
}
template <std::size_t N> Dual<N> log(Dual<N> const& x) {
    return chain(std::log(x.value), 1 / x.value, x);
}
template <std::size_t N> Dual<N> log1p(Dual<N> const& x) {
    return chain(std::log1p(x.value), 1 / (1 + x.value), x);
}
template <std::size_t N> Dual<N> pow(Dual<N> const& x, double exponent) {
    return chain(std::pow(x.value, exponent), exponent * std::pow(x.value, exponent - 1), x);
}

/// The plain number behind either kind: what comparisons in a kernel look at.
constexpr double value_of(double x) {
    return x;
}
template <std::size_t N> constexpr double value_of(Dual<N> const& x) {
    return x.value;
}

} // namespace hearthcell
