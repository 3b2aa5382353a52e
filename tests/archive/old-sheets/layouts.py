"""Families of sheets: fields, where they stand, formulas by hand, and the functions that a tester typed into one of them."""

from dataclasses import dataclass, field

from words import BY_HAND, MASSES, UNITS, WORDINGS

INPUTS_OF = {"boiling": ["altitude"], "water": ["before", "pot"], "steam": ["before", "after"],
             "heat": ["water", "start", "end", "steam"], "dry": ["laid", "left", "moisture", "char"],
             "efficiency": ["heat", "dry", "value"], "power": ["dry", "value", "time"], "normal": ["time", "start", "end"]}
ENTRIES = ["tester", "date", "stove", "air"]
ORDER = ["tester", "date", "stove", "altitude", "air", "pot", "before", "after", "start", "end", "laid", "left", "moisture",
         "char", "value", "time", "boiling", "water", "steam", "heat", "dry", "efficiency", "power", "normal"]
CONSTANTS = {"1640": "altitude", "18.5": "net calorific value"}  # that a tester typed into a call


@dataclass(frozen=True)
class Item:
    key: str
    label: str
    unit: str = ""
    format: str = ""


@dataclass
class Rule:
    """What a tester typed: a function over the old result of `key`, or beside it below a word of its own."""
    key: str
    function: str
    arguments: list          # templates: {water}*{g}
    beside: bool = False
    word: str = ""
    format: str = ""
    scale: str = ""          # behind the call, to come to the sheet's unit
    same: bool = False       # computes what the formula by hand does

    def template(self, given={}):
        """given: other values of its constants, by the argument's name."""
        written = [str(given.get(CONSTANTS[one], one)) if one in CONSTANTS else one for one in self.arguments]
        return f"=STOVE.{self.function}({';'.join(written)}){self.scale}"


@dataclass
class Family:
    number: int
    kind: str                # form, table, blocks
    wording: str
    items: list
    constants: list = field(default_factory=list)  # above a table
    site: list = field(default_factory=list)       # on a sheet of its own
    rules: list = field(default_factory=list)
    names: dict = field(default_factory=dict)      # of fields
    mass: str = "kg"
    value: str = "kJ/kg"
    units: str = "right"     # of the value; label, format
    fixed: bool = False      # $B$4 within a form
    tabs: int = 1            # a tab a day
    every: bool = True       # the tester filled all runs, not only the first
    series: str = ""         # the result whose mean a function computes now

    def scales(self):
        kilogram, kilojoule = self.mass == "kg", self.value == "kJ/kg"
        return {"k": "" if kilogram else "/1000", "v": "" if kilojoule else "*1000", "g": "*1000" if kilogram else "*1",
                "j": "/1000" if kilojoule else "*1", "back": "/1000" if kilogram else ""}

    def unit(self, key):
        return self.mass if key in MASSES else self.value if key == "value" else UNITS.get(key, "")

    def item(self, key, wording=None):
        label, unit = WORDINGS[wording or self.wording][key], self.unit(key)
        format = "0.0%" if key in ("moisture", "efficiency") else ""
        if unit and self.units == "label":
            return Item(key, f"{label}, {unit}", "", format)
        if unit and self.units == "format":
            return Item(key, label, "", f'0.000" {unit}"')
        return Item(key, label, unit, format)

    def by_hand(self, key):
        kept = {name: "{" + name + "}" for name in ORDER}
        return BY_HAND[key].format_map({**self.scales(), **kept})

    def needs(self, rule):
        """The fields that a rule reads and writes, with those of other rules' cells that it reads."""
        read = {rule.key} | {key for key in ORDER if "{" + key + "}" in rule.template()}
        for other in self.rules:
            if other is not rule and not other.beside and other.key in read:
                read |= self.needs(other)
        return read


