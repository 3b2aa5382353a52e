#include "functions/diagnosis/minutes_remarks.hpp"

#include "functions/kernels/times/minutes.hpp"
#include "functions/number/in_words.hpp"

#include <algorithm>

namespace hearthcell::diagnosis {
namespace {

constexpr std::string_view colon_words = "A text as 31:40 is minutes and seconds; for hours and minutes say \"hh:mm\".";

/// "21.30", which is 21.3 min, and may have been meant as 21 min 30 s.
bool may_hold_seconds(std::string_view text) {
    constexpr std::string_view digits = "0123456789";
    std::size_t const point = text.find_first_of(".,");
    if (point == 0 || point == std::string_view::npos || text.size() != point + 3)
        return false;
    bool const is_number = text.substr(0, point).find_first_not_of(digits) == std::string_view::npos &&
                           text.substr(point + 1).find_first_not_of(digits) == std::string_view::npos;
    return is_number && text[point + 1] < '6';
}

constexpr std::string_view seconds_words =
    "A text as 21.30 is 21.3 minutes; 21 minutes and 30 seconds are written 21:30.";

/// A column in parts of a day into which someone typed minutes looks like this.
bool most_are_below_noon(Block const& times) {
    std::size_t below = 0, numbers = 0;
    for (double const number : times.numbers) {
        numbers += number > 0 ? 1 : 0; // false for blank and text
        below += number > 0 && number < noon ? 1 : 0;
    }
    return 2 * below > numbers;
}

Sentences on_number(double number) {
    if (number == 0)
        return {"0: the start, or an empty cell?"};
    bool const is_minutes = numbers_are(number) == NumbersAre::minutes;
    return {in_words(number) + (is_minutes ? " was taken as minutes: a time of Calc, a part of a day, is below 0.5."
                                           : " was taken as a time of Calc, a part of a day: minutes of a test are "
                                             "more. If they are minutes, say \"minutes\".")};
}

Sentences on_column(Block const& times) {
    Sentences sentences;
    double const largest = largest_of(times);
    if (largest > 0 && numbers_are(largest) == NumbersAre::parts_of_a_day)
        sentences.emplace_back("The numbers were taken as times of Calc, parts of a day: all are below 0.5.");
    if (numbers_are(largest) == NumbersAre::minutes) {
        sentences.push_back("The numbers were taken as minutes: the largest is " + in_words(largest) + ".");
        if (most_are_below_noon(times))
            sentences.emplace_back("But most are below 0.5: are minutes typed among times of Calc?");
    }
    if (std::ranges::any_of(times.texts, [](Block::Text const& text) { return has_one_colon(text.text); }))
        sentences.emplace_back(colon_words);
    if (std::ranges::any_of(times.texts, [](Block::Text const& text) { return may_hold_seconds(text.text); }))
        sentences.emplace_back(seconds_words);
    return sentences;
}

} // namespace

Sentences remark_on_minutes(std::span<Value const> given) {
    // Whoever says how it was typed knows how it is read.
    if (Typed(int(std::get<double>(given[1]))) != Typed::as_it_stands)
        return {};
    if (double const* number = std::get_if<double>(&given[0]))
        return on_number(*number);
    if (Block const* block = std::get_if<Block>(&given[0]))
        return on_column(*block);
    std::string const& text = std::get<std::string>(given[0]);
    if (has_one_colon(text))
        return {std::string(colon_words)};
    return may_hold_seconds(text) ? Sentences{std::string(seconds_words)} : Sentences();
}

} // namespace hearthcell::diagnosis
