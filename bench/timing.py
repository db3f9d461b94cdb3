"""Time whole commands, each from a cold process, and print what was seen.

Run by itself it times an empty Python, the floor under every other figure here.
"""

import json
import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
FARWALL = str(Path(sys.executable).with_name("farwall"))
ONCE = "--once" in sys.argv


def cold(what: str, command: list[str], *, times: int, good: tuple[int, ...] = (0,)) -> None:
    """Print the median and the range of `times` runs, and the largest memory; exit 1 if one fails.

    Memory is the resident peak of the command alone, in MB as Linux counts it (kB).
    """
    seconds, peak_mb = [], 0.0
    for _ in range(1 if ONCE else times):
        start = time.perf_counter()
        process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE)
        assert process.stderr is not None
        words = process.stderr.read().decode()
        _, status, usage = os.wait4(process.pid, 0)
        seconds.append(time.perf_counter() - start)
        peak_mb = max(peak_mb, usage.ru_maxrss / 1024)
        code = os.waitstatus_to_exitcode(status)
        if code not in good or "Traceback" in words:  # Python's own exit 1 is not an answer
            sys.exit(f"{what}: exit {code}\n{words}")
    print(
        f"{what:<44} {statistics.median(seconds):6.2f} s "
        f"({min(seconds):.2f}-{max(seconds):.2f}, {len(seconds)} runs) {peak_mb:5.0f} MB"
    )


def cold_reads(data: bytes, name: str, drawn: int) -> None:
    """Print what `farwall read` takes on a file of this name: seconds, rooms read of `drawn`."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / name
        path.write_bytes(data)
        print(f"{len(data) / 1e6:.2f} MB, {drawn} rooms drawn")
        for _ in range(1 if ONCE else 5):
            began, before = time.perf_counter(), os.times()
            command = [FARWALL, "read", str(path), "--json"]
            answer = subprocess.run(command, check=True, capture_output=True)
            after, wall = os.times(), time.perf_counter() - began
            cpu = after.children_user + after.children_system
            cpu -= before.children_user + before.children_system
            rooms = len(json.loads(answer.stdout)["rooms"])
            print(f"{rooms} rooms read: {cpu:.2f} s of the processor, {wall:.2f} s of wall")


if __name__ == "__main__":
    cold("python, nothing else", [sys.executable, "-c", ""], times=10)
