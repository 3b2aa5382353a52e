#pragma once
// What looks odd about the arguments of a call that went well. All limits are common practice, no source; they warn and
// never change a result.

#include "functions/catalogue/function.hpp"
#include "functions/words/speaker.hpp"

namespace hearthcell {

struct Oddity {
    std::string sentence;
    std::size_t argument = most_arguments; ///< the one that it is about, where it is about one
    double meant = absent;                 ///< what that was probably meant to be, where that is sure
    bool asks_about_zero = false;          ///< whether a 0 is one, or an empty cell
    bool is_advice = false;                ///< what else to ask, of a call in which no slip is likely
};

/// In order of precedence: what is odd about single arguments, then about several together.
std::vector<Oddity> oddities(Speaker const& say, Function const& function, std::span<Value const> values);

/// Whether two readings that changed places explain a result that cannot be.
bool has_swapped_readings(Function const& function, std::span<Value const> values);

} // namespace hearthcell
