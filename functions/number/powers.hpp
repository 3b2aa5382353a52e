#pragma once
// Whole powers by multiplication: exact to the last bits everywhere, where the C library's pow differs by processor.

namespace hearthcell {

template <unsigned Exponent, class Real> constexpr Real power(Real const& x) {
    if constexpr (Exponent == 0)
        return Real(1.0);
    else if constexpr (Exponent == 1)
        return x;
    else if constexpr (Exponent % 2 == 0)
        return power<Exponent / 2>(Real(x * x));
    else
        return x * power<Exponent / 2>(Real(x * x));
}

} // namespace hearthcell
