"""The add-in's library takes from other libraries only what stands on the allow-list: it has no way to a file, a socket,
another process, the environment, a thread or a locale. (The menu is another library, which does open files.)

foreign_symbols.py STOVE.SO"""

import os
import sys

import elf

FORBIDDEN = ("open", "openat", "fopen", "socket", "connect", "fork", "execve", "posix_spawn", "system", "getenv",
             "setenv", "pthread_create", "setlocale", "newlocale", "dlopen", "mmap", "kill", "signal")
LIBRARIES = {"libuno_sal.so.3", "libuno_cppu.so.3", "libm.so.6", "libgcc_s.so.1", "libc.so.6", "ld-linux-x86-64.so.2",
             "ld-linux-aarch64.so.1"}
ENTRY_POINT = "component_getFactory"


def main(library):
    here = os.path.dirname(__file__)
    allowed = elf.allowed(os.path.join(here, "allowed-symbols.txt"))
    # LibreOffice's own types and texts, which the libraries for other machines are linked by: library, function.
    allowed += [line.split()[1] for line in elf.allowed(os.path.join(here, "../../../extension/machines/uno_functions.txt"))]
    faults = [f"the allow-list itself names {name}" for name in FORBIDDEN if name in allowed]
    symbols = elf.undefined_symbols(library)
    if "malloc" not in symbols:
        faults.append("nothing is read from the library: not even memory is asked for")
    faults += [f"takes {name}" for symbol, name in symbols.items() if name not in allowed]
    faults += [f"needs {name}" for name in elf.needed_libraries(library) if name not in LIBRARIES]
    faults += [f"offers {name}" for name in elf.exported_symbols(library) if name != ENTRY_POINT]
    for fault in faults:
        print(f"{library}: {fault}")
    print(f"{len(symbols)} symbols taken from {len(elf.needed_libraries(library))} libraries, {len(faults)} faults")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
