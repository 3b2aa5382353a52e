"""functions/ keeps no state: none of its objects has a writable symbol, but for what stands on the allow-list. Constants
that the loader has to fill in (.data.rel.ro) are read-only once it has; the library's RELRO is tested beside this.

globals.py LIBHEARTHCELL_FUNCTIONS.A"""

import os
import re
import sys

import elf

SECTION = re.compile(r"^\s*\[\s*(\d+)\]\s+(\S+)\s+\S+\s+\S+\s+\S+\s+([0-9a-f]+)\s+\S+\s+([A-Za-z]*)\s")
LOADER_ONLY = (".data.rel.ro", ".init_array", ".fini_array")


def writable_sections(listing):
    found = {}
    for line in listing.splitlines():
        match = SECTION.match(line)
        if match and {"W", "A"} <= set(match[4]) and not match[2].startswith(LOADER_ONLY):
            found[match[1]] = int(match[3], 16)
    return found


def writable_symbols(archive):
    """Pairs of object and symbol."""
    sizes, found, object_file = {}, [], ""
    listing = elf.output("readelf", "-SsWC", archive)
    for part in re.split(r"^File: ", listing, flags=re.M)[1:]:
        object_file = re.search(r"\((.*)\)", part.splitlines()[0])[1]
        sizes = writable_sections(part)
        for line in part.splitlines():
            fields = line.split(None, 7)
            if len(fields) == 8 and fields[0].rstrip(":").isdigit() and (fields[6] in sizes or fields[6] == "COM") and \
                    fields[3] in ("OBJECT", "TLS", "NOTYPE"):
                found.append((object_file, fields[7]))
                sizes[fields[6]] = 0
        # A section with content and no name in it.
        found += [(object_file, f"section {number}") for number, size in sizes.items() if size > 0]
    return found, len(re.findall(r"^File: ", listing, flags=re.M))


def main(archive):
    allowed = [re.compile(line) for line in elf.allowed(os.path.join(os.path.dirname(__file__), "allowed-globals.txt"))]
    found, objects = writable_symbols(archive)
    faults = [(where, name) for where, name in found if not any(line.fullmatch(name) for line in allowed)]
    for where, name in faults:
        print(f"{where}: {name} can be written")
    used = [line for line in allowed if any(line.fullmatch(name) for _, name in found)]
    print(f"{objects} objects, {len(found)} writable symbols, {len(faults)} faults")
    if objects == 0 or len(used) < len(allowed): # a list that is longer than it must be hides what comes
        print("no longer needed: " + ", ".join(line.pattern for line in allowed if line not in used))
        return 1
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
