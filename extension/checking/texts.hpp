#pragma once
// The check's own sentences, once, in all languages; %1 to %4 stand for what is only known on the spot.

#include "functions/words/language.hpp"

#include <initializer_list>
#include <string>
#include <string_view>

namespace hearthcell::checking {

enum class Text {
    title,
    nothing_of_ours,
    too_large,
    all_clean,
    look_at,
    outside_of_runs,
    seen_before,
    whole_workbook,
    from_memory,
    default_pressure,
    few_runs,
    by_hand,
    led_outside,
    left_alone,
    run,
    cell,
    function,
    value,
    remark,
    effect,
    seen,
    how_to_leave,
    other_row,
    typed_over,
    unlike_the_others,
    two_methods,
    empty_cell,
    would_be,
    points,
    per_cent,
    in_name,
    in_conditional_format,
    in_validity,
    up_to,
    and_more,
    count // not a text
};

std::string_view text(Text which, Language language);

/// With what stands in its places.
std::string say(Text which, Language language, std::initializer_list<std::string_view> values);

/// A number in the way of a language: six digits at the most, with its decimal sign.
std::string in_language(double number, Language language);
/// 0.202 as 20.2 %.
std::string share_in_language(double share, Language language);

} // namespace hearthcell::checking
