// Formulas of the site, of a fuel's calorific value, and of times made comparable.

#include "extension/formulas/recognition/forms.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell::formulas {
namespace {

/// 100 - h / 300, in metres or feet, °C or °F.
struct BoilingRule {
    Window at_sea_level, per_height;
    char const* form;
};
constexpr double foot = 0.3048, fahrenheit = 1.8;
constexpr std::array boiling_rules{
    BoilingRule{{99.9, 100.1}, {0.0032, 0.0035}, "100 - h / 300"},
    // Not 1 K in 1000 ft: that is what grams make of kilograms.
    BoilingRule{{99.9, 100.1}, {foot / 303, foot / 290}, "100 - h / 984 (feet)"},
    BoilingRule{{211.9, 212.1}, {fahrenheit * 0.0032 * foot, 0.00201}, "212 - h / 550 (feet, °F)"}};

std::optional<PublishedForm> as_boiling_point(Subject const& subject) {
    if (!subject.common.empty() || subject.rest.terms().size() != 2)
        return std::nullopt;
    auto const quantities = quantities_in(subject.rest);
    auto const linear = quantities.size() == 1 ? linear_in(quantities[0], subject.rest) : std::nullopt;
    auto const level = linear ? linear->rest.constant() : std::nullopt;
    auto const factor = linear ? linear->factor.constant() : std::nullopt;
    if (!level || !factor)
        return std::nullopt;
    for (BoilingRule const& rule : boiling_rules)
        if (rule.at_sea_level.holds(*level) && rule.per_height.holds(-*factor)) {
            PublishedForm form{"BOILINGPOINT", {}, rule.form};
            if (is_near(*level, 100) && (is_near(-*factor, 1.0 / 300) || is_near(-*factor, foot / 300)))
                form.methods = {wbt_4, wbt_3};
            return form;
        }
    return std::nullopt;
}

/// 1013.25 (1 - 0.0065 h / 288.15)^5.256
std::optional<PublishedForm> as_pressure(Subject const& subject) {
    constexpr Window exponent{5.25, 5.26}, at_sea_level{1013, 1013.5}, of_mercury{759.9, 760.1};
    constexpr double lapse = 0.0065 / 288.15;
    Common const common = common_of(subject);
    auto const level = subject.rest.constant();
    if (!level || !common.under.empty() || common.over.size() != 1 ||
        !(in_usual_unit(*level, at_sea_level) || in_usual_unit(*level * 10, at_sea_level) ||
          in_usual_unit(*level / 100, at_sea_level) || of_mercury.holds(*level)))
        return std::nullopt;
    Quantity const& raised = subject.quantities[common.over[0]];
    auto const heights = quantities_in(raised.sum);
    auto const linear = heights.size() == 1 ? linear_in(heights[0], raised.sum) : std::nullopt;
    double const fall = linear ? -linear->factor.constant().value_or(0) : 0;
    if (!exponent.holds(raised.power) || !linear || linear->rest.constant() != 1.0)
        return std::nullopt;
    bool const metres = std::abs(fall / lapse - 1) < 2e-3, feet = std::abs(fall / lapse / foot - 1) < 2e-3;
    if (!metres && !feet)
        return std::nullopt;
    return PublishedForm{"AIRPRESSURE", {}, "p (1 - 0.0065 h / 288.15)^5.256"};
}

/// gross - 21.22 H - 0.08 (O + N), in its units.
std::optional<PublishedForm> as_net_of_gross(Subject const& subject) {
    constexpr std::array hydrogen{Window{21.21, 21.23}, Window{212.1, 212.3}, Window{0.2121, 0.2123}};
    constexpr std::array others{0.08, 0.8, 0.0008};
    if (!subject.common.empty() || subject.rest.terms().size() < 2 || subject.rest.terms().size() > 4)
        return std::nullopt;
    int gross = 0, of_hydrogen = 0;
    for (auto const& [product, its_factor] : subject.rest.terms()) {
        double const factor = its_factor; // which a lambda may hold
        auto const in = [&](Window const& window) { return window.holds(-factor); };
        bool const is_single = product.size() == 1 && product[0].second == 1;
        if (is_single && is_near(factor, 1))
            ++gross;
        else if (is_single && std::ranges::any_of(hydrogen, in))
            ++of_hydrogen;
        else if (!is_single || std::ranges::none_of(others, [&](double one) { return is_near(-factor, one); }))
            return std::nullopt;
    }
    if (gross != 1 || of_hydrogen != 1)
        return std::nullopt;
    return PublishedForm{"NETFROMGROSS", {}, "gross - 21.22 H"};
}

/// Whether a quantity may be a time: one that is typed, or a difference of such, in whatever unit.
bool may_be_time(Quantity const& quantity, Surroundings const& surroundings) {
    if (!quantity.cell)
        return false;
    std::string_view const formula = surroundings.formula(*quantity.cell);
    return formula.empty() || [&] {
        Expression const behind =
            expression_of(formula, *quantity.cell, surroundings, 0, [](Quantity const&) { return false; });
        return scale_of_sum(behind.polynomial).has_value() && !behind.polynomial.constant();
    }();
}

} // namespace

std::optional<PublishedForm> as_normal_time(Subject const& subject, Surroundings const& surroundings) {
    Common const common = common_of(subject);
    auto const scale = scale_of_sum(subject.rest);
    if (!common.is_plain || common.under.size() != 1 || !scale)
        return std::nullopt;
    auto const rise = scale_of_rise(subject.quantities[common.under[0]].sum);
    if (!rise || !is_near(*scale / std::abs(*rise), standard_rise))
        return std::nullopt;
    bool const is_difference = common.over.empty() && subject.rest.terms().size() == 2;
    bool const is_time = common.over.size() == 1 && subject.rest.constant() &&
                         may_be_time(subject.quantities[common.over[0]], surroundings);
    if (!is_difference && !is_time)
        return std::nullopt;
    return PublishedForm{"NORMALBOILTIME", {wbt_4, wbt_3}, "t × 75 / ΔT"};
}

std::optional<PublishedForm> as_site(Subject const& subject) {
    for (auto const form : {as_boiling_point, as_pressure, as_net_of_gross})
        if (auto const found = form(subject))
            return found;
    return std::nullopt;
}

} // namespace hearthcell::formulas
