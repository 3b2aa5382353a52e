#include "functions/diagnosis/minutes_remarks.hpp"

#include "functions/kernels/times/minutes.hpp"
#include "functions/words/sentences.hpp"
#include "functions/words/speaker.hpp"

#include <algorithm>

namespace hearthcell::diagnosis {
namespace {

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

/// A column in parts of a day into which someone typed minutes looks like this.
bool most_are_below_noon(Block const& times) {
    std::size_t below = 0, numbers = 0;
    for (double const number : times.numbers) {
        numbers += number > 0 ? 1 : 0; // false for blank and text
        below += number > 0 && number < noon ? 1 : 0;
    }
    return 2 * below > numbers;
}

std::string on_number(Speaker const& say, double number) {
    if (number == 0)
        return say(sentences::zero_time);
    bool const is_minutes = numbers_are(number) == NumbersAre::minutes;
    return say(is_minutes ? sentences::number_taken_as_minutes : sentences::number_taken_as_time,
               {{"number", say.number(number)}});
}

Sentences on_column(Speaker const& say, Block const& times) {
    Sentences said;
    double const largest = largest_of(times);
    if (largest > 0 && numbers_are(largest) == NumbersAre::parts_of_a_day)
        said.push_back(say(sentences::numbers_taken_as_times));
    if (numbers_are(largest) == NumbersAre::minutes) {
        said.push_back(say(sentences::numbers_taken_as_minutes, {{"largest", say.number(largest)}}));
        if (most_are_below_noon(times))
            said.push_back(say(sentences::most_look_like_times));
    }
    if (std::ranges::any_of(times.texts, [](Block::Text const& text) { return has_one_colon(text.text); }))
        said.push_back(say(sentences::text_with_colon));
    if (std::ranges::any_of(times.texts, [](Block::Text const& text) { return may_hold_seconds(text.text); }))
        said.push_back(say(sentences::text_with_point));
    return said;
}

} // namespace

Remarks remark_on_minutes(std::span<Value const> given, Language language) {
    Speaker const say(language);
    // Whoever says how it was typed knows how it is read.
    if (Typed(int(std::get<double>(given[1]))) != Typed::as_it_stands)
        return {};
    if (double const* number = std::get_if<double>(&given[0]))
        return {{}, {on_number(say, *number)}};
    if (Block const* block = std::get_if<Block>(&given[0]))
        return {{}, on_column(say, *block)};
    std::string const& text = std::get<std::string>(given[0]);
    if (has_one_colon(text))
        return {{}, {say(sentences::text_with_colon)}};
    return may_hold_seconds(text) ? Remarks{{}, {say(sentences::text_with_point)}} : Remarks();
}

} // namespace hearthcell::diagnosis
