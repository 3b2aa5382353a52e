#include "functions/explain/slips.hpp"

#include "functions/explain/phrases.hpp"

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
    {Measure::power_in_kilowatts, 60.01, 60000, 0.001, 0, "{x} W would be {y} kW."},
    {Measure::coverage_factor, 0.5, 0.9999, 1, 0,
     "{x} looks like a level of confidence; the factor for 95 % is about 2."},
    {Measure::coverage_factor, 50, 99.99, 1, 0,
     "{x} looks like a level of confidence in per cent; the factor for 95 % is about 2."},
};

// For accepted numbers. Every one that fits is said.
constexpr ValueSlip accepted[] = {
    {Measure::altitude, 1013, 1013.25, 1, 0, "altitude {x} is the standard air pressure in hPa; is it metres?"},
    {Measure::altitude, 5100.01, 9000, 1 / 3.280839895, 0,
     "altitude {x} m is higher than people live; {x} feet would be {y} m."},
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

double meant_by(ValueSlip const& slip, double number) {
    return slip.scale == 1 && slip.shift == 0 ? absent : number * slip.scale + slip.shift;
}

/// Little wood is odd as a fuel charge, not where the range welcomes it: a leftover, a sample for the oven.
bool applies(ValueSlip const& slip, Argument const& argument) {
    return slip.measure == argument.measure && (slip.measure != Measure::wood_mass || argument.low >= slip.low);
}

ValueSlip const* slip_in(Argument const& argument, double number) {
    for (ValueSlip const& slip : refused)
        if (slip.measure == argument.measure && number >= slip.low && number <= slip.high)
            return &slip;
    return nullptr;
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
    ValueSlip const* const slip = slip_in(argument, number);
    return slip == nullptr ? "" : told(*slip, argument.name, number);
}

double meant_by_refused(Argument const& argument, double number) {
    ValueSlip const* const slip = slip_in(argument, number);
    return slip == nullptr ? absent : meant_by(*slip, number);
}

Sentences doubt_about_zero(Argument const& argument, double number) {
    if (number != 0 || !argument.zero_is_doubtful)
        return {};
    return {std::string(argument.name) + (argument.kind == ArgumentKind::column ? " are" : " is") +
            " 0: " + std::string(empty_cell_or(argument.measure)) + ", or an empty cell?"};
}

std::vector<OddNumber> odd_about(Argument const& argument, double number) {
    std::vector<OddNumber> result;
    for (ValueSlip const& slip : accepted)
        if (applies(slip, argument) && number >= slip.low && number <= slip.high)
            result.push_back({told(slip, argument.name, number), meant_by(slip, number)});
    return result;
}

std::string_view result_hint(Measure measure) {
    switch (measure) {
    case Measure::share:
        return "Is an energy in MJ, a mass in kilograms, or a time in days?";
    case Measure::power_in_kilowatts:
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

} // namespace hearthcell
