#pragma once
// The logs of the examples, invented.

#include "functions/catalogue/example.hpp"

namespace hearthcell::log_examples {

inline constexpr std::size_t minutes_of_test = 31;
inline constexpr auto every_minute = [] {
    std::array<double, minutes_of_test> column{};
    for (std::size_t i = 0; i < column.size(); ++i)
        column[i] = double(i);
    return column;
}();
/// From 20 °C by 3 K/min to a plateau at 95 °C, after 25 minutes.
inline constexpr auto to_the_boil = [] {
    std::array<double, minutes_of_test> column{};
    for (std::size_t i = 0; i < column.size(); ++i)
        column[i] = i < 25 ? 20 + 3 * double(i) : 95;
    return column;
}();
inline constexpr auto with_a_spike = [] {
    auto column = to_the_boil;
    column[5] = 105;
    column[8] = blank;
    return column;
}();
inline constexpr auto time_run_back = [] {
    auto column = every_minute;
    column[12] = 10;
    return column;
}();
inline constexpr std::array<double, 2> around_the_boil{22.0, 24.0};
inline constexpr std::array<double, 2> about_the_boil{93.2, 95.4};
inline constexpr std::array<double, 2> cooling_minutes{0.0, 20.0};
inline constexpr std::array<double, 2> cooling_temperatures{90.0, 80.0};
// 21380 J/K, 1500 W, 5 W/K, air and start 20 °C: 20 + 300 (1 - exp(-5 t/21380)).
inline constexpr std::array<double, 16> early_minutes{0., 1., 2.,  3.,  4.,  5.,  6.,  7.,
                                                      8., 9., 10., 11., 12., 13., 14., 15.};
inline constexpr std::array<double, 16> stopped_early{20.0,   24.18,  28.302, 32.367, 36.374, 40.326, 44.223, 48.066,
                                                      51.855, 55.591, 59.275, 62.908, 66.491, 70.023, 73.506, 76.941};
// The temperatures are rounded to a thousandth, which scatters by 0.3 mK.
inline constexpr std::array<Expected, 2> the_models_boil{{{20.5021, 0.002}, {0.0005, 0.0005}}};
// A reading every four minutes; 18:40 was typed as 8:40.
inline constexpr std::array<double, 8> lost_digit_minutes{0.5, 4.5, 8.5, 12.5, 16.5, 26 / 3., 20.5, 24.5};
inline constexpr std::array<double, 8> slow_readings{21.5, 33.5, 45.5, 57.5, 69.5, 76.0, 81.5, 93.5};

// Findings of LOGCHECK: the words, and the row they concern.
inline constexpr std::array<Expected, 2> nothing_to_remark{{{"nothing to remark"}, {""}}};
inline constexpr std::array<Expected, 2> a_lost_digit{
    {{"The time runs backwards, from 16.5 to 8.67 min: did the minutes lose a digit? 18.67 min would fit."}, {6, 0}}};
inline constexpr std::array<Expected, 4> wild_and_half_empty{
    {{"A reading of 105 °C stands 73 K above its neighbours: no pot jumps like that."},
     {6, 0},
     {"A time without a temperature."},
     {9, 0}}};
inline constexpr std::array<Expected, 2> above_boiling{
    {{"Up to 95 °C in 6 readings from here, where water boils at 92 °C at most: check probe, altitude and weather."},
     {26, 0}}};

} // namespace hearthcell::log_examples
