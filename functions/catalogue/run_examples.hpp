#pragma once
// The runs of the examples, and what they give.

#include "functions/catalogue/example.hpp"

namespace hearthcell::run_examples {

// Invented figures, not measurements.
inline constexpr std::array<double, 6> base{1020, 980, 1055, 1010, 945, 990};
inline constexpr std::array<double, 6> improved{640, 700, 655, 610, 690, 665};
inline constexpr std::array<double, 3> base_3{1020, 980, 1055};
inline constexpr std::array<double, 3> improved_3{640, 700, 655};
inline constexpr std::array<double, 8> with_gaps{640, blank, 700, 655, blank, 610, 690, 665};
inline constexpr std::array<double, 2> wide{20, 900}, narrow{400, 420};
inline constexpr std::array<double, 6> about_zero{-1, 1, -2, 2, -3, 3};
inline constexpr std::array<double, 1> one_run{640};
inline constexpr std::array<double, 3> all_alike{0.1, 0.1, 0.1};
inline constexpr std::array<double, 7> one_apart{26.1, 25.8, blank, 26.4, 25.9, 31.0, 26.2};
inline constexpr std::array<double, 10> sleep_1{0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
inline constexpr std::array<double, 10> sleep_2{1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};

inline constexpr std::array<Expected, 7> series_at_95{
    {{6, 0}, {660, 1e-12}, {33.0151480, 5e-8}, {0.0500230, 5e-8}, {625.35273, 5e-6}, {694.64727, 5e-6}, {0.95, 0}}};
inline constexpr std::array<Expected, 7> series_at_90{
    {{6, 0}, {660, 1e-12}, {33.0151480, 5e-8}, {0.0500230, 5e-8}, {632.84042, 5e-6}, {687.15958, 5e-6}, {0.9, 0}}};
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
inline constexpr std::array<Expected, 6> pooled_saving{
    {{0.34, 1e-12}, {0.300757170876, 5e-13}, {0.377876149824, 5e-13}, {1.27279127e-8, 5e-17}, {10, 0}, {0.95, 0}}};
inline constexpr std::array<Expected, 6> own_saving{{{0.34, 1e-12},
                                                     {0.301229738013, 5e-13},
                                                     {0.377195333999, 5e-13},
                                                     {3.16893732e-8, 5e-17},
                                                     {9.27686662366, 5e-12},
                                                     {0.95, 0}}};
inline constexpr std::array<Expected, 6> pooled_saving_of_3{{{0.346972176759, 5e-13},
                                                             {0.280013602772, 5e-13},
                                                             {0.410062828319, 5e-13},
                                                             {0.000232989724573, 5e-16},
                                                             {4, 0},
                                                             {0.95, 0}}};
inline constexpr std::array<Expected, 6> own_saving_of_3{{{0.346972176759, 5e-13},
                                                          {0.280519491918, 5e-13},
                                                          {0.40864072355, 5e-12},
                                                          {0.000319930611139, 5e-16},
                                                          {3.78618085034, 5e-12},
                                                          {0.95, 0}}};
inline constexpr std::array<Expected, 6> unbounded_saving{{{0.108695652174, 5e-13},
                                                           {Error::not_available},
                                                           {Error::not_available},
                                                           {0.927966017456, 5e-13},
                                                           {1.00130038637, 5e-12},
                                                           {0.95, 0}}};

} // namespace hearthcell::run_examples
