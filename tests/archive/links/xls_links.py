"""Every kind of link that an .xls can hold, as records. Layout: [MS-XLS], [MS-ODRAW]."""

import struct
from dataclasses import dataclass
from typing import Callable

from compound_file import written

BEGIN, END, SHEET, NAME, BOOK, SHEETS_OF_BOOKS, NAME_OF_BOOK = 0x0809, 0x000A, 0x0085, 0x0018, 0x01AE, 0x0017, 0x0023
NUMBER, FORMULA, TEXT, LINK, QUERY, PARAMETERS, QUERY_TEXT = 0x0203, 0x0006, 0x0207, 0x01B8, 0x01AD, 0x00DC, 0x00CD
DRAWING, DRAWING_GROUP, OBJECT, SIZE = 0x00EC, 0x00EB, 0x005D, 0x0200
WEB_SETTINGS, WEB_TABLES, TEXT_QUERY, CONNECTION, OLE_CONNECTION, SOURCE, MORE = (
    0x0803, 0x0804, 0x0805, 0x0876, 0x080A, 0x0051, 0x003C)


def record(kind, content=b""):
    assert len(content) <= 8224, "a longer one has to be cut"
    return struct.pack("<HH", kind, len(content)) + content


def letters(text, length="<H"):
    """A text with its length and its width, one byte a letter."""
    return struct.pack(length, len(text)) + b"\0" + text.encode("latin-1")


def wide(text):
    return text.encode("utf-16-le")


# tokens of formulas
def string(text):
    return b"\x17" + letters(text, "<B")


def number(value):
    return b"\x1e" + struct.pack("<H", value)


def call(function, arguments):
    return b"\x42" + struct.pack("<BH", arguments, function)


JOIN = b"\x08"
INDIRECT, HYPERLINK, BY_NAME, SUM = 148, 359, 255, 4


@dataclass(frozen=True)
class Kind:
    name: str
    make: Callable  # of a Workbook and an address; adds records
    ending: str = "png"


class Workbook:
    def __init__(self):
        self.names, self.books, self.references = [], [], []
        self.cells, self.shapes, self.tail, self.globals = [], [], [], []

    def formula(self, tokens, text=False):
        row = len(self.cells) + 3
        result = b"\0\0\0\0\0\0\xff\xff" if text else struct.pack("<d", 7)
        content = struct.pack("<HHH", row, 0, 15) + result + struct.pack("<HIH", 0, 0, len(tokens)) + tokens
        self.cells.append(record(FORMULA, content) + (record(TEXT, letters("as saved")) if text else b""))

    def book(self, name, sheets=("Data",), extern=b""):
        """Adds another workbook and gives the number of its first sheet."""
        content = struct.pack("<H", len(sheets)) + letters(name) + b"".join(letters(sheet) for sheet in sheets)
        self.books.append(record(BOOK, content) + extern)
        first = 0 if sheets else 0xFFFE
        self.references.append(struct.pack("<HHH", len(self.books), first, first))
        return len(self.references) - 1

    def define(self, name, tokens, flags=0):
        content = struct.pack("<HBBHHHBBBB", flags, 0, len(name), len(tokens), 0, 0, 0, 0, 0, 0) + b"\0" + name.encode()
        self.names.append(record(NAME, content + tokens))
        return len(self.names)

    def shape(self, kind, properties, object_kind=8, more=b""):
        self.shapes.append((kind, properties, object_kind, more))


def address_of_book(address):
    assert len(address) < 256
    return "\x01\x05" + chr(len(address)) + address


def other_name(name):
    return record(NAME_OF_BOOK, struct.pack("<HI", 0, 0) + letters(name, "<B") + b"\x02\0\x1c\x17")


def item(name, flags):
    return record(NAME_OF_BOOK, struct.pack("<HI", flags, 0) + letters(name, "<B"))


def cell_of(book):
    return b"\x5a" + struct.pack("<HHH", book, 0, 0xC000)


def area_of(book):
    return b"\x3b" + struct.pack("<HHHHH", book, 0, 8, 0xC000, 0xC001)


def reference(workbook, address):
    workbook.formula(cell_of(workbook.book(address_of_book(address))))


def plain_reference(workbook, address):
    workbook.formula(cell_of(workbook.book(address)))


