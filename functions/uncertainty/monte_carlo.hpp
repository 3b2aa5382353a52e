#pragma once
// Propagation of whole distributions by drawing from them, JCGM 101:2008 (from memory of its numbering): 6.4.7
// and 6.4.8 normal quantities, 7.6 mean and standard uncertainty, 7.7 the shortest interval, 7.9 how well all of them
// are known.

#include "functions/uncertainty/propagation.hpp"

#include <cstdint>
#include <random>

namespace hearthcell {

/// Standard normal deviates, always the same ones from the same seed, whatever library there is: the generator is fixed
/// by the C++ standard, std::normal_distribution is not. Marsaglia's polar method.
class NormalDraws {
public:
    explicit NormalDraws(std::uint64_t seed) : generator_(seed) {}
    double next();

private:
    std::mt19937_64 generator_;
    double spare_ = 0;
    bool has_spare_ = false;
};

/// What a distribution of results comes to.
struct DrawnResults {
    double mean = 0, uncertainty = 0;
    double low = 0, high = 0; ///< of the shortest interval that holds the coverage asked for
};

/// Of two results at least, in any order.
DrawnResults summarise(std::span<double const> results, double coverage);

/// How far a figure would move with other draws: one standard deviation of it.
using StandardErrors = DrawnResults;

/// By the scatter of the same figures over ten parts of the results, in the order in which they were drawn. Of twenty
/// results at least.
StandardErrors standard_errors(std::span<double const> results, double coverage);

/// Where an equation may be computed and what it may give; ranges of numbers that have none are not looked at.
struct Bounds {
    std::array<double, most_arguments> low{}, high{}; ///< of each number
    double lowest_result = 0, highest_result = 0;
};

struct Draws {
    std::vector<double> results; ///< in the order of drawing; without those below
    std::size_t without = 0;     ///< draws in which a number or the result lay out of its range, or there was none
};

/// Every number with an uncertainty is drawn from a normal distribution, all together with their correlations, which
/// can be.
Draws draw(Numeric const& equation, Inputs const& inputs, Bounds const& bounds, std::size_t count);

} // namespace hearthcell
