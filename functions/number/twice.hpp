#pragma once
// A sum carried in twice the digits of a double, so that neither the order of the runs nor a large common offset
// costs a digit. Ogita, Rump and Oishi, SIAM J. Sci. Comput. 26 (2005): 'Sum2'.

#include <cmath>

namespace hearthcell {

/// high + low, where low is what high has no room for.
struct Twice {
    double high = 0, low = 0;

    void add(double x) {
        double const sum = high + x;
        double const part_of_x = sum - high;
        low += (high - (sum - part_of_x)) + (x - part_of_x); // exactly what the addition lost
        high = sum;
    }

    double rounded() const { return high + low; }

    /// The quotient, again in twice the digits: n equal numbers added and divided by n give that number back exactly,
    /// so that runs which are all the same have no scatter.
    Twice divided_by(double count) const {
        double const sum = high + low;
        double const rest = (high - sum) + low;
        double const quotient = sum / count;
        return {quotient, (std::fma(-quotient, count, sum) + rest) / count};
    }
};

} // namespace hearthcell
