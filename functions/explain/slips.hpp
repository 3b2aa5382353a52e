#pragma once
// Likely slips of the pen in one number: what it was probably meant to be when it is refused, and what looks odd about
// it when it is accepted. All bands are common practice, no source; they warn and never change a result.

#include "functions/catalogue/function.hpp"
#include "functions/words/speaker.hpp"

namespace hearthcell {

/// What a refused number probably was.
struct Meant {
    std::string text;     ///< "14 is 1400 %; type 14% or 0.14." Empty where nothing suggests itself.
    bool goes_on = false; ///< whether it goes on behind what is wrong, after a colon, or stands by itself
};
Meant probably_meant(Speaker const& say, Argument const& argument, double number);

/// What a refused number probably was, as the number that should have been given; absent where that is not sure.
double meant_by_refused(Argument const& argument, double number);

/// Whether a 0 is one, or an empty cell.
Sentences doubt_about_zero(Speaker const& say, Argument const& argument, double number);

/// Something odd about an accepted number, and what it was probably meant to be; absent where that is not sure.
struct OddNumber {
    std::string sentence;
    double meant = absent;
};
std::vector<OddNumber> odd_about(Speaker const& say, Argument const& argument, double number);

/// What to look at when a result of this kind is outside its range; null where nothing suggests itself.
Sentence const* result_hint(Measure measure);

} // namespace hearthcell
