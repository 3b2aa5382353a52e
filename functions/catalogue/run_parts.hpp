#pragma once
// What blocks of repeated runs are made of.

#include "functions/catalogue/catalogue.hpp"

namespace hearthcell::run_parts {

inline constexpr Part level{Term("level"), Measure::confidence};
inline constexpr Term lower_limit("lower limit"), upper_limit("upper limit");
inline constexpr Part lower{lower_limit}, upper{upper_limit}, p{{"p", "p", "p", "p"}};
inline constexpr Part degrees_of_freedom{
    {"degrees of freedom", "degrés de liberté", "grados de libertad", "digrii za uhuru"}};
inline constexpr Part pairs{{"pairs", "paires", "pares", "jozi"}};
inline constexpr Part left_out{{"rows left out", "lignes écartées", "filas omitidas", "safu mlalo zilizoachwa"}};

} // namespace hearthcell::run_parts
