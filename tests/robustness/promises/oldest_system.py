"""The libraries of the package run on older systems than the one that builds them: nothing that they take from the C
library, the C++ library or the compiler's own is newer than what is said here. The add-in takes nothing of C++ at all.

oldest_system.py STOVE.SO MENU.SO"""

import re
import sys

import elf

C_LIBRARY = {"GLIBC": (2, 28), "GCC": (7,)}
CXX_LIBRARY_OF_GCC_8 = {"GLIBCXX": (3, 4, 25), "CXXABI": (1, 3, 11)}


def needed_versions(library):
    """As GLIBC_2.14: what the loader looks for before it loads the library."""
    needs = elf.output("readelf", "-VW", library).partition("Version needs section")[2]
    return set(re.findall(r"Name: ([A-Z]+_[\d.]+) ", needs))


def faults(library, newest):
    versions = needed_versions(library)
    if not any(version.startswith("GLIBC_") for version in versions):
        yield f"{library}: no versions are read from it"
    for version in sorted(versions):
        kind, _, number = version.partition("_")
        if kind.startswith("UDK"): # of UNO, which LibreOffice has had since long before 7.4
            continue
        if kind not in newest:
            yield f"{library} needs {version}"
        elif tuple(map(int, number.split("."))) > newest[kind]:
            yield f"{library} needs {version}, which is newer than {'.'.join(map(str, newest[kind]))}"


def main(stove, menu):
    found = [*faults(stove, C_LIBRARY), *faults(menu, C_LIBRARY | CXX_LIBRARY_OF_GCC_8)]
    for library in (stove, menu):
        print(library, *sorted(needed_versions(library)))
    print(*found, sep="\n")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
