#pragma once
// How a kernel fails without throwing: it returns a quiet NaN whose payload says why, and about which argument.
// Bits 32 to 39 hold the reason, 40 to 44 the argument, 45 to 50 a signature; the low word stays 0, since the
// LibreOffice side writes the cell's error code there. Such a NaN must never go through arithmetic.

#include "functions/number/dual.hpp"

#include <bit>
#include <cstdint>

namespace hearthcell {

enum class Reason : std::uint8_t {
    none,
    absent, ///< not a failure: an optional argument that was left out and has no constant as its default
    // found while reading the arguments
    text_for_number,
    number_for_text,
    block_for_value,
    block_for_column,
    out_of_range,
    unknown_name,
    argument_missing,
    too_many_arguments,
    // found in columns
    no_rows,
    half_empty_row,
    columns_differ,
    // found by a kernel
    result_out_of_range,
    method_undefined,
    char_missing,
    boiling_point_missing,
    air_missing,
    temperatures_missing,
    standard_mass_missing,
    end_not_above_start,
    boiling_point_not_above_start,
    evaporated_more_than_water,
    dry_above_wet,
    container_above_dry,
    sea_level_pressure_at_station,
    char_exceeds_fuel,
    pot_and_water_too_light,
    pot_gained_mass,
    pot_lost_mass,
    more_left_than_laid,
    nothing_burned,
    never_boils,
    too_few_runs,
    too_few_for_outlier,
    no_scatter,
    mean_not_positive,
    unbounded_limits,
    too_many_runs,
    neither_true_nor_false,
    beyond_measure,
    // found where doubt is propagated
    not_differentiable,
    too_many_values,
    uncertainties_differ,
    uncertainty_without_value,
    uncertainty_too_large,
    no_finite_slope,
    correlations_not_square,
    correlation_without_value,
    correlation_with_itself,
    correlations_not_symmetric,
    correlations_contradict,
    // found in a time
    time_unclear,
    time_part_too_large,
    time_of_either_kind,
    not_minutes_and_seconds,
    time_out_of_range,
    // found in a temperature log
    log_columns_differ,
    too_few_readings,
    time_repeated,
    time_backwards,
    log_within_a_minute,
    never_crosses,
    no_boil_found,
    boil_not_held,
    boils_from_start,
    to_not_above_from,
    stretch_not_covered,
    not_heating,
    not_cooling,
    warms_before_cooling,
    air_not_below,
    log_boils_already,
    heating_speeds_up,
    forecast_never_boils,
    forecast_too_far,
    forecast_uncertain,
    internal,
    count ///< how many there are; not a reason
};

inline constexpr unsigned no_argument = 31;

struct Failure {
    Reason reason = Reason::none;
    unsigned argument = no_argument; ///< its place in the catalogue, or no_argument
    unsigned row = 0;                ///< the reading of a column, counted from 1; 0 when it is no matter of a row
};

inline constexpr std::uint64_t failure_signature = 0x7FF8'0000'0000'0000 | std::uint64_t{0b010110} << 45;

constexpr double failure(Reason reason, unsigned argument = no_argument) {
    return std::bit_cast<double>(failure_signature | std::uint64_t{argument & 31U} << 40 |
                                 std::uint64_t{static_cast<std::uint8_t>(reason)} << 32);
}

/// What a number says about itself: Reason::none for every number, infinity and NaN that is not ours.
constexpr Failure failure_of(double number) {
    auto const bits = std::bit_cast<std::uint64_t>(number);
    auto const code = static_cast<std::uint8_t>(bits >> 32 & 0xFF);
    bool const ours = (bits & 0xFFFF'E000'FFFF'FFFF) == failure_signature && code < unsigned(Reason::count);
    return ours ? Failure{Reason(code), unsigned(bits >> 40 & 31)} : Failure{};
}

inline constexpr double absent = failure(Reason::absent);

template <class Real> constexpr bool is_absent(Real const& x) {
    return failure_of(value_of(x)).reason == Reason::absent;
}
template <class Real> constexpr bool failed(Real const& x) {
    Reason const reason = failure_of(value_of(x)).reason;
    return reason != Reason::none && reason != Reason::absent;
}

} // namespace hearthcell
