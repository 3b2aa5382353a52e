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
inline constexpr std::array<double, 10> sleep_1{0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
inline constexpr std::array<double, 10> sleep_2{1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};

inline constexpr std::array<Expected, 7> series_at_95{
    {{6, 0}, {521, 1e-12}, {14.1421356, 5e-8}, {0.0271442, 5e-8}, {506.15874, 5e-6}, {535.84126, 5e-6}, {0.95, 0}}};
inline constexpr std::array<Expected, 7> series_at_90{
    {{6, 0}, {521, 1e-12}, {14.1421356, 5e-8}, {0.0271442, 5e-8}, {509.36611, 5e-6}, {532.63389, 5e-6}, {0.9, 0}}};
inline constexpr std::array<Expected, 7> series_about_zero{{{6, 0},
                                                            {0, 0},
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
                                                     {0.0786855444596, 5e-14},
                                                     {0.140100199615, 5e-13},
                                                     {2.03818698063e-5, 5e-17},
                                                     {9.99347982442, 5e-12},
                                                     {0.95, 0}}};
inline constexpr std::array<Expected, 6> pooled_saving_of_3{{{0.122737556561, 5e-13},
                                                             {0.0635027879281, 5e-14},
                                                             {0.178686420271, 5e-13},
                                                             {0.00507934569744, 5e-14},
                                                             {4, 0},
                                                             {0.95, 0}}};
inline constexpr std::array<Expected, 6> own_saving_of_3{{{0.122737556561, 5e-13},
                                                          {0.0638048681454, 5e-14},
                                                          {0.177837477623, 5e-13},
                                                          {0.00509826404963, 5e-14},
                                                          {3.99497569907, 5e-12},
                                                          {0.95, 0}}};
inline constexpr std::array<Expected, 6> unbounded_saving{{{0.108695652174, 5e-13},
                                                           {Error::not_available},
                                                           {Error::not_available},
                                                           {0.927966017456, 5e-13},
                                                           {1.00130038637, 5e-12},
                                                           {0.95, 0}}};

} // namespace hearthcell::run_examples
