#pragma once
// The minute at which a heating passed a mark: what the readings before it foretell, weighed with what the readings
// about it show. The likelihood is summed over places in the bracket, which are as fine as any reading can tell.

#include "functions/kernels/log/heating.hpp"

namespace hearthcell::kernels {

struct Moment {
    double minute = 0, uncertainty = 0;
};

namespace moment {
inline constexpr int places = 128;
inline constexpr double by_chance = 0.01;     // that the fire changed as no wandering tells
inline constexpr double unsteady_share = 0.1; // of the rate, on the way from the mark to the level
inline constexpr double root_of_two_pi = 2.5066282746310002;
} // namespace moment

/// What is known of the readings about the mark.
struct Approach {
    std::vector<HeatingPoint> readings;
    double mark = 0, level = 0; ///< °C: up to the level the water rises, and no higher
    double rate = 0;            ///< K/min, at the mark
    bool may_fall = false;      ///< a reading after the mark may lie anywhere below the level
};

namespace moment {
/// Minus the logarithm of how likely the readings are where the mark is passed at this minute.
inline double unlikely(Approach const& near, double minute) {
    double sum = 0;
    for (HeatingPoint const& reading : near.readings) {
        double const way = near.rate * (reading.minute - minute);
        double const off = reading.temperature - std::min(near.mark + way, near.level);
        double const of_fire = unsteady_share * std::min(std::abs(way), near.level - near.mark);
        if (!(near.may_fall && off < 0 && way > 0))
            sum += off * off / (2 * (reading.variance + of_fire * of_fire));
    }
    return sum;
}
} // namespace moment

/// The mark was passed between two minutes. Where nothing is foretold, its minute is absent.
inline Moment weighed(Approach const& near, Arrival const& foretold, double low, double high) {
    using namespace moment;
    std::array<double, places> likely{};
    double const width = (high - low) / places;
    auto const minute_of = [&](std::size_t place) { return (double(place) + 0.5) * width; };
    for (std::size_t place = 0; place < places; ++place) {
        double prior = by_chance / (high - low);
        if (!is_absent(foretold.minute)) {
            double const off = (low + minute_of(place) - foretold.minute) / foretold.uncertainty;
            prior += std::exp(-off * off / 2) / (foretold.uncertainty * root_of_two_pi);
        }
        likely[place] = std::log(prior) - unlikely(near, low + minute_of(place));
    }
    double const likeliest = std::ranges::max(likely);
    double sum = 0, first = 0, second = 0;
    for (std::size_t place = 0; place < places; ++place) {
        double const weight = std::exp(likely[place] - likeliest), minute = minute_of(place);
        sum += weight;
        first += weight * minute;
        second += weight * minute * minute;
    }
    double const mean = first / sum, variance = std::max(second / sum - mean * mean, 0.0);
    return {low + mean, std::sqrt(variance + width * width / 12)};
}

} // namespace hearthcell::kernels
