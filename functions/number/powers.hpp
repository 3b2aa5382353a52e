#pragma once
// Whole powers by multiplication, and the cube root: the same bits on every processor, where the C library's pow and
// cbrt differ.

#include <cmath>

namespace hearthcell {

template <unsigned Exponent, class Real> constexpr Real power(Real const& x) {
    if constexpr (Exponent == 1)
        return x;
    else if constexpr (Exponent % 2 == 0)
        return power<Exponent / 2>(Real(x * x));
    else
        return x * power<Exponent / 2>(Real(x * x));
}

/// The cube root of a positive number. The C library's is an ulp off, not by the same on every processor, and
/// the equations raise it to a power of 110. One step of Newton with an exact residual takes that away.
inline double cube_root(double x) {
    double const root = std::cbrt(x);
    double const square = root * root;
    double const rest_of_square = std::fma(root, root, -square);
    double const residual = std::fma(square, root, -x) + rest_of_square * root;
    return root - residual / (3 * square);
}

} // namespace hearthcell
