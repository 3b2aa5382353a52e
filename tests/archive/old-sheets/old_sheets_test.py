"""Old sheets with known truth, made here from fixed seeds: what the program carries into them, reads in them and refuses.

old_sheets_test.py PROGRAM PACKAGE OFFICE WORK
"""

import copy
import csv
import shutil
import subprocess
import sys
import time
import unittest
from pathlib import Path

from archive import World, make_archive
from comparison import Found, compare_workbook
from comparison_of_reports import compare_pairs, compare_read
from read_files import difference, read, read_all
from sheets import Cell, cell_name, is_formula
from traps import TRAPS, book
from write_files import Converter, write_all

PROGRAM, PACKAGE, OFFICE, WORK = sys.argv[1], Path(sys.argv[2]), sys.argv[3], Path(sys.argv[4])
VALUES = (("2011", "altitude", 1711), ("2012", "altitude", 1712), ("2013", "net calorific value", 19.3),
          ("./workshop-1/2014/", "net calorific value", 17.4), ("workshop-3/2014", "altitude", 1714))
WORLDS = [World(seed, same_words=seed % 3 == 0, partly=seed % 3 == 1) for seed in range(6)] + \
    [World(7, fuzzed=True), World(8, fuzzed=True, same_words=True), World(16, quiet=True, same_words=True, values=VALUES)]
QUIET = [World(seed, quiet=True) for seed in (0, 2, 4, 5)]
WORKBOOKS = 500


def rows(file):
    with open(file, newline="", encoding="utf-8") as text:
        return list(csv.DictReader(text))


class Run:
    """An archive, and the program over it."""

    def __init__(self, world, name="world"):
        self.archive, self.folder = make_archive(world), WORK / f"{name}-{world.seed}"
        self.old, self.output = self.folder / "old", self.folder / "output"

    def books(self):
        for path, book, _ in self.archive.books:
            yield self.old / path, book
        for family, path, new, _ in self.archive.examples:
            yield self.new(family, path), new

    def new(self, family, path):
        """As Calc's menu hands it over, or the old one's format."""
        name = f"saved-{family.number}.ods" if family.number % 2 else f"{family.number}{path.suffix}"
        return self.folder / "new" / name

    def command(self, compare=True, values=None, output=None):
        world = self.archive.world
        options = ["--partly"] if world.partly else []
        for family, path, _, state in self.archive.examples:
            options += ["--example", self.new(family, path), "--of", self.old / path]
            for rule in family.rules if compare else []:
                new, old = state.new_place(rule), state.place(rule.key)
                options.append(f"--compare={state.tab}.{cell_name(new)}={state.tab}.{cell_name(old)}")
        if world.same_words:
            words = self.folder / "same-words.txt"
            words.write_text("".join(f"{one} = {other}\n" for one, other in self.archive.pairs), encoding="utf-8")
            options += ["--same-words", words]
        if values := values or world.values:
            file = self.folder / "values.csv"
            file.write_text("".join(f"{folder},{argument},{value}\n" for folder, argument, value in values), encoding="utf-8")
            options += ["--values-by-folder", file]
        return [PROGRAM, self.old, "--output", output or self.output, "--yes", *options]

    def start(self):
        self.said = subprocess.run([*self.command(), "--no-summary"], capture_output=True, text=True, timeout=600)
        if self.said.returncode not in (0, 1):
            raise AssertionError(f"status {self.said.returncode}: {self.said.stdout} {self.said.stderr}")

    def old_sheets(self):
        """Those that no office need write."""
        return [(self.old / path, book) for path, book, _ in self.archive.books if path.suffix != ".xls"]

    def inventory(self):
        output = self.folder / "inventory"
        subprocess.run([PROGRAM, self.old, "--inventory", "--output", output, "--no-summary"], capture_output=True, timeout=120)
        return rows(output / "layouts.csv")

    def layouts(self):
        """Which sheets have the same labels in the same places."""
        sheets = {}
        for path, book in self.old_sheets():
            for sheet in book.sheets:
                where = str(path.relative_to(self.old)), sheet.name
                sheets.setdefault(book.layouts[sheet.name], []).append(where)
        return sheets

    def copies(self):
        return [self.output / path for path, _, _ in self.archive.books]

    def compare(self, cells, found):
        problems = rows(self.output / "problems.csv")
        for path, book, truths in self.archive.books:
            compare_workbook(path, book, truths, cells[self.output / path], problems, found)
        return found

    def compare_reports(self, cells, found):
        carried = [(path, sheet, truth, cells[self.output / path][sheet])
                   for path, _, truths in self.archive.books for sheet, truth in truths.items()]
        compare_pairs(self.folder.name, rows(self.output / "old-and-new.csv"), carried, found)
        compare_read(self.folder.name, rows(self.output / "read.csv"), carried, found)


