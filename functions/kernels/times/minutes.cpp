#include "functions/kernels/times/minutes.hpp"

#include "functions/contract/cells.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell {
namespace {

constexpr double seconds_a_day = 86400, minutes_a_day = 1440;

double in_range(double minutes) {
    bool const good = minutes >= 0 && minutes <= longest_time; // false for NaN
    return good || failed(minutes) ? minutes : failure(Reason::time_out_of_range, 0);
}

/// The number itself, or the whole number beside it: a time of Calc is a fraction that binary digits cannot hold.
double to_whole(double x) {
    double const whole = std::round(x);
    return std::abs(x - whole) < 1e-6 ? whole : x;
}

double of_text(std::string_view text, Typed typed) {
    return in_range(minutes_of(text, typed));
}

/// Cuts blanks off the end that are too many to be given back.
void cut_blanks(Block& column) {
    std::size_t const kept = std::min(column.numbers.size(), used_cells(column) + most_blanks_at_the_end);
    column.numbers.resize(kept);
    (column.columns > 1 ? column.columns : column.rows) = kept;
}

Block of_block(Block const& times, Typed typed) {
    NumbersAre const numbers = numbers_are(largest_of(times));
    Block result{times.rows, times.columns, times.numbers, {}};
    for (double& number : result.numbers)
        if (!is_absent(number))
            number = minutes_of(number, typed, numbers);
    for (Block::Text const& text : times.texts)
        result.numbers[text.place] = of_text(text.text, typed);
    cut_blanks(result);
    return result;
}

} // namespace

NumbersAre numbers_are(double largest) {
    if (largest < noon)
        return NumbersAre::parts_of_a_day;
    return largest < shortest_test ? NumbersAre::either : NumbersAre::minutes;
}

double largest_of(Block const& times) {
    double largest = 0;
    for (double const number : times.numbers)
        largest = number > largest ? number : largest; // a NaN is not larger
    return largest;
}

double minutes_of(double number, Typed typed, NumbersAre numbers) {
    if (std::isnan(number)) // not a failure of ours, whatever its bits are
        return failure(Reason::time_out_of_range, 0);
    if (typed == Typed::minutes_and_seconds) {
        double const seconds = to_whole(number * minutes_a_day); // hours stood for minutes
        bool const is_whole = seconds == std::floor(seconds);
        return is_whole ? in_range(seconds / 60) : failure(Reason::not_minutes_and_seconds, 0);
    }
    if (typed == Typed::as_it_stands && numbers == NumbersAre::either && number != 0)
        return failure(Reason::time_of_either_kind, 0);
    bool const is_part_of_a_day =
        typed == Typed::hours_and_minutes || (typed == Typed::as_it_stands && numbers == NumbersAre::parts_of_a_day);
    return in_range(is_part_of_a_day ? to_whole(number * seconds_a_day) / 60 : number);
}

Outcome minutes(std::span<Value const> given) {
    Typed const typed = Typed(int(std::get<double>(given[1])));
    if (double const* number = std::get_if<double>(&given[0]))
        return outcome_of(minutes_of(*number, typed, numbers_are(*number)));
    if (std::string const* text = std::get_if<std::string>(&given[0]))
        return outcome_of(of_text(*text, typed));
    return of_block(std::get<Block>(given[0]), typed);
}

} // namespace hearthcell
