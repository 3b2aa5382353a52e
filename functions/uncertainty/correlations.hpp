#pragma once
// Whether a table of correlation coefficients can be one.

#include "functions/contract/values.hpp"

#include <span>
#include <vector>

namespace hearthcell {

/// A matrix of coefficients as a cell gives it, every blank filled in: 1 on the diagonal; elsewhere the mirrored
/// coefficient, so that half a matrix is enough, or 0. Differences in the last digits do not count. Or why it is none,
/// with the row as the place in the matrix, counted from 1. Every number is within -1 to 1.
struct Correlations {
    std::vector<double> coefficients;
    Failure failure;
};
Correlations read_correlations(Block const& matrix, std::size_t values);

/// No quantities can have coefficients whose smallest eigenvalue is below 0; a thousandth is allowed, since
/// coefficients are typed rounded.
bool can_be_together(std::span<double const> coefficients, std::size_t count);

/// A lower triangle L, row by row, with L Lᵀ the matrix of coefficients: what makes of independent deviates
/// correlated ones. Of a matrix that only rounding keeps from being possible, that of one nearby.
std::vector<double> factor_of(std::span<double const> coefficients, std::size_t count);

} // namespace hearthcell
