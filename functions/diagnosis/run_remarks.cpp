#include "functions/diagnosis/run_remarks.hpp"

#include "functions/kernels/statistics/series.hpp"
#include "functions/number/in_words.hpp"

#include <algorithm>

namespace hearthcell::diagnosis {
namespace {

/// Per cent beside fractions, or grams beside kilograms; no stove varies like that.
constexpr double other_unit = 30;

/// The run that is the farthest from the middle of the others, as a ratio.
struct Farthest {
    double value = 0, middle = 0;

    double ratio() const { return std::max(value / middle, middle / value); }
};

/// Of runs that are all above 0; two at least.
Farthest farthest_run(std::vector<double> const& runs) {
    std::vector<double> sorted = runs;
    std::ranges::sort(sorted);
    std::size_t const last = sorted.size() - 1;
    // Without the lowest the middle lies one further up.
    Farthest const lowest{sorted.front(), sorted[(last + 1) / 2]}, highest{sorted[last], sorted[(last - 1) / 2]};
    return lowest.ratio() > highest.ratio() ? lowest : highest;
}

void add_other_unit(Sentences& sentences, Block const& column) {
    std::vector<double> runs;
    for (double const run : column.numbers)
        if (!is_absent(run))
            runs.push_back(run);
    if (std::ranges::min(runs) <= 0)
        return;
    Farthest const farthest = farthest_run(runs);
    if (farthest.ratio() < other_unit)
        return;
    std::size_t const row = std::size_t(std::ranges::find(column.numbers, farthest.value) - column.numbers.begin()) + 1;
    sentences.push_back("Odd: row " + std::to_string(row) + " of values is " + in_words(farthest.value) +
                        ", the middle of the others " + in_words(farthest.middle) +
                        ": per cent beside a fraction, or another unit?");
}

void add_few_runs(Sentences& sentences, std::size_t runs, double confidence) {
    constexpr std::size_t few = 3, enough = 5;
    if (runs > few)
        return;
    auto const distance = [&](std::size_t n) { return tenths(t_exceeded(1 - confidence, double(n - 1))); };
    sentences.push_back(std::string(runs == 2 ? "Two" : "Three") + " runs tell little: the limits lie " +
                        distance(runs) + " standard errors from the mean; with five runs it would be " +
                        distance(enough) + ".");
}

} // namespace

Sentences remark_on_series(Given const& given) {
    Block const& column = *given.columns[0];
    Sentences sentences;
    add_other_unit(sentences, column);
    add_few_runs(sentences, kernels::describe(column).runs, given.numbers[0]);
    sentences.emplace_back("The limits take the runs as independent. Runs of one day seldom are: of three runs on each "
                           "of two days, days twice as far apart as the runs of one day, limits for 95 % hold the true "
                           "mean in 69 of 100 cases.");
    return sentences;
}

Sentences remark_on_tiers(Given const&) {
    return {
        "The true value is taken as distributed normally about the one that was measured; the uncertainty has to hold "
        "what all runs have in common, too.",
        "A tier holds for a result of the laboratory test of ISO 19867-1 only, and for each measure by itself."};
}

} // namespace hearthcell::diagnosis
