#pragma once
// The distributions behind limits, p values and numbers of runs. Nothing here throws or reads the locale; arguments
// are in range when they come from checked cells, and a NaN comes out where no answer exists.

namespace hearthcell {

/// How probable it is that a standard normal deviate lies between two, the first the lower one; to all digits in
/// either tail.
double normal_between(double low, double high);

/// The standard normal deviate that is exceeded, on the upper side, with probability `beyond`.
double normal_exceeded(double beyond);

/// The sum of squares of so many independent normal deviates that is exceeded with probability `beyond`.
double chi_square_exceeded(double beyond, double degrees_of_freedom);

/// Student's t that a variable of so many degrees of freedom exceeds on either side with probability `beyond` in all.
double t_exceeded(double beyond, double degrees_of_freedom);

/// How probable a Student's t at least as far from 0 as this is, both sides together.
double probability_beyond(double t, double degrees_of_freedom);

/// How probable it is that a noncentral t is farther from 0 than `t`, both sides together. From two
/// degrees of freedom on.
double probability_beyond(double t, double degrees_of_freedom, double noncentrality);

} // namespace hearthcell
