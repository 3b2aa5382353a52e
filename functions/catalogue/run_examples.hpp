#pragma once
// The runs of the examples, and what they give.

#include "functions/catalogue/example.hpp"

namespace hearthcell::run_examples {

// Invented figures, not measurements.
inline constexpr std::array<double, 6> base{592, 571, 605, 580, 566, 598};
inline constexpr std::array<double, 6> improved{518, 531, 502, 509, 540, 526};
inline constexpr std::array<double, 3> base_3{592, 571, 605};
inline constexpr std::array<double, 3> improved_3{518, 531, 502};
inline constexpr std::array<double, 8> with_gaps{518, blank, 531, 502, blank, 509, 540, 526};
inline constexpr std::array<double, 2> wide{20, 900}, narrow{400, 420};
inline constexpr std::array<double, 6> about_zero{-1, 1, -2, 2, -3, 3};
inline constexpr std::array<double, 1> one_run{518};
inline constexpr std::array<double, 3> all_alike{0.1, 0.1, 0.1};
inline constexpr std::array<double, 7> one_apart{32.4, 31.9, blank, 32.7, 32.0, 38.6, 32.3};
// Daily fuel of seven households in g, before and after.
inline constexpr std::array<double, 7> before{812, 640, 1105, blank, 930, 720, 860};
inline constexpr std::array<double, 7> after{655, 560, 870, 700, 741, 610, 690};
inline constexpr std::array<double, 10> sleep_1{0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
inline constexpr std::array<double, 10> sleep_2{1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};

inline constexpr std::array<Expected, 7> series_at_95{
    {{521, 1e-12}, {6, 0}, {14.1421356, 5e-8}, {0.0271442, 5e-8}, {506.15874, 5e-6}, {535.84126, 5e-6}, {0.95, 0}}};
inline constexpr std::array<Expected, 7> series_at_90{
    {{521, 1e-12}, {6, 0}, {14.1421356, 5e-8}, {0.0271442, 5e-8}, {509.36611, 5e-6}, {532.63389, 5e-6}, {0.9, 0}}};
inline constexpr std::array<Expected, 7> series_about_zero{{{0, 0},
                                                            {6, 0},
                                                            {2.366431913, 5e-10},
                                                            {Error::number},
                                                            {-2.48341798914, 5e-11},
                                                            {2.48341798914, 5e-11},
                                                            {0.95, 0}}};
inline constexpr std::array<Expected, 6> sleep_difference{{{1.58, 1e-12},
                                                           {-0.205483231, 5e-10},
                                                           {3.365483231, 5e-10},
                                                           {0.0793941402, 5e-11},
                                                           {17.776473516, 5e-10},
                                                           {0.95, 0}}};
inline constexpr std::array<Expected, 6> pooled_saving{{{0.109908883827, 5e-13},
                                                        {0.0785701661791, 5e-14},
                                                        {0.140301553861, 5e-13},
                                                        {2.03072468556e-5, 5e-17},
                                                        {10, 0},
                                                        {0.95, 0}}};
inline constexpr std::array<Expected, 6> own_saving{{{0.109908883827, 5e-13},
                                                     {0.0786880107314, 5e-14},
                                                     {0.140112070481, 5e-13},
                                                     {2.12623153943e-05, 5e-17},
                                                     {9.91852491278, 5e-12},
                                                     {0.95, 0}}};
inline constexpr std::array<Expected, 6> pooled_saving_of_3{{{0.122737556561, 5e-13},
                                                             {0.0635027879281, 5e-14},
                                                             {0.178686420271, 5e-13},
                                                             {0.00507934569744, 5e-14},
                                                             {4, 0},
                                                             {0.95, 0}}};
inline constexpr std::array<Expected, 6> unbounded_saving{{{0.108695652174, 5e-13},
                                                           {Error::not_available},
                                                           {Error::not_available},
                                                           {0.927969770225, 5e-13},
                                                           {1.00103305758, 5e-12},
                                                           {0.95, 0}}};

inline constexpr std::array<Expected, 8> change_of_households{{{-156.833333333, 5e-9},
                                                               {-215.102690073, 5e-9},
                                                               {-98.5639765940, 5e-9},
                                                               {0.000967281532056, 5e-15},
                                                               {5, 0},
                                                               {0.95, 0},
                                                               {6, 0},
                                                               {1, 0}}};
inline constexpr std::array<Expected, 8> saving_of_households{{{0.185711466351, 5e-13},
                                                               {0.145696177632, 5e-13},
                                                               {0.212834887941, 5e-13},
                                                               {0.000967281532056, 5e-15},
                                                               {5, 0},
                                                               {0.95, 0},
                                                               {6, 0},
                                                               {1, 0}}};

inline constexpr std::array<Expected, 8> change_of_sleepers{{{1.58, 1e-12},
                                                             {0.700114236723, 5e-12},
                                                             {2.45988576328, 5e-11},
                                                             {0.00283289019738, 5e-14},
                                                             {9, 0},
                                                             {0.95, 0},
                                                             {10, 0},
                                                             {0, 0}}};
// Boil times in min of three variants on four days; on the last day only two were run.
inline constexpr std::array<double, 12> block_results{32.1, 28.4, 29.3, 30.8, 27.7, 27.9,
                                                      31.5, 28.9, 28.8, 29.9, 26.8, blank};
inline constexpr std::array<double, 12> block_variants{1, 2, 3, 1, 2, 3, 1, 2, 3, 1, 2, 3};
inline constexpr std::array<double, 12> block_days{1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4};
inline constexpr std::array<Expected, 12> block_differences{{{-3.125, 1e-12},
                                                             {-3.6292935913, 5e-10},
                                                             {-2.6207064087, 5e-10},
                                                             {3.54959287989e-5, 5e-16},
                                                             {4, 0},
                                                             {"2"},
                                                             {-2.79583333333, 5e-11},
                                                             {-3.35965070871, 5e-11},
                                                             {-2.23201595795, 5e-11},
                                                             {5.28521929178e-5, 5e-16},
                                                             {3, 0},
                                                             {"3"}}};

} // namespace hearthcell::run_examples
