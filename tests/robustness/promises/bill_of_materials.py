"""The package's bill of materials is true: it names each file of the package with its SHA-256, every library that ours
need, and the Boost whose headers were compiled in.

bill_of_materials.py EDITION PACKAGE COMPILE_COMMANDS.JSON LIBRARY…"""

import hashlib
import json
import re
import subprocess
import sys
import zipfile

import elf

BILL = "bom.cdx.json"


def faults_of_files(package, components):
    named = {part["name"]: part["hashes"][0]["content"] for part in components if part["type"] == "file"}
    packed = {name for name in package.namelist() if name != BILL}
    yield from (f"{name} is not named" for name in packed - named.keys())
    yield from (f"{name} is named but not packed" for name in named.keys() - packed)
    for name in packed & named.keys():
        if hashlib.sha256(package.read(name)).hexdigest() != named[name]:
            yield f"{name} has another SHA-256"


def boost_compiled_in(commands):
    """The version that the compiler itself finds, with the options of a source of the functions."""
    entry = next(entry for entry in commands if entry["file"].endswith("/distributions.cpp"))
    options = [word for word in entry["command"].split() if word.startswith(("-I", "-isystem"))]
    told = subprocess.run(["c++", *options, "-E", "-dM", "-x", "c++", "-"], input="#include <boost/version.hpp>",
                          check=True, capture_output=True, text=True).stdout
    return ".".join(re.search(r'BOOST_LIB_VERSION "(\d+)_(\d+)', told).groups())


def main(edition, package_file, compile_commands, *libraries):
    with zipfile.ZipFile(package_file) as package:
        bill = json.loads(package.read(BILL))
        components = bill["components"]
        faults = list(faults_of_files(package, components))
    if (bill["bomFormat"], bill["specVersion"]) != ("CycloneDX", "1.4"):
        faults.append("is not CycloneDX 1.4")
    told = " ".join(part.get("description", "") for part in components)
    for library in libraries:
        faults += [f"{name}, which {library} needs, is not named" for name in elf.needed_libraries(library)
                   if name.split(".so")[0] not in told]
    with open(compile_commands, encoding="utf-8") as file:
        boost = boost_compiled_in(json.load(file))
    if not any(part["name"] == "Boost.Math" and part["version"].startswith(boost) for part in components):
        faults.append(f"does not name Boost {boost}")
    if bill["metadata"]["component"]["version"] != edition:
        faults.append(f"is not of edition {edition}")
    compiler = subprocess.run(["c++", "-dumpfullversion"], check=True, capture_output=True, text=True).stdout.strip()
    for kind in ("headers", "linked in"):
        if not any(part["name"] == f"GNU libstdc++, {kind}" and part.get("version") == compiler for part in components):
            faults.append(f"does not name the C++ library of the compiler, {compiler}, {kind}")
    for part in components:
        if part["type"] == "library" and not part["licenses"][0]["license"]["id"]:
            faults.append(f"{part['name']} has no licence")
    print("\n".join(faults) if faults else f"{len(components)} components named")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
