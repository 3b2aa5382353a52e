#include "functions/diagnosis/run_remarks.hpp"

#include "functions/kernels/statistics/series.hpp"
#include "functions/words/sentences.hpp"
#include "functions/words/speaker.hpp"

#include <algorithm>

namespace hearthcell::diagnosis {
namespace {

/// Per cent beside fractions, or grams beside kilograms; no stove varies like that.
constexpr double unlike_a_stove = 30;

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

void add_other_unit(Speaker const& say, Remarks& remarks, Block const& column) {
    std::vector<double> runs;
    for (double const run : column.numbers)
        if (!is_absent(run))
            runs.push_back(run);
    if (std::ranges::min(runs) <= 0)
        return;
    Farthest const farthest = farthest_run(runs);
    if (farthest.ratio() < unlike_a_stove)
        return;
    std::size_t const row = std::size_t(std::ranges::find(column.numbers, farthest.value) - column.numbers.begin()) + 1;
    remarks.odd.push_back(say(sentences::run_in_other_unit, {{"row", std::to_string(row)},
                                                             {"value", say.number(farthest.value)},
                                                             {"middle", say.number(farthest.middle)}}));
}

void add_few_runs(Speaker const& say, Remarks& remarks, std::size_t runs, double confidence) {
    constexpr std::size_t few = 3, enough = 5;
    if (runs > few)
        return;
    auto const distance = [&](std::size_t n) { return say.tenths(t_exceeded(1 - confidence, double(n - 1))); };
    remarks.said.push_back(say(runs == 2 ? sentences::two_runs_tell_little : sentences::three_runs_tell_little,
                               {{"distance", distance(runs)}, {"distance of five", distance(enough)}}));
}

} // namespace

Remarks remark_on_series(Given const& given, Language language) {
    Speaker const say(language);
    Block const& column = *given.columns[0];
    Remarks remarks;
    add_other_unit(say, remarks, column);
    add_few_runs(say, remarks, kernels::describe(column).runs, given.numbers[0]);
    remarks.said.push_back(say(sentences::runs_taken_as_independent));
    return remarks;
}

Remarks remark_on_tiers(Given const&, Language language) {
    Speaker const say(language);
    return {{}, {say(sentences::true_value_is_normal), say(sentences::tier_of_laboratory_only)}};
}

} // namespace hearthcell::diagnosis
