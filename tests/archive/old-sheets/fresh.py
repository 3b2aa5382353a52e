"""Sheets as they were meant to be."""

from layouts import Item
from sheets import Sheet
from states import State
from words import MEANS, WORDINGS, readings, same_word


def site_sheet(name, items, values, title="Site"):
    sheet = Sheet(name)
    sheet.put((0, 0), title)
    for at, item in enumerate(items):
        sheet.put((1 + at, 0), item.label)
        sheet.put((1 + at, 1), values.get(item.key), None, item.format)
        if item.unit:
            sheet.put((1 + at, 2), item.unit)
    return sheet


def fresh(family, chance, tab, runs=None):
    """A sheet of the family as it is meant to be, with readings of its own."""
    number = runs or {"form": 1, "blocks": 3}.get(family.kind) or chance.randint(2, 7)
    rows = [dict(readings(chance, family.mass, family.value), run=at + 1) for at in range(number)]
    state = State(family, tab, list(family.items), list(family.constants), rows)
    if family.kind == "table":
        state.items.insert(0, Item("run", WORDINGS[family.wording]["run"]))
    if family.kind == "blocks":
        state.titles = ["Cold start", "Hot start", "Simmer"]
    for key in ("altitude", "value"):
        rows[0]["site " + key] = rows[0][key]
    return state


def add_means(state, chance):
    if state.family.series:
        state.below += [("Mean", "AVERAGE")] + [("s.d.", "STDEV")] * (chance.random() < 0.5)
        return
    language = chance.choice(list(MEANS))
    for label in chance.sample(MEANS[language], chance.randint(1, 2)):
        state.below.append((label, chance.choice(["AVERAGE", "SUM", "STDEV", "same"])))


def layout_of(state, sheet):
    """The labels that a sheet has where, without what is written on it."""
    items = state.items + state.constants if state else []
    words = {item.label for item in items} | {item.unit for item in items} | set(state.titles if state else [])
    words |= {sheet.cells[min(sheet.cells)].content}
    if not state:
        words |= {cell.content for (_, column), cell in sheet.cells.items() if column != 1 and isinstance(cell.content, str)}
    return frozenset((place, same_word(cell.content)) for place, cell in sheet.cells.items() if cell.content in words - {""})
