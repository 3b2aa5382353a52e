"""Writes workbooks as .xlsx."""

from xml.sax.saxutils import escape, quoteattr

from sheets import Error, as_stored, cell_name, is_formula, quoted, with_references
from write_parts import HEAD, formats_of, grid, write_zip

MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
OFFICE_PARTS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
PACKAGE_PARTS = "http://schemas.openxmlformats.org/package/2006"
SHEET_TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml"


def xlsx_formula(formula):
    def write(sheet, cell, last):
        return (f"{sheet}!" if sheet else "") + cell + (f":{last}" if last else "")
    return as_stored(with_references(formula[1:], write)).replace(";", ",")


def xlsx_cell(place, cell, formats):
    value = cell.result if is_formula(cell.content) else cell.content
    kind = "e" if isinstance(value, Error) else "n"
    written = "" if value is None else f"<v>{escape(str(value))}</v>"
    if isinstance(value, str) and kind == "n":
        kind, written = ("str", written) if is_formula(cell.content) else \
            ("inlineStr", f"<is><t>{escape(value)}</t></is>")
    if is_formula(cell.content):
        written = f"<f>{escape(xlsx_formula(cell.content))}</f>" + written
    style = f' s="{formats.index(cell.format) + 1}"' if cell.format else ""
    return f'<c r="{cell_name(place)}"{style} t="{kind}">{written}</c>'


def xlsx_sheet(sheet, formats):
    rows = "".join(f'<row r="{at + 1}">' + "".join(xlsx_cell((at, column), cell, formats)
                   for column, cell in enumerate(row) if cell) + "</row>" for at, row in enumerate(grid(sheet)))
    merged = "".join(f'<mergeCell ref="{cell_name(place)}:{cell_name((place[0], place[1] + cell.columns - 1))}"/>'
                     for place, cell in sheet.cells.items() if cell.columns > 1)
    return f'{HEAD}<worksheet xmlns="{MAIN}"><sheetData>{rows}</sheetData>' + \
        (f"<mergeCells>{merged}</mergeCells>" if merged else "") + "</worksheet>"


def xlsx_styles(formats):
    codes = "".join(f"<numFmt numFmtId=\"{200 + at}\" formatCode={quoteattr(code)}/>" for at, code in enumerate(formats))
    used = "".join(f'<xf numFmtId="{200 + at}" fontId="0" fillId="0" borderId="0" applyNumberFormat="1"/>'
                   for at in range(len(formats)))
    codes = codes and f'<numFmts count="{len(formats)}">{codes}</numFmts>'
    return (f'{HEAD}<styleSheet xmlns="{MAIN}">{codes}<fonts count="1"><font><sz val="10"/></font></fonts><fills count="1">'
            '<fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs>'
            f'<cellXfs count="{len(formats) + 1}"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>{used}</cellXfs></styleSheet>')


def write_xlsx(book, path):
    formats, numbers = formats_of(book), range(1, len(book.sheets) + 1)
    tabs = "".join(f'<sheet name={quoteattr(sheet.name)} sheetId="{at}" r:id="r{at}"/>'
                   for at, sheet in zip(numbers, book.sheets))
    names = "".join(f"<definedName name=\"{name}\">{escape(quoted(sheet))}!{cell_name(place, True)}</definedName>"
                    for name, (sheet, place) in book.names.items())
    names = names and f"<definedNames>{names}</definedNames>"
    links = "".join(f'<Relationship Id="r{at}" Type="{OFFICE_PARTS}/worksheet" Target="worksheets/sheet{at}.xml"/>'
                    for at in numbers) + f'<Relationship Id="s" Type="{OFFICE_PARTS}/styles" Target="styles.xml"/>'
    types = "".join(f'<Override PartName="/xl/{part}.xml" ContentType="{SHEET_TYPES}.{kind}+xml"/>' for part, kind in [
        ("workbook", "sheet.main"), ("styles", "styles"), *((f"worksheets/sheet{at}", "worksheet") for at in numbers)])
    related = f'{HEAD}<Relationships xmlns="{PACKAGE_PARTS}/relationships">%s</Relationships>'
    write_zip(path, {
        "[Content_Types].xml": f'{HEAD}<Types xmlns="{PACKAGE_PARTS}/content-types"><Default Extension="rels" '
                               f'ContentType="application/vnd.openxmlformats-package.relationships+xml"/>{types}</Types>',
        "_rels/.rels": related % f'<Relationship Id="w" Type="{OFFICE_PARTS}/officeDocument" Target="xl/workbook.xml"/>',
        "xl/workbook.xml": f'{HEAD}<workbook xmlns="{MAIN}" xmlns:r="{OFFICE_PARTS}"><sheets>{tabs}</sheets>{names}</workbook>',
        "xl/_rels/workbook.xml.rels": related % links, "xl/styles.xml": xlsx_styles(formats),
        **{f"xl/worksheets/sheet{at}.xml": xlsx_sheet(sheet, formats) for at, sheet in zip(numbers, book.sheets)}})
