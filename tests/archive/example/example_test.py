"""Examples carried by the program itself: what is asked first, a plan, five workbooks, values by folder, what is written.

example_test.py PROGRAM WORKSHOPS WORK    WORKSHOPS: the folder of sample-sheets/workshops
"""

import csv
import re
import shutil
import subprocess
import sys
import unittest
from pathlib import Path

PROGRAM, WORK = sys.argv[1], Path(sys.argv[3])
sys.path.insert(0, sys.argv[2])
from flat_sheets import flat  # noqa: E402

ALTITUDE = 3  # rows of the form, from 0
BOILING = 6


def form(altitude, name, water="kg", more=None):
    rows = [["Water boiling test"], ["Tester", name], ["Stove", name + " stove"], ["Altitude", altitude, "m"],
            ["Start", 20, "°C"], ["Water", 5, water], ["Boiling point", "=100-B4/300", "°C"],
            ["Heat", "=4.186*B6*(B7-B5)", "kJ"]]
    if more:
        rows.insert(3, more)
        rows[7][1], rows[8][1] = "=100-B5/300", "=4.186*B7*(B8-B6)"
    return [("Run", rows)]


def rows(file):
    with open(file, newline="", encoding="utf-8") as text:
        return list(csv.DictReader(text))


def formulas(file):
    return re.findall(r'table:formula="of:=([^"]*stove[^"]*)"', file.read_text(encoding="utf-8"), re.I)


