"""While a real LibreOffice recalculates the function guide, which calls every function, the add-in opens no file and no
socket and starts no process: every system call of these kinds is traced with its stack, and none has a frame of stove.so.

traced_recalculation.py PACKAGE GUIDE.FODS SOFFICE.BIN"""

import pathlib
import re
import subprocess
import sys
import tempfile
import zipfile

# What opens, makes, changes or removes a file, a socket or a process. (Looking whether a file is there is none of these,
# and unwinding the stack of each look would take most of the time.)
KINDS = ("trace=open,openat,openat2,creat,mkdir,mkdirat,unlink,unlinkat,rename,renameat,renameat2,link,symlink,truncate,"
         "mknod,memfd_create,socket,socketpair,connect,bind,listen,pipe,pipe2,fork,vfork,clone,clone3,execve")
QUIET = {"timeout": 300, "stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL}
OURS, CALCS = "/stove.so(", "/libsclo.so("


def events(log):
    """Pairs of a system call and its stack, innermost frame first."""
    call, frames = None, []
    for line in log.read_text(encoding="utf-8", errors="replace").splitlines():
        if line.startswith(" > "):
            frames.append(line[3:])
            continue
        if call:
            yield call, frames
        call, frames = line, []
    if call:
        yield call, frames


def trace(log, command):
    subprocess.run(["strace", "-f", "-k", "-qq", "-o", log, "-e", KINDS, *command], check=True, **QUIET)


def recalculated(package, guide, office, folder):
    """The guide's first sheet as Calc works it out, and the trace."""
    with zipfile.ZipFile(package) as content: # what lies unpacked among the bundled extensions counts as installed
        content.extractall(folder / "bundled/hearthcell")
    convert = [office, "--headless", "--norestore", f"-env:UserInstallation=file://{folder}/profile",
               f"-env:BUNDLED_EXTENSIONS=file://{folder}/bundled", "--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76",
               "--outdir", folder, guide]
    # A new profile asks to be started again, at times twice.
    if not any(subprocess.run(convert, check=False, **QUIET).returncode == 0 for _ in range(3)):
        sys.exit("LibreOffice does not start")
    sheet = folder / pathlib.Path(guide).with_suffix(".csv").name
    sheet.unlink()
    trace(folder / "trace", convert)
    return sheet.read_text(encoding="utf-8"), list(events(folder / "trace"))


def faults(sheet, traced, guide):
    if not re.search(r"All \d{3,} checks agree", sheet):
        yield "the guide's checks do not agree, so nothing was called or it went wrong"
    # What must be seen, or the trace and its stacks are worth nothing.
    if not any("/stove.so" in call and "open" in call for call, _ in traced):
        yield "the trace does not show that the add-in was loaded"
    if not any(pathlib.Path(guide).name in call for call, _ in traced):
        yield "the trace does not show that the guide was opened"
    if not any(CALCS in frame for _, frames in traced for frame in frames):
        yield "the stacks do not even show Calc itself"
    for call, frames in traced:
        if any(OURS in frame for frame in frames):
            yield "\n   ".join([f"the add-in called {call}", *frames])


def recognises_a_culprit(folder):
    """Whether a library of the add-in's name that does open a file is found by the same means."""
    (folder / "culprit").mkdir()
    (folder / "culprit.c").write_text('#include <fcntl.h>\nint culprit(void) { return open("/dev/null", O_RDONLY); }\n')
    subprocess.run(["cc", "-shared", "-fPIC", "-o", folder / "culprit/stove.so", folder / "culprit.c"], check=True)
    trace(folder / "of culprit", ["/usr/bin/python3", "-c", f"import ctypes; ctypes.CDLL('{folder}/culprit/stove.so').culprit()"])
    return any("/dev/null" in call and any(OURS in frame for frame in frames) for call, frames in events(folder / "of culprit"))


def main(package, guide, office):
    with tempfile.TemporaryDirectory(prefix="hearthcell-") as folder:
        sheet, traced = recalculated(package, guide, office, pathlib.Path(folder))
        found = list(faults(sheet, traced, guide))
        if not recognises_a_culprit(pathlib.Path(folder)):
            found.append("a library that does open a file is not found")
    by_calc = sum(any(CALCS in frame for frame in frames) for _, frames in traced)
    print("\n".join(found) if found else f"{len(traced)} system calls, {by_calc} with Calc in the stack, none with the add-in")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
