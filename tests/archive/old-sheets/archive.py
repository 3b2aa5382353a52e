"""Archives of old sheets with known truth: families of sheets, an example of each, and what years did to the others."""

import copy
import random
from dataclasses import dataclass, field
from pathlib import Path

from changed_contents import note
from changes import CONTENTS, HARMFUL, HARMLESS, apply
from fresh import add_means, fresh, layout_of, site_sheet
from layouts import Item, make_family
from sheets import Workbook
from truth import Undecided, truth_of
from words import WORDINGS, same_word

ENDINGS = [".fods"] * 5 + [".ods"] * 5 + [".xlsx"] * 4 + [".xls"] * 2
TABS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Day 6", "Day 7"]


@dataclass
class World:
    """One run of the program."""
    seed: int
    families: int = 4
    sheets: int = 15          # workbooks of each family
    same_words: bool = False
    partly: bool = False
    fuzzed: bool = False
    quiet: bool = False       # labels stay as they are and where they are
    values: tuple = ()        # other constants: folder, year or workbook; argument; value


@dataclass
class Archive:
    books: list = field(default_factory=list)     # path below the archive, workbook, truth by sheet
    examples: list = field(default_factory=list)  # family, path of OLD below the archive, workbook NEW
    pairs: list = field(default_factory=list)     # words that mean the same
    world: World = None


def foreign(state, wording):
    """The same sheet in another language."""
    def translated(item):
        if item.key not in WORDINGS[wording]:
            return item
        if item.key == "run":
            return Item("run", WORDINGS[wording]["run"])
        return state.family.item(item.key, wording)
    state.items, state.constants = [list(map(translated, items)) for items in (state.items, state.constants)]
    state.wording = wording


def changes_for(chance, world):
    if world.quiet:
        return [chance.choice(CONTENTS) for _ in range(chance.randint(0, 2))]
    if world.fuzzed:
        return [chance.choice(HARMLESS + HARMFUL) for _ in range(chance.randint(2, 5))]
    if chance.random() < 0.35:
        return []
    chosen = [chance.choice(HARMLESS) for _ in range(chance.randint(1, 3))]
    return chosen + ([chance.choice(HARMFUL)] if chance.random() < 0.3 else [])


def changed(family, tab, chance, world, other_wording):
    state = fresh(family, chance, tab)
    if family.kind == "table" and (family.series or chance.random() < 0.5):
        add_means(state, chance)
    if other_wording and chance.random() < 0.4:
        foreign(state, other_wording)
        if not world.same_words:
            state.broken |= set(WORDINGS["en"])
        state.done.append("in another language")
    for change in changes_for(chance, world):
        apply(state, change, chance)
    return state


def place_site(states, family, chance, plain):
    """The sheet with the constants of all tabs. A tab's formulas read it whatever it is called."""
    name = "Site" if plain else chance.choice(["Site", "Site", "Place", "Our site"])
    items, sheets = list(family.site), []
    if not plain and chance.random() < 0.3:
        items.insert(0, Item("filler", "Owner"))
    if not plain and chance.random() < 0.12:
        at = chance.randrange(len(items))
        if items[at].key in WORDINGS["en"]:
            items[at] = Item(items[at].key, items[at].label + " old", items[at].unit, items[at].format)
            for state in states:
                state.broken.add(items[at].key)
                state.done.append("site's label")
    values = {**states[0].runs[0], "filler": note(chance)}
    for state in states:
        state.site, state.site_items = name, items
        for key in ("altitude", "value"):
            state.runs[0]["site " + key] = values[key]
    sheets.append(site_sheet(name, items, values, f"Site of workshop {family.number}"))
    if not plain and chance.random() < 0.1:  # two sheets that fit
        sheets.append(site_sheet("Second site", items, values, f"Site of workshop {family.number}"))
        for state in states:
            state.broken |= {"altitude", "value"}
            state.done.append("two sites")
    return sheets


def place_names(book, state, chance, plain):
    for key, name in state.family.names.items():
        place = state.place(key)
        kind = chance.random() if not plain else 1
        if kind < 0.06:
            state.done.append(f"no name {name}")
            state.broken.add(("name", key))
        elif kind < 0.12:
            other = next(item.key for item in state.items if item.key != key)
            book.names[name] = (state.tab, state.place(other))
            state.broken.add(("name", key))
            state.done.append(f"name {name} elsewhere")
        elif place:
            book.names[name] = (state.tab, place)


