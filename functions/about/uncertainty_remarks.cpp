#include "functions/about/uncertainty_remarks.hpp"

#include "functions/about/uncertain_call.hpp"
#include "functions/catalogue/names.hpp"
#include "functions/explain/explain.hpp"
#include "functions/explain/phrases.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell {
namespace {

std::string percent(double share) {
    return in_words(std::round(share * 1000) / 10) + " %";
}

/// A figure beside that of first order, in words.
std::string compared(double uncertainty, UncertainCall const& asked, Propagated const& first) {
    std::string const text = in_words(asked.coverage * uncertainty, asked.function->result.measure);
    if (!(first.uncertainty > 0)) // of nothing there is no share
        return text;
    return text + ", " + percent(std::abs(uncertainty / first.uncertainty - 1)) +
           (uncertainty > first.uncertainty ? " more" : " less");
}

std::string on_second_order(UncertainCall const& asked, Propagated const& first) {
    SecondOrder const second = second_order(asked.equation(), asked.inputs(), first);
    std::string const name = "STOVE." + std::string(asked.function->name);
    if (second.failure.reason != Reason::none)
        return "But one standard uncertainty away from this " +
               std::string(asked.function->arguments[asked.place_of(second.number)].name) + " " + name +
               " cannot be computed, so that first order may not be enough.";
    double const variance = first.uncertainty * first.uncertainty;
    if (std::abs(second.variance) <= second_order_matters * variance)
        return "";
    // The guide gives these terms for values that are not correlated.
    std::string const start =
        asked.correlations.empty()
            ? "But first order is not enough: the second-order terms (JCGM 100, 5.1.2)"
            : "But first order may not be enough: the second-order terms (JCGM 100, 5.1.2), counted without the "
              "correlations,";
    double const both = variance + second.variance;
    if (both <= 0)
        return start + " cancel it.";
    return start + " make it " + compared(std::sqrt(both), asked, first) + ".";
}

/// First order knows of no range; what lies beyond one scatters otherwise than it says.
constexpr double near_in_uncertainties = 2;

bool reaches_beyond(double value, double uncertainty, double low, double high) {
    return value - near_in_uncertainties * uncertainty < low || value + near_in_uncertainties * uncertainty > high;
}

std::string on_ranges(UncertainCall const& asked, Propagated const& first) {
    for (unsigned number = 0; number < asked.equation().numbers; ++number) {
        double const u = asked.uncertainties[number];
        Argument const& argument = asked.function->arguments[asked.place_of(number)];
        if (u > 0 && reaches_beyond(asked.at.numbers[number], u, argument.low, argument.high))
            return "But " + std::string(argument.name) + " two standard uncertainties away lies outside " +
                   in_words(argument.low) + " to " + in_words(argument.high, argument.measure) +
                   ", of which first order knows nothing.";
    }
    Result const& result = asked.function->result;
    if (reaches_beyond(first.value, first.uncertainty, result.low, result.high))
        return "But the result two standard uncertainties away lies outside " + in_words(result.low) + " to " +
               in_words(result.high, result.measure) + ", of which first order knows nothing.";
    return "";
}

std::string on_draws(UncertainCall const& asked, Propagated const& first) {
    constexpr std::size_t count = 10000;
    constexpr double matters = 0.1;
    Draws const drawn = draw(asked.equation(), asked.inputs(), asked.bounds(), count);
    std::string const start = "But of " + std::to_string(count) + " draws (JCGM 101) ";
    if (2 * drawn.without > count)
        return start + "more than half give no result.";
    double const uncertainty = summarise(drawn.results, 0.95).uncertainty;
    // Where correlation cancels all, rounding leaves a trifle.
    double const trifle = 1e-6 * std::ranges::max(first.contributions);
    if (std::abs(uncertainty - first.uncertainty) <= std::max(matters * first.uncertainty, trifle))
        return "";
    return start + "the results have " + compared(uncertainty, asked, first) + ".";
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

void add_assumed(Sentences& sentences, UncertainCall const& asked, Block const& values) {
    std::vector<Value> const given = inner_arguments(values);
    std::string list;
    for (std::size_t i = 0; i < asked.function->arguments.size(); ++i) {
        if (!asked.is_assumed(i))
            continue;
        Argument const& argument = asked.function->arguments[i];
        list += (list.empty() ? "" : "; ") + std::string(argument.name) + " " +
                in_words(asked.at.numbers[asked.number_of[i]], argument.measure);
        Named const* const row = row_behind(argument, value_at(given, i));
        if (row != nullptr && !is_absent(row->low))
            list += " (its source gives " + in_words(row->low) + " to " + in_words(row->high, argument.measure) + ")";
    }
    if (!list.empty())
        sentences.push_back("Not given as a number, and so counted as exactly known: " + list + ".");
}

Sentences remark_on_uncertainty(std::span<Value const> given) {
    UncertainCall asked = read_uncertain_call(given);
    Propagated const first = propagate(asked);
    Sentences sentences{"STOVE." + std::string(asked.function->name) + " gives " +
                        in_words(first.value, asked.function->result.measure) +
                        " with these values; the standard uncertainty is " +
                        in_words(first.uncertainty, asked.function->result.measure) + "."};
    bool const is_exact = std::ranges::all_of(asked.uncertainties, [](double u) { return u == 0; });
    if (is_exact) {
        sentences.emplace_back("But every standard uncertainty is 0 or empty, so that all counts as exact.");
    } else {
        for (std::string const& doubt :
             {on_second_order(asked, first), on_ranges(asked, first), on_draws(asked, first)})
            if (!doubt.empty())
                sentences.push_back(doubt);
        if (sentences.size() > 1)
            sentences.emplace_back("STOVE.MONTECARLO counts all that in.");
    }
    add_assumed(sentences, asked, std::get<Block>(given[uncertainty_argument::values]));
    return sentences;
}

std::string why_no_uncertainty(std::span<Value const> given) {
    UncertainCall asked = read_uncertain_call(given);
    if (asked.failure.reason == Reason::none)
        propagate(asked);
    if (!asked.inside)
        return "";
    return "STOVE." + std::string(asked.function->name) + " gives no result with these values: " +
           explain(*asked.function, inner_arguments(std::get<Block>(given[uncertainty_argument::values])));
}

} // namespace hearthcell
