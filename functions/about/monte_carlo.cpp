#include "functions/about/monte_carlo.hpp"

#include "functions/about/uncertainty_remarks.hpp"
#include "functions/explain/phrases.hpp"

#include <cmath>

namespace hearthcell {
namespace {

std::size_t draws_wanted(std::span<Value const> given) {
    return std::size_t(std::get<double>(given[uncertainty_argument::draws]));
}

std::string roughly(double error) {
    if (!(error > 0))
        return "0";
    double const digit = std::pow(10, std::floor(std::log10(error)));
    return in_words(std::round(error / digit) * digit);
}

std::string on_draws(Draws const& drawn) {
    std::string const all = std::to_string(drawn.results.size() + drawn.without);
    if (drawn.without == 0)
        return "Each of the " + all + " draws gave a result.";
    return std::to_string(drawn.without) + " of " + all +
           " draws gave no result, since a number or the result lay outside its range; the figures are those of the "
           "others.";
}

std::string on_accuracy(Draws const& drawn, double coverage) {
    StandardErrors const errors = standard_errors(drawn.results, coverage);
    std::string text = "From so many draws the mean is known to " + roughly(errors.mean) +
                       ", the standard uncertainty to " + roughly(errors.uncertainty) + ", the limits to " +
                       roughly(errors.low) + " and " + roughly(errors.high) +
                       " (one standard deviation each); the draws are always the same.";
    constexpr double few = 50;
    double const outside = (1 - coverage) * double(drawn.results.size());
    if (outside < few)
        text += " Only " + in_words(std::round(outside)) + " draws lie outside the limits: give more draws.";
    return text;
}

} // namespace

Outcome monte_carlo_of(std::span<Value const> given) {
    UncertainCall const asked = read_uncertain_call(given);
    if (asked.failure.reason != Reason::none)
        return as_a_cell_sees_it(asked);
    std::size_t const count = draws_wanted(given);
    Draws const drawn = draw(asked.equation(), asked.inputs(), asked.bounds(), count);
    if (2 * drawn.without > count)
        return Failure{Reason::draws_without_result};
    DrawnResults const results = summarise(drawn.results, asked.coverage);
    return Block{1,
                 5,
                 {results.mean, results.uncertainty, results.low, results.high, double(drawn.without) / double(count)},
                 {}};
}

Sentences remark_on_monte_carlo(std::span<Value const> given) {
    UncertainCall asked = read_uncertain_call(given);
    Draws const drawn = draw(asked.equation(), asked.inputs(), asked.bounds(), draws_wanted(given));
    Sentences sentences{on_draws(drawn),
                        "The limits are those of the shortest interval that holds " + in_words(asked.coverage * 100) +
                            " % of the results (JCGM 101, 7.7).",
                        on_accuracy(drawn, asked.coverage)};
    Propagated const first = propagate(asked);
    if (asked.failure.reason == Reason::none)
        sentences.push_back("First order, as STOVE.UNCERTAINTY computes it, gives the standard uncertainty " +
                            in_words(first.uncertainty, asked.function->result.measure) + ".");
    add_assumed(sentences, asked, std::get<Block>(given[uncertainty_argument::values]));
    return sentences;
}

} // namespace hearthcell
