"""Reads the cells of a workbook that an office saved: .fods, .ods, .xlsx; .xls after it was made one of these."""

import re
import xml.etree.ElementTree as xml
import zipfile

from sheets import Cell, Error, as_shown, cell_name, is_formula, place_of

NAMESPACE = "urn:oasis:names:tc:opendocument:xmlns:"
TABLE, OFFICE, TEXT = (f"{{{NAMESPACE}{name}:1.0}}" for name in ("table", "office", "text"))
KIND = "{urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0}value-type"
MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
LINK = "{http://schemas.openxmlformats.org/officeDocument/2006/relationships}id"
OUTSIDE_QUOTES = re.compile(r"""("[^"]*"|'[^']*')""")
MANY = 200  # empty cells that a file repeats to its edge


def outside_quotes(formula, change):
    return "".join(part if part[:1] in ("'", '"') else change(part) for part in OUTSIDE_QUOTES.split(formula))


def plain(formula):
    """One spelling for all: no blanks, STOVE.NAME, no = but the first."""
    formula = outside_quotes(formula, lambda part: as_shown(re.sub(r"\s", "", part)))
    return formula if is_formula(formula) else "=" + formula


def from_odf(formula):
    formula = formula.partition(":")[2] if re.match(r"\w+:", formula) else formula

    def reference(found):
        sheet, cell, last = found.groups()
        return (f"{sheet.lstrip('$')}." if sheet else "") + cell + (f":{last}" if last else "")
    return plain(re.sub(r"\[(\$?(?:'[^']*'|[^\].']*))?\.([$A-Z0-9]+)(?::\.([$A-Z0-9]+))?\]", reference, formula))


def from_xlsx(formula):
    return plain(outside_quotes(formula, lambda part: part.replace(",", ";").replace("!", ".").replace("$'", "'")))


def paragraph(part):
    blanks = {f"{TEXT}s": " "}
    return "".join((one.text or "") + (blanks.get(one.tag, "") * int(one.get(f"{TEXT}c", 1)))
                   + (one.tail or "" if one is not part else "") for one in part.iter())


def odf_content(cell):
    text = "\n".join(map(paragraph, cell.iter(f"{TEXT}p")))
    kind = cell.get(f"{OFFICE}value-type")
    if cell.get(KIND) == "error":
        value = Error(text)
    elif kind in ("float", "percentage", "currency"):
        value = float(cell.get(f"{OFFICE}value"))
    elif kind == "time":
        hours, minutes, seconds = re.fullmatch(r"PT(\d+)H(\d+)M([\d.,]+)S", cell.get(f"{OFFICE}time-value")).groups()
        value = (int(hours) * 60 + int(minutes) + float(seconds.replace(",", ".")) / 60) / 1440
    else:
        value = text if kind else None
    formula = cell.get(f"{TABLE}formula")
    shown = "0%" if kind == "percentage" else ""
    return Cell(from_odf(formula), value, shown) if formula else Cell(value, None, shown)


def odf_cells(table):
    cells, row = {}, 0
    for line in table.iter(f"{TABLE}table-row"):
        column = 0
        for cell in line:
            many = int(cell.get(f"{TABLE}number-columns-repeated", 1))
            content = odf_content(cell)
            if content.content is not None:
                cells.update({(row, column + at): content for at in range(min(many, MANY))})
            column += many
        row += int(line.get(f"{TABLE}number-rows-repeated", 1))
    return cells


def read_odf(text):
    return {table.get(f"{TABLE}name"): odf_cells(table) for table in xml.fromstring(text).iter(f"{TABLE}table")
            if table.get(f"{TABLE}name")}


def xlsx_content(cell, shared):
    formula, value, kind = cell.find(f"{MAIN}f"), cell.findtext(f"{MAIN}v"), cell.get("t")
    if kind == "s":
        value = shared[int(value)]
    elif kind == "inlineStr":
        value = "".join(cell.find(f"{MAIN}is").itertext())
    elif kind == "e":
        value = Error(value)
    elif kind != "str" and value is not None:
        value = float(value)
    if formula is None:
        return Cell(value)
    if formula.text is None:
        raise ValueError("a shared formula: " + cell.get("r"))
    return Cell(from_xlsx(formula.text), value)


def read_xlsx(file):
    with zipfile.ZipFile(file) as parts:
        shared = []
        if "xl/sharedStrings.xml" in parts.namelist():
            shared = ["".join(part.text or "" for part in one.iter(f"{MAIN}t"))
                      for one in xml.fromstring(parts.read("xl/sharedStrings.xml"))]
        links = {link.get("Id"): link.get("Target") for link in xml.fromstring(parts.read("xl/_rels/workbook.xml.rels"))}
        sheets = {}
        for sheet in xml.fromstring(parts.read("xl/workbook.xml")).iter(f"{MAIN}sheet"):
            cells = {place_of(cell.get("r")): xlsx_content(cell, shared)
                     for cell in xml.fromstring(parts.read("xl/" + links[sheet.get(LINK)])).iter(f"{MAIN}c")}
            sheets[sheet.get("name")] = {place: cell for place, cell in cells.items() if cell.content is not None}
        return sheets


def read(file):
    """Cells by place, by sheet."""
    if file.suffix == ".xlsx":
        return read_xlsx(file)
    if file.suffix == ".ods":
        with zipfile.ZipFile(file) as parts:
            return read_odf(parts.read("content.xml"))
    return read_odf(file.read_text(encoding="utf-8"))


def read_all(files, scratch, converter):
    """The cells of each; .xls are converted in one call, in a folder of numbers."""
    old = [file for file in files if file.suffix == ".xls"]
    scratch.mkdir(parents=True, exist_ok=True)
    links = [scratch / f"{at}.xls" for at in range(len(old))]
    for link, file in zip(links, old):
        link.unlink(missing_ok=True)
        link.symlink_to(file.resolve())
    if old:
        converter.convert(links, "fods", scratch / "flat")
    by_office = {file: scratch / "flat" / f"{at}.fods" for at, file in enumerate(old)}
    return {file: read(by_office.get(file, file)) for file in files}


def difference(before, after):
    """What differs between two cells in words, None where they are the same."""
    one, other = before and before.content, after and after.content
    if isinstance(one, (int, float)) and isinstance(other, (int, float)):
        return None if abs(one - other) <= 1e-12 * max(abs(one), abs(other)) else f"{one} is {other}"
    if one is None and other is None or one == other and isinstance(one, Error) == isinstance(other, Error):
        return None
    return f"{one!r} is {other!r}"


def name_at(sheet, place):
    return f"{sheet}.{cell_name(place)}"
