"""Nothing in the project includes what is above it, every header says what it is, and this test would notice."""
import tempfile
import unittest
from pathlib import Path

from structure import faults, includes_of, rooms_in

ROOT = Path(__file__).resolve().parents[2]
FLOOR_PLAN = "CMakeLists.txt DEVELOPERS.md LICENSE README.md extension functions manifest sample-sheets tests".split()
ROOMS = (Path(__file__).parent / "rooms.txt").read_text(encoding="utf-8")


class TheProject(unittest.TestCase):
    def test_arrows_run_down_only_and_never_in_a_circle(self):
        self.assertEqual([], faults(ROOT, ROOMS))

    def test_has_nothing_more_at_its_top_level(self):
        there = sorted(entry.name for entry in ROOT.iterdir() if not entry.name.startswith(".") and entry.name != "build")
        self.assertEqual(FLOOR_PLAN, there)

    def test_every_include_is_seen(self):
        seen = {file for file, _, _ in includes_of(ROOT, rooms_in(ROOMS))}
        self.assertGreater(len(seen), 250)


class AMadeUpProject(unittest.TestCase):
    def faults_of(self, files, rooms="cellar\nhouse\nhouse/roof\n"):
        with tempfile.TemporaryDirectory() as root:
            for room in rooms.split():
                (Path(root) / room).mkdir()
            for name, content in files.items():
                (Path(root) / name).write_text(content, encoding="utf-8")
            return faults(root, rooms)

    def test_may_include_what_is_below(self):
        files = {"cellar/coal.hpp": "", "house/roof/tile.hpp": '#include "cellar/coal.hpp"\n'}
        self.assertEqual([], self.faults_of(files))

    def test_may_not_include_what_is_above(self):
        files = {"house/door.cpp": '\n#include "house/roof/tile.hpp"\n', "house/roof/tile.hpp": ""}
        self.assertEqual(["house/door.cpp:2 is in house and includes house/roof/tile.hpp of the higher room house/roof"],
                         self.faults_of(files))

    def test_may_not_go_in_a_circle_even_by_way_of_the_sources(self):
        files = {"house/door.cpp": '#include "house/hall.hpp"\n', "house/hall.hpp": '#include "house/door.hpp"\n',
                 "house/door.hpp": ""}
        self.assertEqual(["a circle: house/door -> house/hall -> house/door"], self.faults_of(files))

    def test_may_not_name_a_file_from_elsewhere_than_the_root(self):
        files = {"house/door.cpp": '#include "door.hpp"\n', "house/door.hpp": ""}
        self.assertEqual(['house/door.cpp:1 includes "door.hpp": write the path from the root of the project'],
                         self.faults_of(files))

    def test_may_not_have_a_header_that_does_not_say_what_it_is(self):
        rooms = "functions\n"
        what = "// Coal, and\n// how much of it.\n"
        self.assertEqual([], self.faults_of({"functions/coal.hpp": "#pragma once\n" + what + "\nint coal;\n"}, rooms))
        for opening in ("", what, "#pragma once\n\n/// Coal.\nint coal;\n", "#pragma once\n// Coal\n\nint coal;\n"):
            self.assertEqual(1, len(self.faults_of({"functions/coal.hpp": opening}, rooms)), opening)

    def test_may_not_list_a_room_that_is_not_there(self):
        self.assertIn("attic is listed as a room and is none", faults(ROOT, "functions\nattic\n"))


if __name__ == "__main__":
    unittest.main()
