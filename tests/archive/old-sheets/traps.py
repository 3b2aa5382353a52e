"""Sheets on which what is typed into one would be wrong in another unless its labels, units and ends are looked at closely.

Of each: the old sheet, the cells typed into it, and others like it with what may be written there. Any refusal is right.
"""

from dataclasses import dataclass, field

from sheets import Sheet, Workbook, place_of


@dataclass
class Trap:
    name: str
    old: list                                    # rows
    typed: dict                                  # cells of the new sheet
    others: dict = field(default_factory=dict)   # by name: rows, and cells that may be written


def book(rows, typed=()):
    sheet = Sheet("Runs")
    for row, cells in enumerate(rows):
        for column, content in enumerate(cells):
            if content is not None:
                sheet.put((row, column), content)
    for cell, content in dict(typed).items():
        sheet.put(place_of(cell), content)
    return Workbook([sheet])


NAMES = ["Round", "Tall", "Clay", "Wide", "Low", "Brick", "Oval", "Deep", "Twin", "Plain", "Old"]


def table(runs, below=(), title="Runs of a season", names=None, of="boiled"):
    """A run a row, its heat by hand. Stoves that are others from sheet to sheet."""
    names = names or [NAMES[(5 * runs + 3 * at) % len(NAMES)] for at in range(runs)]
    head = [title], [], ["Date", "Stove type", f"Water {of}, g", f"Rise {of}, K", f"Heat {of}, kJ"]
    rows = [[f"{run + 3} May", names[run], 5000 + 10 * run, 70 + run, f"=4.186*C{run + 4}*D{run + 4}/1000"]
            for run in range(runs)]
    return [*head, *rows, *below]


def mean(runs, word="Mean", text="AVERAGE"):
    return [[word, None, None, None, f"={text}(E4:E{runs + 3})"]]


def series(runs):
    return f"=STOVE.SERIES(E4:E{runs + 3})"


def means():
    named = ("Round", "Tall", "Std jiko", "Total heat", "Low", "Brick")
    others = {str(runs): (table(runs, mean(runs)), {f"E{runs + 4}": [series(runs)]}) for runs in (3, 4, 5, 6)}
    others["names that are words of totals"] = table(6, mean(6), names=named), {"E10": [series(6)]}
    others["a number below"] = table(5, [*mean(5), [], [], [None, None, None, None, 9999]]), {"E9": [series(5)]}
    others["another word"] = table(5, mean(5, "Mittelwert")), {}
    return Trap("means", table(4, mean(4)), {"E8": series(4)}, others)


def beside():
    """Beside the mean, in a cell that is empty on the old sheets."""
    def rows(runs, **more):
        return [["Season beside", None], *table(runs, mean(runs), of="beside", **more)[1:]]
    others = {str(runs): (rows(runs), {f"F{runs + 4}": [series(runs)]}) for runs in (3, 4, 5, 6)}
    others["a name that is a word of totals"] = (
        rows(5, names=["Round", "Tall", "Std jiko", "Deep", "Old"]), {"F9": [series(5)]})
    return Trap("beside", rows(4), {"F8": series(4)}, others)


def named_rows():
    words = ["one", "two", "three", "four", "five"]

    def rows(runs):
        found = [["Named trials"], [], ["Its name", "Trial water, g", "Trial rise, K", "Trial heat, kJ"]]
        for at in range(runs):
            found.append([f"Trial {words[at]}", 5000 + at, 70 + at, f"=4.186*B{at + 4}*C{at + 4}/1000"])
        return [*found, [], ["Of all trials", None, None, f"=AVERAGE(D4:D{runs + 3})"]]
    others = {f"three {at}": (rows(3), {"D8": ["=STOVE.SERIES(D4:D6)"]}) for at in range(3)}
    others["five"] = rows(5), {"D10": ["=STOVE.SERIES(D4:D8)"]}
    return Trap("named rows", rows(3), {"D8": "=STOVE.SERIES(D4:D6)"}, others)


def above():
    """Above the table, with nothing below it."""
    def rows(runs, below=()):
        return [["Season sheet", None, None, "Mean heat, kJ", f"=AVERAGE(E4:E{runs + 3})"],
                *table(runs, below, of="above")[1:]]
    others = {str(runs): (rows(runs), {"E1": [series(runs)]}) for runs in (3, 4, 5, 6)}
    others["a number below"] = rows(5, [[], [], [None, None, None, None, 9999]]), {"E1": [series(5)]}
    others["a mean by another word"] = rows(5, mean(5, "Mittelwert")), {"E1": [series(5)]}
    return Trap("above", rows(4), {"E1": series(4)}, others)


def unit_before():
    def rows(unit, mass):
        return [["Heater test"], ["Water in it", unit, mass], ["Cold", "°C", 20], ["Hot", "°C", 90],
                ["Heat in it", "kJ", "=4.186*C2*(C4-C3)"]]
    formula = "=STOVE.WATERHEAT(C2*1000;C3;C4)"
    others = {f"kg {mass}": (rows("kg", mass), {"C5": [formula]}) for mass in (4.5, 5.2, 4.9)}
    others["pounds"] = rows("lb", 11), {}
    return Trap("unit before", rows("kg", 5), {"C5": formula}, others)


def unit_in_brackets():
    def rows(first, second, water="C2"):
        return [["Kettle test"], [first, "(kg)", 5.0 if water == "C2" else 1.0],
                [second, "(kg)", 1.0 if water == "C2" else 5.0], ["Began", "(°C)", 20], ["Ended", "(°C)", 90],
                ["Heat of the kettle", "(kJ)", f"=4.186*{water}*(C5-C4)"]]
    formula = "=STOVE.WATERHEAT(C2*1000;C4;C5)"
    others = {str(at): (rows("Water of it", "Wood of it"), {"C6": [formula]}) for at in range(3)}
    others["rows that changed places"] = (rows("Wood of it", "Water of it", "C3"),
                                          {"C6": [formula.replace("C2", "C3")]})
    return Trap("unit in brackets", rows("Water of it", "Wood of it"), {"C6": formula}, others)


def sections():
    def rows(one, other):
        found = [["Two phases"]]
        for title, mass in (one, other):
            at = len(found) + 1
            found += [[title], ["Pot water, g", mass], ["From, °C", 20], ["To, °C", 90],
                      ["Phase heat, kJ", f"=4.186*B{at + 1}*(B{at + 3}-B{at + 2})/1000"], []]
        return found
    cold, hot = ("Phase one", 5000), ("Phase two", 2500)
    formula = "=STOVE.WATERHEAT(B3;B4;B5)"
    others = {str(at): (rows(cold, hot), {"B6": [formula]}) for at in range(3)}
    # The formula belongs to the first phase, which stands below the other here.
    others["exchanged"] = rows(hot, cold), {"B12": ["=STOVE.WATERHEAT(B9;B10;B11)"]}
    return Trap("sections", rows(cold, hot), {"B6": formula}, others)


TRAPS = [means(), above(), beside(), named_rows(), unit_before(), unit_in_brackets(), sections()]