def rule_for(family, key, chance):
    """The functions that take a result's place."""
    g, j, back = (family.scales()[name] for name in ("g", "j", "back"))
    water = ["{water}" + g, "{start}", "{end}", '"WBT 3"', "{steam}" + g]
    wood = ["({laid}-{left})" + g, "{moisture}", "{value}" + j]
    raw = ["{pot}" + g, "{before}" + g, "{start}", "{laid}" + g, "{end}", "{after}" + g, "{left}" + g, "{moisture}",
           "{value}" + j, '"WBT 3"', "{char}" + g]
    if key == "boiling":
        return Rule(key, "BOILINGPOINT", [chance.choice(["{altitude}", "1640"])])
    if key == "heat":
        return Rule(key, "USEFULHEAT", water, same=True)
    if key == "dry":
        wood[2] = chance.choice([wood[2], wood[2], "18.5"])
        return Rule(key, "EQUIVALENTDRYFUEL", [*wood, "{char}" + g, '"WBT 3"'], scale=back, same=True)
    if key == "efficiency":
        return chance.choice([
            Rule(key, "BENCHEFFICIENCY", raw, format="0.0%", same=True),
            Rule(key, "EFFICIENCY", ["{heat}", "{dry}" + g + "*{value}" + j], format="0.0%", same=True)])
    if key == "power":
        return Rule(key, "FIREPOWER", ["{dry}" + g + "*{value}" + j, "{time}"], same=True)
    return Rule(key, "NORMALBOILTIME", ["{time}", "{start}", "{end}"], same=True)


def with_inputs(keys):
    found = set(keys)
    while more := {key for result in found for key in INPUTS_OF.get(result, [])} - found:
        found |= more
    return found


def make_family(number, kind, wording, chance):
    family = Family(number, kind, wording, [], mass=chance.choice(["kg", "g"]), value=chance.choice(["kJ/kg", "MJ/kg"]),
                    units=chance.choice(["right", "right", "label", "format"]) if kind != "table" else
                    chance.choice(["label", "label", "format"]), fixed=kind == "form" and chance.random() < 0.3,
                    every=chance.random() < 0.6 or kind == "blocks")
    results = chance.sample(["heat", "dry", "efficiency", "power", "normal"] + ["boiling"] * (kind == "form"), 3)
    fields = with_inputs(results) | set(chance.sample(ENTRIES, 2))
    ruled = chance.sample(results, chance.randint(1, len(results)))
    family.rules = [rule_for(family, key, chance) for key in ruled]
    fields |= {key for rule in family.rules for key in ORDER if "{" + key + "}" in rule.template()}
    fields = with_inputs(fields)
    outside = {"altitude", "value"} & fields
    keys = [key for key in ORDER if key in fields]
    if chance.random() < 0.4:  # some workshops have their readings in another order
        readings = [key for key in keys if key not in BY_HAND]
        chance.shuffle(readings)
        keys = readings + [key for key in keys if key in BY_HAND]
    if kind == "table":
        family.constants = [family.item(key) for key in ("altitude", "value") if key in outside]
    elif kind == "form" and outside and chance.random() < 0.4:
        family.site = [family.item(key) for key in ("altitude", "value")]
    if family.constants or family.site:
        keys = [key for key in keys if key not in outside]
    family.items = [family.item(key) for key in keys]
    if kind == "form" and not family.site and chance.random() < 0.35:
        family.names = {key: f"{key}_{number}" for key in ("altitude", "value", "moisture", "end") if key in keys}
    if kind == "form":
        family.tabs = chance.choice([1, 1, 1, 4])
        if family.tabs > 1:
            family.names = {}
    place_beside(family, chance)
    if kind == "table" and chance.random() < 0.25:
        family.rules, family.series = [], chance.choice(results)
    return family


def place_beside(family, chance):
    for rule in family.rules:
        # A workbook with names has the others stand over the old results.
        rule.beside = family.kind != "blocks" and chance.random() < 0.45
        if rule.beside:
            rule.word = f"{WORDINGS[family.wording][rule.key]}, new" if family.kind == "table" else "By function"
            if rule.scale:
                rule.scale = ""  # in grams, beside what is in kilograms
        else:
            rule.format = ""
