"""What the writers of all formats share."""

import zipfile

HEAD = '<?xml version="1.0" encoding="UTF-8"?>'


def formats_of(book):
    return sorted({cell.format for sheet in book.sheets for cell in sheet.cells.values()} - {""})


def grid(sheet):
    """Rows of cells, None where there is none."""
    last = max(row for row, _ in sheet.cells)
    for row in range(last + 1):
        columns = [column for at, column in sheet.cells if at == row]
        yield [sheet.cells.get((row, column)) for column in range(max(columns) + 1)] if columns else []


def write_zip(path, entries):
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as out:
        for name, text in entries.items():
            out.writestr(name, text, zipfile.ZIP_STORED if name == "mimetype" else None)
