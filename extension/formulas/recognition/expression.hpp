#pragma once
// A formula as a sum of products of the quantities that it reads.

#include "extension/formulas/reads.hpp"
#include "extension/formulas/recognition/quantities.hpp"

#include <functional>
#include <string_view>

namespace hearthcell::formulas {

/// What a formula reads of its workbook.
struct Surroundings {
    Reads const& reads;
    std::function<std::optional<double>(Place const&)> typed; // a number that stands in a cell as such
    std::function<std::string_view(Place const&)> formula;    // of a cell; empty: none
};

struct Expression {
    Polynomial polynomial;
    Quantities quantities;
    std::vector<double> numbers; // as they stand in the formula, or in cells that it takes constants from
    bool has_constants = false;  // it takes any from cells
};

/// Whether the number in a cell stands for itself: a constant, not a reading.
using IsConstant = std::function<bool(Quantity const&)>;

/// Rounding, and what keeps a row blank whose cells are empty (IF(B2="";"";…)), are left out. The formulas of cells
/// that it reads are put in their place, `steps` times. Throws NoPolynomial.
Expression expression_of(std::string_view formula, Place const& cell, Surroundings const& surroundings, int steps,
                         IsConstant const& is_constant);

} // namespace hearthcell::formulas
