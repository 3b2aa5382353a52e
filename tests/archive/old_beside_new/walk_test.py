"""README's walk from a folder of old sheets to old beside new: its commands run, and print what stands there.

walk_test.py BUILD OFFICE WORK [--write]    --write: puts what is printed now into README.md
"""

import os
import re
import shutil
import subprocess
import sys
import unittest
from pathlib import Path

BUILD, OFFICE, WORK = (Path(argument) for argument in sys.argv[1:4])
ROOT = Path(__file__).resolve().parents[3]
README = ROOT / "README.md"
BLOCK = re.compile(r"^```(sh)?\n(.*?)^```$", re.MULTILINE | re.DOTALL)


def walk():
    """The part of README that is the walk, and where it begins."""
    text = README.read_text(encoding="utf-8")
    begin, end = text.index("<!-- walk:"), text.index("<!-- end of the walk -->")
    return text[begin:end], begin


def run(command):
    """What it prints, without the place that this test works in; programs are on the PATH, as where they are installed."""
    there = {**os.environ, "PATH": f"{BUILD}:{OFFICE}:{os.environ['PATH']}", "PYTHONDONTWRITEBYTECODE": "1"}
    done = subprocess.run(["bash", "-c", command], cwd=WORK, env=there, capture_output=True, text=True, timeout=900)
    return done.stdout.replace(f"{WORK}/", ""), done.stderr, done.returncode


def steps():
    """Each block of output in README, with what its last command prints now; and each command's end."""
    shutil.rmtree(WORK, ignore_errors=True)
    WORK.mkdir(parents=True)
    (WORK / "sample-sheets").symlink_to(ROOT / "sample-sheets")
    outputs, ends, printed = [], [], ""
    for block in BLOCK.finditer(walk()[0]):
        if not block.group(1):
            outputs.append((block, printed))
            continue
        for command in block.group(2).splitlines():
            printed, complained, status = run(command)
            ends.append((command, status, complained))
    return outputs, ends


class Walk(unittest.TestCase):
    maxDiff = None

    @classmethod
    def setUpClass(cls):
        cls.outputs, cls.ends = steps()

    def test_is_five_commands(self):
        self.assertEqual(5, len(self.ends))

    def test_ends_as_told(self):
        # 1: there is something to be looked at; 2: nothing was computed yet
        self.assertEqual([0, 1, 0, 2, 1], [status for command, status, complained in self.ends], self.ends)

    def test_prints_what_readme_says(self):
        self.assertEqual(2, len(self.outputs))
        for block, printed in self.outputs:
            self.assertEqual(block.group(2), printed)

    def test_leaves_old_beside_new(self):
        lines = (WORK / "done/old-and-new.csv").read_text(encoding="utf-8").splitlines()
        self.assertEqual(1 + 16, len(lines))
        self.assertTrue((WORK / "done/summary.ods").exists())


def write():
    text, begin = README.read_text(encoding="utf-8"), walk()[1]
    for block, printed in reversed(steps()[0]):
        text = text[:begin + block.start(2)] + printed + text[begin + block.end(2):]
    README.write_text(text, encoding="utf-8")


if __name__ == "__main__":
    if sys.argv[4:] == ["--write"]:
        write()
    else:
        unittest.main(argv=sys.argv[:1])
