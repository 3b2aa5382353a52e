#pragma once
// Likely slips of the pen in one number: what it was probably meant to be when it is refused, and what looks odd about
// it when it is accepted. All bands are common practice, no source; they warn and never change a result.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

/// What a refused number probably was: "12 is 1200 %; type 12% or 0.12". Empty where nothing suggests itself.
std::string probably_meant(Argument const& argument, double number);

/// What a refused number probably was, as the number that should have been given; absent where that is not sure.
double meant_by_refused(Argument const& argument, double number);

/// Whether a 0 is one, or an empty cell.
Sentences doubt_about_zero(Argument const& argument, double number);

/// Something odd about an accepted number, and what it was probably meant to be; absent where that is not sure.
struct OddNumber {
    std::string sentence;
    double meant = absent;
};
std::vector<OddNumber> odd_about(Argument const& argument, double number);

/// What to look at when a result of this kind is outside its range. Empty where nothing suggests itself.
std::string_view result_hint(Measure measure);

} // namespace hearthcell