def total(workbook, address):
    workbook.formula(area_of(workbook.book(address_of_book(address))) + call(SUM, 1))


def name_elsewhere(workbook, address):
    book = workbook.book(address_of_book(address), extern=other_name("thename"))
    workbook.formula(b"\x59" + struct.pack("<HHH", book, 1, 0))


def name_of_a_file(workbook, address):
    name = workbook.define(f"far{len(workbook.names)}", cell_of(workbook.book(address_of_book(address))))
    workbook.formula(b"\x43" + struct.pack("<HH", name, 0))


def exchange(workbook, address):
    book = workbook.book("soffice\x03" + address, (), item("Data.A1", 0x0002))
    workbook.formula(b"\x59" + struct.pack("<HHH", book, 1, 0))


def linked_object_formula(workbook, address):
    book = workbook.book("Excel.Sheet.8\x03" + address, (), item("Data", 0x0012))
    workbook.formula(b"\x59" + struct.pack("<HHH", book, 1, 0))


def computed(workbook, address):
    workbook.formula(string(f"'{address}'#$Data.A") + number(1) + JOIN + call(INDIRECT, 1))


def computed_in_brackets(workbook, address):
    folder, _, file = address.rpartition("/")
    workbook.formula(string(f"'{folder}/[{file}]Data'!A") + number(1) + JOIN + call(INDIRECT, 1))


def computed_r1c1(workbook, address):
    folder, _, file = address.rpartition("/")
    workbook.formula(string(f"'{folder}/[{file}]Data'!R1C") + number(1) + JOIN + b"\x1d\0" + call(INDIRECT, 2))


def newer_function(name, *more):
    def make(workbook, address):
        function = workbook.define(name, b"", 0x000E)
        tokens = b"\x23" + struct.pack("<HH", function, 0) + string(address) + b"".join(more)
        workbook.formula(tokens + call(BY_NAME, 2 + sum(1 for token in more if token != JOIN)), text=True)

    return make


def web_service_joined(workbook, address):
    function = workbook.define("_xlfn.WEBSERVICE", b"", 0x000E)
    tokens = b"\x23" + struct.pack("<HH", function, 0) + string(address) + string("") + JOIN + call(BY_NAME, 2)
    workbook.formula(tokens, text=True)


def hyperlink_formula(workbook, address):
    workbook.formula(string(address) + string("more") + call(HYPERLINK, 2), text=True)


URL_MONIKER = bytes.fromhex("E0C9EA79F9BACE118C8200AA004BA90B")
STANDARD_LINK = bytes.fromhex("D0C9EA79F9BACE118C8200AA004BA90B")


def hyperlink(workbook, address):
    text = wide(address + "\0")
    workbook.tail.append(record(LINK, struct.pack("<HHHH", 0, 0, 0, 0) + STANDARD_LINK + struct.pack("<II", 2, 3)
                                + URL_MONIKER + struct.pack("<I", len(text)) + text))


def page_of_the_net(workbook, address):
    column = 7 + len(workbook.tail)
    name = f"web{len(workbook.names)}"
    workbook.define(name, b"\x3b" + struct.pack("<HHHHH", 0, 0, 8, column, column))
    workbook.tail += [
        record(QUERY, struct.pack("<HHHHH", 0x0001, 0x0010, 0, 0, 0) + letters(name) + bytes(4)),
        record(PARAMETERS, struct.pack("<HHHHHH", 0x0004 | 0x0800, 0, 0, 1, 0, 0)),
        record(QUERY_TEXT, letters(address)),
        record(WEB_SETTINGS, struct.pack("<HHHHHHHHHHH", WEB_SETTINGS, 0, 0, 0, 0, 2, 1, 0, 1, 0, 0)),
    ]


def database(workbook, address):
    column = 7 + len(workbook.tail)
    name = f"base{len(workbook.names)}"
    workbook.define(name, b"\x3b" + struct.pack("<HHHHH", 0, 0, 8, column, column))
    workbook.tail += [
        record(QUERY, struct.pack("<HHHHH", 0x0001, 0x0010, 0, 0, 0) + letters(name) + bytes(4)),
        record(PARAMETERS, struct.pack("<HHHHHH", 0x0001, 0, 1, 0, 1, 0)),
        record(QUERY_TEXT, letters("SELECT 1")),
        record(QUERY_TEXT, letters("DRIVER=none;DBQ=" + address)),
    ]


