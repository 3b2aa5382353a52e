"""Which old result stands beside which new one, where an example was carried down tables and along three tests side by side:
each is held against what the sheet's own readings give, worked out here by hand.

pairs_test.py ARCHIVE_PROGRAM WORKSHOPS OFFICE WORK
"""

import csv
import importlib.util
import shutil
import subprocess
import sys
import unittest
from pathlib import Path

ARCHIVE, WORKSHOPS, OFFICE, WORK = sys.argv[1:5]
FOLDER = Path(WORK) / "workshops"


def made():
    """The contents of all workbooks, as their generator has them: its chances are always the same."""
    sys.path.insert(0, WORKSHOPS)
    spec = importlib.util.spec_from_file_location("make_workshops", Path(WORKSHOPS) / "make_workshops.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    books = list(module.workbooks())
    module.save(books, FOLDER, f"{OFFICE}/soffice")
    return {str(path): sheets for path, sheets in books}


def run(*words):
    done = subprocess.run([ARCHIVE, *words, "--no-summary", "--quiet"], capture_output=True, text=True, timeout=600)
    if done.returncode > 1:
        raise RuntimeError(done.stderr)


def compared(old, formula_into, pair, folder, name):
    """The rows of old-and-new.csv after a formula was typed into one old sheet and carried."""
    typed, output = Path(WORK) / f"{name} typed", Path(WORK) / name
    run(FOLDER / old, "--output", typed, "--set", formula_into)
    run(FOLDER / folder, "--base", FOLDER, "--example", typed / Path(old).name, "--of", FOLDER / old, "--output", output,
        "--yes", "--compare", pair)
    with open(output / "old-and-new.csv", newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


class Pairs(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        shutil.rmtree(WORK, ignore_errors=True)
        cls.made = made()

    def table(self, workbook):
        return self.made[workbook][0][1]

    def efficiency(self, workbook, row):
        """By the formulas of the table, in kg and kJ."""
        cells = self.table(workbook)[row - 1]
        head = self.table(workbook)[3]
        water, start, end, steam, wood, moisture, char = (
            cells[head.index(name)]
            for name in ("Water, kg", "Start, °C", "End, °C", "Steam, kg", "Wood, kg", "Moisture", "Char, kg"))
        return (4.186 * water * (end - start) + 2260 * steam) / ((wood * (1 - 1.12 * moisture) - 1.5 * char) * 18500)

    def test_down_a_table_each_row_has_its_own_old_result(self):
        rows = compared("hillside/seasons/season-2013.ods",
                        "Runs.N5==STOVE.EFFICIENCY(STOVE.USEFULHEAT(1000*C5;D5;E5;;1000*F5);"
                        "STOVE.WOODENERGY(1000*G5;H5;$F$2/1000);STOVE.CHARENERGY(1000*I5))",
                        "Runs.N5=Runs.L5", "hillside/seasons", "tables")
        workbooks = {row["workbook"] for row in rows}
        self.assertGreaterEqual(len(workbooks), 3)
        for workbook in workbooks:
            numbers = [int(row["row"]) for row in rows if row["workbook"] == workbook]
            runs = sum(isinstance(line[0], int) for line in self.table(workbook) if line)
            self.assertEqual(list(range(5, 5 + runs)), numbers, f"no run is missing, no mean compared: {workbook}")
        for row in rows:
            number = int(row["row"])
            self.assertEqual((f"N{number}", f"L{number}"), (row["new_cell"], row["old_cell"]))
            if number == 6:  # its wood is a text
                self.assertEqual(("#VALUE!", ""), (row["old"], row["difference"]))
                self.assertIn("The old result is an error.", row["remark"])
                continue
            old = 0.244 if number == 7 else self.efficiency(row["workbook"], number)  # one result was typed over
            self.assertAlmostEqual(old, float(row["old"]), delta=1e-9)
            self.assertAlmostEqual(float(row["new"]) - old, float(row["difference"]), delta=1e-9)

    def test_along_three_tests_each_has_its_own_old_result(self):
        rows = compared("atelier/comparaisons/foyer-1.xlsx", "Essais.B12==STOVE.WATERHEAT(1000*B11;B6;B7)",
                        "Essais.B12=Essais.B12", "atelier", "side by side")
        self.assertEqual(3 * 8, len(rows))
        for row in rows:
            column = "ABCDEFG".index(row["new_cell"][0])
            self.assertEqual(row["new_cell"], row["old_cell"])
            lines = self.table(row["workbook"])
            before, pot, start, end = (lines[number][column] for number in (4, 3, 5, 6))
            old = 4.18 * (before - pot) * (end - start)
            self.assertAlmostEqual(old, float(row["old"]), delta=1e-6)
            self.assertAlmostEqual(old, float(row["ISO 19867-1"]), delta=1e-6, msg="the method that has 4.18")
            self.assertNotAlmostEqual(old, float(row["WBT 3"]), delta=1)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
