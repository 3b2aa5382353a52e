#pragma once
// Of every function that has several results.

#include "functions/catalogue/arguments.hpp"

namespace hearthcell::arguments {

inline constexpr Argument part{
    .name = "part",
    .measure = Measure::words,
    .help = {"Which result, by its name, or \"all\" for all of them side by side",
             "Lequel des résultats, par son nom, ou \"tout\" pour tous, côte à côte",
             "Cuál de los resultados, por su nombre, o \"todo\" para todos, lado a lado",
             "Tokeo lipi, kwa jina lake, au \"yote\" kwa yote kando kwa kando"},
    .kind = ArgumentKind::part,
    .optional = true,
};

} // namespace hearthcell::arguments
