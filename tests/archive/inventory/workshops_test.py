"""The inventory of the archive of two workshops: the layouts that a person sees there, and what its formulas compute."""

import collections
import csv
import shutil
import subprocess
import sys
import unittest
from pathlib import Path

ARCHIVE, MAKE, OFFICE, WORK = sys.argv[1:5]
FOLDER, OUTPUT = Path(WORK) / "workshops", Path(WORK) / "inventory"


def rows(output, name):
    with open(output / name, newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def inventory(output, *more):
    return subprocess.run([ARCHIVE, FOLDER, "--inventory", "--output", output, "--no-summary", *more],
                          capture_output=True, text=True, timeout=120)


class Workshops(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        shutil.rmtree(WORK, ignore_errors=True)
        subprocess.run([sys.executable, "-B", MAKE, FOLDER, f"{OFFICE}/soffice"], check=True, timeout=600)
        cls.said = inventory(OUTPUT)

    def test_finds_the_layouts_that_a_person_sees(self):
        found = collections.Counter((Path(row["example_file"]).parts[0], row["sheets"], row["workbooks"])
                                    for row in rows(OUTPUT, "layouts.csv"))
        self.assertEqual(found, {("hillside", "8", "8"): 2, ("hillside", "4", "4"): 1, ("hillside", "1", "1"): 1,
                                 ("atelier", "20", "4"): 1, ("atelier", "8", "8"): 1, ("atelier", "6", "6"): 1})

    def test_says_in_what_near_ones_differ(self):
        differs = [row["differs"] for row in rows(OUTPUT, "layouts.csv") if row["near_layout"]]
        self.assertTrue(any("'Air temperature' in A6 is new" in one for one in differs), differs)
        self.assertTrue(any("'Char, kg' in H4, not I4" in one for one in differs), differs)

    def test_recognises_each_formula_in_whatever_format(self):
        cells = collections.Counter()
        for row in rows(OUTPUT, "formulas.csv"):
            cells[row["function"], row["methods"], row["whole_or_part"]] += int(row["cells"])
        forms, runs = 8 + 8 + 6, 6 + 9 + 14 + 18 + 25
        both = "WBT 4.2.3 / WBT 3"
        self.assertEqual(cells, {("STOVE.BOILINGPOINT", both, "whole"): forms,
                                 ("STOVE.USEFULHEAT", both, "whole"): forms + runs,
                                 ("STOVE.WATERHEAT", "ISO 19867-1", "whole"): 20 + 3 * 8,
                                 ("STOVE.EQUIVALENTDRYFUEL", "WBT 3", "whole"): forms + runs,
                                 ("STOVE.BENCHEFFICIENCY", "WBT 3", "whole"): forms,
                                 ("STOVE.EFFICIENCY", "WBT 3", "whole"): runs - 5,  # five are typed over
                                 ("STOVE.FIREPOWER", "WBT 3", "whole"): forms,
                                 ("STOVE.NORMALBOILTIME", both, "whole"): forms})

    def test_lists_what_is_odd(self):
        odd = collections.Counter(row["reason"] for row in rows(OUTPUT, "problems.csv"))
        self.assertEqual(odd, {"results typed over": 5, "numbers that are texts": 5, "stored errors": 5})
        self.assertEqual(self.said.returncode, 1)

    def test_proposes_words_of_two_languages_which_join_layouts_when_confirmed(self):
        words = (OUTPUT / "same-words.txt").read_text(encoding="utf-8")
        self.assertIn("# Humidité = Moisture\n", words)
        confirmed = Path(WORK) / "same-words.txt"
        confirmed.write_text("".join(line[2:] if " = " in line and not line.startswith("# Words") else line
                                     for line in words.splitlines(keepends=True)), encoding="utf-8")
        inventory(OUTPUT, "--same-words", confirmed)
        self.assertIn("14", [row["sheets"] for row in rows(OUTPUT, "layouts.csv")])
        shutil.copy(confirmed, OUTPUT / "same-words.txt")
        inventory(OUTPUT, "--same-words", OUTPUT / "same-words.txt")
        self.assertEqual((OUTPUT / "same-words.txt").read_bytes(), confirmed.read_bytes(), "what is confirmed stays")
        (OUTPUT / "same-words.txt").unlink()
        inventory(OUTPUT)

    def test_joins_what_several_runs_found(self):
        parts = [Path(WORK) / "one", Path(WORK) / "other"]
        for part, folder in zip(parts, ("hillside", "atelier")):
            subprocess.run([ARCHIVE, FOLDER / folder, "--base", FOLDER, "--inventory", "--output", part, "--no-summary"],
                           capture_output=True, timeout=120)
        joined = Path(WORK) / "joined"
        subprocess.run([ARCHIVE, "--merge", *parts, "--output", joined, "--no-summary"], capture_output=True, timeout=120)
        for name in ("layouts.csv", "formulas.csv", "problems.csv", "same-words.txt", "summary.txt"):
            self.assertEqual((joined / name).read_bytes(), (OUTPUT / name).read_bytes(), name)

    def test_leaves_the_folder_as_it_is(self):
        before = {path: path.stat().st_mtime_ns for path in FOLDER.rglob("*")}
        inventory(OUTPUT)
        self.assertEqual(before, {path: path.stat().st_mtime_ns for path in FOLDER.rglob("*")})


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