def text_file(workbook, address):
    workbook.tail.append(record(TEXT_QUERY, struct.pack("<HHHHHI", TEXT_QUERY, 0, 0, 0, 0, 1) + bytes(10) + letters(address)))


def connection(workbook, address):
    workbook.globals.append(record(CONNECTION, struct.pack("<HHHHHHHHH", CONNECTION, 0, 0, 0, 4, 4, 1, 0, 0) + letters(
        "c") + letters(address)))


def ole_connection(workbook, address):
    workbook.tail.append(record(OLE_CONNECTION, struct.pack("<HHHH", OLE_CONNECTION, 0, 0, 1) + letters(address)))


def source_of_a_pivot(workbook, address):
    workbook.globals += [
        record(0x00D5, struct.pack("<H", 1)),
        record(0x00E3, struct.pack("<H", 1)),
        record(SOURCE, struct.pack("<HHBB", 0, 8, 0, 1) + letters(address_of_book(address))),
    ]


def consolidation(workbook, address):
    workbook.tail += [record(0x0050, struct.pack("<HHHH", 9, 0, 0, 1)),
                      record(SOURCE, struct.pack("<HHBB", 0, 8, 0, 1) + letters(address_of_book(address)))]


def linked(name_property, flags_property, *others):
    """A shape whose picture is a file by name."""

    def make(workbook, address):
        text = wide(address + "\0")
        properties = list(others) + [(name_property | 0x8000, text), (flags_property, 0x0A)]
        workbook.shape(75 if name_property == 0x0105 else 1, sorted(properties, key=lambda pair: pair[0] & 0x3FFF),
                       8 if name_property == 0x0105 else 2)

    return make


def shape_with_hyperlink(workbook, address):
    text = wide(address + "\0")
    link = STANDARD_LINK + struct.pack("<II", 2, 3) + URL_MONIKER + struct.pack("<I", len(text)) + text
    workbook.shape(1, [(0x0382 | 0x8000, link)], 2)


def linked_object(workbook, address):
    book = workbook.book("Excel.Sheet.8\x03" + address, (), item("Data", 0x0012))
    tokens = b"\x39" + struct.pack("<HHH", book, 1, 0)
    body = struct.pack("<HI", len(tokens), 0) + tokens
    body += b"\0" * (len(body) % 2)
    picture = struct.pack("<HHH", 0x0007, 2, 2) + struct.pack("<HHH", 0x0008, 2, 0x0002)
    picture += struct.pack("<HH", 0x0009, 2 + len(body)) + struct.pack("<H", len(body)) + body
    workbook.shape(75, [], 8, picture)


KINDS = [
    Kind("reference to a file", reference, "xls"),
    Kind("reference to a file by a plain name", plain_reference, "xls"),
    Kind("sum over a file", total, "xls"),
    Kind("name in a file", name_elsewhere, "xls"),
    Kind("name that stands for a file", name_of_a_file, "xls"),
    Kind("data exchange", exchange, "ods"),
    Kind("linked object as formula", linked_object_formula, "xls"),
    Kind("computed reference", computed, "ods"),
    Kind("computed reference in brackets", computed_in_brackets, "xls"),
    Kind("computed reference in R1C1", computed_r1c1, "xls"),
    Kind("asks a server", newer_function("_xlfn.WEBSERVICE"), "xml"),
    Kind("asks a server, computed", web_service_joined, "xml"),
    Kind("reads XML", newer_function("_xlfn.FILTERXML", string("/a")), "xml"),
    Kind("hyperlink as formula", hyperlink_formula, "html"),
    Kind("hyperlink", hyperlink, "html"),
    Kind("page of the net", page_of_the_net, "html"),
    Kind("database", database, "odb"),
    Kind("text file", text_file, "csv"),
    Kind("connection", connection, "odc"),
    Kind("connection of a query", ole_connection, "odc"),
    Kind("source of a pivot table", source_of_a_pivot, "xls"),
    Kind("consolidation", consolidation, "xls"),
    Kind("picture", linked(0x0105, 0x0106)),
    Kind("drawing as picture", linked(0x0105, 0x0106), "svg"),
    Kind("fill picture", linked(0x0187, 0x0188, (0x0180, 3))),
    Kind("picture of a line", linked(0x01C6, 0x01C7, (0x01C4, 1))),
    Kind("shape with a hyperlink", shape_with_hyperlink, "html"),
    Kind("linked object", linked_object, "xls"),
]


