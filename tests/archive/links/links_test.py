"""Recalculates workbooks that hold every kind of link, and watches what is opened and who is asked: links_test.py PROGRAM OFFICE FOLDER

Nothing that a link leads to may be touched, be it a server or a file; a file here is a pipe that hangs whoever opens it.
Then LibreOffice itself converts the same workbooks under the same watch, to see that the watch notices."""

import os
import re
import shutil
import socket
import subprocess
import sys
import tempfile
import threading
import time

import make_linked

FEWEST = {"fods": 30, "ods": 30, "xlsx": 30, "xls": 20}  # kinds, of which a format can hold so many
SYSTEM = ("/usr/", "/lib", "/bin", "/etc/", "/proc/", "/sys/", "/dev/", "/var/cache/fontconfig", "/var/lib/libreoffice",
          "/var/spool/libreoffice", "/run/", "/newroot", "/oldroot")
LOOKED_INTO = {"/", "/opt", "/proc", "/tmp", "/var/tmp"}  # where an office may be; where pipes are and processes are confined
BEGUN, ENDED = "<unfinished ...>", re.compile(r" *<\.\.\. \w+ resumed>")  # where another process came in between
MISSING = " = -1 ENOENT (No such file or directory)"
CALLS = "trace=%file,connect"
faults = []


class Server:
    """Counts who comes, and answers nobody."""

    def __init__(self):
        self.asked = 0
        self.socket = socket.create_server(("127.0.0.1", 0))
        self.port = self.socket.getsockname()[1]
        threading.Thread(target=self.serve, daemon=True).start()

    def serve(self):
        while True:
            connection, _ = self.socket.accept()
            self.asked += 1
            connection.close()


def fault(text):
    faults.append(text)
    print("FAULT:", text)


def whole_calls(lines):
    """Each call in one line, in the order in which they ended; one that never ended stays as it began."""
    begun = {}
    for line in lines:
        process, _, call = line.partition(" ")
        if line.endswith(BEGUN):
            begun[process] = line.removesuffix(BEGUN)
        elif end := ENDED.match(call):
            yield begun.pop(process, process + " ") + call[end.end():]
        else:
            yield line
    yield from begun.values()


def watched(trace, command, environment, limit):
    """The lines of system calls; and the exit status, or None when it had to be ended."""
    started = subprocess.Popen(["strace", "-f", "--seccomp-bpf", "-qq", "-s", "300", "-o", trace, "-e", CALLS, *command],
                               env=environment, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                               start_new_session=True)
    try:
        status = started.wait(limit)
    except subprocess.TimeoutExpired:
        os.killpg(started.pid, 9)
        started.wait()
        status = None
    with open(trace, errors="replace") as lines:
        return list(whole_calls(lines.read().splitlines())), status


def touched(lines, elsewhere):
    """What of the paths that links lead to is named in a system call, and was not missing."""
    pattern = re.compile(re.escape(elsewhere) + r"([A-Za-z0-9.-]+)")
    return sorted({found for line in lines if not re.match(r"\d+ +execve", line) and not line.endswith(MISSING)
                   for found in pattern.findall(line)})


def looked_for(lines, elsewhere):
    """The same with what was missing: every file that a link leads to is there, unless it is out of sight."""
    return touched([line.removesuffix(MISSING) for line in lines], elsewhere)


def connections(lines):
    return [line for line in lines if re.search(r"\bconnect\(.*sa_family=AF_(INET|INET6|PACKET)", line)]


def opened(lines):
    """Files that were really opened."""
    for line in lines:
        found = re.search(r'\bopen(?:at)?\((?:AT_FDCWD, |\d+, )?"([^"]*)".* = \d+$', line)
        if found:
            yield found[1]


def environment(scratch, path=None):
    for name in ("tmp", "home"):
        os.makedirs(os.path.join(scratch, name), exist_ok=True)
    return {"PATH": path or "/usr/bin:/bin", "HOME": os.path.join(scratch, "home"), "LC_ALL": "C.UTF-8",
            "TMPDIR": os.path.join(scratch, "tmp")}


