#include "functions/about/uncertainty_remarks.hpp"

#include "functions/about/uncertain_call.hpp"
#include "functions/explain/explain.hpp"
#include "functions/explain/phrases.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell {
namespace {

std::string percent(double share) {
    return in_words(std::round(share * 1000) / 10) + " %";
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
        return start + " cancel it; use a Monte Carlo method (JCGM 101).";
    double const uncertainty = std::sqrt(both);
    std::string text = start + " make it " + in_words(asked.coverage * uncertainty, asked.function->result.measure);
    if (first.uncertainty > 0)
        text += ", " + percent(std::abs(uncertainty / first.uncertainty - 1)) +
                (uncertainty > first.uncertainty ? " more" : " less");
    return text + ".";
}

} // namespace

Sentences remark_on_uncertainty(std::span<Value const> given) {
    UncertainCall asked = read_uncertain_call(given);
    Propagated const first = propagate(asked);
    Sentences sentences{"STOVE." + std::string(asked.function->name) + " gives " +
                        in_words(first.value, asked.function->result.measure) +
                        " with these values; the standard uncertainty is " +
                        in_words(first.uncertainty, asked.function->result.measure) + "."};
    bool const is_exact = std::ranges::all_of(asked.uncertainties, [](double u) { return u == 0; });
    if (is_exact)
        sentences.emplace_back("But every standard uncertainty is 0 or empty, so that all counts as exact.");
    if (std::string const sentence = on_second_order(asked, first); !sentence.empty())
        sentences.push_back(sentence);
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
