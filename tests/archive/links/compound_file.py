"""Writes Microsoft's container of streams: only what a test needs, streams in the root."""

import struct

SECTOR = 512
FREE, END, TABLE = 0xFFFFFFFF, 0xFFFFFFFE, 0xFFFFFFFD


def written(streams):
    """streams: name → bytes. Each is filled up to 4096 bytes, below which it would have to lie elsewhere."""
    sectors, chain, places = [], [], {}
    for name, content in streams.items():
        content = content.ljust(4096, b"\0")
        pieces = [content[at : at + SECTOR].ljust(SECTOR, b"\0") for at in range(0, len(content), SECTOR)]
        places[name] = (len(sectors), len(content))
        chain += list(range(len(sectors) + 1, len(sectors) + len(pieces))) + [END]
        sectors += pieces

    def entry(name, kind, child, right, start, size):
        letters = name.encode("utf-16-le")
        return (
            letters.ljust(64, b"\0")
            + struct.pack("<HBBIII", len(letters) + 2 if name else 0, kind, 1, FREE, right, child)
            + bytes(36)
            + struct.pack("<IQ", start, size)
        )

    names = sorted(places, key=lambda name: (len(name), name.upper()))
    directory = entry("Root Entry", 5, 1 if names else FREE, FREE, END, 0)
    for number, name in enumerate(names, 1):
        directory += entry(name, 2, FREE, number + 1 if number < len(names) else FREE, *places[name])
    while len(directory) % SECTOR:
        directory += entry("", 0, FREE, FREE, 0, 0)
    first_of_directory = len(sectors)
    count = len(directory) // SECTOR
    chain += list(range(first_of_directory + 1, first_of_directory + count)) + [END]
    sectors += [directory[at : at + SECTOR] for at in range(0, len(directory), SECTOR)]
    tables = 1
    while len(chain) + tables > tables * SECTOR // 4:
        tables += 1
    first_table = len(sectors)
    chain += [TABLE] * tables
    chain += [FREE] * (tables * SECTOR // 4 - len(chain))
    table = struct.pack(f"<{len(chain)}I", *chain)
    header = bytes.fromhex("D0CF11E0A1B11AE1") + bytes(16)
    header += struct.pack("<HHHHH6xIIIIIIIII", 0x3E, 3, 0xFFFE, 9, 6, 0, tables, first_of_directory, 0, 4096, END, 0, END, 0)
    places_of_tables = [first_table + number for number in range(tables)]
    header += struct.pack("<109I", *(places_of_tables + [FREE] * (109 - tables)))
    return header + b"".join(sectors) + table
