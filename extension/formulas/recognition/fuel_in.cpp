// Fuel, less its moisture and its char, in a formula.

#include "extension/formulas/recognition/forms.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell::formulas {
namespace {

constexpr double share_of_moisture = 1.12, share_of_char = 1.5;
constexpr Window heat_of_moisture{2440, 2445}; // at 25 °C, constant pressure, kJ/kg
constexpr Window heat_of_moisture_of_iso{2442.5, 2443.5};
constexpr std::array moistures{1.0, 0.01}; // a fraction, per cent

/// of = dry - moisture × wet
struct Moist {
    Polynomial dry, wet;
};
std::vector<Moist> seen_as_moist(Polynomial const& of) {
    std::vector<Moist> all;
    for (std::size_t const moisture : quantities_in(of))
        if (auto const linear = linear_in(moisture, of); linear && !linear->rest.is_zero())
            for (double const unit : moistures)
                all.push_back({linear->rest, -1 / unit * linear->factor});
    return all;
}

/// Whether one is a sum whose terms are lost: a single one is taken off, of a difference nobody can tell.
bool is_taken_off(Polynomial const& sum) {
    return sum.terms().size() > 1 || sum.terms().begin()->second < 0;
}

/// f (1 - 1.12 M) - 1.5 ΔC
std::optional<Fuel> by_share(Moist const& moist) {
    Polynomial const mass = 1 / share_of_moisture * moist.wet;
    auto const scale = scale_of_sum(mass);
    if (!scale || mass.terms().begin()->second < 0)
        return std::nullopt;
    Polynomial const left = moist.dry - mass;
    Fuel fuel{Fuel::Rule::share, mass, !left.is_zero(), {wbt_3}, "f (1 - 1.12 M)"};
    if (!fuel.charred)
        return fuel;
    auto const off = scale_of_sum(left);
    if (!off || left.constant() || mass.constant() || !is_taken_off(left) ||
        std::ranges::none_of(thousands, [&](double unit) { return is_near(*off, share_of_char * *scale * unit); }))
        return std::nullopt;
    fuel.form += " - 1.5 ΔC";
    return fuel;
}

/// Whether dry = mass × a certain calorific value, each in its own unit.
bool is_times(Polynomial const& dry, Polynomial const& mass, std::size_t value) {
    auto const linear = linear_in(value, dry);
    return linear && linear->rest.is_zero() &&
           std::ranges::any_of(thousands, [&](double unit) { return is_equal(linear->factor, unit * mass); });
}

/// Or any calorific value, which is a quantity or a number that can be one.
bool is_times_value(Polynomial const& dry, Polynomial const& mass) {
    std::vector<std::size_t> const values = quantities_in(dry);
    if (std::ranges::any_of(values, [&](std::size_t value) { return is_times(dry, mass, value); }))
        return true;
    if (mass.is_zero() || dry.is_zero())
        return false;
    double const number = dry.terms().begin()->second / mass.terms().begin()->second;
    return is_equal(dry, number * mass) && in_usual_unit(number, dry_value);
}

/// f (H (1 - M) - 2443 M)
std::optional<Fuel> by_net_value(Moist const& moist) {
    Polynomial const taken = moist.wet - moist.dry;
    auto const scale = scale_of_sum(taken);
    if (!scale || taken.terms().begin()->second < 0)
        return std::nullopt;
    auto const heat = in_usual_unit(*scale, heat_of_moisture);
    Polynomial const mass = 1 / *scale * taken;
    if (!heat || !is_times_value(moist.dry, mass))
        return std::nullopt;
    Fuel fuel{Fuel::Rule::net, mass, false, {}, "f (H (1 - M) - " + short_number(*heat) + " M)"};
    if (heat_of_moisture_of_iso.holds(*heat))
        fuel.methods = {properties, iso_19867};
    return fuel;
}

/// f (H (1 - M) - M (4.186 (Tb - Ta) + 2257)) - ΔC Hc
std::optional<Fuel> by_boiling(Moist const& moist, std::optional<std::size_t> known_value) {
    Polynomial const taken = moist.wet - moist.dry;
    for (Rise const& rise : rises_in(taken)) {
        auto const scale = scale_of_sum(rise.factor);
        auto const specific = scale ? in_usual_unit(*scale, specific_heat) : std::nullopt;
        auto const& first = *rise.factor.terms().begin();
        auto const pair = rise.rest.terms().find(first.first);
        if (!specific || first.second < 0 || pair == rise.rest.terms().end())
            continue;
        Polynomial const mass = 1 / *scale * rise.factor;
        for (double const heat : {2257.0, 2260.0}) {
            Polynomial const charred = rise.rest - heat / *specific * rise.factor;
            Polynomial const dry = moist.dry + charred;
            bool const is_of_known = known_value && is_times(dry, mass, *known_value);
            bool const is_well = charred.is_zero() ? is_of_known || is_times_value(dry, mass)
                                                   : is_of_known && charred.terms().size() <= 2;
            if (!is_well)
                continue;
            Fuel fuel{Fuel::Rule::boiled,
                      mass,
                      !charred.is_zero(),
                      {},
                      "f (H (1 - M) - M (" + short_number(*specific) + " (Tb - Ta) + " + short_number(heat) + "))"};
            if (is_near(*specific, 4.186) && heat == 2257.0)
                fuel.methods = {wbt_4};
            fuel.form += fuel.charred ? " - ΔC Hc" : "";
            return fuel;
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<Fuel> fuel_in(Polynomial const& of, std::optional<std::size_t> known_value) {
    for (Moist const& moist : seen_as_moist(of)) {
        if (auto const fuel = by_share(moist))
            return fuel;
        if (auto const fuel = by_net_value(moist))
            return fuel;
        if (auto const fuel = by_boiling(moist, known_value))
            return fuel;
    }
    return std::nullopt;
}

} // namespace hearthcell::formulas
