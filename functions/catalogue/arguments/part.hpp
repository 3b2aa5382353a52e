#pragma once
// Of every function that has several results.

#include "functions/catalogue/arguments.hpp"

namespace hearthcell::arguments {

inline constexpr Argument part{
    .name = "part",
    .measure = Measure::words,
    .help = {"Which of the results, by its name", "Lequel des résultats, par son nom",
             "Cuál de los resultados, por su nombre", "Tokeo lipi, kwa jina lake"},
    .kind = ArgumentKind::part,
    .optional = true,
};

} // namespace hearthcell::arguments
