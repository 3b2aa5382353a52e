"""Writes workbooks that link: make_linked.py FOLDER PREFIX [--one-each]. The links lead to PREFIX plus a name of kind and format."""

import os
import re
import sys
import zipfile

import odf_links
import xls_links
import xlsx_links

# Of the text itself, so that a document has only one of them, or such that no other would be read.
ALONE = {"document type", "style sheet", "outside text", "another sheet"}


def address_with(prefix, form):
    def address(kind):
        return f"{prefix}{form}-{re.sub('[^A-Za-z0-9]+', '-', kind.name)}.{kind.ending}"

    return address


def zipped(file, entries):
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as out:
        for name, text in entries.items():
            out.writestr(name, text, zipfile.ZIP_STORED if name == "mimetype" else None)


def write(file, kinds, prefix):
    form = file.rpartition(".")[2]
    address = address_with(prefix, form)
    if form == "fods":
        with open(file, "w") as out:
            out.write(odf_links.flat(kinds, address))
    elif form == "ods":
        zipped(file, odf_links.package(kinds, address, f"{prefix}ods-inside.png"))
    elif form == "xlsx":
        zipped(file, xlsx_links.package(kinds, address))
    else:
        with open(file, "wb") as out:
            out.write(xls_links.workbook(kinds, address))


TABLES = {"fods": odf_links.KINDS, "ods": odf_links.KINDS, "xlsx": xlsx_links.KINDS, "xls": xls_links.KINDS}


def workbooks(one_each):
    """(name of the file, kinds in it)"""
    for form, kinds in TABLES.items():
        together = [kind for kind in kinds if kind.name not in ALONE]
        if not one_each:
            yield f"all.{form}", together
        for kind in kinds if one_each else [kind for kind in kinds if kind.name in ALONE]:
            yield f"{re.sub('[^A-Za-z0-9]+', '-', kind.name)}.{form}", [kind]


if __name__ == "__main__":
    folder, prefix = sys.argv[1:3]
    os.makedirs(folder, exist_ok=True)
    for name, chosen in workbooks("--one-each" in sys.argv):
        write(os.path.join(folder, name), chosen, prefix)
