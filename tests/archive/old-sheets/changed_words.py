"""Labels that were written in another way, and units that are other ones."""

from dataclasses import replace

from words import OTHER_UNITS, WORDINGS, same_word


def labelled(state):
    return [(items, at) for items in (state.items, state.constants) for at, item in enumerate(items)
            if item.label and item.key in WORDINGS["en"] and item.key != "run"]


def reword(state, chance):
    items, at = chance.choice(labelled(state))
    items[at] = replace(items[at], label=chance.choice(["Reading", "Old value", "Column"]) + f" {chance.randint(2, 99)} x")
    state.broken.add(items[at].key)


def slip(state, chance):
    """One letter of a label is another one."""
    items, at = chance.choice(labelled(state))
    label = items[at].label
    place = chance.choice([place for place, letter in enumerate(label) if letter.isalpha()])
    letter = chance.choice([letter for letter in "bdkqz" if letter != same_word(label[place])])
    items[at] = replace(items[at], label=label[:place] + letter + label[place + 1:])
    state.broken.add(items[at].key)


def dress(state, chance):
    """Case, accents, colons and blanks, which do not count."""
    items, at = chance.choice(labelled(state))
    label = items[at].label
    dressed = chance.choice([label + ":", label.upper(), f"  {label}", label.replace(" ", "  "), label + " :",
                             label.replace("é", "e").replace("É", "E").replace("í", "i").replace("ó", "o")])
    if same_word(dressed) == same_word(label):
        items[at] = replace(items[at], label=dressed)


def other_unit(state, chance):
    """The label, the cell beside or the number format names another unit."""
    having = [(items, at) for items, at in labelled(state) if (unit := state.family.unit(items[at].key))
              and (state.family.units != "label" or items[at].label.endswith(unit))]
    if not having:
        return
    items, at = chance.choice(having)
    unit = state.family.unit(items[at].key)
    other = OTHER_UNITS[unit]
    item = items[at]
    where = state.family.units
    if where == "right":
        items[at] = replace(item, unit=other)
    elif where == "label":
        items[at] = replace(item, label=item.label.removesuffix(unit) + other)
    else:
        items[at] = replace(item, format=item.format.replace(f'" {unit}"', f'" {other}"'))
    state.broken.add(item.key)


def no_unit(state, chance):
    """The cell beside a value says nothing any more."""
    having = [(items, at) for items, at in labelled(state) if items[at].unit]
    if having:
        items, at = chance.choice(having)
        items[at] = replace(items[at], unit="")
        state.broken.add(items[at].key)


def clock(state, chance):
    """The minutes of a fire as a time of the clock."""
    at = state.index("time", state.items)
    if at is None or state.items[at].format == "[HH]:MM":
        return
    state.items[at] = replace(state.items[at], format="[HH]:MM")
    for run in state.runs:
        if isinstance(run["time"], float):
            run["time"] /= 1440
    state.broken.add("time")


def per_cent(state, chance):
    """A moisture of 14 that was to be 14 %."""
    at = state.index("moisture", state.items)
    if at is None or not state.items[at].format:
        return
    state.items[at] = replace(state.items[at], format="")
    for run in state.runs:
        if isinstance(run["moisture"], float):
            run["moisture"] *= 100
    state.broken.add("moisture")
