"""Writes workbooks as .fods, .ods, .xlsx with no office, and .xls through one."""

import re
import subprocess
import zipfile
from xml.sax.saxutils import escape, quoteattr

from sheets import Error, as_stored, cell_name, is_formula, quoted, with_references
from write_parts import HEAD, formats_of, grid, write_zip
from write_xlsx import write_xlsx

SPACES = "".join(f' xmlns:{name}="urn:oasis:names:tc:opendocument:xmlns:{full}:1.0"' for name, full in (
    ("office", "office"), ("text", "text"), ("table", "table"), ("style", "style"), ("number", "datastyle"))) + (
    ' xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"'
    ' xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"')
MEDIA = "application/vnd.oasis.opendocument.spreadsheet"


def odf_formula(formula):
    def write(sheet, cell, last):
        return f"[{'$' + sheet if sheet else ''}.{cell}" + (f":.{last}]" if last else "]")
    return "of:" + as_stored(with_references(formula, write))


def odf_style(number, format):
    name = f'style:name="f{number}"'
    if format == "[HH]:MM":
        data = f'<number:time-style {name} number:truncate-on-overflow="false"><number:hours number:style="long"/>' \
               '<number:text>:</number:text><number:minutes number:style="long"/></number:time-style>'
    else:
        digits, words = re.fullmatch(r'0(?:\.(0+))?(%|".*")?', format).groups()
        kind = "percentage-style" if words == "%" else "number-style"
        text = f"<number:text>{escape(words.strip(chr(34)))}</number:text>" if words else ""
        places = len(digits or "")
        data = f'<number:{kind} {name}><number:number number:decimal-places="{places}" ' \
               f'number:min-decimal-places="{places}" number:min-integer-digits="1"/>{text}</number:{kind}>'
    return data + f'<style:style style:name="c{number}" style:family="table-cell" style:data-style-name="f{number}"/>'


def odf_value(value):
    if isinstance(value, Error):
        return ' office:value-type="string" office:string-value="" calcext:value-type="error"', escape(value)
    if isinstance(value, str):
        return ' office:value-type="string"', re.sub("^ | (?= )", "<text:s/>", escape(value))
    return (f' office:value-type="float" office:value="{value!r}"', "") if value is not None else ("", "")


def odf_cell(cell, formats):
    if cell is None:
        return "<table:table-cell/>"
    formula = f" table:formula={quoteattr(odf_formula(cell.content))}" if is_formula(cell.content) else ""
    attributes, text = odf_value(cell.result if formula else cell.content)
    style = f' table:style-name="c{formats.index(cell.format)}"' if cell.format else ""
    span = f' table:number-columns-spanned="{cell.columns}" table:number-rows-spanned="1"' if cell.columns > 1 else ""
    return f"<table:table-cell{style}{span}{formula}{attributes}>" + (f"<text:p>{text}</text:p>" if text else "") + \
        "</table:table-cell>"


def odf_row(row, formats):
    written, covered = "", 0
    for cell in row:
        written += "<table:covered-table-cell/>" if covered and cell is None else odf_cell(cell, formats)
        covered = cell.columns - 1 if cell else max(covered - 1, 0)
    return f"<table:table-row>{written or '<table:table-cell/>'}</table:table-row>"


def odf(book, element, more=""):
    formats = formats_of(book)
    styles = "".join(odf_style(number, format) for number, format in enumerate(formats))
    tables = "".join(f"<table:table table:name={quoteattr(sheet.name)}>"
                     + "".join(odf_row(row, formats) for row in grid(sheet)) + "</table:table>" for sheet in book.sheets)
    names = "".join(f"<table:named-range table:name={quoteattr(name)} table:base-cell-address=\"$A$1\" "
                    f"table:cell-range-address={quoteattr('$' + quoted(sheet) + '.' + cell_name(place, True))}/>"
                    for name, (sheet, place) in book.names.items())
    names = names and f"<table:named-expressions>{names}</table:named-expressions>"
    return (f'{HEAD}<office:{element}{SPACES} office:version="1.3"{more}><office:automatic-styles>{styles}'
            f"</office:automatic-styles><office:body><office:spreadsheet>{tables}{names}</office:spreadsheet>"
            f"</office:body></office:{element}>")


def write_fods(book, path):
    path.write_text(odf(book, "document", f' office:mimetype="{MEDIA}"'), encoding="utf-8")


def write_ods(book, path):
    manifest = "".join(f'<manifest:file-entry manifest:full-path="{name}" manifest:media-type="{media}"/>'
                       for name, media in (("/", MEDIA), ("content.xml", "text/xml")))
    write_zip(path, {"mimetype": MEDIA, "content.xml": odf(book, "document-content"), "META-INF/manifest.xml":
              f'{HEAD}<manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" '
              f'manifest:version="1.3">{manifest}</manifest:manifest>'})


FILTERS = {".ods": "ods", ".xlsx": "xlsx:Calc MS Excel 2007 XML", ".xls": "xls:MS Excel 97"}
WRITERS = {".fods": write_fods, ".ods": write_ods, ".xlsx": write_xlsx}


class Converter:
    """An office with a profile of its own that has the package."""

    def __init__(self, office, package, scratch):
        with zipfile.ZipFile(package) as content:
            content.extractall(scratch / "bundled" / "hearthcell")
        self.command = [f"{office}/soffice", f"-env:UserInstallation={(scratch / 'profile').as_uri()}",
                        f"-env:BUNDLED_EXTENSIONS={(scratch / 'bundled').as_uri()}", "--headless", "--convert-to"]

    def convert(self, files, filter, folder):
        folder.mkdir(parents=True, exist_ok=True)
        subprocess.run([*self.command, filter, "--outdir", folder, *files], check=True, timeout=300,
                       stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)


def write_all(books, scratch, converter):
    """books: path and workbook of each. What only an office can write, or is to be as an office writes it (behind
    'saved-'), goes through it."""
    by_office = {}
    (scratch / "flat").mkdir(parents=True, exist_ok=True)
    for number, (path, book) in enumerate(books):
        path.parent.mkdir(parents=True, exist_ok=True)
        if path.suffix in WRITERS and not path.name.startswith("saved-"):
            WRITERS[path.suffix](book, path)
        else:
            flat = scratch / "flat" / f"{number}.fods"
            by_office.setdefault(path.suffix, {})[flat] = path
            write_fods(book, flat)
    for ending, files in by_office.items():
        converter.convert(list(files), FILTERS[ending], scratch / "made")
        for flat, path in files.items():
            (scratch / "made" / f"{flat.stem}{ending}").rename(path)
