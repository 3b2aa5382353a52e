#include "functions/explain/slips.hpp"

#include "functions/explain/phrases.hpp"
#include "functions/words/sentences.hpp"

namespace hearthcell {
namespace {

/// A number of a measure between two bounds is probably number × scale + shift of that measure: {x} and {y}.
struct ValueSlip {
    Measure measure;
    double low, high; ///< both included
    double scale, shift;
    Sentence const& sentence;
};

// For refused numbers. The first that fits wins.
constexpr ValueSlip refused[] = {
    {Measure::altitude, 9000.01, 30000, 1 / 3.280839895, 0, sentences::meant_feet},
    {Measure::pressure, 25, 33, 33.8639, 0, sentences::meant_inches_of_mercury},
    {Measure::pressure, 50, 110, 10, 0, sentences::meant_kilopascals},
    {Measure::pressure, 50000, 110000, 0.01, 0, sentences::meant_pascals},
    {Measure::pressure, 500, 869.99, 1, 0, sentences::meant_station_pressure},
    {Measure::temperature, 105.01, 221, 1 / 1.8, -32 / 1.8, sentences::meant_fahrenheit},
    {Measure::temperature, 273.15, 378.15, 1, -273.15, sentences::meant_kelvin},
    {Measure::water_mass, 0.05, 59.99, 1000, 0, sentences::meant_kilograms_or_litres},
    {Measure::evaporated_mass, -1e6, -1e-9, 1, 0, sentences::meant_weighings_swapped},
    {Measure::wood_mass, 0.001, 0.99, 1000, 0, sentences::meant_kilograms},
    {Measure::metal_mass, 0.05, 9.99, 1000, 0, sentences::meant_kilograms},
    {Measure::volume, 500.01, 500000, 0.001, 0, sentences::meant_millilitres},
    {Measure::specific_heat, 100, 2500, 0.001, 0, sentences::meant_joules_of_heat},
    {Measure::moisture_wet, 0.7501, 2.9999, 1, 0, sentences::meant_dry_basis},
    {Measure::moisture_wet, 3, 100, 0.01, 0, sentences::meant_per_cent},
    {Measure::moisture_dry, 3.0001, 300, 0.01, 0, sentences::meant_per_cent},
    {Measure::mass_fraction, 1, 100, 0.01, 0, sentences::meant_per_cent},
    {Measure::share, 2, 100, 0.01, 0, sentences::meant_per_cent},
    {Measure::confidence, 1.0001, 100, 0.01, 0, sentences::meant_per_cent},
    {Measure::confidence, 0.0001, 0.2, -1, 1, sentences::meant_risk},
    {Measure::calorific_value, 2, 4.99, 3.6, 0, sentences::meant_kilowatt_hours},
    {Measure::calorific_value, 1500, 9000, 0.0041868, 0, sentences::meant_kilocalories},
    {Measure::calorific_value, 9000.01, 60000, 0.001, 0, sentences::meant_kilojoules},
    {Measure::minutes, 0.0001, 0.4999, 1440, 0, sentences::meant_time_of_calc},
    {Measure::minutes, 1440.01, 86400, 1 / 60.0, 0, sentences::meant_seconds},
    {Measure::energy, -1e9, -1e-9, 1, 0, sentences::meant_heat_given_up},
    {Measure::energy, 1e-3, 0.99, 1000, 0, sentences::meant_megajoules},
    {Measure::power_in_kilowatts, 60.01, 60000, 0.001, 0, sentences::meant_watts},
    {Measure::carbon_dioxide_share, 0.01, 25, 10000, 0, sentences::meant_volume_per_cent},
    {Measure::molar_mass, 0.002, 0.2, 1000, 0, sentences::meant_kilograms_per_mole},
    {Measure::gas_mass, 0.001, 0.9999, 1000, 0, sentences::meant_kilograms},
    {Measure::gas_flow, 500.01, 500000, 0.001, 0, sentences::meant_litres_a_minute},
    {Measure::gas_flow, 0.0005, 0.0499, 60, 0, sentences::meant_cubic_metres_a_second},
    {Measure::sample_flow, 0.0001, 0.0499, 1000, 0, sentences::meant_cubic_metres_a_minute},
    {Measure::room_volume, 5000.01, 5e6, 0.001, 0, sentences::meant_litres_of_room},
    {Measure::coverage_factor, 0.5, 0.9999, 1, 0, sentences::meant_confidence},
    {Measure::coverage_factor, 50, 99.99, 1, 0, sentences::meant_confidence_in_per_cent},
};

// For accepted numbers. Every one that fits is said.
constexpr ValueSlip accepted[] = {
    {Measure::altitude, 1013, 1013.25, 1, 0, sentences::odd_altitude_is_standard_pressure},
    {Measure::altitude, 5100.01, 9000, 1 / 3.280839895, 0, sentences::odd_altitude_is_high},
    {Measure::moisture_wet, 0.3501, 0.75, 1, 0, sentences::odd_moisture_is_green},
    {Measure::moisture_wet, 0.0001, 0.0099, 1, 0, sentences::odd_moisture_is_low},
    {Measure::moisture_dry, 0.0001, 0.0099, 1, 0, sentences::odd_moisture_is_low},
    {Measure::wood_mass, 1, 19.99, 1000, 0, sentences::odd_mass_is_little},
    {Measure::char_mass, 0.0001, 0.9999, 1000, 0, sentences::odd_mass_is_little},
    {Measure::evaporated_mass, 0.0001, 0.9999, 1000, 0, sentences::odd_steam_is_little},
};

std::string told(Speaker const& say, ValueSlip const& slip, Argument const& argument, double number) {
    return say(slip.sentence, {{"name", named_in_sentence(say, argument)},
                               {"x", say.number(number)},
                               {"y", say.number(number * slip.scale + slip.shift)},
                               {"p", say.number(number * 100)}});
}

double meant_by(ValueSlip const& slip, double number) {
    return slip.scale == 1 && slip.shift == 0 ? absent : number * slip.scale + slip.shift;
}

ValueSlip const* slip_in(Argument const& argument, double number) {
    for (ValueSlip const& slip : refused)
        if (slip.measure == argument.measure && number >= slip.low && number <= slip.high)
            return &slip;
    return nullptr;
}

/// Little wood is odd as a fuel charge, not where the range welcomes it: a leftover, a sample for the oven.
bool applies(ValueSlip const& slip, Argument const& argument) {
    return slip.measure == argument.measure && (slip.measure != Measure::wood_mass || argument.low >= slip.low);
}

Sentence const& zero_or_empty(Argument const& argument) {
    bool const of_rows = argument.kind == ArgumentKind::column;
    switch (argument.measure) {
    case Measure::altitude:
        return sentences::zero_sea_level;
    case Measure::moisture_wet:
    case Measure::moisture_dry:
        return of_rows ? sentences::zero_all_oven_dry : sentences::zero_oven_dry;
    case Measure::temperature:
        return sentences::zero_freezing;
    default:
        return of_rows ? sentences::zeros_none_at_all : sentences::zero_none_at_all;
    }
}

} // namespace

Meant probably_meant(Speaker const& say, Argument const& argument, double number) {
    if (number == 0)
        return {say(sentences::empty_counts_as_zero)};
    ValueSlip const* const slip = slip_in(argument, number);
    return slip == nullptr ? Meant()
                           : Meant{told(say, *slip, argument, number), slip->sentence.english.starts_with("{x}")};
}

double meant_by_refused(Argument const& argument, double number) {
    ValueSlip const* const slip = slip_in(argument, number);
    return slip == nullptr ? absent : meant_by(*slip, number);
}

Sentences doubt_about_zero(Speaker const& say, Argument const& argument, double number) {
    if (number != 0 || !argument.zero_is_doubtful)
        return {};
    return {say(zero_or_empty(argument), {{"name", named_in_sentence(say, argument)}})};
}

std::vector<OddNumber> odd_about(Speaker const& say, Argument const& argument, double number) {
    std::vector<OddNumber> result;
    for (ValueSlip const& slip : accepted)
        if (applies(slip, argument) && number >= slip.low && number <= slip.high)
            result.push_back({told(say, slip, argument, number), meant_by(slip, number)});
    return result;
}

Sentence const* result_hint(Measure measure) {
    switch (measure) {
    case Measure::share:
        return &sentences::hint_units;
    case Measure::power_in_kilowatts:
    case Measure::burn_rate:
        return &sentences::hint_time;
    case Measure::wood_mass:
        return &sentences::hint_char;
    case Measure::calorific_value:
        return &sentences::hint_nothing_left;
    default:
        return nullptr;
    }
}

} // namespace hearthcell
