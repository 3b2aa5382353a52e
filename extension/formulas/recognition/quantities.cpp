#include "extension/formulas/recognition/quantities.hpp"

#include "extension/formulas/number.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell::formulas {
namespace {

constexpr std::size_t most_quantities = 64;
constexpr int largest_exponent = 4, digits_of_keys = 9;

std::string key_of(Polynomial const& sum) {
    std::string key = "(";
    for (auto const& [product, factor] : sum.terms()) {
        key += number_text(factor, digits_of_keys);
        for (auto const& [quantity, exponent] : product)
            key += '*' + std::to_string(quantity) + '^' + std::to_string(exponent);
        key += ' ';
    }
    return key + ')';
}

/// With 1 as the factor of its first term, so that the same sum is the same quantity in whatever unit.
Polynomial with_first_factor_1(Polynomial const& sum) {
    return 1 / sum.terms().begin()->second * sum;
}

} // namespace

std::size_t Quantities::of(Quantity quantity) {
    auto const known = std::ranges::find(all_, quantity.key, &Quantity::key);
    if (known != all_.end())
        return std::size_t(known - all_.begin());
    if (all_.size() == most_quantities)
        throw NoPolynomial();
    all_.push_back(std::move(quantity));
    return all_.size() - 1;
}

Polynomial inverse(Polynomial const& of, Quantities& quantities) {
    if (of.is_zero())
        throw NoPolynomial();
    auto const [common, rest] = split(of);
    Polynomial result(1 / rest.terms().begin()->second, times({}, common, -1));
    if (rest.terms().size() == 1)
        return result;
    Polynomial const sum = with_first_factor_1(rest);
    std::size_t const number = quantities.of({.key = key_of(sum), .sum = sum});
    return result * Polynomial(1, {{number, -1}});
}

Polynomial power(Polynomial const& base, double exponent, Quantities& quantities) {
    if (exponent == std::round(exponent) && std::abs(exponent) <= largest_exponent) {
        Polynomial result(1);
        for (int times = 0; times < int(std::abs(exponent)); ++times)
            result = result * base;
        return exponent < 0 ? inverse(result, quantities) : result;
    }
    if (base.is_zero())
        throw NoPolynomial();
    if (auto const number = base.constant())
        return Polynomial(std::pow(*number, exponent));
    double const first = base.terms().begin()->second;
    if (first <= 0)
        throw NoPolynomial();
    Polynomial const sum = with_first_factor_1(base);
    std::size_t const raised = quantities.of(
        {.key = key_of(sum) + '^' + number_text(exponent, digits_of_keys), .sum = sum, .power = exponent});
    return Polynomial(std::pow(first, exponent), {{raised, 1}});
}

} // namespace hearthcell::formulas
