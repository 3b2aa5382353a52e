#pragma once
// Variants that were run in blocks: on the same days, by the same testers, in the same households. What a block does to
// all of its runs is taken out by least squares: y = mean + variant + block + error, blocks fixed.

#include "functions/number/distributions.hpp"
#include "functions/number/reason.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace hearthcell::kernels {

/// A run: its result, and which variant and which block it belongs to, each counted from 0.
struct BlockedRun {
    double result;
    std::size_t variant, block;
};

/// What is known of one variant against the baseline.
struct Contrast {
    double difference = 0, standard_error = 0;
};

struct BlockedFit {
    std::vector<Contrast> contrasts; ///< of variant 1, 2, … against variant 0
    double degrees_of_freedom = 0;   ///< 0 or less: nothing is left to tell the scatter by
    bool scatters = true;            ///< false where nothing is left between the runs and what the fit says
    bool estimable = true;           ///< false where blocks do not connect some variant with the baseline
};

/// A symmetric matrix, row by row.
class Square {
public:
    explicit Square(std::size_t rows) : size(rows), values(rows * rows) {}
    double& at(std::size_t row, std::size_t column) { return values[row * size + column]; }
    double at(std::size_t row, std::size_t column) const { return values[row * size + column]; }
    std::size_t const size;

private:
    std::vector<double> values;
};

/// Cholesky's L of a positive matrix, in its lower half; false where the matrix is singular but for rounding.
inline bool factorise(Square& matrix) {
    for (std::size_t j = 0; j < matrix.size; ++j) {
        double const before = matrix.at(j, j);
        double pivot = before;
        for (std::size_t k = 0; k < j; ++k)
            pivot -= matrix.at(j, k) * matrix.at(j, k);
        if (!(pivot > 1e-9 * before)) // the elements are counts of runs: a pivot is a share of them, or nothing
            return false;
        matrix.at(j, j) = std::sqrt(pivot);
        for (std::size_t i = j + 1; i < matrix.size; ++i) {
            double sum = matrix.at(i, j);
            for (std::size_t k = 0; k < j; ++k)
                sum -= matrix.at(i, k) * matrix.at(j, k);
            matrix.at(i, j) = sum / matrix.at(j, j);
        }
    }
    return true;
}

inline std::vector<double> solve(Square const& factor, std::vector<double> right) {
    for (std::size_t i = 0; i < factor.size; ++i) {
        for (std::size_t k = 0; k < i; ++k)
            right[i] -= factor.at(i, k) * right[k];
        right[i] /= factor.at(i, i);
    }
    for (std::size_t i = factor.size; i-- > 0;) {
        for (std::size_t k = i + 1; k < factor.size; ++k)
            right[i] -= factor.at(k, i) * right[k];
        right[i] /= factor.at(i, i);
    }
    return right;
}

/// Least squares with the blocks swept out first: of every result and of every variant's mark its block's mean is
/// taken, and what is left is regressed on the marks that are left.
inline BlockedFit fit_blocks(std::vector<BlockedRun> const& runs, std::size_t variants, std::size_t blocks) {
    std::vector<double> runs_in(blocks), sum_in(blocks);
    std::vector<double> runs_of(variants * blocks);
    for (BlockedRun const& run : runs) {
        runs_in[run.block] += 1;
        sum_in[run.block] += run.result;
        runs_of[run.variant * blocks + run.block] += 1;
    }
    std::size_t const unknown = variants - 1; // variant 0 is what the others are measured from
    Square normal(unknown);
    std::vector<double> right(unknown);
    for (std::size_t i = 0; i < unknown; ++i)
        for (std::size_t block = 0; block < blocks; ++block) {
            double const here = runs_of[(i + 1) * blocks + block];
            normal.at(i, i) += here;
            for (std::size_t j = 0; j < unknown; ++j)
                normal.at(i, j) -= here * runs_of[(j + 1) * blocks + block] / runs_in[block];
        }
    auto const without_block = [&](BlockedRun const& run) {
        return run.result - sum_in[run.block] / runs_in[run.block];
    };
    for (BlockedRun const& run : runs)
        if (run.variant > 0)
            right[run.variant - 1] += without_block(run);

    BlockedFit fit;
    fit.degrees_of_freedom = double(runs.size()) - double(blocks) - double(unknown);
    fit.estimable = factorise(normal);
    if (!fit.estimable || !(fit.degrees_of_freedom > 0))
        return fit;
    std::vector<double> const effects = solve(normal, right);
    std::vector<double> effect_in(blocks); // the mean effect of the variants that a block held
    for (std::size_t i = 0; i < unknown; ++i)
        for (std::size_t block = 0; block < blocks; ++block)
            effect_in[block] += effects[i] * runs_of[(i + 1) * blocks + block] / runs_in[block];
    double squares = 0, largest = 0;
    for (BlockedRun const& run : runs) {
        double const own = run.variant > 0 ? effects[run.variant - 1] : 0;
        double const left = without_block(run) - (own - effect_in[run.block]);
        squares += left * left;
        largest = std::max(largest, std::fabs(run.result));
    }
    // Runs that the fit meets but for their last digits.
    fit.scatters = squares > double(runs.size()) * (1e-13 * largest) * (1e-13 * largest);
    double const variance = squares / fit.degrees_of_freedom;
    for (std::size_t i = 0; i < unknown; ++i) {
        std::vector<double> unit(unknown);
        unit[i] = 1;
        fit.contrasts.push_back({effects[i], std::sqrt(variance * solve(normal, unit)[i])});
    }
    return fit;
}

/// Holm's adjustment of several p values for being looked at together (S. Holm, Scandinavian Journal of Statistics 6
/// (1979) 65).
inline std::vector<double> adjusted_by_holm(std::vector<double> const& p) {
    std::vector<std::size_t> order(p.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::ranges::sort(order, {}, [&](std::size_t i) { return p[i]; });
    std::vector<double> adjusted(p.size());
    double least = 0;
    for (std::size_t rank = 0; rank < order.size(); ++rank) {
        least = std::max(least, std::min(1.0, double(p.size() - rank) * p[order[rank]]));
        adjusted[order[rank]] = least;
    }
    return adjusted;
}

} // namespace hearthcell::kernels
