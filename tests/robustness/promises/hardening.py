"""The libraries of the package are hardened: what the loader has filled in is read-only before the first call, no memory is
both written and run, stacks and copies are checked, and returns by the processor where it and the system can (shadow stack).

hardening.py COMPILE_COMMANDS.JSON LIBRARY…"""

import json
import os
import platform
import sys

import elf

COMPILED_WITH = ("-fstack-protector-strong", "-fstack-clash-protection", "-D_FORTIFY_SOURCE=2", "-D_GLIBCXX_ASSERTIONS",
                 "-fPIC", "-ffp-contract=off", "-fvisibility=hidden")
ON_X86 = ("-fcf-protection=full",)
SOURCES = ("/functions/", "/extension/addin/", "/extension/menu/", "/extension/sharing/",
           "/extension/old_systems/")


def faults_of_library(library):
    dynamic, headers = elf.output("readelf", "-dW", library), elf.output("readelf", "-lW", library)
    stack = next(line for line in headers.splitlines() if "GNU_STACK" in line)
    loaded = [line.split()[6:-1] for line in headers.splitlines() if line.split()[:1] == ["LOAD"]]
    if "GNU_RELRO" not in headers or "BIND_NOW" not in dynamic:
        yield "is not made read-only before it is used (full RELRO)"
    if "E" in "".join(stack.split()[6:-1]):
        yield "wants a stack that can be run"
    if not loaded or any("W" in "".join(flags) and "E" in "".join(flags) for flags in loaded):
        yield "has memory that is both written and run"
    if "TEXTREL" in dynamic or "RPATH" in dynamic or "RUNPATH" in dynamic:
        yield "has its code patched when loaded, or looks for libraries in a folder of its own"
    if "__stack_chk_fail" not in elf.undefined_symbols(library):
        yield "does not check its stack"
    if platform.machine() == "x86_64":
        if "SHSTK" not in elf.output("readelf", "-nW", library):
            yield "is not marked as fit for a shadow stack"
        disassembly = elf.output("objdump", "-d", "--no-show-raw-insn", library)
        for name in elf.exported_symbols(library):
            entry = disassembly.split(f"<{name}>:\n")[1].split("\n")[0]
            if "endbr64" not in entry:
                yield f"does not mark {name} as a place to jump to"


def built(entry):
    return os.path.join(entry["directory"], entry["command"].split(" -o ")[1].split()[0])


def faults_of_compilation(commands):
    wanted = COMPILED_WITH + (ON_X86 if platform.machine() == "x86_64" else ())
    ours = [entry for entry in commands if any(source in entry["file"] for source in SOURCES) and built(entry).endswith(".o")]
    if len(ours) < 20:
        yield f"only {len(ours)} commands found"
    for entry in ours:
        for flag in wanted:
            if flag not in entry["command"].split():
                yield f"{entry['file']} is compiled without {flag}"
        # The linker marks the library whatever it is made of: that it may do so is seen on what it is made of.
        if platform.machine() == "x86_64" and "SHSTK" not in elf.output("readelf", "-nW", built(entry)):
            yield f"{entry['file']} is not marked as fit for a shadow stack"


def main(compile_commands, *libraries):
    with open(compile_commands, encoding="utf-8") as file:
        faults = list(faults_of_compilation(json.load(file)))
    for library in libraries:
        faults += [f"{library} {fault}" for fault in faults_of_library(library)]
    print("\n".join(faults) if faults else f"{len(libraries)} libraries hardened")
    return 1 if faults or not libraries else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
