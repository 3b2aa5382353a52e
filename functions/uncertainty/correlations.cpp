#include "functions/uncertainty/correlations.hpp"

#include <cmath>

namespace hearthcell {

bool can_be_together(std::span<double const> coefficients, std::size_t count) {
    constexpr double rounding = 1e-3;
    // Cholesky's factor of the matrix plus that thousandth exists just when no eigenvalue lies lower.
    std::vector<double> factor(coefficients.begin(), coefficients.end());
    auto const at = [&](std::size_t row, std::size_t column) -> double& { return factor[row * count + column]; };
    for (std::size_t j = 0; j < count; ++j) {
        double pivot = at(j, j) + rounding;
        for (std::size_t k = 0; k < j; ++k)
            pivot -= at(j, k) * at(j, k);
        if (pivot <= 0)
            return false;
        at(j, j) = std::sqrt(pivot);
        for (std::size_t i = j + 1; i < count; ++i) {
            for (std::size_t k = 0; k < j; ++k)
                at(i, j) -= at(i, k) * at(j, k);
            at(i, j) /= at(j, j);
        }
    }
    return true;
}

Correlations read_correlations(Block const& matrix, std::size_t values) {
    Correlations result;
    if (matrix.rows != values || matrix.columns != values) {
        result.failure.reason = Reason::correlations_not_square;
        return result;
    }
    result.coefficients = matrix.numbers;
    for (std::size_t i = 0; i < values; ++i) {
        for (std::size_t j = 0; j < values; ++j) {
            double const given = matrix.numbers[i * values + j];
            double const mirrored = matrix.numbers[j * values + i];
            double& coefficient = result.coefficients[i * values + j];
            unsigned const place = unsigned(i * values + j + 1);
            if (is_absent(given))
                coefficient = i == j ? 1 : is_absent(mirrored) ? 0 : mirrored;
            else if (i == j && given != 1)
                result.failure = {Reason::correlation_with_itself, no_argument, place};
            else if (!is_absent(mirrored) && given != mirrored)
                result.failure = {Reason::correlations_not_symmetric, no_argument, place};
            if (result.failure.reason != Reason::none)
                return result;
        }
    }
    return result;
}

} // namespace hearthcell
