#include "functions/uncertainty/correlations.hpp"

#include <cmath>

namespace hearthcell {

namespace {

/// What a pivot may be off for the last digits of the coefficients, and what is then left beside it.
constexpr double rounding_of_pivot = 1e-12, rounding_beside_pivot = 1e-6;

/// Cholesky's L of a matrix with `added` on its diagonal, in its lower half; false where some eigenvalue of the matrix
/// lies below -added. A pivot of 0 is a quantity that the others fix.
bool factorise(std::vector<double>& matrix, std::size_t count, double added) {
    auto const at = [&](std::size_t row, std::size_t column) -> double& { return matrix[row * count + column]; };
    for (std::size_t j = 0; j < count; ++j) {
        double pivot = at(j, j) + added;
        for (std::size_t k = 0; k < j; ++k)
            pivot -= at(j, k) * at(j, k);
        if (pivot < -rounding_of_pivot)
            return false;
        bool const is_fixed = pivot <= rounding_of_pivot;
        at(j, j) = is_fixed ? 0 : std::sqrt(pivot);
        for (std::size_t i = j + 1; i < count; ++i) {
            for (std::size_t k = 0; k < j; ++k)
                at(i, j) -= at(i, k) * at(j, k);
            if (is_fixed && std::fabs(at(i, j)) > rounding_beside_pivot)
                return false;
            at(i, j) = is_fixed ? 0 : at(i, j) / at(j, j);
        }
    }
    return true;
}

/// Coefficients are typed with three digits at least.
constexpr double rounding_of_typing = 1e-3;

/// Two cells that hold one coefficient, but for the last digits of how a sheet worked them out.
bool same_coefficient(double one, double other) {
    return std::fabs(one - other) <= 1e-9;
}

} // namespace

bool can_be_together(std::span<double const> coefficients, std::size_t count) {
    std::vector<double> factor(coefficients.begin(), coefficients.end());
    return factorise(factor, count, rounding_of_typing);
}

std::vector<double> factor_of(std::span<double const> coefficients, std::size_t count) {
    // The least that makes it a matrix that can be; with the last of these it is one, or can_be_together has said no.
    for (double const added : {0.0, 1e-9, 1e-6, 1e-5, 1e-4, rounding_of_typing}) {
        std::vector<double> factor(coefficients.begin(), coefficients.end());
        if (!factorise(factor, count, added))
            continue;
        for (std::size_t i = 0; i < count; ++i)
            for (std::size_t j = 0; j < count; ++j)
                factor[i * count + j] = j > i ? 0 : factor[i * count + j] / std::sqrt(1 + added);
        return factor;
    }
    return {};
}

Correlations read_correlations(Block const& matrix, std::size_t values) {
    Correlations result;
    if (matrix.rows != values || matrix.columns != values) {
        result.failure.reason = Reason::correlations_not_square;
        return result;
    }
    result.coefficients.resize(values * values);
    for (std::size_t i = 0; i < values; ++i) {
        for (std::size_t j = 0; j < values; ++j) {
            double const given = matrix.numbers[i * values + j];
            double const mirrored = matrix.numbers[j * values + i];
            double& coefficient = result.coefficients[i * values + j];
            unsigned const place = unsigned(i * values + j + 1);
            if (is_absent(given))
                coefficient = i == j ? 1 : is_absent(mirrored) ? 0 : mirrored;
            else if (i == j && !same_coefficient(given, 1))
                result.failure = {Reason::correlation_with_itself, no_argument, place};
            else if (!is_absent(mirrored) && !same_coefficient(given, mirrored))
                result.failure = {Reason::correlations_not_symmetric, no_argument, place};
            else
                coefficient = i == j ? 1 : is_absent(mirrored) ? given : (given + mirrored) / 2;
            if (result.failure.reason != Reason::none)
                return result;
        }
    }
    return result;
}

} // namespace hearthcell
