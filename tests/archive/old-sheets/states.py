"""One sheet of a family as a changed copy of it stands in one workbook, and what may become of it."""

from dataclasses import dataclass, field

from layouts import BY_HAND
from sheets import Error, Sheet, cell_name, quoted
from words import WORDINGS, same_word


def evaluated(template, values):
    """What Calc computes; an empty cell counts as 0."""
    used = {key: 0 if value is None else value for key, value in values.items() if "{" + key + "}" in template}
    for value in used.values():
        if isinstance(value, Error):
            return value
    if any(isinstance(value, str) for value in used.values()):
        return Error("#VALUE!")
    try:
        return float(eval(template.lstrip("=").format_map(used), {"__builtins__": {}}))
    except ZeroDivisionError:
        return Error("#DIV/0!")


@dataclass
class State:
    family: object
    tab: str
    items: list
    constants: list
    runs: list                                   # readings, a dict each
    titles: list = field(default_factory=list)   # of blocks
    left: int = 0                                # empty columns before all
    gap: int = 1                                 # rows between constants and headings
    instead: dict = field(default_factory=dict)  # of key and run: what stands where a formula stood
    beside: dict = field(default_factory=dict)   # of rule's key and run: a note in its way
    below: list = field(default_factory=list)    # rows below a table: label and what they compute
    above: int = 0                               # rows that somebody put above all
    site: str = ""                               # the sheet with its constants
    site_items: list = field(default_factory=list)
    broken: set = field(default_factory=set)     # keys whose label or unit is another one
    doubtful: set = field(default_factory=set)   # keys that may be refused or not
    loose: bool = False                          # cells beside the results may be refused or not
    given: dict = field(default_factory=dict)    # constants of its folder, by the argument's name
    done: list = field(default_factory=list)     # what was changed, in words
    wording: str = ""                            # where it is not the family's

    # Where things stand.
    def top(self):
        return 1 + self.above

    def head(self):
        return self.top() + len(self.constants) + self.gap

    def index(self, key, items):
        return next((at for at, item in enumerate(items) if item.key == key), None)

    def step(self):
        return 2 if self.family.units == "right" else 1

    def place(self, key, run=0):
        """On this sheet; None where it does not stand on it."""
        if self.family.kind == "table" and (at := self.index(key, self.constants)) is not None:
            return self.top() + at, self.left + 1
        if (at := self.index(key, self.items)) is None:
            return None
        if self.family.kind == "table":
            return self.head() + 1 + run, self.left + at
        if self.family.kind == "blocks":
            return self.top() + 1 + at, self.left + 1 + self.step() * run
        return self.top() + at, self.left + 1

    def elsewhere(self):
        """Fields that stand on the sheet of the site."""
        return {item.key for item in self.site_items}

    def label_place(self, key):
        row, column = self.place(key)
        at_side = self.family.kind != "table" or self.index(key, self.constants) is not None
        return (row, self.left) if at_side else (self.head(), column)

    def new_place(self, rule, run=0):
        if not rule.beside:
            return self.place(rule.key, run)
        number = [other for other in self.family.rules if other.beside].index(rule)
        if self.family.kind == "table":
            return self.head() + 1 + run, self.left + len(self.items) + number
        place = self.place(rule.key, run)
        return place and (place[0], self.left + 1 + self.step())

    def column(self, key):
        """All runs' results."""
        return ":".join(cell_name(self.place(key, run)) for run in (0, len(self.runs) - 1))

    def mean_place(self):
        at = next((at for at, (_, function) in enumerate(self.below) if function == "AVERAGE"), None)
        return None if at is None or not self.place(self.family.series) else \
            (self.head() + 1 + len(self.runs) + at, self.place(self.family.series)[1])

    def word_place(self, rule):
        if self.family.kind == "table":
            return self.head(), self.new_place(rule)[1]
        return self.above, self.left + 1 + self.step()

    # What stands there.
    def reference(self, key, run):
        if self.site and (at := self.index(key, self.site_items)) is not None:
            return f"{quoted(self.site)}.{cell_name((1 + at, 1), self.family.fixed)}"
        place = self.place(key, run)
        if place is None:
            return "#REF!"
        constant = self.family.kind == "table" and self.index(key, self.constants) is not None
        return cell_name(place, constant or self.family.fixed)

    def formula(self, template, run, names=True):
        """With this sheet's cells."""
        keys = {key for key in WORDINGS["en"] if "{" + key + "}" in template}
        named = self.family.names if names else {}
        return template.format_map({key: named.get(key) or self.reference(key, run) for key in keys})

    def values(self, run):
        """All fields of a run: what its cells hold, results by hand among them."""
        values = dict(self.runs[run])
        if self.family.kind == "table" or self.site:
            for key in ("altitude", "value"):
                values[key] = self.runs[0].get("site " + key, values.get(key))
        for key in BY_HAND:
            if (key, run) in self.instead and not str(self.instead[key, run]).startswith("="):
                values[key] = self.instead[key, run]
            elif self.index(key, self.items) is not None:
                values[key] = evaluated(self.written(key, run), values)
        return values

    def written(self, key, run):
        return self.instead.get((key, run), self.family.by_hand(key))

    def is_empty(self, run):
        """A row that nobody filled in."""
        return all(self.runs[run].get(item.key) is None for item in self.items if item.key not in BY_HAND
                   and item.key != "run")

    def put_item(self, sheet, item, run, values):
        place = self.place(item.key, run)
        written = self.written(item.key, run) if item.key in BY_HAND else None
        if isinstance(written, str) and written.startswith("="):
            sheet.put(place, self.formula(written, run, names=False), values[item.key], item.format)
        else:
            content = written if written is not None else values.get(item.key)
            if isinstance(content, Error):
                sheet.put(place, "=NA()", content, item.format)
            elif content is not None or item.format:
                sheet.put(place, content, None, item.format)

    def sheet(self):
        family, sheet = self.family, Sheet(self.tab)
        sheet.put((self.above, self.left), f"{WORDINGS[self.wording or family.wording]['title']} {family.number}")
        for key in [item.key for item in self.items + self.constants]:
            item = next(one for one in self.items + self.constants if one.key == key)
            if item.label:
                sheet.put(self.label_place(key), item.label)
            if item.unit:
                row, column = self.place(key)
                if family.kind == "table":
                    sheet.put((row, column + 1), item.unit)
                for run in range(len(self.runs) if family.kind != "table" else 0):
                    sheet.put((row, column + 1 + self.step() * run), item.unit)
        for run in range(len(self.runs)):
            values = self.values(run)
            for item in self.items + (self.constants if run == 0 else []):
                self.put_item(sheet, item, run, values)
        for run, text in enumerate(self.titles):
            sheet.put((self.top(), self.left + 1 + self.step() * run), text, columns=self.step())
        for (key, run), note in self.beside.items():
            rule = next(rule for rule in family.rules if rule.key == key)
            if place := self.word_place(rule) if run is None else self.new_place(rule, run):
                sheet.put(place, note)
        self.put_below(sheet)
        return sheet

    def put_below(self, sheet):
        last = self.head() + len(self.runs)
        for at, (label, function) in enumerate(self.below):
            sheet.put((last + 1 + at, self.left), label)
            for item in [item for item in self.items if item.key in BY_HAND]:
                column = self.place(item.key)[1]
                if function == "same":
                    formula = self.formula(self.family.by_hand(item.key), len(self.runs) + at)
                    sheet.put((last + 1 + at, column), formula, None, item.format)
                else:
                    sheet.put((last + 1 + at, column), f"={function}({self.column(item.key)})", None, item.format)


def labels_of(sheet):
    """How often each label stands on a sheet."""
    counts = {}
    for cell in sheet.cells.values():
        if isinstance(cell.content, str) and not cell.content.startswith("="):
            word = same_word(cell.content)
            counts[word] = counts.get(word, 0) + 1
    return counts
