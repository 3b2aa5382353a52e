"""Writes a workbook as flat ODF text, and has LibreOffice save such texts in other formats."""

import re
import subprocess
import tempfile
from pathlib import Path
from xml.sax.saxutils import escape, quoteattr

NAMESPACES = ('xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" '
              'xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" '
              'xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" '
              'xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"')
REFERENCE = re.compile(r"(\$?[A-Z]{1,2}\$?[0-9]+)(?::(\$?[A-Z]{1,2}\$?[0-9]+))?")
FILTERS = {"ods": "ods", "xlsx": "xlsx:Calc MS Excel 2007 XML", "xls": "xls:MS Excel 97"}


class Merged:
    """A text over several columns."""

    def __init__(self, text, columns):
        self.text, self.columns = text, columns


def formula(text):
    """=A1*2 as ODF files hold it."""
    def bracketed(found):
        return "[." + found[1] + (":." + found[2] if found[2] else "") + "]"
    return quoteattr("of:" + REFERENCE.sub(bracketed, text))


def cell(content):
    if content is None:
        return "<table:table-cell/>"
    if isinstance(content, Merged):
        return (f'<table:table-cell office:value-type="string" table:number-columns-spanned="{content.columns}" '
                f'table:number-rows-spanned="1"><text:p>{escape(content.text)}</text:p></table:table-cell>'
                f'<table:covered-table-cell table:number-columns-repeated="{content.columns - 1}"/>')
    if isinstance(content, str) and content.startswith("="):
        return f"<table:table-cell table:formula={formula(content)}/>"
    if isinstance(content, str):
        return f'<table:table-cell office:value-type="string"><text:p>{escape(content)}</text:p></table:table-cell>'
    return f'<table:table-cell office:value-type="float" office:value="{content}"/>'


def flat(sheets):
    """sheets: a name and rows of cells each."""
    tables = "".join(
        f"<table:table table:name={quoteattr(name)}>" + "".join(
            "<table:table-row>" + "".join(map(cell, row)) + "</table:table-row>" for row in rows) + "</table:table>"
        for name, rows in sheets)
    return (f'<?xml version="1.0" encoding="UTF-8"?><office:document {NAMESPACES} office:version="1.3" '
            'office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet>'
            f"{tables}</office:spreadsheet></office:body></office:document>")


def save(workbooks, output, office):
    """workbooks: relative path and sheets of each; the path's ending says the format."""
    with tempfile.TemporaryDirectory() as scratch:
        aside, profile = Path(scratch) / "flat", Path(scratch) / "profile"
        aside.mkdir()
        by_format = {}
        for number, (path, sheets) in enumerate(workbooks):
            source = aside / f"{number}.fods"
            source.write_text(flat(sheets), encoding="utf-8")
            by_format.setdefault(path.suffix[1:], []).append((source, path))
        for ending, members in by_format.items():
            made = Path(scratch) / ending
            subprocess.run([office, f"-env:UserInstallation={profile.as_uri()}", "--headless", "--convert-to",
                            FILTERS[ending], "--outdir", made, *(source for source, _ in members)],
                           check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=300)
            for source, path in members:
                target = output / path
                target.parent.mkdir(parents=True, exist_ok=True)
                target.write_bytes((made / f"{source.stem}.{ending}").read_bytes())
