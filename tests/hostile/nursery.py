"""Reads many files, each in a process of its own that is shut in as the real one is, and quickly.

The real one starts Python anew for each file, a quarter of a second of processor time. Here one
process imports what a format needs, by reading a sound file, and then splits itself for each file;
only the split one is shut in (limits, Landlock, filter of calls, hook), reads, answers and ends.
"""

import gc
import json
import os
import select
import signal
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from importlib import import_module
from pathlib import Path
from typing import Any

from tests.hostile.seeds import Seed

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Reading
from farwall.readers.apart import child, limits, places, start, wire
from farwall.readers.hints import hints_json, with_scale

_WALLS = ("guards", "hook", "landlock", "places", "powers", "seccomp")
_ROOT = str(Path(__file__).parents[2])
_BOOT = (
    "import sys,json;o=json.loads(sys.argv[1]);sys.path.extend([*o['path'],o['root']]);"
    "from tests.hostile.nursery import serve;serve(o['path'])"
)


class Nursery:
    """One format's process, asked for one file after the other."""

    def __init__(self, process: "subprocess.Popen[bytes]") -> None:
        assert process.stdin is not None
        assert process.stdout is not None
        self.asks, self.answers = process.stdin, process.stdout

    def read(self, data: bytes, scale_m_per_unit: float | None) -> Reading | Refused | str:
        """What a process that was shut in made of the bytes; what it broke on where it did."""
        self.asks.write(f"{json.dumps([len(data), _told(scale_m_per_unit)])}\n".encode() + data)
        self.asks.flush()
        code, length = json.loads(self.answers.readline())
        text = self.answers.read(length)
        if code in (None, -signal.SIGXCPU):
            return Refused(Mistake("", "It takes longer than one file is given.", "-"))
        if code != 0:
            return f"it ended by {code}"
        found = wire.answer_in(text)
        if isinstance(found, str) and found.startswith("MemoryError"):
            return Refused(Mistake("", "It takes more memory than one file is given.", "-"))
        return found


@contextmanager
def nursery(seed: Seed) -> Iterator[Nursery]:
    """A process that has read the sound file and is ready for spoilt ones."""
    path = places.search_path()
    order = json.dumps({"path": path, "root": _ROOT})
    process = subprocess.Popen(
        [sys.executable, "-I", "-S", "-B", "-X", "utf8", "-c", _BOOT, order],
        env=start._surroundings(), stdin=subprocess.PIPE, stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL, start_new_session=True,
    )  # fmt: skip
    try:
        found = Nursery(process)
        found.asks.write(f"{json.dumps([len(seed.data), _told(seed.scale_m_per_unit)])}\n".encode())
        found.asks.write(seed.data)
        yield found
    finally:
        process.kill()
        process.communicate()


def serve(path: list[str]) -> None:
    """Be that process: the first file is read here, each further one by a split one."""
    first = _asked()
    if first is not None:
        child.answer(*first)
    for name in _WALLS:  # loaded once, and not by each split one anew
        import_module(f"farwall.readers.apart.{name}")
    gc.freeze()
    while (asked := _asked()) is not None:
        answer = os.memfd_create("answer")
        split = os.fork()
        if split == 0:
            _be_split(path, answer, *asked)
        code = _ended(split)
        os.lseek(answer, 0, os.SEEK_SET)
        text = child.taken_in(answer)
        os.close(answer)
        sys.stdout.buffer.write(f"{json.dumps([code, len(text)])}\n".encode() + text)
        sys.stdout.buffer.flush()


def _told(scale_m_per_unit: float | None) -> dict[str, Any]:
    return hints_json(with_scale(None, scale_m_per_unit))


def _asked() -> tuple[bytes, object] | None:
    line = sys.stdin.buffer.readline()
    if not line:
        return None
    length, hints = json.loads(line)
    return sys.stdin.buffer.read(length), hints


def _be_split(path: list[str], answer: int, data: bytes, hints: object) -> None:
    nowhere = os.open(os.devnull, os.O_RDWR)
    for inherited in (0, 1, 2):
        os.dup2(nowhere, inherited)
    child.shut_in(path, limits.MOST_ANSWER_BYTES)
    child.put(answer, child.answer(data, hints))
    os._exit(0)


def _ended(split: int) -> int | None:
    told = os.pidfd_open(split)
    poll = select.poll()
    poll.register(told, select.POLLIN)
    in_time = bool(poll.poll(limits.WALL_S * 1000))
    os.close(told)
    if not in_time:
        os.kill(split, signal.SIGKILL)
    code = os.waitstatus_to_exitcode(os.waitpid(split, 0)[1])
    return code if in_time else None
