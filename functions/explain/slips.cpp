#include "functions/explain/slips.hpp"

#include "functions/call/call.hpp"
#include "functions/explain/phrases.hpp"
#include "functions/kernels/atmosphere.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace hearthcell {
namespace {

/// A number of a measure between two bounds is probably number × scale + shift of that measure: {x} and {y}.
struct ValueSlip {
    Measure measure;
    double low, high; ///< both included
    double scale, shift;
    std::string_view sentence;
};

// For refused numbers. The first that fits wins.
constexpr ValueSlip refused[] = {
    {Measure::altitude, 9000.01, 30000, 1 / 3.280839895, 0, "{x} feet would be {y} m."},
    {Measure::pressure, 25, 33, 33.8639, 0, "{x} inches of mercury would be {y} hPa."},
    {Measure::pressure, 50, 110, 10, 0, "{x} kPa would be {y} hPa."},
    {Measure::pressure, 50000, 110000, 0.01, 0, "{x} Pa would be {y} hPa."},
    {Measure::pressure, 500, 869.99, 1, 0,
     "{x} hPa looks like a reading at the station, not reduced to sea level; use "
     "STOVE.BOILINGPOINTAT."},
    {Measure::temperature, 105.01, 221, 1 / 1.8, -32 / 1.8, "{x} °F would be {y} °C."},
    {Measure::temperature, 273.15, 378.15, 1, -273.15, "{x} K would be {y} °C."},
    {Measure::water_mass, 0.05, 59.99, 1000, 0, "{x} kg, or {x} L, would be {y} g."},
    {Measure::evaporated_mass, -1e6, -1e-9, 1, 0, "Water does not gain mass over a fire; were the weighings swapped?"},
    {Measure::wood_mass, 0.001, 0.99, 1000, 0, "{x} kg would be {y} g."},
    {Measure::metal_mass, 0.05, 9.99, 1000, 0, "{x} kg would be {y} g."},
    {Measure::volume, 500.01, 500000, 0.001, 0, "{x} mL would be {y} L."},
    {Measure::specific_heat, 100, 2500, 0.001, 0, "{x} J/(kg K) would be {y} kJ/(kg K)."},
    {Measure::moisture_wet, 0.7501, 2.9999, 1, 0,
     "{x} is possible only on dry basis, as meters of the pin type read; use STOVE.WETBASIS."},
    {Measure::moisture_wet, 3, 100, 0.01, 0, "{x} is {p} %; type {x}% or {y}."},
    {Measure::moisture_dry, 3.0001, 300, 0.01, 0, "{x} is {p} %; type {x}% or {y}."},
    {Measure::mass_fraction, 1, 100, 0.01, 0, "{x} is {p} %; type {x}% or {y}."},
    {Measure::share, 2, 100, 0.01, 0, "{x} is {p} %; type {x}% or {y}."},
    {Measure::confidence, 1.0001, 100, 0.01, 0, "{x} is {p} %; type {x}% or {y}."},
    {Measure::confidence, 0.0001, 0.2, -1, 1, "{x} looks like the risk of being wrong; its counterpart is {y}."},
    {Measure::calorific_value, 2, 4.99, 3.6, 0, "{x} kWh/kg would be {y} MJ/kg."},
    {Measure::calorific_value, 1500, 9000, 0.0041868, 0, "{x} kcal/kg would be {y} MJ/kg."},
    {Measure::calorific_value, 9000.01, 60000, 0.001, 0, "{x} kJ/kg would be {y} MJ/kg."},
    {Measure::minutes, 0.0001, 0.4999, 1440, 0,
     "{x} looks like a time of Calc, a part of a day: it would be {y} min; "
     "multiply by 1440."},
    {Measure::minutes, 1440.01, 86400, 1 / 60.0, 0, "{x} s would be {y} min."},
    {Measure::energy, 1e-3, 0.99, 1000, 0, "{x} MJ would be {y} kJ."},
    {Measure::power, 60.01, 60000, 0.001, 0, "{x} W would be {y} kW."},
    {Measure::coverage_factor, 0.5, 0.9999, 1, 0,
     "{x} looks like a level of confidence; the factor for 95 % is about 2."},
    {Measure::coverage_factor, 50, 99.99, 1, 0,
     "{x} looks like a level of confidence in per cent; the factor for 95 % is about 2."},
};

// For accepted numbers. Every one that fits is said.
constexpr ValueSlip accepted[] = {
    {Measure::altitude, 1013, 1013.25, 1, 0, "altitude {x} is the standard air pressure in hPa; is it metres?"},
    {Measure::moisture_wet, 0.3501, 0.75, 1, 0,
     "{name} {x} is that of green wood; if a pin-type meter read it, it is on dry basis: use STOVE.WETBASIS."},
    {Measure::moisture_wet, 0.0001, 0.0099, 1, 0, "{name} {x} is drier than wood in any air; {x} is {p} %."},
    {Measure::moisture_dry, 0.0001, 0.0099, 1, 0, "{name} {x} is drier than wood in any air; {x} is {p} %."},
    {Measure::wood_mass, 1, 19.99, 1000, 0, "{name} {x} g is very little; {x} kg would be {y} g."},
    {Measure::char_mass, 0.0001, 0.9999, 1000, 0, "{name} {x} g is very little; {x} kg would be {y} g."},
    {Measure::evaporated_mass, 0.0001, 0.9999, 1000, 0, "{name} {x} g is very little; {x} kg or L would be {y} g."},
};

std::string told(ValueSlip const& slip, std::string_view name, double number) {
    std::string text = filled(slip.sentence, "{name}", name);
    text = filled(text, "{x}", in_words(number));
    text = filled(text, "{y}", in_words(number * slip.scale + slip.shift));
    return filled(text, "{p}", in_words(number * 100));
}

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
        for (std::size_t i = 0; i < function.arguments.size(); ++i)
            if (function.arguments[i].name == name)
                return at(i);
        return not_given;
    }
    double at(std::size_t place) const {
        Argument const& argument = function.arguments[place];
        bool const plain = argument.kind == Kind::number || argument.kind == Kind::number_or_name;
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
    std::string_view function_name() const { return function.name; }

private:
    Value const* value_of(std::string_view name) const {
        for (std::size_t i = 0; i < function.arguments.size() && i < values.size(); ++i)
            if (function.arguments[i].name == name)
                return &values[i];
        return nullptr;
    }

    Function const& function;
    std::span<Value const> values;
};