class OldSheets(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        shutil.rmtree(WORK, ignore_errors=True)
        WORK.mkdir(parents=True)
        converter = Converter(OFFICE, PACKAGE, WORK / "office")
        cls.runs = [Run(world) for world in WORLDS]
        write_all([one for run in cls.runs for one in run.books()], WORK / "scratch", converter)
        start = time.monotonic()
        for run in cls.runs:
            run.start()
        cls.seconds = time.monotonic() - start
        cls.cells = read_all([copy for run in cls.runs for copy in run.copies()], WORK / "back", converter)
        cls.found = Found()
        for run in cls.runs:
            run.compare(cls.cells, cls.found)
            run.compare_reports(cls.cells, cls.found)

    def none(self, what, most=25):
        self.assertFalse(what, f"{len(what)} cases:\n" + "\n".join(map(str, what[:most])))

    def test_has_enough_workbooks(self):
        number = sum(len(run.archive.books) for run in self.runs)
        print(f"{number} workbooks in {self.seconds:.0f} s; {self.found.carried} cells carried of {self.found.cells} that "
              f"had to be; {self.found.sheets} sheets to be carried, {self.found.left} left alone", flush=True)
        self.assertGreaterEqual(number, WORKBOOKS)

    def test_carries_nothing_to_a_wrong_cell_over_a_note_or_with_a_wrong_unit(self):
        self.none(self.found.wrong)

    def test_refuses_without_need_at_most_2_in_100(self):
        self.assertLessEqual(len(self.found.missed), 0.02 * self.found.cells, "\n".join(self.found.missed[:25]))
        self.assertLessEqual(self.found.left, 0.02 * self.found.sheets)

    def test_lists_each_sheet_that_it_leaves_alone(self):
        self.none(self.found.silent)
        self.assertLessEqual(len(self.found.needless), 0.02 * self.found.sheets, "\n".join(self.found.needless[:25]))

    def test_sets_each_new_result_against_the_old_one(self):
        self.none(self.found.pairs)

    def test_says_what_each_argument_read(self):
        self.none(self.found.read)

    def test_finds_the_layouts_in_an_inventory(self):
        wrong, number = [], 0
        for world in QUIET:
            run = Run(world, "quiet")
            write_all(run.old_sheets(), WORK / "scratch", None)
            listed = run.inventory()
            for sheets in run.layouts().values():
                here = [row for row in listed if (row["example_file"], row["example_sheet"]) in sheets]
                number += 1
                if [int(row["sheets"]) for row in here] != [len(sheets)]:
                    wrong.append(f"{run.folder}: {len(sheets)} sheets as {sheets[0]}, found {here}")
        print(f"{number - len(wrong)} of {number} layouts found in the inventory", flush=True)
        self.assertGreater(number, 20)
        self.assertLessEqual(len(wrong), 0.05 * number, "\n".join(wrong))

    def test_refuses_a_value_for_a_year_that_is_not_there(self):
        run = next(run for run in self.runs if run.archive.world.values)
        said = subprocess.run([*run.command(values=[("2104", "net calorific value", 19)], output=run.folder / "slip"), "--plan"],
                              capture_output=True, text=True, timeout=120)
        self.assertEqual(said.returncode, 2)
        self.assertIn("'2104' is no folder, year or workbook of this run", said.stderr)

    def test_falls_into_no_trap(self):
        old, output, options, books, wrong, carried = WORK / "traps" / "old", WORK / "traps" / "output", [], [], [], 0
        for number, trap in enumerate(TRAPS):
            first, new = old / trap.name / "first.fods", WORK / "traps" / f"{number}.fods"
            books += [(first, book(trap.old)), (new, book(trap.old, trap.typed))]
            books += [(old / trap.name / f"{name}.fods", book(rows)) for name, (rows, _) in trap.others.items()]
            options += ["--example", new, "--of", first]
        write_all(books, WORK / "scratch", None)
        said = subprocess.run([PROGRAM, old, "--output", output, "--yes", "--no-summary", *options], capture_output=True,
                              text=True, timeout=300)
        self.assertIn(said.returncode, (0, 1), said.stderr)
        for trap in TRAPS:
            for name, (cells, allowed) in trap.others.items():
                sheet, got = book(cells).sheets[0], read(output / trap.name / f"{name}.fods")["Runs"]
                for place in set(sheet.cells) | set(got):
                    if is_formula(got.get(place, Cell()).content) and got[place].content in allowed.get(cell_name(place), []):
                        carried += 1
                    elif what := difference(sheet.cells.get(place), got.get(place)):
                        wrong.append(f"{trap.name}, {name}, {cell_name(place)}: {what}, may be {allowed}")
        print(f"{carried} cells carried beside traps", flush=True)
        self.none(wrong)
        self.assertGreater(carried, 0)

    def test_would_notice_a_formula_in_a_wrong_place(self):
        run = self.runs[0]
        cells = {file: copy.deepcopy(self.cells[file]) for file in run.copies()}
        before = len(run.compare(cells, Found()).wrong)
        path, sheet, place = next((path, sheet, place) for path, _, truths in run.archive.books
                                  for sheet, truth in truths.items() for place in truth.must)
        on = cells[run.output / path][sheet]
        on[place[0] + 1, place[1]], on[place] = on[place], copy.deepcopy(on.get((place[0] + 1, place[1]), on[place]))
        self.assertGreater(len(run.compare(cells, Found()).wrong), before)


if __name__ == "__main__":
    sys.dont_write_bytecode = True
    unittest.main(argv=sys.argv[:1])
