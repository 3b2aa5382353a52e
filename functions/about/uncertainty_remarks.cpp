#include "functions/explain/explain.hpp"
#include "functions/about/uncertainty_remarks.hpp"
#include "functions/explain/phrases.hpp"
#include "functions/about/uncertain_call.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell::remarks {
namespace {

/// The arguments in the form that the kernel is promised; empty where they do not get that far. Uncertainty and
/// budget take the same.
std::vector<Value> prepared(std::span<Value const> arguments) {
    std::vector<Value> values(arguments.begin(), arguments.end());
    Failure const why = prepare_words(*find_function("UNCERTAINTY"), values);
    return why.reason == Reason::none ? values : std::vector<Value>();
}

std::string percent(double share) {
    return in_words(std::round(share * 1000) / 10) + " %";
}

std::string on_second_order(Doubt const& doubt, Propagated const& first) {
    SecondOrder const second = second_order(doubt.equation(), doubt.inputs(), first);
    std::string const name = "STOVE." + std::string(doubt.function->name);
    if (second.failure.reason != Reason::none)
        return "But one standard uncertainty away from this " +
               std::string(doubt.function->arguments[doubt.place_of(second.number)].name) + " " + name +
               " cannot be computed, so that first order may not be enough.";
    double const variance = first.uncertainty * first.uncertainty;
    if (std::abs(second.variance) <= second_order_matters * variance)
        return "";
    // The guide gives these terms for values that are not correlated.
    std::string const start =
        doubt.correlations.empty()
            ? "But first order is not enough: the second-order terms (JCGM 100, 5.1.2)"
            : "But first order may not be enough: the second-order terms (JCGM 100, 5.1.2), counted without the "
              "correlations,";
    double const both = variance + second.variance;
    if (both <= 0)
        return start + " cancel it; use a Monte Carlo method (JCGM 101).";
    double const uncertainty = std::sqrt(both);
    std::string text = start + " make it " + in_words(doubt.coverage * uncertainty, doubt.function->result.measure);
    if (first.uncertainty > 0)
        text += ", " + percent(std::abs(uncertainty / first.uncertainty - 1)) +
                (uncertainty > first.uncertainty ? " more" : " less");
    return text + ".";
}

} // namespace

std::vector<std::string> on_uncertainty(std::span<Value const> arguments) {
    Doubt doubt = read_doubt(prepared(arguments)); // the call has gone well, so that they do get that far
    Propagated const first = propagate(doubt);
    std::vector<std::string> sentences{"STOVE." + std::string(doubt.function->name) + " gives " +
                                       in_words(first.value, doubt.function->result.measure) +
                                       " with these values; the standard uncertainty is " +
                                       in_words(first.uncertainty, doubt.function->result.measure) + "."};
    bool const is_exact = std::ranges::all_of(doubt.uncertainties, [](double u) { return u == 0; });
    if (is_exact)
        sentences.emplace_back("But every standard uncertainty is 0 or empty, so that all counts as exact.");
    if (std::string const sentence = on_second_order(doubt, first); !sentence.empty())
        sentences.push_back(sentence);
    return sentences;
}

std::string why_no_uncertainty(std::span<Value const> arguments) {
    std::vector<Value> const values = prepared(arguments);
    if (values.empty())
        return "";
    Doubt doubt = read_doubt(values);
    if (doubt.failure.reason == Reason::none)
        propagate(doubt);
    if (!doubt.inside)
        return "";
    return "STOVE." + std::string(doubt.function->name) + " gives no result with these values: " +
           explain(*doubt.function, inner_arguments(std::get<Block>(values[doubt_argument::values])));
}

} // namespace hearthcell::remarks
