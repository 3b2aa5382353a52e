#pragma once
// The quantities that a formula is made of: cells, and what cannot be taken apart any further.

#include "extension/formulas/place.hpp"
#include "extension/formulas/recognition/polynomial.hpp"

#include <string>

namespace hearthcell::formulas {

struct Quantity {
    std::string key = {};             // the same for the same quantity
    std::optional<Place> cell = {};   // nothing: a block of cells, a function's result, a sum
    std::optional<double> typed = {}; // the number that stands in the cell as such
    bool fixed = false;               // the cell was meant as one for all: by a $, a name, another sheet
    Polynomial sum = {};              // of a sum that is divided by, and of the base of a power
    double power = 1;                 // that the sum is raised to
};

class Quantities {
public:
    std::size_t of(Quantity quantity);
    [[nodiscard]] Quantity const& operator[](std::size_t number) const { return all_[number]; }

private:
    std::vector<Quantity> all_;
};

/// 1 / of. A sum that is divided by becomes a quantity with the exponent -1. Throws NoPolynomial.
Polynomial inverse(Polynomial const& of, Quantities& quantities);

/// Raised to a number. Throws NoPolynomial.
Polynomial power(Polynomial const& base, double exponent, Quantities& quantities);

} // namespace hearthcell::formulas
