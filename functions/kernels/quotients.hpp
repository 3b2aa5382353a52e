#pragma once
// Quotients that stay exact where both of their sides go to 0.

#include "functions/number/dual.hpp"

namespace hearthcell::kernels {

/// (e^x - 1)/x, also at x = 0, where the quotient itself is lost.
template <class Real> Real growth_quotient(Real const& x) {
    using std::expm1;
    // Three terms are exact here: the next, x³/24, is below half a bit of 1.
    if (value_of(x) > -1e-5 && value_of(x) < 1e-5)
        return 1 + x * (0.5 + x / 6);
    return expm1(x) / x;
}

/// ln(1 + x)/x, also at x = 0.
template <class Real> Real logarithm_quotient(Real const& x) {
    using std::log1p;
    if (value_of(x) > -1e-5 && value_of(x) < 1e-5)
        return 1 - x * (0.5 - x * (1.0 / 3 - x / 4));
    return log1p(x) / x;
}

/// (e^x - 1 - x)/x², also at x = 0.
template <class Real> Real second_growth_quotient(Real const& x) {
    using std::expm1;
    if (value_of(x) < -0.1 || value_of(x) > 0.1)
        return (expm1(x) - x) / (x * x);
    Real sum(0.0); // Σ x^k/(k + 2)!
    for (int k = 10; k >= 0; --k)
        sum = (1 + x * sum) / (k + 2.0);
    return sum;
}

} // namespace hearthcell::kernels
