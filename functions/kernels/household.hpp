#pragma once
// Who eats, and what fuel a household needs for them.

namespace hearthcell::kernels {

/// How much of an adult each counts for. FAO guidelines for woodfuel surveys, 1983 (from memory).
namespace adult {
inline constexpr double child = 0.5, woman = 0.8, man = 1, older_man = 0.8;
}

template <class Real>
Real standard_adults(Real const& children, Real const& women, Real const& men, Real const& older_men) {
    return adult::child * children + adult::woman * women + adult::man * men + adult::older_man * older_men;
}

/// g of dry fuel a day for each.
template <class Real> Real fuel_per_adult(Real const& dry_fuel, Real const& days, Real const& adults) {
    return dry_fuel / (days * adults);
}

} // namespace hearthcell::kernels
