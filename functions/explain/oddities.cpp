#include "functions/explain/oddities.hpp"

#include "functions/call/call.hpp"
#include "functions/call/scalar.hpp"
#include "functions/catalogue/names.hpp"
#include "functions/catalogue/performance_tier.hpp"
#include "functions/explain/slips.hpp"
#include "functions/kernels/atmosphere.hpp"
#include "functions/kernels/gas.hpp"
#include "functions/words/sentences.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace hearthcell {
namespace {

/// What a call does not give, or its function does not take. It is a NaN, with which every comparison is false.
constexpr double not_given = std::numeric_limits<double>::quiet_NaN();

double first_given(double one, double other) {
    return std::isnan(one) ? other : one;
}

/// The arguments of a call that has gone well, by name.
class Arguments {
public:
    Arguments(Function const& called, std::span<Value const> given) : function(called), values(given) {}

    double operator[](std::string_view name) const {
        std::size_t const place = place_of(name);
        return place < function.arguments.size() ? at(place) : not_given;
    }
    /// Behind the last argument where none has that name.
    std::size_t place_of(std::string_view name) const {
        std::size_t place = 0;
        while (place < function.arguments.size() && function.arguments[place].name != name)
            ++place;
        return place;
    }
    /// The one number that serves all rows of a required column.
    double for_all_rows(std::size_t place) const {
        if (function.arguments[place].kind != ArgumentKind::column || function.arguments[place].optional)
            return not_given;
        Value const& value = value_at(values, place);
        Block const* const block = std::get_if<Block>(&value);
        if (block != nullptr)
            return block->numbers.size() == 1 ? block->numbers[0] : not_given;
        double const* const number = std::get_if<double>(&value);
        return number != nullptr ? *number : not_given;
    }
    double at(std::size_t place) const {
        Argument const& argument = function.arguments[place];
        bool const plain = argument.kind == ArgumentKind::number || argument.kind == ArgumentKind::number_or_name;
        if (!plain || place >= values.size() || std::holds_alternative<std::monostate>(values[place]))
            return not_given;
        return read_scalar(argument, values[place]).number;
    }
    /// Whether a column, or the one value that stands for it, holds such a reading.
    bool any(std::string_view name, bool (*odd)(double)) const {
        Value const* const value = value_of(name);
        if (double const* single = std::get_if<double>(value))
            return odd(*single);
        Block const* const block = std::get_if<Block>(value);
        return block != nullptr && std::ranges::any_of(block->numbers, odd);
    }
    bool chooses(std::string_view name, std::string_view option) const {
        std::string const* const text = std::get_if<std::string>(value_of(name));
        return text != nullptr && same_name(*text, option);
    }
    /// Whether nothing was given for it, or an empty cell where 0 cannot be.
    bool leaves_out(std::string_view name) const {
        Value const* const value = value_of(name);
        double const* const number = value != nullptr ? std::get_if<double>(value) : nullptr;
        return value == nullptr || std::holds_alternative<std::monostate>(*value) ||
               (number != nullptr && *number == 0);
    }
    bool names_a_fuel_as_fired() const {
        for (std::size_t i = 0; i < function.arguments.size(); ++i)
            if (function.arguments[i].kind == ArgumentKind::number_or_name &&
                read_scalar(function.arguments[i], value_at(values, i)).as_fired)
                return true;
        return false;
    }
    std::string_view function_name() const { return function.name; }
    /// The single number that the call gives.
    double result() const {
        Outcome const outcome = call(function, values);
        double const* const number = std::get_if<double>(&outcome);
        return number != nullptr ? *number : not_given;
    }

private:
    Value const* value_of(std::string_view name) const {
        std::size_t const place = place_of(name);
        return place < std::min(values.size(), function.arguments.size()) ? &values[place] : nullptr;
    }

