#pragma once
// The minute at which a heating passed a mark: what the readings before it foretell, weighed with what the readings
// about it show. The likelihood is summed over places in the bracket, as fine as readings can tell.

#include "functions/kernels/log/heating.hpp"

namespace hearthcell::kernels {

struct Moment {
    double minute = 0, uncertainty = 0;
};

namespace moment {
inline constexpr std::size_t least_places = 32, most_places = 128;
inline constexpr double finest = 0.04;        // min between places, of which there are least at least
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
    std::array<double, most_places> off{};
    std::size_t const places = std::clamp(std::size_t((high - low) / finest), least_places, most_places);
    double const width = (high - low) / double(places);
    auto const minute_of = [&](std::size_t place) { return (double(place) + 0.5) * width; };
    for (std::size_t place = 0; place < places; ++place)
        off[place] = unlikely(near, low + minute_of(place));
    double const likeliest = *std::min_element(off.begin(), off.begin() + std::ptrdiff_t(places));
    double sum = 0, first = 0, second = 0;
    for (std::size_t place = 0; place < places; ++place) {
        double const minute = minute_of(place);
        double weight = by_chance / (high - low);
        if (!is_absent(foretold.minute)) {
            double const from = (low + minute - foretold.minute) / foretold.uncertainty;
            weight += std::exp(-from * from / 2) / (foretold.uncertainty * root_of_two_pi);
        }
        weight *= std::exp(likeliest - off[place]);
        sum += weight;
        first += weight * minute;
        second += weight * minute * minute;
    }
    double const mean = first / sum, variance = std::max(second / sum - mean * mean, 0.0);
    return {low + mean, std::sqrt(variance + width * width / 12)};
}

} // namespace hearthcell::kernels
