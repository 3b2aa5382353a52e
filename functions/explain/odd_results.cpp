// What is worked out from readings, and does not go together: boil times, powers, emissions, scatter.

#include "functions/catalogue/performance_tier.hpp"
#include "functions/explain/odd_combinations.hpp"
#include "functions/kernels/gas.hpp"
#include "functions/words/sentences.hpp"

namespace hearthcell {
namespace {

bool boil_time_is_odd(Arguments const& n) {
    bool const is_boil = n.function_name() == "NORMALBOILTIME" || n.function_name() == "MODELBOILTIME";
    return is_boil && (n["minutes"] > 120 || n["minutes"] < 3);
}

bool low_power_is_higher(Arguments const& n) {
    return n["high power"] < n["low power"];
}

bool powers_are_all_but_equal(Arguments const& n) {
    double const ratio = n["high power"] / n["low power"];
    return ratio >= 1 && ratio < 1.1;
}

bool corrected_twice(Arguments const& n) {
    return n.function_name() == "SPECIFICFUEL" && n.chooses("method", "WBT 4.2.3") && n["standard rise"] > 0 &&
           n["end"] < n["boiling point"] - 1.5;
}

bool far_from_standard(Arguments const& n) {
    if (n.function_name() != "NORMALBOILTIME")
        return false;
    double const rise = n["end"] - n["start"];
    double const mass_ratio = n["standard mass"] / n["water mass"];
    return std::abs(rise - first_given(n["standard rise"], 75)) > 20 || mass_ratio < 0.7 || mass_ratio > 1.5;
}

// The loss of an open pot grows steeply above 80 °C; common practice, no source.
bool model_is_carried_far(Arguments const& n) {
    if (n.function_name() != "MODELBOILTIME")
        return false;
    double const end = std::abs(first_given(n["standard end"], 100) - n["end"]);
    double const start = std::abs(first_given(n["standard start"], 25) - n["start"]);
    double const mass_ratio = first_given(n["standard mass"], n["water mass"]) / n["water mass"];
    return end > 5 || start > 15 || std::abs(mass_ratio - 1) > 0.2;
}

// Well run tests scatter by a few per cent.
bool scatter_is_in_per_cent(Arguments const& n) {
    return n["coefficient of variation"] > 0.5 || n["smallest change"] == 1.0;
}

bool pressure_of_gas_is_left_out(Arguments const& n) {
    return n.function_name() == "GASCONCENTRATION" && n.leaves_out("air pressure");
}

bool carbon_dioxide_is_in_per_cent(Arguments const& n) {
    constexpr double carbon_dioxide = kernels::molecule::carbon_dioxide;
    return std::abs(n["gas"] - carbon_dioxide) < 0.01 && n["parts per million"] < 100;
}

bool filter_gain_is_in_grams(Arguments const& n) {
    return n["filter gain"] < 0.02;
}

/// As grams, that is: no fuel gives more carbon dioxide than pure carbon would.
bool emission_is_in_milligrams(Arguments const& n) {
    return n.function_name() == "EMISSIONFACTOR" &&
           n["mass emitted"] > n["dry mass"] * kernels::molecule::carbon_dioxide / kernels::atom::carbon;
}

bool useful_heat_is_in_megajoules(Arguments const& n) {
    return n.function_name() == "EMISSIONPERENERGY" && n["useful heat"] < 20;
}

bool household_fuel_is_in_kilograms(Arguments const& n) {
    return n.function_name() == "FUELPERSTANDARDADULT" && n["dry mass"] < 20 * n["days"] * n["standard adults"];
}

bool tier_needs_uncertainty(Arguments const& n) {
    if (n.function_name() != "PERFORMANCETIER")
        return false;
    auto const& measures = arguments::measure_of_tier.choices;
    for (std::size_t i = 0; i < measures.size(); ++i)
        if (n.chooses("measure", measures[i]))
            return kernels::is_near_a_limit(kernels::tier_limits[i], n["value"]);
    return false;
}

constexpr Combination of_results[] = {
    {boil_time_is_odd, sentences::boil_time_is_odd},
    {low_power_is_higher, sentences::low_power_is_higher},
    {powers_are_all_but_equal, sentences::powers_are_all_but_equal},
    {corrected_twice, sentences::corrected_twice},
    {far_from_standard, sentences::far_from_standard},
    {model_is_carried_far, sentences::model_is_carried_far},
    {pressure_of_gas_is_left_out, sentences::pressure_of_gas_is_left_out},
    {carbon_dioxide_is_in_per_cent, sentences::carbon_dioxide_is_in_per_cent, {"parts per million"}, 10000},
    {filter_gain_is_in_grams, sentences::filter_gain_is_in_grams, {"filter gain"}, 1000},
    {emission_is_in_milligrams, sentences::emission_is_in_milligrams},
    {useful_heat_is_in_megajoules, sentences::useful_heat_is_in_megajoules, {"useful heat"}, 1000},
    {household_fuel_is_in_kilograms, sentences::household_fuel_is_in_kilograms, {"dry mass"}, 1000},
    {tier_needs_uncertainty, sentences::tier_needs_uncertainty, {}, 1, 0, true},
    {scatter_is_in_per_cent, sentences::scatter_is_in_per_cent},
};

} // namespace

std::span<Combination const> odd_results() {
    return of_results;
}

} // namespace hearthcell
