"""What years do to a sheet. Each change says what may no longer be carried: the truth that the program is held to."""

from changed_contents import (empty_reading, empty_row, grams_for_kilograms, note_in_the_way, note_on_the_word, other_formula,
                              stored_error, text_for_a_number, type_over)
from changed_places import again, drop, grow_gap, insert, insert_blank, insert_heading, move, shift_down, shift_right, swap
from changed_words import clock, dress, no_unit, other_unit, per_cent, reword, slip

CONTENTS = [grams_for_kilograms, empty_row, empty_reading, text_for_a_number, stored_error, type_over, other_formula,
            note_in_the_way]
HARMLESS = [*CONTENTS, note_on_the_word, insert, insert_blank, insert_heading, swap, move, shift_right, shift_down, dress]
HARMFUL = [reword, slip, other_unit, no_unit, clock, per_cent, drop, again]
FORMS = {grow_gap: "table", empty_row: "table", insert_heading: "form"}


def apply(state, change, chance):
    if FORMS.get(change, state.family.kind) == state.family.kind:
        change(state, chance)
        state.done.append(change.__name__)
