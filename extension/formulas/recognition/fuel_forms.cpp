// Formulas of the energy of wood and of equivalent dry wood, and of what is made of them.

#include "extension/formulas/recognition/forms.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell::formulas {
namespace {

constexpr double seconds = 60; // of a minute

/// What stands around the fuel in its product.
struct Around {
    std::size_t factors = 0;             // besides the mass
    double scale = 1;                    // of the mass
    std::vector<std::size_t> under = {}; // but a calorific value that all is divided by
};

/// Whether one of the factors may be a calorific value: what is not typed may be.
bool may_be_value(std::vector<std::size_t> const& factors, Subject const& subject) {
    return std::ranges::any_of(factors, [&](std::size_t factor) {
        Quantity const& quantity = subject.quantities[factor];
        return quantity.cell && (!quantity.typed || in_usual_unit(*quantity.typed, dry_value));
    });
}

std::optional<PublishedForm> of_share(Fuel const& fuel, Around const& around, Subject const& subject) {
    auto const whole = [&](char const* function, std::string const& form) {
        return PublishedForm{function, fuel.methods, form};
    };
    if (around.factors == 1 && !may_be_value(common_of(subject).over, subject))
        return std::nullopt;
    bool const valued_by_number = !fuel.charred && in_usual_unit(around.scale, dry_value).has_value();
    if (around.under.empty() && around.factors == 0 && in_usual_unit(around.scale, {1, 1}))
        return whole("EQUIVALENTDRYFUEL", fuel.form);
    if (around.under.empty() && !fuel.charred &&
        ((around.factors == 0 && valued_by_number) || (around.factors == 1 && in_usual_unit(around.scale, {1, 1}))))
        return whole("WOODENERGY", fuel.form + " H");
    bool const per_second = subject.has_number(seconds) && (in_usual_unit(around.scale * seconds, {1, 1}) ||
                                                            in_usual_unit(around.scale * seconds, dry_value));
    if (around.under.size() == 1 && per_second && around.factors <= 1 && !subject.has_number(standard_rise) &&
        (around.factors == 1 || !in_usual_unit(around.scale * seconds, {1, 1})))
        return whole("FIREPOWER", "(" + fuel.form + ") H / t");
    if (around.under.size() == 2 && around.factors == 0)
        for (std::size_t const quantity : around.under)
            if (auto const rise = scale_of_rise(subject.quantities[quantity].sum);
                rise && in_usual_unit(around.scale / *rise, {standard_rise, standard_rise}))
                return whole("SPECIFICFUEL", "(" + fuel.form + ") / water × 75 / ΔT");
    return std::nullopt;
}

std::optional<PublishedForm> of_value(Fuel const& fuel, Around const& around) {
    bool const is_without_mass = fuel.mass.constant() && around.factors == 0;
    if (!around.under.empty() || around.factors > 1)
        return std::nullopt;
    if (is_without_mass)
        return fuel.rule == Fuel::Rule::net
                   ? std::optional(PublishedForm{"NETASFIRED", fuel.methods, fuel.form.substr(2)})
                   : std::nullopt;
    if (!fuel.mass.constant() && around.factors == 1)
        return std::nullopt;
    return PublishedForm{"WOODENERGY", fuel.methods, fuel.form};
}

} // namespace

std::optional<PublishedForm> as_fuel(Subject const& subject) {
    Common const common = common_of(subject);
    if (!common.is_plain)
        return std::nullopt;
    std::optional<Fuel> fuel;
    Around around{common.over.size(), 1, common.under};
    for (std::size_t const value : common.under) {
        if (fuel = fuel_in(subject.rest, value); fuel && fuel->rule == Fuel::Rule::boiled) {
            std::erase(around.under, value);
            break;
        }
        fuel.reset();
    }
    bool const is_divided_by_value = fuel.has_value();
    if (!fuel)
        fuel = fuel_in(subject.rest, std::nullopt);
    if (!fuel)
        return std::nullopt;
    bool const mass_is_common = fuel->mass.constant().has_value();
    if (is_divided_by_value && around.under.empty() && around.factors == (mass_is_common ? 1U : 0U))
        return PublishedForm{"EQUIVALENTDRYFUEL", fuel->methods, "(" + fuel->form + ") / H"};
    if (fuel->rule == Fuel::Rule::share) {
        around.factors -= mass_is_common && around.factors > 0 ? 1 : 0;
        around.scale = *scale_of_sum(fuel->mass);
        bool const has_mass = !mass_is_common || !common.over.empty();
        if (auto const form = has_mass ? of_share(*fuel, around, subject) : std::nullopt)
            return form;
        return PublishedForm{"EQUIVALENTDRYFUEL", fuel->methods, fuel->form, true};
    }
    if (auto const form = is_divided_by_value ? std::nullopt : of_value(*fuel, around))
        return form;
    return PublishedForm{"WOODENERGY", fuel->methods, fuel->form, true};
}

} // namespace hearthcell::formulas