def without_bubblewrap(folder):
    """A PATH on which there is everything but bubblewrap."""
    os.makedirs(folder)
    for name in os.listdir("/usr/bin"):
        if name != "bwrap":
            os.symlink(os.path.join("/usr/bin", name), os.path.join(folder, name))
    return folder


def listed(output):
    import csv

    with open(os.path.join(output, "problems.csv"), newline="") as file:
        rows = list(csv.DictReader(file))
    return {(row["file"].lstrip("'"), row["reason"]): row["detail"] for row in rows}


def check(name, program, office, folder, links, elsewhere, server, path=None, may_look=False):
    output, scratch = os.path.join(folder, name + " out"), os.path.join(folder, name + " scratch")
    asked = server.asked
    start = time.monotonic()
    lines, status = watched(
        os.path.join(folder, name + ".trace"),
        [program, links, "--output", output, "--workers", "1", "--no-summary", "--quiet", "--time-limit", "120"],
        environment(scratch, path), 1500)
    if status != 1:  # there are problems to be listed
        fault(f"{name}: the run ended with {status}")
        return
    problems = listed(output)
    for found in touched(lines, elsewhere) if may_look else looked_for(lines, elsewhere):
        fault(f"{name}: {found} was touched")
    if may_look and not looked_for(lines, elsewhere):
        fault(f"{name}: nothing was looked for: the files prove nothing")
    for line in connections(lines):
        fault(f"{name}: {line}")
    if server.asked > asked:
        fault(f"{name}: the server was asked {server.asked - asked} times")
    allowed = SYSTEM + (folder, os.path.dirname(os.path.dirname(program)), os.path.dirname(office), "/tmp/OSL_PIPE")
    inside = {file for file in opened(lines) if file.startswith("/") and not file.startswith(allowed) and file not in LOOKED_INTO}
    for file in sorted(inside):
        fault(f"{name}: {file} was opened")
    for file, reason in problems:
        if reason in ("timed out", "crashed the office", "failed in the office", "output not written"):
            fault(f"{name}: {file} {reason}: {problems[file, reason]}")
    for file in os.listdir(links):
        if file.startswith("all.") and (file, "external links kept as saved") not in problems:
            fault(f"{name}: {file} is not listed")
    print(f"{name}: {len(os.listdir(links))} workbooks, {len(lines)} system calls, {time.monotonic() - start:.0f} s")


def put_back(folder, links, output):
    """What LibreOffice keeps of links comes back as it was."""
    expected = {
        "all.fods": ["picture.png", "plugin.mp4", "linked-sheet.ods", "reference-to-a-file.ods", "conditional-format.ods",
                     "form-of-a-connection.odb", "template.ots"],
        "all.ods": ["picture.png", "plugin.mp4", "linked-sheet.ods", "reference-to-a-file.ods", "inside.png"],
        "all.xlsx": ["reference-to-a-file.xlsx", "sum-over-a-file.xlsx", "name-that-stands-for-a-file.xlsx"],
    }
    import zipfile

    for file, names in expected.items():
        copy = os.path.join(output, file)
        if zipfile.is_zipfile(copy):
            with zipfile.ZipFile(copy) as parts:
                text = "".join(parts.read(part).decode("latin-1") for part in parts.namelist())
        else:
            with open(copy, encoding="latin-1") as opened_copy:
                text = opened_copy.read()
        for name in names:
            if f"{file.rpartition('.')[2]}-{name}" not in text:
                fault(f"the copy {file} has lost its link to {name}")
        if re.search(r"outside-[0-9a-f]{4,8}-\d", text):
            fault(f"the copy {file} has a name that was to stand for a link")


def reads_halves():
    """Whether what a call names and how it ended come together, whoever else calls in between, and whatever never ends."""
    name = '"/elsewhere/{}"'.format
    lines = list(whole_calls([
        f"7  openat(AT_FDCWD, {name('missing')}, O_RDONLY <unfinished ...>",
        f"12 openat(AT_FDCWD, {name('there')}, O_RDONLY|O_CLOEXEC <unfinished ...>",
        "7  <... openat resumed>) = -1 ENOENT (No such file or directory)",
        f"7  access({name('whole')}, F_OK) = 0",
        "12 <... openat resumed>)              = 3",
        f"12 openat(AT_FDCWD, {name('hangs')}, O_RDONLY <unfinished ...>",
        "7  +++ exited with 0 +++"]))
    return (touched(lines, "/elsewhere/") == ["hangs", "there", "whole"] and list(opened(lines)) == ["/elsewhere/there"])


