"""What the measurements of hearthcell-archive share: its test archive, and the memory of a process and all below it."""
import statistics
import subprocess
import threading
import time
from pathlib import Path

BUILD = Path(__file__).resolve().parents[2] / "build"
TOOL = BUILD / "hearthcell-archive"
MAKER = BUILD / "tests/archive/make_archive"


def made_archive(count):
    """So many workbooks, made once."""
    made = BUILD / f"tests/archive/benchmark-{count}"
    print(f"making {count} workbooks in {made} (once)", flush=True)
    subprocess.run([MAKER, made, str(count)], check=True)
    return made / "good"


def workbooks_in(folder):
    endings = {".ods", ".fods", ".xlsx", ".xls"}
    return sorted(file for file in folder.rglob("*") if file.suffix in endings and "around" not in file.parts)


def resident(process):
    """Kilobytes of memory that nobody shares, of a process and all below it."""
    total, waiting = 0, [process]
    while waiting:
        one = waiting.pop()
        try:
            for line in Path(f"/proc/{one}/smaps_rollup").read_text().splitlines():
                if line.startswith("Pss:"):
                    total += int(line.split()[1])
            for task in Path(f"/proc/{one}/task").iterdir():
                waiting.extend((task / "children").read_text().split())
        except OSError:
            pass  # it has just ended
    return total


def watched(command, given=b""):
    """Runs a command to its end. Its exit status, the seconds it took, and its memory in kilobytes, twice a second."""
    memory, ended = [], threading.Event()
    start = time.monotonic()
    process = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.DEVNULL)

    def watch():
        while not ended.wait(0.5):
            memory.append(resident(process.pid))

    watcher = threading.Thread(target=watch)
    watcher.start()
    process.communicate(given)
    took = time.monotonic() - start
    ended.set()
    watcher.join()
    return process.returncode, took, memory


def memory_by_part(memory, parts=10):
    """The median in each tenth of the run, in MiB."""
    edges = [len(memory) * part // parts for part in range(parts + 1)]
    return [statistics.median(memory[start:end]) / 1024
            for start, end in zip(edges, edges[1:]) if end > start]
