// Heat of water in a formula.

#include "extension/formulas/number.hpp"
#include "extension/formulas/recognition/forms.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace hearthcell::formulas {
namespace {

constexpr int most_pots = 4, most_attempts = 40;

/// With the number in place of one end of the rise: (95 - start), (end - 20).
void add_rises_from_number(Linear const& linear, std::vector<Rise>& rises) {
    if (linear.factor.is_zero())
        return;
    bool const is_start = linear.factor.terms().begin()->second < 0;
    Polynomial const factor = (is_start ? -1 : 1) * linear.factor;
    for (auto const& [product, own] : factor.terms()) {
        auto const found = linear.rest.terms().find(product);
        if (found == linear.rest.terms().end())
            continue;
        double const number = found->second / own;
        if (is_start ? boiled_at.holds(number) : begun_at.holds(-number))
            rises.push_back({factor, linear.rest - number * factor});
    }
}

/// The factor of a mass, which may be a number itself (5 litres): then the specific heat that stands in the formula.
std::optional<double> specific_of(Polynomial const& factor, Subject const& subject, bool mass_is_common) {
    auto const scale = scale_of_sum(factor);
    // Weighings are taken off each other; what is added up may be temperatures.
    auto const is_added = [](auto const& term) { return term.second > 0; };
    if (factor.terms().size() > 1 &&
        (std::ranges::all_of(factor.terms(), is_added) || std::ranges::none_of(factor.terms(), is_added)))
        return std::nullopt;
    if (!scale || !factor.constant() || mass_is_common)
        return scale;
    for (double const specific : subject.numbers)
        if (in_usual_unit(specific, specific_heat) && subject.has_number(*scale / specific))
            return specific;
    return std::nullopt;
}

bool is_known_pair(double specific, double latent) {
    return std::ranges::any_of(thousands, [&](double unit) {
        return unit <= 1e3 && unit >= 1e-3 && latent_over_specific.holds(latent * unit / specific);
    });
}

/// A sum of heats, pot by pot. A formula of many differences can be seen in very many ways.
std::optional<Heat> peeled(Polynomial const& of, Heat const& known, Subject const& subject, int pots, int& attempts) {
    if (of.is_zero() && known.specific > 0)
        return known;
    if (auto const latent = scale_of_sum(of); latent && known.specific > 0 && !of.constant()) {
        bool const is_lost = of.terms().size() > 1 || of.terms().begin()->second > 0;
        if (is_lost && is_known_pair(known.specific, *latent)) {
            Heat whole = known;
            whole.latent = *latent;
            whole.weighed = known.weighed && of.terms().size() > 1;
            return whole;
        }
    }
    if (pots == most_pots || ++attempts > most_attempts)
        return std::nullopt;
    bool const mass_is_common = !subject.common.empty() && common_of(subject).over.size() == 1;
    for (Rise const& rise : rises_in(of)) {
        auto const specific = specific_of(rise.factor, subject, mass_is_common);
        if (!specific || (known.specific > 0 && !is_near(*specific, known.specific)))
            continue;
        Heat heat = known;
        heat.specific = *specific;
        heat.mass_is_common = rise.factor.constant() && mass_is_common;
        heat.weighed = heat.weighed && rise.factor.terms().size() > 1;
        if (auto const found = peeled(rise.rest, heat, subject, pots + 1, attempts))
            return found;
    }
    return std::nullopt;
}

/// The specific heat that a factor stands for, in kJ/(kg K) or kcal/(kg K); nothing where it cannot be told.
std::optional<double> told(double factor, Subject const& subject) {
    if (auto const usual = in_usual_unit(factor, specific_heat))
        return usual;
    for (double const number : subject.numbers) // where a unit or a divisor hides it
        if (auto const usual = in_usual_unit(number, specific_heat))
            return usual;
    return in_usual_unit(factor, {1, 1});
}

} // namespace

std::string short_number(double number) {
    constexpr int digits = 6;
    return number_text(number, digits);
}

bool Subject::has_number(Window const& window) const {
    return std::ranges::any_of(numbers, [&](double number) {
        return window.holds(number) || is_near(number, window.low) || is_near(number, window.high);
    });
}

Common common_of(Subject const& subject) {
    Common result;
    for (auto const& [quantity, exponent] : subject.common) {
        if (exponent == 1)
            result.over.push_back(quantity);
        else if (exponent == -1)
            result.under.push_back(quantity);
        else
            result.is_plain = false;
    }
    return result;
}

std::optional<double> in_usual_unit(double number, Window const& window) {
    for (double const unit : thousands)
        if (Window const wide{window.low * (1 - 1e-9), window.high * (1 + 1e-9)}; wide.holds(number / unit))
            return number / unit;
    return std::nullopt;
}

std::vector<Rise> rises_in(Polynomial const& of) {
    std::vector<Rise> rises;
    std::vector<std::pair<std::size_t, Linear>> all;
    for (std::size_t const quantity : quantities_in(of))
        if (auto linear = linear_in(quantity, of))
            all.emplace_back(quantity, std::move(*linear));
    for (std::size_t one = 0; one < all.size(); ++one)
        for (std::size_t other = one + 1; other < all.size(); ++other)
            if (is_equal(all[one].second.factor, -1 * all[other].second.factor)) {
                Polynomial const& factor = all[one].second.factor;
                double const sign = factor.terms().begin()->second < 0 ? -1 : 1;
                Polynomial const difference =
                    Polynomial(1, {{all[one].first, 1}}) - Polynomial(1, {{all[other].first, 1}});
                rises.push_back({sign * factor, of - factor * difference});
            }
    for (auto const& [quantity, linear] : all)
        add_rises_from_number(linear, rises);
    return rises;
}

std::optional<double> scale_of_rise(Polynomial const& sum) {
    for (Rise const& rise : rises_in(sum))
        if (rise.rest.is_zero())
            if (auto const factor = rise.factor.constant())
                return factor;
    return std::nullopt;
}

std::optional<Heat> heat_in(Subject const& subject) {
    int attempts = 0;
    auto heat = peeled(subject.rest, {}, subject, 0, attempts);
    if (!heat)
        return std::nullopt;
    auto const specific = told(heat->specific, subject);
    if (!specific)
        return std::nullopt;
    bool const calories = is_near(*specific, 1);
    if (heat->latent == 0) {
        if (calories) // a mass times a rise alone may be anything
            return std::nullopt;
        heat->form = short_number(*specific) + " m ΔT";
        if (is_near(*specific, 4.186))
            heat->methods = {wbt_4, wbt_3};
        else if (is_near(*specific, 4.18))
            heat->methods = {iso_19867};
        return heat;
    }
    double latent = heat->latent / heat->specific * *specific;
    for (double const unit : {1e3, 1e-3})
        if (!latent_over_specific.holds(latent / *specific))
            latent = latent_over_specific.holds(latent * unit / *specific) ? latent * unit : latent;
    heat->form = (calories ? "" : short_number(*specific) + " ") + "m ΔT + " + short_number(latent) + " e";
    if (is_near(*specific, 4.186) && is_near(latent, 2260))
        heat->methods = {wbt_4, wbt_3};
    return heat;
}

} // namespace hearthcell::formulas
