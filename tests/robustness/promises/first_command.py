"""The README's first command compiles what it uses and no more: at most 130 objects, and none of the archive program or of
a test.

first_command.py PREPARE BUILD_FOLDER"""

import re
import subprocess
import sys

MOST = 130


def output(*command):
    return subprocess.run(command, check=True, capture_output=True, text=True).stdout


def main(prepare, build):
    targets = output(prepare, "--targets", "demo").split()
    objects = re.findall(r" -o (\S+\.o) -c ", output("ninja", "-C", build, "-t", "commands", *targets))
    strange = [name for name in objects if name.startswith(("tests/", "extension/archive/"))]
    print(f"{len(objects)} objects", *strange, sep="\n")
    return 1 if strange or not 0 < len(objects) <= MOST else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
