"""What `cmake --install` puts into a folder works from there, and the shells' completions name every option.

installed.py BUILD FOLDER"""

import os
import re
import shutil
import subprocess
import sys


def said(*command, **more):
    return subprocess.run(command, check=True, capture_output=True, text=True, **more).stdout


def completed(file, *words):
    """What bash offers for the last of some words."""
    script = (f'source "{file}"; COMP_WORDS=(hearthcell-archive "$@"); COMP_CWORD=$#; _hearthcell_archive; '
              'printf "%s\\n" "${COMPREPLY[@]}"')
    return said("bash", "-c", script, "bash", *words, cwd="/").split()


def main(build, folder):
    shutil.rmtree(folder, ignore_errors=True)
    said("cmake", "--install", build, "--prefix", "/usr", env={**os.environ, "DESTDIR": folder})
    usr = os.path.join(folder, "usr")
    program = os.path.join(usr, "bin/hearthcell-archive")
    assert said(program, "--version").startswith("Hearthcell "), "the program does not start"
    options = set(re.findall(r"^\s+(?:-.,)?(--[a-z-]+)", said(program, "--help"), re.MULTILINE))
    assert len(options) > 15, options
    bash = os.path.join(usr, "share/bash-completion/completions/hearthcell-archive")
    assert set(completed(bash, "--")) == options, set(completed(bash, "--")) ^ options
    assert "usr" in completed(bash, "--output", "u") and completed(bash, "--workers", "") == []
    for place in ("share/zsh/vendor-completions/_hearthcell-archive", "share/fish/vendor_completions.d/hearthcell-archive.fish"):
        with open(os.path.join(usr, place), encoding="utf-8") as file:
            text = file.read()
        missing = [option for option in options if option not in text and f"-l {option[2:]} " not in text]
        assert not missing, (place, missing)
    shown = os.path.join(usr, "lib/libreoffice/share/extensions/hearthcell")
    for name in ("description.xml", "stove.so", "menu.so", "META-INF/manifest.xml", "guide/en.ods"):
        assert os.path.getsize(os.path.join(shown, name)) > 0, name
    assert os.path.getsize(os.path.join(usr, "share/man/man1/hearthcell-archive.1")) > 1000
    # The program runs a workbook from where it is installed.
    work = os.path.join(folder, "work")
    os.makedirs(work)
    shutil.copy(os.path.join(shown, "guide/en.ods"), work)
    ended = subprocess.run((program, work, "--output", os.path.join(folder, "output"), "--workers", "1", "--no-summary"),
                           capture_output=True, text=True)
    assert ended.returncode in (0, 1), ended.stderr  # 1: the guide as it is packed holds no results yet
    assert os.path.exists(os.path.join(folder, "output/en.ods"))


if __name__ == "__main__":
    main(*sys.argv[1:])
