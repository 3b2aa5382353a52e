#include "functions/explain/reasons.hpp"

namespace hearthcell {
namespace {

// In the order of the enumeration; a test reads both.
constexpr Meaning table[] = {
    {Reason::text_for_number, Error::value, "{argument} is the text {given}; a number is needed."},
    {Reason::number_for_text, Error::value,
     "{argument} is the number {given}; one of these texts is needed: {allowed}. An empty cell counts as 0."},
    {Reason::block_for_value, Error::value, "{argument} must be one value, not a block of cells."},
    {Reason::block_for_column, Error::value, "{argument} must be one row or one column, not a block of both."},
    {Reason::out_of_range, Error::number, "{argument} is {given}, outside {allowed}."},
    {Reason::unknown_name, Error::not_available, "{argument} is {given}, which is none of: {allowed}."},
    {Reason::argument_missing, Error::parameters, "{argument} must be given."},
    {Reason::too_many_arguments, Error::parameters, "There are more arguments than the function takes ({allowed})."},
    {Reason::no_rows, Error::not_available, "The columns hold no reading at all."},
    {Reason::half_empty_row, Error::value, "Row {row} is filled only in part."},
    {Reason::columns_differ, Error::value, "The columns differ in length; a single value may serve all rows."},
    {Reason::result_out_of_range, Error::number, "The result would be {given}, outside {allowed}."},
    {Reason::method_undefined, Error::not_available, "This quantity is not defined by method {given}."},
    {Reason::char_missing, Error::number, "Method {given} needs the net char; give 0 if there was none."},
    {Reason::boiling_point_missing, Error::number, "Method {given} needs the local boiling point."},
    {Reason::air_missing, Error::number, "Method {given} needs the temperature of the air."},
    {Reason::temperatures_missing, Error::number,
     "Start and end temperature are needed, both, for the effective water or a standard rise."},
    {Reason::standard_mass_missing, Error::number,
     "Water mass and standard mass belong together; only one of them is given."},
    {Reason::end_not_above_start, Error::number, "The end temperature is not above the start temperature."},
    {Reason::boiling_point_not_above_start, Error::number, "The boiling point is not above the start temperature."},
    {Reason::evaporated_more_than_water, Error::number, "More water evaporated than there was."},
    {Reason::dry_above_wet, Error::number, "The dry sample is heavier than the sample as fired; are they swapped?"},
    {Reason::container_above_dry, Error::number, "The container is as heavy as the dry sample with it, or heavier."},
    {Reason::sea_level_pressure_at_station, Error::number,
     "The weather cannot give this pressure at this altitude. Is it a pressure reduced to sea level? Then use "
     "STOVE.BOILINGPOINT with altitude and sea-level pressure."},
    {Reason::char_exceeds_fuel, Error::number, "The char holds as much energy as the fuel, or more."},
    {Reason::pot_and_water_too_light, Error::number,
     "Pot and water at the start are not at least 50 g heavier than the empty pot; are they swapped or in kilograms?"},
    {Reason::pot_gained_mass, Error::number, "Pot and water are heavier at the end than at the start."},
    {Reason::pot_lost_mass, Error::number, "Pot and water at the end are lighter than the empty pot."},
    {Reason::more_left_than_laid, Error::number, "More fuel is left than was laid out{in row}."},
    {Reason::nothing_burned, Error::number, "As much wood is left as was laid out: nothing burned."},
    {Reason::never_boils, Error::number,
     "With this power and heat loss the water never reaches the standard end temperature."},
    {Reason::too_few_runs, Error::not_available,
     "{argument} hold fewer than two runs; scatter shows from two on. Empty cells are no runs."},
    {Reason::too_few_for_outlier, Error::not_available,
     "{argument} hold fewer than five runs; below that no run can be told to stand apart."},
    {Reason::no_scatter, Error::number,
     "The runs of each series are all the same: without any scatter there is nothing to judge a difference by."},
    {Reason::mean_not_positive, Error::number, "The mean of {argument} is not above 0, so that no share of it exists."},
    {Reason::unbounded_limits, Error::not_available,
     "The limits are unbounded: the baseline scatters so much, or has so few runs, that at this confidence its mean "
     "could be 0."},
    {Reason::too_many_runs, Error::number,
     "More than 10000 runs of each variant would be needed: the change is too small against the scatter."},
    {Reason::neither_true_nor_false, Error::number, "{argument} is {given}; TRUE or FALSE is needed."},
    {Reason::beyond_measure, Error::number,
     "{argument} is {given}, which this measure cannot be: an efficiency is above 0 and at most 1 (type 35% or 0.35), "
     "a safety score above 0 and at most 100, an emission above 0. An empty cell counts as 0."},
    {Reason::not_differentiable, Error::not_available,
     "{argument} is {given}, which is no equation of single numbers; doubt cannot be carried through it."},
    {Reason::too_many_values, Error::value, "{argument} is more than the function takes."},
    {Reason::uncertainties_differ, Error::value,
     "{argument} must be as many as the values: one beside each, 0 or empty where it is exact."},
    {Reason::uncertainty_without_value, Error::value,
     "{argument} is {given}, but a text or an empty cell stands at that place of the values; type the number that is "
     "uncertain."},
    {Reason::uncertainty_too_large, Error::number,
     "{argument} is {given}, more than half the range of the argument that it belongs to, which no standard "
     "uncertainty can be; is it in per cent, or in another unit?"},
    {Reason::no_finite_slope, Error::number,
     "{argument} is {given}, but the result has no finite sensitivity to that argument at this value."},
    {Reason::correlations_not_square, Error::value,
     "{argument} must be a square with as many rows and columns as there are values."},
    {Reason::correlation_without_value, Error::value,
     "{argument} is {given}, but a text or an empty cell stands at one of its two places in the values."},
    {Reason::correlation_with_itself, Error::number,
     "{argument} is {given}; whatever is uncertain has the correlation 1 with itself."},
    {Reason::correlations_not_symmetric, Error::number,
     "{argument} is {given}, but another number stands at the mirrored place."},
    {Reason::correlations_contradict, Error::number,
     "{argument} contradict one another: no quantities can be correlated like that (the matrix is not positive "
     "semidefinite)."},
    {Reason::time_unclear, Error::value,
     "{argument} is {given}, which cannot be read as a time in one way only. Clear are 31.7 (minutes), 31:40 (mm:ss), "
     "1:08:20 (h:mm:ss), 12'45\", 12 min 45 s and 1 h 8 min."},
    {Reason::time_part_too_large, Error::number,
     "{argument} is {given}, but minutes and seconds that follow a larger unit end at 59."},
    {Reason::time_of_either_kind, Error::number,
     "{argument} is {given}, which may be minutes as well as a part of a day (31:48 typed into a cell is 1.325 days). "
     "Say how it was typed: \"mm:ss\", \"hh:mm\" or \"minutes\"."},
    {Reason::not_minutes_and_seconds, Error::number,
     "{argument} is {given}, which is no whole number of minutes of a day, so that it was not minutes and seconds that "
     "Calc took as hours and minutes."},
    {Reason::time_out_of_range, Error::number,
     "{argument} is {given}, which is below 0 or beyond 14400 min. From a date with a time subtract the first."},
    {Reason::log_columns_differ, Error::value,
     "Times and temperatures differ in length; each reading needs both, in the same row."},
    {Reason::too_few_readings, Error::not_available, "The log holds too few readings there."},
    {Reason::time_repeated, Error::number,
     "The time in row {row} is the same as that of the reading before it. STOVE.LOGCHECK lists such slips."},
    {Reason::time_backwards, Error::number,
     "The time in row {row} is before that of the reading before it. STOVE.LOGCHECK lists such slips."},
    {Reason::log_within_a_minute, Error::number,
     "The whole log lasts less than a minute. Times of Calc are parts of a day: multiply by 1440 or use "
     "STOVE.MINUTES."},
    {Reason::never_crosses, Error::not_available, "The log never passes this temperature for good."},
    {Reason::no_boil_found, Error::not_available,
     "The log neither reaches the boiling point within the tolerance nor settles within 3 K of it."},
    {Reason::boil_not_held, Error::not_available,
     "The water reaches its boil, but the log ends before that has held for so long; give a shorter hold if that is "
     "how the test ends."},
    {Reason::boils_from_start, Error::number, "The water boils already at the start minute."},
    {Reason::to_not_above_from, Error::number, "The stretch ends before it starts, or where it starts."},
    {Reason::stretch_not_covered, Error::not_available, "The log does not cover this stretch of temperature."},
    {Reason::not_heating, Error::number, "The temperature does not rise by 5 K over the readings."},
    {Reason::not_cooling, Error::number, "The temperature does not fall over the readings."},
    {Reason::warms_before_cooling, Error::number, "The log warms before it cools; give the rows of the cooling only."},
    {Reason::air_not_below, Error::number, "The water is no warmer than the air."},
    {Reason::log_boils_already, Error::number,
     "The log reaches the boiling point itself: nothing is to be forecast. Use STOVE.BOILTIME."},
    {Reason::heating_speeds_up, Error::number,
     "The heating speeds up, which a steady fire does not do: nothing can be forecast from it. Give the rows from "
     "where the fire burns steadily."},
    {Reason::forecast_never_boils, Error::number,
     "As the heating slows down in this log the water would settle below the boiling point."},
    {Reason::forecast_too_far, Error::not_available,
     "The boil would lie further beyond the last reading than the readings that tell of it last: nobody can say when."},
    {Reason::forecast_uncertain, Error::not_available,
     "The readings scatter so much, or are so few, that the boil can be told no better than to a tenth of its time."},
    {Reason::internal, Error::value, "The function could not be computed; please report how."},
};

} // namespace

std::span<Meaning const> meanings() {
    return table;
}

Meaning const& meaning_of(Reason reason) {
    for (Meaning const& meaning : table)
        if (meaning.reason == reason)
            return meaning;
    return table[std::size(table) - 1];
}

} // namespace hearthcell
