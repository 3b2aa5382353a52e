// Formulas of the heat that water took up, and of efficiencies made of it.

#include "extension/formulas/recognition/forms.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell::formulas {
namespace {

/// The fuel that a sum stands for, whose unit is lost.
std::optional<Fuel> fuel_of_sum(Polynomial const& sum) {
    for (auto const& [product, factor] : sum.terms())
        if (auto const fuel = fuel_in(1 / factor * sum, std::nullopt))
            return fuel;
    return std::nullopt;
}

std::vector<std::string_view> in_both(std::vector<std::string_view> const& one,
                                      std::vector<std::string_view> const& other) {
    std::vector<std::string_view> both;
    std::ranges::copy_if(one, std::back_inserter(both),
                         [&](std::string_view method) { return std::ranges::find(other, method) != other.end(); });
    return both;
}

std::optional<PublishedForm> as_efficiency(Heat const& heat, Common const& common, Subject const& subject) {
    std::optional<Fuel> fuel;
    std::size_t plain = 0;
    for (std::size_t const quantity : common.under)
        if (Polynomial const& sum = subject.quantities[quantity].sum; !sum.is_zero() && !fuel)
            fuel = fuel_of_sum(sum);
        else
            ++plain;
    if (!fuel || common.over.size() != (heat.mass_is_common ? 1U : 0U))
        return std::nullopt;
    bool const mass_apart = fuel->mass.constant().has_value();
    std::size_t const least = mass_apart ? 1 : 0, most = least + (fuel->rule == Fuel::Rule::share ? 1 : 0);
    if (plain < least || plain > most)
        return std::nullopt;
    bool const weighed = heat.weighed && heat.latent != 0 && fuel->mass.terms().size() > 1;
    return PublishedForm{weighed ? "BENCHEFFICIENCY" : "EFFICIENCY", in_both(heat.methods, fuel->methods),
                         "(" + heat.form + ") / (" + fuel->form + ")"};
}

/// A factor times the mass that went off.
std::optional<PublishedForm> as_evaporation(Subject const& subject, Common const& common) {
    auto const scale = scale_of_sum(subject.rest);
    if (!scale || !common.is_plain || !common.under.empty())
        return std::nullopt;
    bool const difference = subject.rest.terms().size() == 2;
    bool const one = subject.rest.constant() && *subject.rest.constant() > 0 && common.over.size() == 1;
    if (!(difference && common.over.empty()) && !one)
        return std::nullopt;
    // Alone, 2250 or 2.26 times something may be anything; times a difference of weighings, or a longer number, it is
    // not.
    bool const is_of_grams = difference && *scale < 1000;
    Window const sure = difference && !is_of_grams ? latent_heat : Window{2254, 2260};
    double const latent = is_of_grams ? *scale * 1000 : *scale;
    if (!sure.holds(latent) && !is_near(latent, sure.high))
        return std::nullopt;
    PublishedForm form{"EVAPORATIONHEAT", {}, short_number(latent) + " e"};
    if (is_near(latent, 2260))
        form.methods = {wbt_4, wbt_3};
    return form;
}

} // namespace

std::optional<PublishedForm> as_heat(Subject const& subject) {
    Common const common = common_of(subject);
    if (!common.is_plain)
        return std::nullopt;
    auto const heat = heat_in(subject);
    if (!heat)
        return as_evaporation(subject, common);
    if (auto const efficiency = as_efficiency(*heat, common, subject))
        return efficiency;
    PublishedForm form{heat->latent == 0 ? "WATERHEAT" : "USEFULHEAT", heat->methods, heat->form};
    bool const is_alone = common.over.size() == (heat->mass_is_common ? 1U : 0U);
    bool const in_unit = in_usual_unit(heat->specific, specific_heat) || in_usual_unit(heat->specific, {1, 1});
    if (is_alone && common.under.empty() && in_unit)
        return form;
    if (is_alone && common.under.size() == 1 && subject.has_number(60) &&
        in_usual_unit(heat->specific * 60, specific_heat))
        return PublishedForm{"COOKINGPOWER", heat->methods, "(" + heat->form + ") / t"};
    form.is_part = true;
    // Of a product with more factors only the pair of constants is telling.
    return heat->latent == 0 ? std::nullopt : std::optional(form);
}

} // namespace hearthcell::formulas