    Function const& function;
    std::span<Value const> values;
};

/// Accepted arguments that are odd together, or odd in a way that an interval cannot tell.
struct Combination {
    bool (*odd)(Arguments const&);
    Sentence const& sentence;
    std::array<std::string_view, 2> about{}; ///< the argument, by whichever name it has, that was probably meant to be
    double scale = 1, shift = 0;             ///< scale × what it is + shift
};

double water_of(Arguments const& n) {
    return first_given(n["pot and water at start"] - n["pot empty"], n["water mass"]);
}
double evaporated_of(Arguments const& n) {
    return first_given(n["pot and water at start"] - n["pot and water at end"], n["mass evaporated"]);
}
double burned_of(Arguments const& n) {
    return first_given(n["wood laid out"] - n["wood left"], n["wood burned"]);
}
double start_of(Arguments const& n) {
    return first_given(n["start"], n["water start"]);
}
double end_of(Arguments const& n) {
    return first_given(n["end"], n["water end"]);
}

bool altitude_is_a_pressure(Arguments const& n) {
    double const altitude = n["altitude"];
    bool const said_already = altitude >= 1013 && altitude <= 1013.25; // among the accepted numbers above
    return altitude > 500 && altitude < 1090 && altitude != std::floor(altitude) && !said_already;
}

/// As weather reports give it; a village there types its pressure, too, or is asked once.
bool altitude_is_a_usual_pressure(Arguments const& n) {
    double const altitude = n["altitude"];
    bool const said_already = altitude >= 1013 && altitude <= 1013.25;
    return altitude >= 1005 && altitude <= 1025 && altitude == std::floor(altitude) && !said_already &&
           std::isnan(n["sea-level pressure"]) && std::isnan(n["station pressure"]);
}

bool altitude_is_the_pressure(Arguments const& n) {
    return n["altitude"] == n["sea-level pressure"];
}

bool station_pressure_is_from_the_forecast(Arguments const& n) {
    return std::isnan(n["altitude"]) && n["station pressure"] > 1000;
}

bool station_pressure_does_not_go_with_the_altitude(Arguments const& n) {
    double const implied = kernels::sea_level_pressure(n["station pressure"], n["altitude"]);
    return implied < 950 || implied > 1050;
}

bool altitude_is_in_kilometres(Arguments const& n) {
    double const altitude = n["altitude"];
    return altitude > 0 && altitude < 9 && altitude != std::floor(altitude);
}

bool char_energy_is_a_mass(Arguments const& n) {
    double const energy = n["char energy"];
    return energy > 0 && energy < 0.02 * n["fuel energy"];
}

/// By more than a simmer lets it.
bool water_cools_much(Arguments const& n) {
    return n.function_name() == "USEFULHEAT" && start_of(n) - end_of(n) > 15;
}

bool heat_is_given_up(Arguments const& n) {
    return n.function_name() == "USEFULHEAT" && n.result() < 0;
}

bool sea_level_pressure_is_low(Arguments const& n) {
    return n["sea-level pressure"] < 950;
}

// Net values of dry wood are 18 to 20 MJ/kg, gross ones 20 to 22; char starts at 26.
bool calorific_value_is_gross(Arguments const& n) {
    auto const is_gross = [](double value) { return value > 20.2 && value < 24; };
    return is_gross(n["net calorific value"]) || n.any("net calorific values", is_gross);
}
bool moistures_are_on_dry_basis(Arguments const& n) {
    return n.any("moistures", [](double moisture) { return moisture > 0.35; });
}
bool fuel_energy_is_in_megajoules(Arguments const& n) {
    return n["fuel energy"] < 50;
}
bool gross_value_is_net(Arguments const& n) {
    double const value = n["gross calorific value"];
    return value > 15 && value < 19;
}

bool start_is_fahrenheit(Arguments const& n) {
    double const start = start_of(n);
    return start > 40 && start < 80 && end_of(n) > start;
}

bool warmer_than_boiling(Arguments const& n) {
    return end_of(n) > n["boiling point"] + 1.5;
}

bool much_evaporated(Arguments const& n) {
    return evaporated_of(n) > 0.4 * water_of(n);
}

bool much_char(Arguments const& n) {
    return n["net char"] > 0.3 * first_given(burned_of(n) * (1 - n["moisture"]), n["dry mass"]);
}

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

constexpr Combination combinations[] = {
    {altitude_is_a_pressure, sentences::altitude_is_a_pressure},
    {altitude_is_a_usual_pressure, sentences::altitude_is_a_usual_pressure},
    {altitude_is_the_pressure, sentences::altitude_is_the_pressure},
    {altitude_is_in_kilometres, sentences::altitude_is_in_kilometres, {"altitude"}, 1000},
    {char_energy_is_a_mass, sentences::char_energy_is_a_mass},
    {water_cools_much, sentences::water_cools_much},
    {heat_is_given_up, sentences::heat_is_given_up},
    {station_pressure_is_from_the_forecast, sentences::station_pressure_is_from_the_forecast},
    {station_pressure_does_not_go_with_the_altitude, sentences::station_pressure_does_not_go_with_the_altitude},
    {sea_level_pressure_is_low, sentences::sea_level_pressure_is_low},
    {calorific_value_is_gross, sentences::calorific_value_is_gross},
    {moistures_are_on_dry_basis, sentences::moistures_are_on_dry_basis},
    {fuel_energy_is_in_megajoules, sentences::fuel_energy_is_in_megajoules, {"fuel energy"}, 1000},
    {gross_value_is_net, sentences::gross_value_is_net},
    {start_is_fahrenheit, sentences::start_is_fahrenheit, {"start", "water start"}, 1 / 1.8, -32 / 1.8},
    {warmer_than_boiling, sentences::warmer_than_boiling},
    {much_evaporated, sentences::much_evaporated},
    {much_char, sentences::much_char},
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
    {tier_needs_uncertainty, sentences::tier_needs_uncertainty},
    {scatter_is_in_per_cent, sentences::scatter_is_in_per_cent},
};

Oddity oddity_of(Speaker const& say, Combination const& combination, Arguments const& arguments) {
    for (std::string_view const name : combination.about)
        if (double const number = arguments[name]; !name.empty() && !std::isnan(number))
            return {say(combination.sentence), arguments.place_of(name),
                    combination.scale * number + combination.shift};
    Oddity oddity{say(combination.sentence)};
    oddity.is_advice = combination.odd == tier_needs_uncertainty;
    return oddity;
}

} // namespace

bool has_swapped_readings(Function const& function, std::span<Value const> values) {
    Arguments const arguments(function, values);
    return function.name == "BENCHEFFICIENCY" && end_of(arguments) < start_of(arguments);
}

std::vector<Oddity> oddities(Speaker const& say, Function const& function, std::span<Value const> values) {
    std::vector<Oddity> result;
    Arguments const arguments(function, values);
    bool const holds_no_moisture = arguments.names_a_fuel_as_fired(); // 0 is what it must be, and no empty cell
    for (std::size_t i = 0; i < function.arguments.size(); ++i) {
        Argument const& argument = function.arguments[i];
        if (holds_no_moisture && argument.measure == Measure::moisture_wet)
            continue;
        for (double const number : {arguments.at(i), arguments.for_all_rows(i)})
            for (std::string& sentence : doubt_about_zero(say, argument, number))
                result.push_back({std::move(sentence), i, absent, true});
        for (OddNumber& odd : odd_about(say, argument, arguments.at(i)))
            result.push_back({std::move(odd.sentence), i, odd.meant});
    }
    for (Combination const& combination : combinations)
        if (combination.odd(arguments))
            result.push_back(oddity_of(say, combination, arguments));
    return result;
}

} // namespace hearthcell
