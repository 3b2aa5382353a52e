"""What has to become of a sheet, what may, and what must not."""

from dataclasses import dataclass, field

from layouts import BY_HAND, INPUTS_OF, ORDER
from sheets import Error, is_formula
from states import evaluated, labels_of
from words import same_word


@dataclass
class Truth:
    """Of one sheet. Cells that are in neither must or may stay as they are."""
    must: dict = field(default_factory=dict)   # content by place
    may: dict = field(default_factory=dict)
    percent: set = field(default_factory=set)  # places that have to be shown as per cent
    held: dict = field(default_factory=dict)   # places that something stands in the way of, and what
    refused: str = ""                          # yes, perhaps: the sheet is listed as of another layout
    results: dict = field(default_factory=dict)  # old and new result, by rule's key and run
    read: dict = field(default_factory=dict)   # of places: function and what its arguments read
    done: list = field(default_factory=list)


class Undecided(Exception):
    """Nobody could tell: two cells have the label, and the wrong one stands where the right one did."""


def twins(state, base, sheet):
    """Fields whose label stands more than once, and that are not where they were."""
    counts, doubled = labels_of(sheet), set()
    for key in [item.key for item in state.items + state.constants if item.key in ORDER]:
        label = next(item.label for item in state.items + state.constants if item.key == key)
        if counts.get(same_word(label), 0) < 2 or not base.place(key):
            continue
        where = base.label_place(key)
        at_old = sheet.cells.get(where)
        if state.label_place(key) == where:
            continue
        if at_old and isinstance(at_old.content, str) and same_word(at_old.content) == same_word(label):
            raise Undecided(key)
        doubled.add(key)
    return doubled


def reads(rule):
    return [key for key in ORDER if "{" + key + "}" in rule.template()]


def verdict(state, rule):
    """carry, refuse or either."""
    needed, family = state.family.needs(rule), state.family
    if rule.beside and family.kind == "table":
        needed = needed - ({rule.key} - set(reads(rule)))
    if needed & state.broken or any(("name", key) in state.broken for key in reads(rule)) or any(key not in state.elsewhere() and not state.place(key) for key in needed):
        return "refuse"
    # A column without a heading of its own may be refused, and so may one whose place is not sure.
    loose = rule.beside and family.kind == "table" and (
        state.loose or state.broken or any(run is None for _, run in state.beside))
    return "either" if needed & state.doubtful or loose else "carry"


def untouched(state, rule, run):
    """Whether all inputs are empty: yes, perhaps, no."""
    values = state.values(run)
    moving = [key for key in reads(rule) if state.index(key, state.items) is not None]
    if any(values.get(key) is not None for key in moving if key not in BY_HAND):
        return "no"
    if not moving:
        return "no"
    return "perhaps" if any(key in BY_HAND for key in moving) or len(moving) < len(reads(rule)) else "yes"


def cell_truth(state, rule, run, sheet):
    """must, may or stay; and whether something is in the way."""
    place = state.new_place(rule, run)
    if rule.beside:
        if (rule.key, run) in state.beside:
            return "stay", True
        around = any((key, run) in state.instead for key in BY_HAND)
    else:
        if (rule.key, run) in state.instead:
            return "stay", True
        around = any((key, run) in state.instead for key in reads(rule))
    empty = untouched(state, rule, run)
    if empty == "yes":
        return "stay", False
    assert rule.beside or is_formula(sheet.cells[place].content)
    return ("may" if around or empty == "perhaps" else "must"), False


def new_result(state, rule, values):
    """What the function gives, where the formula by hand computes the same from what the function reads."""
    if not rule.same or any(isinstance(values.get(key), (str, type(None))) for key in reads(rule)):
        return None
    read = dict(values)
    for key in BY_HAND:
        if key not in reads(rule) and all(one in read for one in INPUTS_OF[key]):
            read[key] = evaluated(state.family.by_hand(key), read)
    value = read.get(rule.key)
    factor = 1000 if rule.key == "dry" and rule.beside and state.family.mass == "kg" else 1
    return value * factor if isinstance(value, float) else None


def argument_value(template, values):
    """And whether all that it reads is there; None for a text, an error; and for a constant, which is not read."""
    if "{" not in template:
        return None
    value = evaluated(template, values)
    is_whole = all(values.get(key) is not None for key in ORDER if "{" + key + "}" in template)
    return (value, is_whole) if isinstance(value, float) else None


def truth_of(state, base, sheet, partly):
    """base: the family's sheet as the tester's example has it."""
    truth, rules = Truth(done=state.done), state.family.rules
    state.broken |= twins(state, base, sheet)
    if state.family.series:  # its column is as long as there are runs; a program may refuse that
        if place := state.mean_place():
            truth.may[place] = f"=STOVE.SERIES({state.column(state.family.series)})"
        truth.refused = "perhaps"
        return truth
    verdicts = {rule.key: verdict(state, rule) for rule in rules}
    if not partly and "refuse" in verdicts.values():
        verdicts = dict.fromkeys(verdicts, "refuse")
    elif not partly and "either" in verdicts.values():
        verdicts = dict.fromkeys(verdicts, "either")
    if all(one == "refuse" for one in verdicts.values()):
        truth.refused = "yes"
    elif set(verdicts.values()) != {"carry"}:
        truth.refused = "perhaps"
    for rule in rules:
        if verdicts[rule.key] == "refuse":
            continue
        into = truth.must if verdicts[rule.key] == "carry" else truth.may
        for run in range(len(state.runs)):
            what, in_the_way = cell_truth(state, rule, run, sheet)
            place, content = state.new_place(rule, run), state.formula(rule.template(state.given), run)
            if in_the_way:
                truth.held[place] = verdicts[rule.key]
            if what != "stay":
                (into if what == "must" else truth.may)[place] = content
                values = state.values(run)
                truth.results[rule.key, run] = (place, state.place(rule.key, run), values.get(rule.key),
                                                new_result(state, rule, values))
                truth.read[place] = rule.function, [argument_value(one, values) for one in rule.arguments]
            if what != "stay" and rule.format:
                truth.percent.add(place)
        if rule.beside:
            place = state.word_place(rule)
            free = (rule.key, None) not in state.beside and place not in sheet.cells
            if free:
                (into if verdicts[rule.key] == "carry" else truth.may)[place] = rule.word
            else:
                truth.held[place] = verdicts[rule.key]
    return truth
