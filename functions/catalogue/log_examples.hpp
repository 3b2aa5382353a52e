#pragma once
// The logs of the examples, invented.

#include "functions/catalogue/example.hpp"

namespace hearthcell::log_examples {

inline constexpr std::size_t minutes_of_test = 38;
inline constexpr auto every_minute = [] {
    std::array<double, minutes_of_test> column{};
    for (std::size_t i = 0; i < column.size(); ++i)
        column[i] = double(i);
    return column;
}();
/// From 14.5 °C by 2.5 K/min to a plateau at 94.5 °C, after 32 minutes.
inline constexpr auto to_the_boil = [] {
    std::array<double, minutes_of_test> column{};
    for (std::size_t i = 0; i < column.size(); ++i)
        column[i] = i < 32 ? 14.5 + 2.5 * double(i) : 94.5;
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
inline constexpr std::array<double, 2> around_the_boil{30.0, 32.0};
inline constexpr std::array<double, 2> about_the_boil{94.3, 96.2};
inline constexpr std::array<double, 2> cooling_minutes{0.0, 24.0};
inline constexpr std::array<double, 2> cooling_temperatures{91.0, 79.0};
// 15450 J/K, 750 W, 3.2 W/K, air and start 14.5 °C: 14.5 + 234.375 (1 - exp(-3.2 t/15450)).
inline constexpr std::array<double, 13> early_minutes{0., 2., 4., 6., 8., 10., 12., 14., 16., 18., 20., 22., 24.};
inline constexpr std::array<double, 13> stopped_early{14.5,   20.253, 25.866, 31.34,  36.68,  41.889, 46.97,
                                                      51.927, 56.761, 61.477, 66.078, 70.565, 74.942};
inline constexpr std::array<Expected, 2> the_models_boil{{{33.3385, 0.2}, {0.5, 0.1}}};
inline constexpr std::array<Expected, 4> the_boil_of_a_line{{{31.8, 0.05}, {0.1, 0.05}, {31, 0}, {32, 0}}};
// 20 + 75 exp(-4 · 60 t/8850): a time constant of 37 minutes, of which the log lasts eleven.
inline constexpr std::array<double, 11> ended_cooling_minutes{0, 10, 20, 30, 40, 60, 80, 120, 160, 240, 400};
inline constexpr std::array<double, 11> ended_cooling{95,     77.186, 63.603, 53.246, 45.349, 34.737,
                                                      28.568, 22.896, 20.979, 20.112, 20.001};
inline constexpr std::array<Expected, 2> loss_of_an_ended_cooling{{{3.9891, 0.001}, {0.0044, 0.0005}}};
// Carbon monoxide, read at unequal times.
inline constexpr std::array<double, 4> unequal_minutes{0, 2, 5, 10};
inline constexpr std::array<double, 4> levels_of_carbon_monoxide{4, 6, 12, 19.2};
// A reading every five minutes, one of them late: 26:10 was typed as 6:10.
inline constexpr std::array<double, 8> lost_digit_minutes{1., 6., 11., 16., 21., 6 + 10 / 60., 31., 36.};
inline constexpr std::array<double, 8> slow_readings{17.0, 29.5, 42.0, 54.5, 67.0, 79.9, 92.0, 94.5};

// Findings of LOGCHECK: the words, and the row they concern.
inline constexpr std::array<Expected, 4> nothing_to_remark{{{"nothing to remark"}, {""}, {""}, {""}}};
inline constexpr std::array<Expected, 4> a_lost_digit{
    {{"The time runs backwards, from 21 to 6.17 min: did the minutes lose a digit? 26.17 min would fit."},
     {6, 0},
     {""},
     {""}}};
inline constexpr std::array<Expected, 4> wild_and_half_empty{
    {{"A reading of 105 °C stands 80.5 K above its neighbours: no pot jumps like that."},
     {6, 0},
     {"A time without a temperature."},
     {9, 0}}};
inline constexpr std::array<Expected, 4> above_boiling{
    {{"Up to 94.5 °C in 6 readings from here, where water boils at 92 °C at most: check probe, altitude and weather."},
     {33, 0},
     {""},
     {""}}};

} // namespace hearthcell::log_examples
