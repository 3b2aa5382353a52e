#include "extension/formulas/recognition/polynomial.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace hearthcell::formulas {
namespace {

constexpr std::size_t most_terms = 64, most_factors = 8;
constexpr double rounding = 1e-9;

} // namespace

Product times(Product const& one, Product const& other, int exponent_of_other) {
    std::map<std::size_t, int> exponents(one.begin(), one.end());
    for (auto const& [quantity, exponent] : other)
        exponents[quantity] += exponent * exponent_of_other;
    Product product;
    for (auto const& [quantity, exponent] : exponents)
        if (exponent != 0)
            product.emplace_back(quantity, exponent);
    if (product.size() > most_factors)
        throw NoPolynomial();
    return product;
}

Polynomial::Polynomial(double constant) {
    add(constant, {});
}

Polynomial::Polynomial(double factor, Product const& product) {
    add(factor, product);
}

std::optional<double> Polynomial::constant() const {
    if (terms_.empty())
        return 0;
    bool const is_number = terms_.size() == 1 && terms_.begin()->first.empty();
    return is_number ? std::optional(terms_.begin()->second) : std::nullopt;
}

void Polynomial::add(double factor, Product const& product) {
    if (!std::isfinite(factor))
        throw NoPolynomial();
    auto const known = terms_.find(product);
    double const sum = known == terms_.end() ? factor : known->second + factor;
    if (known != terms_.end() && std::abs(sum) <= rounding * std::abs(factor)) // they take each other away
        terms_.erase(known);
    else if (known != terms_.end())
        known->second = sum;
    else if (factor != 0)
        terms_.emplace(product, factor);
    if (terms_.size() > most_terms)
        throw NoPolynomial();
}

Polynomial operator+(Polynomial one, Polynomial const& other) {
    for (auto const& [product, factor] : other.terms_)
        one.add(factor, product);
    return one;
}

Polynomial operator*(double factor, Polynomial const& of) {
    Polynomial result;
    for (auto const& [product, own] : of.terms_)
        result.add(factor * own, product);
    return result;
}

Polynomial operator-(Polynomial const& one, Polynomial const& other) {
    return one + -1 * other;
}

Polynomial operator*(Polynomial const& one, Polynomial const& other) {
    Polynomial result;
    for (auto const& [product, factor] : one.terms_)
        for (auto const& [with, by] : other.terms_)
            result.add(factor * by, times(product, with));
    return result;
}

bool is_near(double value, double wanted) {
    return std::abs(value - wanted) <= rounding * std::abs(wanted);
}

bool is_equal(Polynomial const& one, Polynomial const& other) {
    return std::equal(one.terms().begin(), one.terms().end(), other.terms().begin(), other.terms().end(),
                      [](auto const& a, auto const& b) { return a.first == b.first && is_near(a.second, b.second); });
}

Split split(Polynomial const& of) {
    std::map<std::size_t, int> common;
    for (std::size_t const quantity : quantities_in(of)) {
        std::optional<int> least;
        for (auto const& [product, factor] : of.terms()) {
            auto const own = std::ranges::find(product, quantity, &Product::value_type::first);
            int const exponent = own == product.end() ? 0 : own->second;
            least = std::min(least.value_or(exponent), exponent);
        }
        if (least.value_or(0) != 0)
            common[quantity] = *least;
    }
    Split result{Product(common.begin(), common.end()), {}};
    for (auto const& [product, factor] : of.terms())
        result.rest.add(factor, times(product, result.common, -1));
    return result;
}

std::optional<Linear> linear_in(std::size_t quantity, Polynomial const& of) {
    Linear linear;
    for (auto const& [product, factor] : of.terms()) {
        auto const own = std::ranges::find(product, quantity, &Product::value_type::first);
        if (own == product.end())
            linear.rest.add(factor, product);
        else if (own->second == 1)
            linear.factor.add(factor, times(product, {*own}, -1));
        else
            return std::nullopt;
    }
    return linear;
}

std::vector<std::size_t> quantities_in(Polynomial const& of) {
    std::set<std::size_t> found;
    for (auto const& [product, factor] : of.terms())
        for (auto const& [quantity, exponent] : product)
            found.insert(quantity);
    return {found.begin(), found.end()};
}

std::optional<double> scale_of_sum(Polynomial const& of) {
    if (auto const number = of.constant())
        return *number == 0 ? std::nullopt : std::optional(std::abs(*number));
    double const scale = std::abs(of.terms().begin()->second);
    bool const is_sum = std::ranges::all_of(of.terms(), [&](auto const& term) {
        return term.first.size() == 1 && term.first[0].second == 1 && is_near(std::abs(term.second), scale);
    });
    return is_sum ? std::optional(scale) : std::nullopt;
}

} // namespace hearthcell::formulas
