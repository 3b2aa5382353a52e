"""What stands in the cells of readings and results, and in the way of what would be written there."""

from layouts import BY_HAND
from layouts import INPUTS_OF as BY_HAND_READS
from sheets import Error
from words import NOTES, WORDINGS


def note(chance):
    return chance.choice(NOTES).format(chance.randint(2, 90))


def rules_of(state, beside):
    return [rule for rule in state.family.rules if rule.beside == beside and state.place(rule.key)]


def type_over(state, chance):
    if rules := rules_of(state, beside=False):
        rule, run = chance.choice(rules), chance.randrange(len(state.runs))
        state.instead[rule.key, run] = round(chance.uniform(0.1, 0.4), 3)


def other_formula(state, chance):
    if rules := rules_of(state, beside=False):
        rule, run = chance.choice(rules), chance.randrange(len(state.runs))
        template = state.family.by_hand(rule.key)
        read = [key for key in BY_HAND_READS[rule.key] if state.index(key, state.items) is not None]
        others = [item.key for item in state.items if item.key in WORDINGS["en"] and item.key not in BY_HAND]
        if read and chance.random() < 0.5:  # which reads a wrong cell
            key = chance.choice(read)
            template = template.replace("{" + key + "}", "{" + chance.choice([one for one in others if one != key]) + "}")
        else:
            template += chance.choice(["*1.02", "+0", "*0.95"])
        state.instead[rule.key, run] = template


def note_in_the_way(state, chance):
    if rules := rules_of(state, beside=True):
        rule = chance.choice(rules)
        state.beside[rule.key, chance.randrange(len(state.runs))] = note(chance)


def note_on_the_word(state, chance):
    if rules := rules_of(state, beside=True):
        state.beside[chance.choice(rules).key, None] = note(chance)


def readings_of(state):
    return [item.key for item in state.items if item.key not in BY_HAND and item.key != "run"]


def empty_row(state, chance):
    """A row that was prepared and not filled in."""
    if state.family.kind == "table" and len(state.runs) > 2:
        state.runs[-1].update({key: None for key in readings_of(state)})


def empty_reading(state, chance):
    chance.choice(state.runs)[chance.choice(readings_of(state))] = None


def text_for_a_number(state, chance):
    run = chance.choice(state.runs)
    if keys := [key for key in readings_of(state) if isinstance(run.get(key), float)]:
        key = chance.choice(keys)
        # Not of three decimals, which would read as thousands in some languages and as a number in Calc's.
        run[key] = f"{run[key]:.2f}".replace(".", ",")


def stored_error(state, chance):
    run = chance.choice(state.runs)
    if keys := [key for key in readings_of(state) if isinstance(run.get(key), (int, float)) and key in WORDINGS["en"]]:
        run[chance.choice(keys)] = Error("#N/A")


def grams_for_kilograms(state, chance):
    """The wood was written down in the other unit, below the same label."""
    factor = 1000 if state.family.mass == "kg" else 0.001
    for run in state.runs:
        for key in ("laid", "left"):
            if isinstance(run.get(key), (int, float)) and not isinstance(run[key], bool):
                run[key] = run[key] * factor
