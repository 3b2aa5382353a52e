#pragma once
// The heating of a pot over a steady fire, C dT/dt = P - UA (T - air), fitted to readings by least squares.
//
// Its solution is T = level + rate (1 - exp(-decay u))/decay, which stays good as the decay goes to zero: a straight
// line, and no settling temperature or power that runs off to infinity. u goes from -1 to 1 over the readings.
//
// Which way and why: level and rate enter linearly, so that for any decay they are a straight line through
// (1 - exp(-decay u))/decay. What is left is one number, and Boost.Math's brent_find_minima finds it between bounds: it
// needs no good start, and no derivative that a noisy log could spoil. It stops at half the digits, since the sum of
// squares is flat at its minimum; steps of Gauss and Newton on all three give the rest, and their normal matrix
// is what the uncertainty is made from. There is no closed form.

#include "functions/kernels/boil_time.hpp"
#include "functions/kernels/log/readings.hpp"

#include <boost/math/tools/minima.hpp>

#include <array>
#include <cmath>

namespace hearthcell::kernels {

using Vector3 = std::array<double, 3>;
using Matrix3 = std::array<Vector3, 3>;

struct HeatingFit {
    double middle = 0, half = 1;           ///< min: u = (minute - middle)/half
    double level = 0, rate = 0, decay = 0; ///< °C, K and 1 per unit of u
    Matrix3 inverse{};                     ///< of the normal matrix of level, rate and decay
    double variance = 0;                   ///< of the readings about the curve, K²
    double neighbours = 0;                 ///< correlation of a residual with the next
    std::size_t readings = 0;
    bool sound = false;
};

namespace heating {
inline constexpr double least_decay = -3, most_decay = 6; // over the whole log: e^-6 speeding up, e^12 settling

/// (1 - e^(-decay u))/decay.
inline double shape(double u, double decay) {
    return u * growth_quotient(-decay * u);
}
/// Its derivative by the decay, u² [e^-x (1 + x) - 1]/x² with x = decay u.
inline double shape_by_decay(double u, double decay) {
    double const x = decay * u;
    if (std::abs(x) < 0.02) // the next term is below 1e-13
        return u * u * (-0.5 + x * (1.0 / 3 - x * (1.0 / 8 - x * (1.0 / 30 - x * (1.0 / 144 - x / 840)))));
    return u * u * ((std::exp(-x) * (1 + x) - 1) / (x * x));
}

/// Sum of squared residuals when level and rate are the best for this decay; fills them in.
inline double squares(Log log, HeatingFit& fit, double decay) {
    double const n = double(log.size()), reference = log.front().temperature;
    double s = 0, t = 0, ss = 0, st = 0, tt = 0;
    for (Reading const& reading : log) {
        double const x = shape((reading.minute - fit.middle) / fit.half, decay);
        double const y = reading.temperature - reference;
        s += x;
        t += y;
        ss += x * x;
        st += x * y;
        tt += y * y;
    }
    double const spread = ss - s * s / n, product = st - s * t / n;
    fit.rate = product / spread;
    fit.level = reference + (t - fit.rate * s) / n;
    fit.decay = decay;
    return tt - t * t / n - product * fit.rate;
}

/// Inverse of a symmetric positive matrix by Gauss and Jordan; false where it is singular.
inline bool invert(Matrix3 const& given, Matrix3& inverse) {
    Matrix3 rest = given;
    inverse = {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
    for (std::size_t i = 0; i < 3; ++i) {
        double const pivot = rest[i][i];
        if (!(pivot > 1e-12 * given[i][i]))
            return false;
        for (std::size_t column = 0; column < 3; ++column) {
            rest[i][column] /= pivot;
            inverse[i][column] /= pivot;
        }
        for (std::size_t row = 0; row < 3; ++row) {
            double const factor = row == i ? 0 : rest[row][i];
            for (std::size_t column = 0; column < 3; ++column) {
                rest[row][column] -= factor * rest[i][column];
                inverse[row][column] -= factor * inverse[i][column];
            }
        }
    }
    return true;
}

/// One step of Gauss and Newton. Also leaves scatter, correlation and matrix of the fit as it was before the step.
inline bool improve(Log log, HeatingFit& fit, Vector3& step) {
    Matrix3 normal{};
    Vector3 right{};
    double sum = 0, with_next = 0, previous = 0;
    for (Reading const& reading : log) {
        double const u = (reading.minute - fit.middle) / fit.half;
        double const x = shape(u, fit.decay);
        Vector3 const slopes{1, x, fit.rate * shape_by_decay(u, fit.decay)};
        double const off = reading.temperature - fit.level - fit.rate * x;
        for (std::size_t i = 0; i < 3; ++i) {
            right[i] += slopes[i] * off;
            for (std::size_t j = 0; j <= i; ++j)
                normal[i][j] += slopes[i] * slopes[j];
        }
        sum += off * off;
        with_next += off * previous;
        previous = off;
    }
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = i + 1; j < 3; ++j)
            normal[i][j] = normal[j][i];
    fit.variance = sum / double(log.size() - 3);
    fit.neighbours = sum > 0 ? with_next / sum : 0;
    if (!invert(normal, fit.inverse))
        return false;
    for (std::size_t i = 0; i < 3; ++i)
        step[i] = fit.inverse[i][0] * right[0] + fit.inverse[i][1] * right[1] + fit.inverse[i][2] * right[2];
    return true;
}
} // namespace heating

/// Four readings at least.
inline HeatingFit fit_heating(Log log) {
    HeatingFit fit;
    fit.middle = (log.front().minute + log.back().minute) / 2;
    fit.half = (log.back().minute - log.front().minute) / 2;
    fit.readings = log.size();
    constexpr int bits = 20;
    auto const found =
        boost::math::tools::brent_find_minima([&](double decay) { return heating::squares(log, fit, decay); },
                                              heating::least_decay, heating::most_decay, bits);
    heating::squares(log, fit, found.first);
    constexpr int most_steps = 12;
    for (int i = 0; i < most_steps; ++i) {
        Vector3 step{};
        if (!heating::improve(log, fit, step))
            return fit;
        if (std::abs(step[2]) < 1e-11) {
            fit.sound = fit.decay > heating::least_decay && fit.decay < heating::most_decay;
            return fit;
        }
        fit.level += step[0];
        fit.rate += step[1];
        fit.decay += step[2];
    }
    return fit;
}

} // namespace hearthcell::kernels