class Example(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        shutil.rmtree(WORK, ignore_errors=True)
        cls.old = WORK / "old"
        for number, tester in enumerate(["Amina", "Jonas", "Rehema", "Petro", "Lucia", "Ramon", "Aline"]):
            folder = cls.old / str(2011 + number % 3)
            folder.mkdir(parents=True, exist_ok=True)
            (folder / f"run-{number}.fods").write_text(flat(form(1600 + number, tester)), encoding="utf-8")
        other = cls.old / "2014"
        other.mkdir()
        (other / "grams.fods").write_text(flat(form(1640, "Amina", "g")), encoding="utf-8")
        (other / "row-more.fods").write_text(flat(form(1640, "Jonas", more=["Lid", "on"])), encoding="utf-8")
        sheet = form(1600, "Amina")
        sheet[0][1][BOILING][1] = "=HEARTHCELL.STOVE.BOILINGPOINT(B4)"
        sheet[0][1][7] += ["=HEARTHCELL.STOVE.WATERHEAT(B6*1000;B5;B7)", "=HEARTHCELL.STOVE.BOILINGPOINT(1900)"]
        cls.new = WORK / "new.fods"
        cls.new.write_text(flat(sheet), encoding="utf-8")

    def run_it(self, name, *options):
        output = WORK / name
        run = subprocess.run([PROGRAM, self.old, "--example", self.new, "--of", self.old / "2011" / "run-0.fods", "--output",
                              output, "--no-summary", "--workers", "1", *options], capture_output=True, text=True, timeout=300)
        return run, output

    def test_is_joined_without_the_numbers_of_one_run(self):
        outputs = []
        for year in ("2011", "2012"):
            outputs.append(WORK / f"joined-{year}")
            subprocess.run([PROGRAM, self.old / year, "--example", self.new, "--of", self.old / "2011" / "run-0.fods", "--yes",
                            "--output", outputs[-1], "--no-summary", "--workers", "1"], capture_output=True, timeout=300)
        run = subprocess.run([PROGRAM, "--merge", *outputs, "--output", WORK / "joined", "--no-summary"], capture_output=True,
                             text=True, timeout=300)
        self.assertIn("Taken for granted: 1900 as altitude of STOVE.BOILINGPOINT\n", run.stdout, run.stderr)
        self.assertNotIn("goes into", run.stdout)
        self.assertIn("Carried: 15 formulas into 5 sheets of 5 workbooks", run.stdout)

    def test_asks_before_anything_is_computed(self):
        run, output = self.run_it("asked")
        self.assertEqual(run.returncode, 2, run.stdout + run.stderr)
        self.assertIn("1900 as altitude of STOVE.BOILINGPOINT goes into 8 sheets", run.stdout)
        self.assertIn("--yes", run.stderr)
        self.assertEqual([(row["cell"], row["kind"], row["note"]) for row in rows(output / "carried.csv")],
                         [("B7", "formula", ""), ("D8", "formula", ""), ("E8", "formula", "")])
        self.assertIn(("1900", "altitude"), [(row["value"], row["argument"]) for row in rows(output / "constants.csv")])
        self.assertIn(("Run.D8", "Run.B8"), [(row["new"], row["old"]) for row in rows(output / "pairs.csv")])
        self.assertFalse(list(output.rglob("*.fods")))

    def test_plans_without_asking(self):
        run, output = self.run_it("planned", "--plan")
        self.assertEqual(run.returncode, 0, run.stderr)
        self.assertTrue((output / "carried.csv").exists())
        self.assertFalse(list(output.rglob("*.fods")))

    def test_carries_what_fits_and_names_the_rest(self):
        run, output = self.run_it("carried", "--yes")
        self.assertEqual(run.returncode, 1, run.stderr)
        for number in range(7):
            copy = output / str(2011 + number % 3) / f"run-{number}.fods"
            self.assertEqual([text.lower() for text in formulas(copy)],
                             ["hearthcell.stove.boilingpoint([.b4])", "hearthcell.stove.waterheat([.b6]*1000;[.b5];[.b7])",
                              "hearthcell.stove.boilingpoint(1900)"])
        self.assertIn("[.B7]*1000;[.B6];[.B8]", formulas(output / "2014" / "row-more.fods")[1])
        self.assertEqual(formulas(output / "2014" / "grams.fods"), [])
        self.assertEqual([(row["file"], row["reason"], row["detail"]) for row in rows(output / "problems.csv")],
                         [("2014/grams.fods", "another layout", "Run: B6: its unit is 'g', not 'kg'")])
        read = {(row["function"], row["argument"]): row for row in rows(output / "read.csv")}
        self.assertEqual(read["STOVE.WATERHEAT", "water mass"]["median"], "5000")
        self.assertEqual(read["STOVE.BOILINGPOINT", "altitude"]["highest"], "1640")
        self.assertIn("Carried: 24 formulas into 8 sheets of 8 workbooks", run.stdout)

    def test_does_five_first(self):
        _, output = self.run_it("tried", "--yes", "--try")
        self.assertEqual(len(list(output.rglob("*.fods"))), 5)

    def test_puts_other_values_into_folders(self):
        values = WORK / "values.csv"
        values.write_text("folder,argument,value\n2012,altitude,1234\n2012/run-4.fods,altitude,77\n", encoding="utf-8")
        _, output = self.run_it("valued", "--yes", "--values-by-folder", values)
        for file, altitude in (("2011/run-0", 1900), ("2012/run-1", 1234), ("2012/run-4", 77)):
            self.assertIn(f"({altitude})", formulas(output / (file + ".fods"))[2])
        values.write_text("2012,tare,5\n", encoding="utf-8")
        run, _ = self.run_it("valued-wrongly", "--yes", "--values-by-folder", values)
        self.assertEqual(run.returncode, 2)
        self.assertIn("'tare'", run.stderr)

    def test_says_what_is_missing(self):
        for words, sentence in (([], "nothing to carry"), (["--inventory"], "goes with neither"),
                                (["--example", self.new], "needs its --of")):
            new = self.new if words else self.old / "2011" / "run-0.fods"
            run = subprocess.run([PROGRAM, self.old, "--example", new, "--of", self.old / "2011" / "run-0.fods",
                                  "--output", WORK / "wrong", *words], capture_output=True, text=True, timeout=300)
            self.assertEqual(run.returncode, 2)
            self.assertIn(sentence, run.stderr)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