def control(office, folder, links, elsewhere, server):
    """LibreOffice by itself: the watch must see it."""
    scratch = tempfile.mkdtemp(prefix="control-", dir=folder)
    asked = server.asked
    lines, _ = watched(
        os.path.join(scratch, "trace"),
        [os.path.join(office, "soffice"), "--headless", "--norestore", f"-env:UserInstallation=file://{scratch}/profile",
         "--convert-to", "ods", "--outdir", os.path.join(scratch, "out"), *links],
        environment(scratch), 45)  # it hangs at the pipes, and is to
    return touched(lines, elsewhere), connections(lines), server.asked - asked


def confined():
    """Whether this system allows to confine programs."""
    command = ["bwrap", "--unshare-user", "--unshare-net", "--unshare-pid", "--ro-bind", "/", "/", "--proc", "/proc", "true"]
    try:
        return subprocess.run(command, stderr=subprocess.DEVNULL).returncode == 0
    except FileNotFoundError:
        return False


def main(program, office, folder):
    shutil.rmtree(folder, ignore_errors=True)
    os.makedirs(folder)
    if subprocess.run(["strace", "-f", "-qq", "-o", "/dev/null", "true"], stderr=subprocess.DEVNULL).returncode != 0:
        print("strace is not allowed here\n[  SKIPPED ] LinkedWorkbooks.OpenNothing (0 ms)")
        return 0
    server = Server()
    elsewhere = os.path.join(folder, "elsewhere") + "/"
    os.makedirs(elsewhere)
    for form, kinds in make_linked.TABLES.items():
        print(f"{form}: {len(kinds)} kinds of link")
        if len(kinds) < FEWEST[form]:
            fault(f"{form}: too few kinds")
        for kind in kinds:
            os.mkfifo(make_linked.address_with(elsewhere, form)(kind))
    os.mkfifo(elsewhere + "ods-inside.png")
    files, net = os.path.join(folder, "to files"), os.path.join(folder, "to the net")
    for links, prefix in ((files, "file://" + elsewhere), (net, f"http://127.0.0.1:{server.port}/linked/")):
        os.makedirs(links)
        for name, chosen in make_linked.workbooks(False):
            make_linked.write(os.path.join(links, name), chosen, prefix)

    check("files", program, office, folder, files, elsewhere, server)
    check("net", program, office, folder, net, elsewhere, server)
    put_back(folder, files, os.path.join(folder, "files out"))
    # An address that a formula puts together cannot be hidden: it is looked for, where it is not to be seen.
    computed = os.path.join(folder, "computed")
    os.makedirs(computed)
    for form, kinds in make_linked.TABLES.items():
        for kind in kinds:
            if kind.name.startswith("computed"):
                file = os.path.join(computed, f"{kind.name}.{form}")
                make_linked.write(file, [kind], "file://" + elsewhere)
    if confined():
        check("computed", program, office, folder, computed, elsewhere, server, may_look=True)
    else:
        print("bubblewrap is not allowed here\n[  SKIPPED ] LinkedWorkbooks.AreShutIn (0 ms)")
    path = without_bubblewrap(os.path.join(folder, "path"))
    check("files, first wall alone", program, office, folder, files, elsewhere, server, path)
    check("net, first wall alone", program, office, folder, net, elsewhere, server, path)

    if not reads_halves():
        fault("calls that strace shows in two lines are misread")
    seen, _, _ = control(office, folder, [os.path.join(files, "all.xlsx")], elsewhere, server)
    _, lines, asked = control(office, folder, [os.path.join(net, "all.xlsx")], elsewhere, server)
    print(f"control: LibreOffice by itself touches {len(seen)} files, connects {len(lines)} times, asks {asked} times")
    if not seen or not lines or not asked:
        fault("what LibreOffice does by itself was not noticed: the watch is blind")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(*map(os.path.abspath, sys.argv[1:4])))
