"""Holds what the program wrote against the truth."""

import re
from dataclasses import dataclass, field

from read_files import difference, name_at
from sheets import Cell, Error, cell_name


@dataclass
class Found:
    wrong: list = field(default_factory=list)     # written where, or as, it must not be
    missed: list = field(default_factory=list)    # cells that were to be carried
    silent: list = field(default_factory=list)    # left alone and not listed
    needless: list = field(default_factory=list)  # listed as of another layout, and was none
    pairs: list = field(default_factory=list)     # of old-and-new.csv that are not so
    read: list = field(default_factory=list)      # of read.csv
    sheets: int = 0                               # that were to be carried, wholly or in part
    left: int = 0                                 # of these, left alone
    cells: int = 0                                # that were to be carried
    carried: int = 0                              # cells that were


def same_number(one, other, share=1e-9):
    return isinstance(other, (int, float)) and abs(one - other) <= share * max(abs(one), abs(other))


def compare_sheet(where, sheet, truth, got, percent_known, found):
    missed = 0
    for place in sorted(set(sheet.cells) | set(got) | set(truth.must)):
        before, after = sheet.cells.get(place), got.get(place)
        wanted = truth.must.get(place, truth.may.get(place))
        if wanted is not None and not difference(Cell(wanted), after):
            found.carried += 1
            if place in truth.percent and percent_known and isinstance(after.result, float) and not after.format:
                found.wrong.append(f"{where} {name_at(sheet.name, place)}: not shown as per cent ({truth.done})")
        elif (what := difference(before, after)) is not None:
            found.wrong.append(f"{where} {name_at(sheet.name, place)}: {what}, was to be {wanted!r} ({truth.done})")
        elif place in truth.must:
            missed += 1
            found.missed.append(f"{where} {name_at(sheet.name, place)}: {wanted} was not written ({truth.done})")
    for (key, run), (place, _, _, new) in truth.results.items():
        cell = got.get(place)
        refused = cell and isinstance(cell.result, Error)  # a result outside its range, as of readings that were slips
        if new is not None and cell and cell.content == truth.must.get(place) and not refused and \
                not same_number(new, cell.result):
            found.wrong.append(f"{where} {name_at(sheet.name, place)}: {key} is {cell.result}, by hand {new} ({truth.done})")
    found.cells += len(truth.must)
    if truth.must and not truth.refused:
        found.sheets += 1
        found.left += missed == len(truth.must)


def is_listed(problems, path, sheet, alone, reason):
    return any(row["file"] == str(path) and row["reason"] == reason and (alone or sheet in row["detail"])
               for row in problems)


def is_said_to_stay(problems, path, sheet, place):
    """A cell that kept what it held, by its name; ten of a sheet are named, others counted."""
    details = [row["detail"] for row in problems if row["file"] == str(path) and row["reason"] == "left as it was"
               and row["detail"].startswith(f"{sheet}: ")]
    return any(re.search(rf"\b{cell_name(place)} \(", detail) or re.search(r"and \d+ more", detail) for detail in details)


def compare_workbook(path, book, truths, got, problems, found):
    if list(got) != [sheet.name for sheet in book.sheets]:
        found.wrong.append(f"{path}: sheets {list(got)}")
        return
    for sheet in book.sheets:
        truth = truths.get(sheet.name)
        if truth is None:
            for place in set(sheet.cells) | set(got[sheet.name]):
                if what := difference(sheet.cells.get(place), got[sheet.name].get(place)):
                    found.wrong.append(f"{path} {name_at(sheet.name, place)}: {what}, not a sheet of the example")
            continue
        compare_sheet(path, sheet, truth, got[sheet.name], path.suffix != ".xlsx", found)
        listed = is_listed(problems, path, sheet.name, len(book.sheets) == 1, "another layout")
        stays = is_listed(problems, path, sheet.name, False, "left as it was")  # all cells that it would go into
        if truth.refused == "yes" and not listed and not stays:
            found.silent.append(f"{path} {sheet.name}: not listed as another layout ({truth.done})")
        for place, verdict in truth.held.items():
            if verdict == "carry" and not truth.refused and not listed and not is_said_to_stay(problems, path, sheet.name, place):
                found.silent.append(f"{path} {name_at(sheet.name, place)}: not said to stay ({truth.done})")
        if not truth.refused and listed:
            found.needless.append(f"{path} {sheet.name}: listed as another layout ({truth.done})")
