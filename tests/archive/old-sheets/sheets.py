"""A workbook as it is before it has a format: sheets of cells, and the names of some of them."""

import re
from dataclasses import dataclass, field

TOKEN = re.compile(r""""[^"]*"|(?:('[^']+'|[^\W\d]\w*)\.)?(\$?[A-Z]{1,2}\$?[0-9]+)(?::(\$?[A-Z]{1,2}\$?[0-9]+))?(?![\w(.])""")


# A file has the name that a function is stored by.
STORED = {"STOVE.EQUIVALENTDRYFUEL(": "STOVE.DRYWOOD("}


class Error(str):
    """What a cell shows instead of a result: #DIV/0!"""


@dataclass
class Cell:
    content: object = None  # a number, a text, a formula (=4.186*B3), an Error
    result: object = None   # of a formula, as the file holds it
    format: str = ""        # as a spreadsheet writes it: 0.0%
    columns: int = 1        # that a merged cell spans


@dataclass
class Sheet:
    name: str
    cells: dict = field(default_factory=dict)  # of (row, column), from 0

    def put(self, place, content, result=None, format="", columns=1):
        self.cells[place] = Cell(content, result, format, columns)


@dataclass
class Workbook:
    sheets: list
    names: dict = field(default_factory=dict)    # of a sheet's name and a place
    layouts: dict = field(default_factory=dict)  # of a sheet's name: its labels and where they stand


def is_formula(content):
    return isinstance(content, str) and content.startswith("=")


def column_name(column):
    return column_name(column // 26 - 1) + chr(65 + column % 26) if column >= 26 else chr(65 + column)


def cell_name(place, fixed=False):
    row, column = place
    return f"${column_name(column)}${row + 1}" if fixed else f"{column_name(column)}{row + 1}"


def place_of(name):
    letters, digits = re.fullmatch(r"\$?([A-Z]+)\$?([0-9]+)", name).groups()
    column = 0
    for letter in letters:
        column = column * 26 + ord(letter) - 64
    return int(digits) - 1, column - 1


def quoted(sheet):
    return sheet if re.fullmatch(r"[^\W\d]\w*", sheet) else f"'{sheet}'"


def with_references(formula, write):
    """The formula with each reference as write(sheet or None, cell, last cell or None) gives it."""
    return TOKEN.sub(lambda found: write(*found.groups()) if found[2] else found[0], formula)


def as_stored(formula):
    for name, stored in STORED.items():
        formula = formula.replace(name, stored)
    return formula.replace("STOVE.", "HEARTHCELL.STOVE.")


def as_shown(formula):
    formula = formula.replace("HEARTHCELL.STOVE.", "STOVE.")
    for name, stored in STORED.items():
        formula = formula.replace(stored, name)
    return formula
