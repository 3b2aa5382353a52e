"""The pinned numbers as a sheet for a real Calc, and what that Calc made of them.

in_calc.py write PINNED.TXT CALCADDINS.XCU SHEET.FODS
in_calc.py compare PINNED.TXT BOUNDS.TXT CALCULATED.FODS

A row holds a call, as an array formula of one row. Calls are left out whose result is a text or has several rows. A file of
LibreOffice 7.4 holds a number to 15 digits or less: what is cut off there is allowed besides the bound."""

import decimal
import math
import re
import sys
import xml.etree.ElementTree as ElementTree
from xml.sax.saxutils import quoteattr

OFFICE, TABLE, TEXT = (f"{{urn:oasis:names:tc:opendocument:xmlns:{part}:1.0}}" for part in ("office", "table", "text"))
REGISTRY = "{http://openoffice.org/2001/registry}"


def pinned(path):
    """Name, arguments and results of each call."""
    with open(path, encoding="utf-8") as file:
        for line in file:
            call, equals, result = line.strip().rpartition(" = ")
            results = result.strip("[]").split()
            name, _, arguments = call.partition("(")
            in_one_row = "/" not in result.replace("#N/A", "") and (len(results) == 1 or name not in ("EACHROW", "MINUTES"))
            if equals and not line.startswith("#") and '"' not in result and in_one_row:
                yield name, arguments[:-1], results


def in_sheet(arguments):
    """Arguments as a formula in a file has them: a block's rows are apart by |."""
    def block(found):
        rows = [";".join('""' if cell == "_" else cell for cell in row.split()) for row in found[1].split(" / ")]
        return "{" + ("|".join(rows) if len(rows) > 1 else rows[0].replace(";", "|")) + "}"
    # Nothing within a text is a block.
    parts = re.split(r'("(?:[^"]|"")*")', arguments)
    parts = [part if index % 2 else part.replace("; _ ", ";") for index, part in enumerate(parts)]
    text = "".join(parts)
    return re.sub(r"\[([^\]]*)\]", block, text)


def write(calls, registration, sheet):
    stored = {}
    for function in ElementTree.parse(registration).iter("node"):
        for prop in function.findall("prop"):
            if prop.get(REGISTRY + "name") == "DisplayName" and (value := prop.find("value")) is not None:
                stored[value.text] = function.get(REGISTRY + "name")
    with open(sheet, "w", encoding="utf-8") as file:
        file.write('<?xml version="1.0" encoding="UTF-8"?><office:document office:version="1.3" '
                   'office:mimetype="application/vnd.oasis.opendocument.spreadsheet"')
        for part in ("office", "table", "text"):
            file.write(f' xmlns:{part}="urn:oasis:names:tc:opendocument:xmlns:{part}:1.0"')
        file.write(' xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"><office:body><office:spreadsheet><table:table table:name="calls">')
        for name, arguments, results in calls:
            formula = f"of:=HEARTHCELL.STOVE.{stored['STOVE.' + name].upper()}({in_sheet(arguments)})"
            file.write(f'<table:table-row><table:table-cell table:formula={quoteattr(formula)} '
                       f'table:number-matrix-rows-spanned="1" table:number-matrix-columns-spanned="{len(results)}"/>'
                       "</table:table-row>\n")
        file.write("</table:table></office:spreadsheet></office:body></office:document>")


def shown(row):
    """What the cells of a row hold: numbers as such, all else as it is shown."""
    found = []
    for cell in row.iter(TABLE + "table-cell"):
        times = int(cell.get(TABLE + "number-columns-repeated", 1))
        value = cell.get(OFFICE + "value")
        text = "".join(cell.itertext()).strip()
        is_number = value is not None and not text.startswith(("#", "Err:"))
        found += [value if is_number else text] * min(times, 100)
    return found


def is_within(expected, got, bound):
    """Whether a number as it is shown is that which is expected, within so many units of the last place."""
    try:
        number, digits = float(expected), decimal.Decimal(got)
    except (ValueError, decimal.InvalidOperation):
        return expected == got
    half_of_last_digit = decimal.Decimal((0, (5,), digits.as_tuple().exponent - 1))
    return abs(decimal.Decimal(number) - digits) <= half_of_last_digit + bound * decimal.Decimal(math.ulp(number))


def compare(calls, bounds, calculated):
    with open(bounds, encoding="utf-8") as file:
        allowed = {name: int(ulps) for name, ulps in (line.split() for line in file if not line.startswith("#") and line.strip())}
    rows = ElementTree.parse(calculated).iter(TABLE + "table-row")
    count = numbers = wrong = same = 0
    for (name, arguments, results), row in zip(calls, rows):
        got = shown(row)[:len(results)]
        got += [""] * (len(results) - len(got))
        count += 1
        for expected, number in zip(results, got):
            numbers += 1
            same += is_within(expected, number, 0)
            if not is_within(expected, number, allowed.get(name, allowed["*"])):
                wrong += 1
                print(f"{name}({arguments[:200]}) = {expected}, here {number}")
    print(f"{count} calls, {numbers} results: {same} the same in all digits shown, "
          f"{numbers - same - wrong} within the bound, {wrong} not")
    return 1 if wrong or not count else 0


def main(task, calls, *more):
    calls = list(pinned(calls))
    return write(calls, *more) if task == "write" else compare(calls, *more)


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
