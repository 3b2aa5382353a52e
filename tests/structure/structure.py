"""Reads which file includes which, and finds arrows that run the wrong way: into a higher room, or in a circle; and
headers that do not open by saying what they are."""
import re
from pathlib import Path

WITH_HEADERS = ("extension", "functions", "manifest", "tests")
OPENING = re.compile(r"#pragma once\n// [^\n]*(\n// [^\n]*)*[.:…]\n(?!// )")
INCLUDE = re.compile(r'^\s*#\s*include\s+"([^"]+)"')


def rooms_in(list_of_rooms):
    lines = (line.split("#")[0].strip() for line in list_of_rooms.splitlines())
    return [line for line in lines if line]


def room_of(file, rooms):
    """The innermost room, by its place in the list; None where a file is in none."""
    around = [room for room in rooms if file.startswith(room + "/")]
    return rooms.index(max(around, key=len)) if around else None


def includes_of(root, rooms):
    """(file, line, included) for each line that includes a file of the project, as paths from its root."""
    for file in sorted({file for room in rooms for file in (root / room).rglob("*") if file.suffix in (".hpp", ".cpp")}):
        for number, line in enumerate(file.read_text(encoding="utf-8").splitlines(), 1):
            if found := INCLUDE.match(line):
                yield file.relative_to(root).as_posix(), number, found[1]


def faults_of_paths(root, includes):
    for file, line, included in includes:
        if not (root / included).exists() and not (root / (included + ".in")).exists():
            yield f'{file}:{line} includes "{included}": write the path from the root of the project'


def faults_of_rooms(includes, rooms):
    for file, line, included in includes:
        here, there = room_of(file, rooms), room_of(included, rooms)
        if there is None:
            if "/" in included:
                yield f'{file}:{line} includes "{included}", which is in no room'
        elif there > here:
            yield f"{file}:{line} is in {rooms[here]} and includes {included} of the higher room {rooms[there]}"


def circles(includes):
    """Header and source of one name count as one file."""
    arrows = {}
    for file, _, included in includes:
        here, there = file.rsplit(".", 1)[0], included.rsplit(".", 1)[0]
        arrows.setdefault(here, set())
        if there != here:
            arrows[here].add(there)
    done = set()

    def walk(file, way):
        if file in way:
            yield " -> ".join(way[way.index(file):] + [file])
        elif file not in done:
            for next_file in sorted(arrows.get(file, ())):
                yield from walk(next_file, way + [file])
            done.add(file)

    for file in sorted(arrows):
        yield from walk(file, [])


def faults_of_openings(root):
    for folder in WITH_HEADERS:
        for file in sorted((root / folder).rglob("*.hpp")):
            if not OPENING.match(file.read_text(encoding="utf-8")):
                yield f"{file.relative_to(root)} does not open by saying what it is, in a comment below '#pragma once'"


def faults(root, list_of_rooms):
    rooms = rooms_in(list_of_rooms)
    empty = [f"{room} is listed as a room and is none" for room in rooms if not (Path(root) / room).is_dir()]
    includes = list(includes_of(Path(root), rooms))
    return [*empty, *faults_of_openings(Path(root)), *faults_of_paths(Path(root), includes), *faults_of_rooms(includes, rooms),
            *(f"a circle: {circle}" for circle in circles(includes))]
