#pragma once
// What a hand-written formula computes, in terms of our functions and of published methods.

#include <string>
#include <string_view>
#include <vector>

namespace hearthcell::formulas {

struct PublishedForm {
    std::string function;                  // of the catalogue, that takes its place: the largest that fits
    std::vector<std::string_view> methods; // as the argument `method` names them; none: no published one is known
    std::string form;                      // "4.186 m ΔT + 2260 e"
    bool is_part = false;                  // the formula computes something more with it

    bool operator==(PublishedForm const&) const = default;
};

} // namespace hearthcell::formulas
