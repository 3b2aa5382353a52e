#include "functions/about/monte_carlo.hpp"

#include "functions/about/uncertainty_remarks.hpp"
#include "functions/explain/phrases.hpp"
#include "functions/words/sentences.hpp"

#include <cmath>

namespace hearthcell {
namespace {

std::size_t draws_wanted(std::span<Value const> given) {
    return std::size_t(std::get<double>(given[uncertainty_argument::draws]));
}

std::string roughly(Speaker const& say, double error) {
    if (!(error > 0))
        return "0";
    double const digit = std::pow(10, std::floor(std::log10(error)));
    return say.number(std::round(error / digit) * digit);
}

std::string on_draws(Speaker const& say, Draws const& drawn) {
    return say(
        drawn.without == 0 ? sentences::every_draw_counts : sentences::some_draws_fail,
        {{"count", std::to_string(drawn.results.size() + drawn.without)}, {"without", std::to_string(drawn.without)}});
}

void add_accuracy(Speaker const& say, Draws const& drawn, double coverage, Sentences& said) {
    StandardErrors const errors = standard_errors(drawn.results, coverage);
    said.push_back(say(sentences::accuracy_of_draws, {{"mean", roughly(say, errors.mean)},
                                                      {"uncertainty", roughly(say, errors.uncertainty)},
                                                      {"low", roughly(say, errors.low)},
                                                      {"high", roughly(say, errors.high)}}));
    constexpr double few = 50;
    double const outside = (1 - coverage) * double(drawn.results.size());
    if (outside < few)
        said.push_back(say(sentences::few_draws_outside, {{"count", say.number(std::round(outside))}}));
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

Remarks remark_on_monte_carlo(std::span<Value const> given, Language language) {
    Speaker const say(language);
    UncertainCall asked = read_uncertain_call(given);
    Draws const drawn = draw(asked.equation(), asked.inputs(), asked.bounds(), draws_wanted(given));
    Sentences said{on_draws(say, drawn),
                   say(sentences::shortest_interval, {{"percent", say.number(asked.coverage * 100)}})};
    add_accuracy(say, drawn, asked.coverage, said);
    Propagated const first = propagate(asked);
    if (asked.failure.reason == Reason::none)
        said.push_back(
            say(sentences::first_order_beside, {{"uncertainty", quantity(say, first.uncertainty, asked.measure())}}));
    add_assumed(say, said, asked, std::get<Block>(given[uncertainty_argument::values]));
    return {{}, std::move(said)};
}

} // namespace hearthcell
