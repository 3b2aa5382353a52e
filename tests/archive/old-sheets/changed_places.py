"""Rows and columns that came, went and changed places."""

from changed_contents import note
from layouts import BY_HAND, Item
from words import FILLERS


def filler(state, chance):
    used = {item.label for item in state.items}
    label = chance.choice([word for word in FILLERS if word not in used])
    key = f"filler {label}"
    for run in state.runs:
        run[key] = chance.choice([chance.randint(1, 40), note(chance), None])
    return Item(key, label)


def index_for(state, chance):
    """Where a row or column may come in; a table's first column stays the first."""
    return chance.randint(1 if state.family.kind == "table" else 0, len(state.items))


def insert(state, chance):
    at = index_for(state, chance)
    state.items.insert(at, filler(state, chance))
    state.loose |= state.family.kind == "table"  # what stood beside the last column stands elsewhere now


def insert_blank(state, chance):
    at = min(index_for(state, chance), len(state.items) - 1)  # behind the last it would be none
    state.items.insert(at, Item(f"blank {len(state.items)}", ""))
    state.loose |= state.family.kind == "table"


def insert_heading(state, chance):
    """A row with a text among the values, which becomes the nearest label above of what stands below it."""
    key = f"heading {len(state.items)}"
    state.items.insert(index_for(state, chance), Item(key, chance.choice(FILLERS) + " below"))
    for run in state.runs:
        run[key] = "as weighed"


def swap(state, chance):
    first = 1 if state.family.kind == "table" else 0
    one, other = chance.sample(range(first, len(state.items)), 2)
    state.items[one], state.items[other] = state.items[other], state.items[one]
    state.loose |= state.family.kind == "table"


def move(state, chance):
    first = 1 if state.family.kind == "table" else 0
    at, to = chance.sample(range(first, len(state.items)), 2)
    state.items.insert(to, state.items.pop(at))
    state.loose |= state.family.kind == "table"


def shift_right(state, chance):
    state.left += 1
    state.loose |= state.family.kind == "table"


def shift_down(state, chance):
    state.above += chance.randint(1, 2)


def grow_gap(state, chance):
    state.gap += 1


def drop(state, chance):
    """A row or column that nothing on the sheet reads is gone."""
    read = {key for item in state.items if item.key in BY_HAND for key in BY_HAND if
            "{" + key + "}" in BY_HAND[item.key]}
    free = [item.key for item in state.items if item.key in ("tester", "date", "stove", "air")
            or item.key in BY_HAND and item.key not in read and item.key not in ("water", "steam")]
    if free:
        key = chance.choice(free)
        state.items = [item for item in state.items if item.key != key]
        state.broken.add(key)
        state.loose |= state.family.kind == "table"


def again(state, chance):
    """A label stands a second time, and what stood there has moved."""
    needed = [item for item in state.items if item.label and item.key != "run"
              and (state.family.series or any(item.key in state.family.needs(rule) for rule in state.family.rules))]
    if not needed:
        return
    item = chance.choice(needed)
    twin = Item(f"twin {len(state.items)}", item.label, item.unit, item.format)
    first = 1 if state.family.kind == "table" else 0
    state.items[first:first] = [twin, filler(state, chance), filler(state, chance)]
    for run in state.runs:
        run[twin.key] = chance.randint(100, 900)
    state.broken.add(item.key)
    state.loose |= state.family.kind == "table"
