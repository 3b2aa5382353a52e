#pragma once
// The guide's own words in every language; what it says of a function comes from the catalogue.

#include "functions/words/language.hpp"

#include <string>

namespace hearthcell::generator::guide {

/// %1 and %2 stand for what is only known on the spot.
enum class Word {
    index_sheet,
    readings_sheet,
    title,
    intro,
    all_agree,
    some_differ,
    nothing_checked,
    is_installed,
    is_missing,
    is_another_edition,
    made_for,
    agrees,
    differs,
    unchecked,
    function,
    what_it_does,
    gives,
    result,
    agreeing,
    checks,
    verdict,
    all_subjects,
    to_the_index,
    how_many_agree,
    how_to_write_it,
    caution,
    one_part_of,
    a_list_of,
    from_to,
    with_range,
    argument,
    unit,
    allowed,
    left_out,
    what_it_is,
    no_arguments,
    required,
    one_of,
    a_name_below,
    a_name_as_in,
    or_instead,
    any_number,
    a_column,
    a_column_of_anything,
    a_block,
    a_text,
    anything,
    further_arguments,
    equation,
    by_method,
    source,
    from_memory,
    name,
    also_typed_as,
    typical_value,
    example,
    must_give,
    within,
    where_from,
    row_of_list,
    an_error,
    an_empty_text,
    readings_intro,
    used_by,
    uses_sheet,
    worked_examples,
    uses_intro,
    uses_caution,
    reading_or_result,
    value,
    what_goes_where,
    page_of,
    count // not a word
};

std::string_view word(Word which, Language language);

/// A number's text with the decimal sign that people of this language type.
std::string with_decimal_sign(std::string number, Language language);

} // namespace hearthcell::generator::guide