/// Accepted arguments that are odd together, or odd in a way that an interval cannot tell.
struct Combination {
    bool (*odd)(Arguments const&);
    std::string_view sentence;
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

bool station_pressure_is_from_the_forecast(Arguments const& n) {
    return std::isnan(n["altitude"]) && n["station pressure"] > 1000;
}

bool station_pressure_does_not_go_with_the_altitude(Arguments const& n) {
    double const implied = kernels::sea_level_pressure(n["station pressure"], n["altitude"]);
    return implied < 950 || implied > 1050;
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
    return start >= 50 && start < 80 && end_of(n) > start;
}

bool warmer_than_boiling(Arguments const& n) {
    return end_of(n) > n["boiling point"] + 1.5;
}

bool much_evaporated(Arguments const& n) {
    return evaporated_of(n) > 0.4 * water_of(n);
}

bool much_char(Arguments const& n) {
    return n["net char"] > 0.3 * burned_of(n) * (1 - n["moisture"]);
}

bool boil_time_is_odd(Arguments const& n) {
    bool const is_boil = n.function_name() == "NORMALBOILTIME" || n.function_name() == "MODELBOILTIME";
    return is_boil && (n["minutes"] > 120 || n["minutes"] < 3);
}

bool low_power_is_higher(Arguments const& n) {
    return n["high power"] < n["low power"];
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

// Well run tests scatter by a few per cent.
bool scatter_is_in_per_cent(Arguments const& n) {
    return n["coefficient of variation"] > 0.5 || n["smallest change"] == 1.0;
}

constexpr Combination combinations[] = {
    {altitude_is_a_pressure, "altitude looks like an air pressure in hPa; is it metres?"},
    {station_pressure_is_from_the_forecast,
     "station pressure looks like one reduced to sea level, as forecasts and telephones give it; the reading at the "
     "place itself is needed. With the altitude it can be checked."},
    {station_pressure_does_not_go_with_the_altitude,
     "station pressure is one that the weather hardly ever gives at this altitude; was it reduced to sea level, or is "
     "the altitude wrong?"},
    {sea_level_pressure_is_low,
     "sea-level pressure is lower than almost any weather gives; is it a reading at the station? Then use "
     "STOVE.BOILINGPOINTAT."},
    {calorific_value_is_gross,
     "net calorific value is higher than that of dry wood (18 to 20 MJ/kg); is it the gross value? Then use "
     "STOVE.NETFROMGROSS."},
    {moistures_are_on_dry_basis,
     "a moisture above 0.35 is that of green wood; if a pin-type meter read it, it is on dry basis: use "
     "STOVE.WETBASIS."},
    {fuel_energy_is_in_megajoules, "fuel energy is that of a few grams of wood; is it in MJ?"},
    {gross_value_is_net, "gross calorific value is as low as a net one; is it net already?"},
    {start_is_fahrenheit, "the start temperature is unusually warm; is it in °F?"},
    {warmer_than_boiling, "the water is more than 1.5 K above the boiling point; check probe, altitude and weather."},
    {much_evaporated, "more than 40 % of the water evaporated; check the weighings."},
    {much_char, "the char is more than 30 % of the dry wood; was it wet, or ash with it?"},
    {boil_time_is_odd,
     "a boil within 3 minutes or beyond 2 hours is unusual; were minutes and seconds stored as hours and minutes?"},
    {low_power_is_higher, "the low power is above the high power; are they swapped?"},
    {corrected_twice, "the water never boiled: effective water and standard rise correct for that twice in WBT 4.2.3."},
    {far_from_standard, "the correction is large; a proportion misleads there. STOVE.MODELBOILTIME counts the loss."},
    {scatter_is_in_per_cent,
     "a coefficient of variation above 0.5 or a smallest change of 1 is 50 % or 100 %; type 5% or 0.05 for 5 %."},
};

/// Little wood is odd as a fuel charge, not where the range welcomes it: a leftover, a sample for the oven.
bool applies(ValueSlip const& slip, Argument const& argument) {
    return slip.measure == argument.measure && (slip.measure != Measure::wood_mass || argument.low >= slip.low);
}

std::string_view empty_cell_or(Measure measure) {
    switch (measure) {
    case Measure::altitude:
        return "sea level";
    case Measure::moisture_wet:
    case Measure::moisture_dry:
        return "oven-dry";
    case Measure::temperature:
        return "freezing";
    default:
        return "none at all";
    }
}

} // namespace

std::string probably_meant(Argument const& argument, double number) {
    if (number == 0)
        return "An empty cell counts as 0.";
    for (ValueSlip const& slip : refused)
        if (slip.measure == argument.measure && number >= slip.low && number <= slip.high)
            return told(slip, argument.name, number);
    return "";
}

std::string_view result_hint(Measure measure) {
    switch (measure) {
    case Measure::share:
        return "Is an energy in MJ, a mass in kilograms, or a time in days?";
    case Measure::power:
    case Measure::burn_rate:
        return "Is the time in hours or in days?";
    case Measure::wood_mass:
        return "Does the char hold more energy than the wood?";
    case Measure::calorific_value:
        return "Is there so much moisture or hydrogen that nothing is left?";
    default:
        return "";
    }
}

std::vector<std::string> oddities(Function const& function, std::span<Value const> values) {
    std::vector<std::string> result;
    Arguments const arguments(function, values);
    for (std::size_t i = 0; i < function.arguments.size(); ++i) {
        Argument const& argument = function.arguments[i];
        double const number = arguments.at(i);
        if (number == 0 && argument.zero_is_doubtful)
            result.push_back(std::string(argument.name) + " is 0: " + std::string(empty_cell_or(argument.measure)) +
                             ", or an empty cell?");
        for (ValueSlip const& slip : accepted)
            if (applies(slip, argument) && number >= slip.low && number <= slip.high)
                result.push_back(told(slip, argument.name, number));
    }
    for (Combination const& combination : combinations)
        if (combination.odd(arguments))
            result.emplace_back(combination.sentence);
    return result;
}

} // namespace hearthcell
