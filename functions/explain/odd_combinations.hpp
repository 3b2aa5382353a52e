#pragma once
// What looks odd about several arguments together, or odd in a way that an interval cannot tell. All limits are common
// practice, no source, but where one is named.

#include "functions/explain/arguments_by_name.hpp"
#include "functions/words/sentence.hpp"

#include <array>

namespace hearthcell {

/// Accepted arguments that are odd together.
struct Combination {
    bool (*odd)(Arguments const&);
    Sentence const& sentence;
    std::array<std::string_view, 2> about{}; ///< the argument, by whichever name it has, that was probably meant to be
    double scale = 1, shift = 0;             ///< scale × what it is + shift
    bool is_advice = false;                  ///< nothing is wrong; something else would tell more
};

/// In order of precedence: of place, weather, water and fuel; of what is worked out from them.
std::span<Combination const> odd_readings();
std::span<Combination const> odd_results();

} // namespace hearthcell