def workbook(family, chance, world, plain=False, other_wording=None):
    """A workbook of a family and the states of its sheets."""
    tabs = chance.sample(TABS, 3 if plain else chance.randint(2, 4)) if family.tabs > 1 else \
        [f"Runs {family.number}" if plain or chance.random() < 0.6 else chance.choice(["Sheet1", "Test", "Feuille 1"])]
    if plain and family.tabs > 1:
        tabs = [f"{tab} {family.number}" for tab in tabs]  # so that a cell of one example is named like none of another
    states = [fresh(family, chance, tab) if plain else changed(family, tab, chance, world, other_wording) for tab in tabs]
    book = Workbook([])
    for state in states:
        if plain and family.series:
            add_means(state, chance)
    extra = place_site(states, family, chance, plain) if family.site else []
    place_names(book, states[0], chance, plain)
    book.sheets = [state.sheet() for state in states] + extra
    book.layouts = {state.tab: layout_of(state, sheet) for state, sheet in zip(states, book.sheets)}
    book.layouts.update({sheet.name: layout_of(None, sheet) for sheet in extra})
    return book, states


def new_of(family, book, states):
    """What the tester saved: the example with functions in it."""
    new, state = copy.deepcopy(book), states[0]
    sheet = new.sheets[0]
    for rule in family.rules:
        for run in range(len(state.runs) if family.every else 1):
            place = state.new_place(rule, run)
            format = rule.format or (sheet.cells[place].format if place in sheet.cells else "")
            sheet.put(place, state.formula(rule.template(), run), None, format)
        if rule.beside:
            sheet.put(state.word_place(rule), rule.word)
    if family.series:
        sheet.put(state.mean_place(), f"=STOVE.SERIES({state.column(family.series)})")
    if place := state.place("tester"):
        sheet.put(place, "Hearthcell trial")
    return new


def add_family(archive, number, kind, wordings, chance):
    world = archive.world
    family = make_family(number, kind, wordings[0], chance)
    other = wordings[1] if wordings[1] and chance.random() < 0.8 else None
    book, states = workbook(family, chance, world, plain=True)
    base = states[0]
    old = Path(f"workshop-{number}") / f"first{chance.choice(ENDINGS)}"
    truths = {state.tab: truth_of(state, base, sheet, world.partly) for state, sheet in zip(states, book.sheets)}
    archive.books.append((old, book, truths))
    archive.examples.append((family, old, new_of(family, book, states), states[0]))
    if other:
        pairs = [(family.item(item.key).label, family.item(item.key, other).label) for item in base.items + base.constants
                 if item.key != "run"]
        pairs += [tuple(f"{WORDINGS[one]['title']} {number}" for one in (family.wording, other))]
        pairs += [(WORDINGS[family.wording][key], WORDINGS[other][key]) for key in ["run"] * (kind == "table")]
        archive.pairs += [pair for pair in pairs if same_word(pair[0]) != same_word(pair[1])]
    made = 1
    while made < world.sheets:
        path = Path(f"workshop-{number}") / str(2010 + made % 5) / f"run-{made:02}{chance.choice(ENDINGS)}"
        try:
            book, states = workbook(family, chance, world, other_wording=other)
            for state in states:
                state.given = {argument: value for folder, argument, value in world.values
                               if str(Path(folder)) in (str(path), str(path.parent), path.parent.name)}
            truths = {state.tab: truth_of(state, base, sheet, world.partly) for state, sheet in zip(states, book.sheets)}
        except Undecided:
            continue
        archive.books.append((path, book, truths))
        made += 1


def make_archive(world):
    chance = random.Random(world.seed)
    archive = Archive(world=world)
    wordings = chance.sample(list(WORDINGS), len(WORDINGS))
    kinds = ["form", "table", "blocks", "form", "table"]
    for number in range(world.families):
        # The second wording of a family is nobody's first in this archive.
        add_family(archive, number + 1, kinds[(world.seed + number) % len(kinds)], [wordings[number], wordings[-1 - number] if number < 2 else None],
                   chance)
    return archive
