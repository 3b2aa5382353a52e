#pragma once
// When a heating comes to a temperature, and how well that is known: the readings are followed for several wandering
// fires, of more or less heat loss and unsteadiness, each of which counts by how well it foresees the readings.
//
// What is known beforehand: a loss of about 0.012 1/min (5 kg, 4 W/K) and a fire that wanders by about 8 %, remembered
// for some minutes. Common practice, no source; the readings of a longer log overrule it.

#include "functions/kernels/log/wandering_fire.hpp"

namespace hearthcell::kernels {

namespace heating {
inline constexpr double losses[] = {0.005, 0.011, 0.022, 0.042}; // 1/min
inline constexpr double usual_loss = 0.012, loss_spread = 0.6;   // of the logarithm
inline constexpr double shares[] = {0.04, 0.09, 0.18};           // of the rate by which a fire wanders
inline constexpr double usual_share = 0.08, share_spread = 0.6;
inline constexpr double usual_air = 20;        // °C, where it is not given
inline constexpr double first_share = 0.3;     // of the rise, in which the fire is catching
inline constexpr std::size_t most_points = 64; // that a long log is taken together to
inline constexpr double stands_off = 16;       // variances from which on a reading is trusted less
inline constexpr std::size_t few = 8;          // variances whose product is no extreme
inline constexpr double longest_way = 300;     // min
inline constexpr double most_never = 0.3;      // probability that it never gets there
} // namespace heating

/// Readings of a short stretch taken together.
struct HeatingPoint {
    double minute = 0, temperature = 0, variance = 0;
};

inline std::vector<HeatingPoint> taken_together(Log log, double variance) {
    std::vector<HeatingPoint> points;
    double const width = (log.back().minute - log.front().minute) / heating::most_points;
    for (std::size_t i = 0; i < log.size();) {
        double minutes = 0, temperatures = 0;
        std::size_t end = i;
        for (; end < log.size() && (end == i || log[end].minute < log[i].minute + width); ++end) {
            minutes += log[end].minute - log[i].minute;
            temperatures += log[end].temperature - log[i].temperature;
        }
        double const n = double(end - i);
        points.push_back({log[i].minute + minutes / n, log[i].temperature + temperatures / n, variance / n});
        i = end;
    }
    return points;
}

/// When a temperature is reached; a normal distribution.
struct Arrival {
    double minute = 0, uncertainty = 0;
    double rate = 0;  ///< K/min, there
    double never = 0; ///< probability of the fires with which it never is
};

namespace heating {
/// A fire, followed over all points.
struct Followed {
    HeatingState state;
    double unlikely = 0; ///< minus twice the logarithm of the likelihood
};

inline Followed follow(std::vector<HeatingPoint> const& points, WanderingFire const& fire, double rate) {
    Followed result;
    HeatingState& state = result.state;
    state.water = points[0].temperature;
    state.water2 = points[0].variance;
    state.deviation2 = fire.deviation * fire.deviation;
    state.rate = rate;
    state.rate2 = rate * rate;
    Passage step;
    double minutes = 0, variances = 1; // a product, of which the logarithm is taken now and then
    for (std::size_t i = 1; i < points.size(); ++i) {
        double const next = points[i].minute - points[i - 1].minute;
        if (std::abs(next - minutes) > 1e-9 * next) {
            step = passage(fire, next);
            minutes = next;
        }
        state.advance(step, fire.air);
        // One that stands far off, as a slip of the pen does, is made less certain the farther it is off.
        double const off = points[i].temperature - state.water;
        double const variance = std::max(points[i].variance, off * off / stands_off - state.water2);
        variances *= state.water2 + variance;
        result.unlikely += state.take(points[i].temperature, variance);
        if (i % few == 0 || i + 1 == points.size()) {
            result.unlikely += std::log(variances);
            variances = 1;
        }
    }
    return result;
}

/// Minutes from the last reading to the target; absent where this fire never gets there.
inline double minutes_to(HeatingState const& state, WanderingFire const& fire, double target) {
    double minutes = 0;
    for (int step = 0; step < 50; ++step) {
        auto const [water, deviation] = state.after(fire, minutes);
        double const rate = state.rate + deviation - fire.loss * (water - fire.air);
        if (!(rate > 0))
            return absent;
        double const change = (target - water) / rate;
        minutes += change;
        if (!(std::abs(minutes) < longest_way))
            return absent;
        if (std::abs(change) < 1e-9 * (1 + std::abs(minutes)))
            return minutes;
    }
    return absent;
}
} // namespace heating

/// Two points at least.
inline Arrival arrival(std::vector<HeatingPoint> const& points, double target, double air) {
    using namespace heating;
    HeatingPoint const &first = points.front(), &last = points.back();
    double const slope = std::max((last.temperature - first.temperature) / (last.minute - first.minute), 0.2);
    double const halfway = (first.temperature + last.temperature) / 2;
    struct Way {
        double unlikely, minute, variance, rate;
    };
    std::array<Way, std::size(losses) * std::size(shares)> ways{};
    std::size_t count = 0;
    double likeliest = std::numeric_limits<double>::infinity();
    for (double const loss : losses)
        for (double const share : shares) {
            double const rate = slope + loss * (halfway - air);
            WanderingFire const fire{loss, share * rate, 3, air};
            Followed followed = follow(points, fire, rate);
            double const by_loss = std::log(loss / usual_loss) / loss_spread,
                         by_share = std::log(share / usual_share) / share_spread;
            double const unlikely = followed.unlikely + by_loss * by_loss + by_share * by_share;
            double const minutes = minutes_to(followed.state, fire, target);
            Way& way = ways[count++];
            way = {unlikely, absent, 0, 0};
            likeliest = std::min(likeliest, unlikely);
            if (is_absent(minutes))
                continue;
            HeatingState there = followed.state;
            there.advance(passage(fire, std::max(minutes, 0.0)), air);
            double const pace = there.rate + there.deviation - loss * (target - air);
            way = {unlikely, last.minute + minutes, there.water2 / (pace * pace), pace};
        }
    double sum = 0, weights = 0;
    Arrival result;
    for (Way& way : ways) {
        double const weight = std::exp((likeliest - way.unlikely) / 2);
        sum += weight;
        way.unlikely = weight;
        if (is_absent(way.minute))
            continue;
        weights += weight;
        result.minute += weight * (way.minute - last.minute);
        result.rate += weight * way.rate;
    }
    result.never = 1 - weights / sum;
    result.minute /= weights;
    result.rate /= weights;
    double variance = 0;
    for (Way const& way : ways)
        if (!is_absent(way.minute)) {
            double const off = way.minute - last.minute - result.minute;
            variance += way.unlikely * (way.variance + off * off);
        }
    result.uncertainty = std::sqrt(variance / weights);
    result.minute += last.minute;
    return result;
}

} // namespace hearthcell::kernels
