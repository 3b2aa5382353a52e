#pragma once
// Sums of products of quantities with constant factors: what is left of a formula when the order, the brackets and the
// units' factors in which people write it are taken away.

#include <functional>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace hearthcell::formulas {

/// A formula is too large, or of no kind that can be put as a sum of products.
struct NoPolynomial {};

/// Quantities, by their numbers in Quantities, with their exponents; sorted, no exponent is 0.
using Product = std::vector<std::pair<std::size_t, int>>;

Product times(Product const& one, Product const& other, int exponent_of_other = 1);

class Polynomial {
public:
    Polynomial() = default; // 0
    explicit Polynomial(double constant);
    Polynomial(double factor, Product const& product);

    [[nodiscard]] std::map<Product, double> const& terms() const { return terms_; }
    [[nodiscard]] bool is_zero() const { return terms_.empty(); }
    /// The number that it is; nothing where it has a quantity in it.
    [[nodiscard]] std::optional<double> constant() const;

    void add(double factor, Product const& product); // throws NoPolynomial

    friend Polynomial operator+(Polynomial one, Polynomial const& other);
    friend Polynomial operator-(Polynomial const& one, Polynomial const& other);
    friend Polynomial operator*(Polynomial const& one, Polynomial const& other);
    friend Polynomial operator*(double factor, Polynomial const& of);

private:
    std::map<Product, double> terms_;
};

/// Whether they are the same but for rounding.
bool is_equal(Polynomial const& one, Polynomial const& other);
bool is_near(double value, double wanted);

/// A polynomial as common × rest, where nothing is left that all terms of the rest have in common.
struct Split {
    Product common;
    Polynomial rest;
};
Split split(Polynomial const& of);

/// What a quantity is multiplied by, and the terms without it. Nothing where it stands with another exponent than 1.
struct Linear {
    Polynomial factor, rest;
};
std::optional<Linear> linear_in(std::size_t quantity, Polynomial const& of);

/// All quantities that stand in it, each once.
std::vector<std::size_t> quantities_in(Polynomial const& of);

/// Where it is a sum or difference of quantities that all have the same factor (weighings, times) or a number: that
/// factor, above 0. Nothing where it is something else.
std::optional<double> scale_of_sum(Polynomial const& of);

} // namespace hearthcell::formulas
