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
inline constexpr double near_enough = 1e-6;    // of Newton's step, whose square is what is left
inline constexpr double most_never = 0.3;      // probability that it never gets there
} // namespace heating

/// Readings of a short stretch taken together.
struct HeatingPoint {
    double minute = 0, temperature = 0, variance = 0;
};

inline std::vector<HeatingPoint> taken_together(Log log, double variance) {
    std::vector<HeatingPoint> points;
    points.reserve(std::min(log.size(), heating::most_points + 1));
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
/// Two fires, followed over all points.
struct Followed {
    HeatingState<SideBySide> state;
    SideBySide unlikely{}; ///< minus twice the logarithm of the likelihood
};

inline Followed follow(std::vector<HeatingPoint> const& points, WanderingFire<SideBySide> const& fire,
                       SideBySide const& rate) {
    Followed result;
    HeatingState<SideBySide>& state = result.state;
    state.water = points[0].temperature + SideBySide{};
    state.water2 = points[0].variance + SideBySide{};
    state.deviation2 = fire.deviation * fire.deviation;
    state.rate = rate;
    state.rate2 = rate * rate;
    Passage<SideBySide> step;
    SideBySide variances = SideBySide{1, 1}; // a product, of which the logarithm is taken now and then
    double minutes = 0;
    for (std::size_t i = 1; i < points.size(); ++i) {
        double const next = points[i].minute - points[i - 1].minute;
        if (std::abs(next - minutes) > 1e-9 * next) {
            step = passage(fire, next);
            minutes = next;
        }
        state.advance(step, fire.air);
        // One that stands far off, as a slip of the pen does, is made less certain the farther it is off.
        SideBySide const off = points[i].temperature - state.water;
        SideBySide const variance = larger(points[i].variance + SideBySide{}, off * off / stands_off - state.water2);
        variances *= state.water2 + variance;
        result.unlikely += state.take(points[i].temperature, variance);
        if (i % few == 0 || i + 1 == points.size()) {
            result.unlikely += log(variances);
            variances = SideBySide{1, 1};
        }
    }
    return result;
}

/// Minutes from the last reading to the target; absent where this fire never gets there.
inline double minutes_to(HeatingState<double> const& state, WanderingFire<double> const& fire, double target) {
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
        if (std::abs(change) < near_enough * (1 + std::abs(minutes)))
            return minutes;
    }
    return absent;
}
} // namespace heating

namespace heating {
/// When one fire gets to the target, and how much that counts.
struct Way {
    double unlikely = 0;     ///< minus twice the logarithm of how likely, before and after the readings
    double minutes = absent; ///< from the last reading
    double variance = 0, rate = 0;
};

inline Way way_of(HeatingState<double> const& state, WanderingFire<double> const& fire, double target) {
    double const minutes = minutes_to(state, fire, target);
    if (is_absent(minutes))
        return {};
    HeatingState<double> there = state;
    there.advance(passage(fire, std::max(minutes, 0.0)), fire.air);
    double const pace = there.rate + there.deviation - fire.loss * (target - fire.air);
    return {0, minutes, there.water2 / (pace * pace), pace};
}

inline double squared_off(double value, double usual, double spread) {
    double const off = std::log(value / usual) / spread;
    return off * off;
}
} // namespace heating

/// Two points at least.
inline Arrival arrival(std::vector<HeatingPoint> const& points, double target, double air) {
    using namespace heating;
    HeatingPoint const &first = points.front(), &last = points.back();
    double const slope = std::max((last.temperature - first.temperature) / (last.minute - first.minute), 0.2);
    double const halfway = (first.temperature + last.temperature) / 2;
    std::array<Way, std::size(losses) * std::size(shares)> ways{};
    double likeliest = std::numeric_limits<double>::infinity();
    std::array<double, std::size(losses)> off_loss{};
    std::array<double, std::size(shares)> off_share{};
    std::ranges::transform(losses, off_loss.begin(),
                           [](double loss) { return squared_off(loss, usual_loss, loss_spread); });
    std::ranges::transform(shares, off_share.begin(),
                           [](double share) { return squared_off(share, usual_share, share_spread); });
    for (std::size_t at = 0; at < std::size(losses); at += 2)
        for (std::size_t with = 0; with < std::size(shares); ++with) {
            double const share = shares[with];
            SideBySide const loss{losses[at], losses[at + 1]}, rate = slope + loss * (halfway - air);
            WanderingFire<SideBySide> const fires{loss, share * rate, 3, air};
            Followed const followed = follow(points, fires, rate);
            for (int which : {0, 1}) {
                WanderingFire<double> const fire{loss[which], fires.deviation[which], 3, air};
                Way& way = ways[(at + std::size_t(which)) * std::size(shares) + with];
                way = way_of(one_of(followed.state, which), fire, target);
                way.unlikely = followed.unlikely[which] + off_loss[at + std::size_t(which)] + off_share[with];
                likeliest = std::min(likeliest, way.unlikely);
            }
        }
    double sum = 0, weights = 0;
    Arrival result;
    for (Way& way : ways) {
        double const weight = std::exp((likeliest - way.unlikely) / 2);
        sum += weight;
        way.unlikely = weight;
        if (is_absent(way.minutes))
            continue;
        weights += weight;
        result.minute += weight * way.minutes;
        result.rate += weight * way.rate;
    }
    result.never = 1 - weights / sum;
    result.minute /= weights;
    result.rate /= weights;
    double variance = 0;
    for (Way const& way : ways)
        if (!is_absent(way.minutes)) {
            double const off = way.minutes - result.minute;
            variance += way.unlikely * (way.variance + off * off);
        }
    result.uncertainty = std::sqrt(variance / weights);
    result.minute += last.minute;
    return result;
}

} // namespace hearthcell::kernels