def atom(kind, content, version=0, instance=0):
    return struct.pack("<HHI", version | instance << 4, kind, len(content)) + content


def container(kind, content, instance=0):
    return atom(kind, content, 0xF, instance)


def properties_atom(properties):
    fixed, complex_parts = b"", b""
    for identifier, value in properties:
        if identifier & 0x8000:
            fixed += struct.pack("<HI", identifier, len(value))
            complex_parts += value
        else:
            fixed += struct.pack("<HI", identifier, value)
    return atom(0xF00B, fixed + complex_parts, 3, len(properties))


def drawings(shapes):
    """The drawing of the sheet as records, each shape's followed by its object."""
    pieces = []
    for place, (kind, properties, _, _) in enumerate(shapes, 1):
        pieces.append(container(0xF004, atom(0xF00A, struct.pack("<II", 1024 + place, 0x0A00), 2, kind)
                                + properties_atom(properties)
                                + atom(0xF010, struct.pack("<9H", 0, 1, 0, place, 0, 2, 0, place + 1, 0))
                                + atom(0xF011, b"")))
    patriarch = container(0xF004, atom(0xF009, bytes(16), 1) + atom(0xF00A, struct.pack("<II", 1024, 5), 2))
    group = atom(0xF008, struct.pack("<II", len(shapes) + 1, 1024 + len(shapes)), 0, 1)
    inner = struct.pack("<HHI", 0xF, 0xF003, len(patriarch) + sum(map(len, pieces))) + patriarch
    start = struct.pack("<HHI", 0xF, 0xF002, len(group) + 8 + len(patriarch) + sum(map(len, pieces))) + group + inner
    records = b""
    for place, (piece, (_, _, kind, more)) in enumerate(zip(pieces, shapes), 1):
        records += record(DRAWING, (start if place == 1 else b"") + piece)
        common = struct.pack("<HHHHH", 0x0015, 18, kind, place, 0x6011) + bytes(12)
        records += record(OBJECT, common + more + bytes(4))
    return records


def workbook(kinds, address):
    book = Workbook()
    book.references.append(struct.pack("<HHH", 0, 0, 0))
    for kind in kinds:
        kind.make(book, address(kind))
    begin = struct.pack("<HHHHII", 0x0600, 5, 0x0DBB, 0x07CC, 0, 6)
    group = container(0xF000, atom(0xF006, struct.pack("<IIIIII", 2048, 2, len(book.shapes) + 1, 1, 1,
                                                        len(book.shapes) + 1)))
    head = record(BEGIN, begin) + record(0x0042, struct.pack("<H", 1200))
    # the own workbook comes first among the books
    middle = (
        record(BOOK, struct.pack("<HH", 1, 0x0401)) + b"".join(book.books)
        + record(SHEETS_OF_BOOKS, struct.pack("<H", len(book.references)) + b"".join(book.references))
        + b"".join(book.names) + b"".join(book.globals)
        + (record(DRAWING_GROUP, group) if book.shapes else b"") + record(END)
    )
    sheet_name = b"\x04\0Data"
    start = len(head) + 4 + 6 + len(sheet_name) + len(middle)
    sheet = (
        record(BEGIN, struct.pack("<HHHHII", 0x0600, 0x10, 0x0DBB, 0x07CC, 0, 6))
        + record(SIZE, struct.pack("<IIHHH", 0, len(book.cells) + 3, 0, 1, 0))
        + record(NUMBER, struct.pack("<HHHd", 0, 0, 15, 95)) + record(NUMBER, struct.pack("<HHHd", 1, 0, 15, 7))
        + b"".join(book.cells)
        + (drawings(book.shapes) if book.shapes else b"") + b"".join(book.tail) + record(END)
    )
    stream = head + record(SHEET, struct.pack("<IH", start, 0) + sheet_name) + middle + sheet
    return written({"Workbook": stream})
