#include "functions/about/uncertainty_remarks.hpp"

#include "functions/about/uncertain_call.hpp"
#include "functions/catalogue/names.hpp"
#include "functions/explain/explain.hpp"
#include "functions/explain/phrases.hpp"
#include "functions/words/sentences.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell {
namespace {

std::string called(Function const& function) {
    return "STOVE." + std::string(function.name);
}

/// A figure beside that of first order, in words.
std::string compared(Speaker const& say, double uncertainty, UncertainCall const& asked, Propagated const& first) {
    std::string const text = quantity(say, asked.coverage * uncertainty, asked.measure());
    if (!(first.uncertainty > 0)) // of nothing there is no share
        return text;
    double const share = std::abs(uncertainty / first.uncertainty - 1);
    return say(uncertainty > first.uncertainty ? sentences::compared_more : sentences::compared_less,
               {{"uncertainty", text}, {"percent", say.number(std::round(share * 1000) / 10)}});
}

void doubt_second_order(Speaker const& say, UncertainCall const& asked, Propagated const& first, Sentences& said) {
    SecondOrder const second = second_order(asked.equation(), asked.inputs(), first);
    if (second.failure.reason != Reason::none) {
        Argument const& argument = asked.function->arguments[asked.place_of(second.number)];
        said.push_back(say(sentences::not_computable_nearby,
                           {{"argument", named_in_sentence(say, argument)}, {"function", called(*asked.function)}}));
        return;
    }
    double const variance = first.uncertainty * first.uncertainty;
    if (std::abs(second.variance) <= second_order_matters * variance)
        return;
    bool const uncorrelated = asked.correlations.empty(); // the guide gives these terms for no others
    Sentence const& cancels =
        uncorrelated ? sentences::second_order_cancels : sentences::second_order_cancels_uncorrelated;
    Sentence const& changes =
        uncorrelated ? sentences::second_order_changes : sentences::second_order_changes_uncorrelated;
    double const both = variance + second.variance;
    said.push_back(both <= 0 ? say(cancels)
                             : say(changes, {{"compared", compared(say, std::sqrt(both), asked, first)}}));
}

/// First order knows of no range; what lies beyond one scatters otherwise than it says.
constexpr double near_in_uncertainties = 2;

bool reaches_beyond(double value, double uncertainty, double low, double high) {
    return value - near_in_uncertainties * uncertainty < low || value + near_in_uncertainties * uncertainty > high;
}

void doubt_ranges(Speaker const& say, UncertainCall const& asked, Propagated const& first, Sentences& said) {
    for (unsigned number = 0; number < asked.equation().numbers; ++number) {
        double const u = asked.uncertainties[number];
        Argument const& argument = asked.function->arguments[asked.place_of(number)];
        if (u > 0 && reaches_beyond(asked.at.numbers[number], u, argument.low, argument.high)) {
            said.push_back(say(sentences::argument_reaches_beyond,
                               {{"argument", named_in_sentence(say, argument)},
                                {"allowed", range_in_words(say, argument.low, argument.high, argument.measure)}}));
            return;
        }
    }
    Result const& result = asked.function->result;
    if (reaches_beyond(first.value, first.uncertainty, result.low, result.high))
        said.push_back(say(sentences::result_reaches_beyond,
                           {{"allowed", range_in_words(say, result.low, result.high, result.measure)}}));
}

void doubt_draws(Speaker const& say, UncertainCall const& asked, Propagated const& first, Sentences& said) {
    constexpr std::size_t count = 10000;
    constexpr double matters = 0.1;
    Draws const drawn = draw(asked.equation(), asked.inputs(), asked.bounds(), count);
    if (2 * drawn.without > count) {
        said.push_back(say(sentences::draws_mostly_fail, {{"count", std::to_string(count)}}));
        return;
    }
    double const uncertainty = summarise(drawn.results, 0.95).uncertainty;
    // Where correlation cancels all, rounding leaves a trifle.
    double const trifle = 1e-6 * std::ranges::max(first.contributions);
    if (std::abs(uncertainty - first.uncertainty) > std::max(matters * first.uncertainty, trifle))
        said.push_back(say(sentences::draws_scatter_otherwise,
                           {{"count", std::to_string(count)}, {"compared", compared(say, uncertainty, asked, first)}}));
}

/// The row of a table that a name or a default comes from; null where it comes from none.
Named const* row_behind(Argument const& argument, Value const& given) {
    if (argument.table == nullptr)
        return nullptr;
    if (std::string const* const name = std::get_if<std::string>(&given))
        return find_name(*argument.table, *name).first;
    for (Named const& row : argument.table->rows)
        if (row.value == argument.fallback)
            return &row;
    return nullptr;
}

} // namespace

void add_assumed(Speaker const& say, Sentences& said, UncertainCall const& asked, Block const& values) {
    std::vector<Value> const given = inner_arguments(values);
    std::string list;
    for (std::size_t i = 0; i < asked.function->arguments.size(); ++i) {
        if (!asked.is_assumed(i))
            continue;
        Argument const& argument = asked.function->arguments[i];
        Named const* const row = row_behind(argument, value_at(given, i));
        bool const has_interval = row != nullptr && !is_absent(row->low);
        list =
            with_next(say, list,
                      say(has_interval ? sentences::known_value_with_interval : sentences::known_value,
                          {{"argument", named_in_sentence(say, argument)},
                           {"value", quantity(say, asked.at.numbers[asked.number_of[i]], argument.measure)},
                           {"range", has_interval ? range_in_words(say, row->low, row->high, argument.measure) : ""}}));
    }
    if (!list.empty())
        said.push_back(say(sentences::counted_as_known, {{"list", list}}));
}

Remarks remark_on_uncertainty(std::span<Value const> given, Language language) {
    Speaker const say(language);
    UncertainCall asked = read_uncertain_call(given);
    Propagated const first = propagate(asked);
    Measure const measure = asked.measure();
    Sentences said{
        say(sentences::result_and_uncertainty, {{"function", called(*asked.function)},
                                                {"value", quantity(say, first.value, measure)},
                                                {"uncertainty", quantity(say, first.uncertainty, measure)}})};
    bool const is_exact = std::ranges::all_of(asked.uncertainties, [](double u) { return u == 0; });
    if (is_exact) {
        said.push_back(say(sentences::all_exact));
    } else {
        doubt_second_order(say, asked, first, said);
        doubt_ranges(say, asked, first, said);
        doubt_draws(say, asked, first, said);
        if (said.size() > 1)
            said.push_back(say(sentences::monte_carlo_counts_it));
    }
    add_assumed(say, said, asked, std::get<Block>(given[uncertainty_argument::values]));
    return {{}, std::move(said)};
}

std::string why_no_uncertainty(std::span<Value const> given, Language language) {
    UncertainCall asked = read_uncertain_call(given);
    if (asked.failure.reason == Reason::none)
        propagate(asked);
    if (!asked.inside)
        return "";
    Block const& values = std::get<Block>(given[uncertainty_argument::values]);
    return Speaker(language)(
        sentences::no_result_inside,
        {{"function", called(*asked.function)}, {"why", explain(*asked.function, inner_arguments(values), language)}});
}

} // namespace hearthcell
