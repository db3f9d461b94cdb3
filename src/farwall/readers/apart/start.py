"""Has a file read by a process of its own, and makes a sentence of whatever comes of it."""

from __future__ import annotations

import json
import os
import select
import signal
import stat
import subprocess
import sys
import tempfile
import threading
import time
from contextlib import contextmanager
from pathlib import Path
from typing import IO, TYPE_CHECKING, Any

from farwall.errors import FarwallError, Mistake, Refused
from farwall.readers.apart import limits, places
from farwall.readers.hints import Hints, hints_json

if TYPE_CHECKING:
    from collections.abc import Iterator

    from farwall.facts.reading import Reading
    from farwall.readers.colour_photo.packed import PackedPhoto
    from farwall.readers.floor_photo.nouns import FloorLook, FloorSeen
    from farwall.readers.photo.nouns import Shown
    from farwall.readers.price_list.noun import ListRead

    _Found = Reading | Shown | ListRead | PackedPhoto | FloorLook | FloorSeen

AT_ONCE = max(2, min(4, os.cpu_count() or 2))
"""Files read at the same time by one Farwall; the memory for them is this often the limit."""
_WAIT_S = 60.0
_BOOT = (
    "import sys,json;o=sys.argv[1];sys.path.extend(json.loads(o)['path']);"
    "from farwall.readers.apart.child import main;main(o)"
)
_ALONE = "Save the floor plan alone into a file of its own, without furniture and hatching."
_seats = threading.BoundedSemaphore(AT_ONCE)


def read_file(path: Path, *, hints: Hints | None = None) -> Reading:
    """The floor in a file. Raises Refused, and OSError where it cannot be opened.

    The file is handed over open and is not taken into memory here.
    """
    # Without O_NONBLOCK a pipe would keep us waiting for whoever writes into it.
    opened = os.open(path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0))
    try:
        insist_bearable(os.fstat(opened), path.name)
        return _reading(_ask(opened, path.name, hints))
    finally:
        os.close(opened)


def read_bytes(content: bytes, *, name: str = "", hints: Hints | None = None) -> Reading:
    """The floor in the bytes of a file; `name` only helps to word a refusal. Raises Refused."""
    return _reading(asked(content, name, hints))


def photo_of(
    content: bytes, *, name: str = "", hints: Hints | None = None, flat: bool = False
) -> Shown:
    """A photo as a page shows it, or its sheet laid flat and read. Raises Refused."""
    found = asked(content, name, hints, "flat" if flat else "look")
    from farwall.readers.photo.nouns import Shown

    if not isinstance(found, Shown):
        raise broke("unsound answer")
    return found


def prices_of(content: bytes, *, name: str = "") -> ListRead:
    """The price list in the bytes of a file, XLSX or CSV. Raises Refused."""
    found = asked(content, name, None, "prices")
    from farwall.readers.price_list.noun import ListRead

    if not isinstance(found, ListRead):
        raise broke("unsound answer")
    return found


def _reading(found: _Found) -> Reading:
    from farwall.facts.reading import Reading

    if not isinstance(found, Reading):
        raise broke("unsound answer")
    return found


def asked(
    content: bytes, name: str, hints: Hints | None, do: str = "read", also: object = None
) -> _Found:
    """What a process of its own makes of the bytes; also: told beside. Raises Refused."""
    if len(content) > limits.MOST_FILE_BYTES:
        raise _too_large(len(content), name)
    with _nameless() as file:
        file.write(content)
        file.seek(0)
        return _ask(file.fileno(), name, hints, do, also)


def guards() -> dict[str, Any]:
    """Which walls stand around readers on this system, as tried from inside one just now."""
    with _nameless() as nothing:
        code, text = _run({"do": "guards"}, nothing.fileno())
    if code != 0:
        raise FarwallError("The guards around readers could not be tried.")
    found: dict[str, Any] = json.loads(text)
    return found


def insist_bearable(what: os.stat_result, name: str) -> None:
    """Raises Refused for what is no ordinary file, or too large to be opened."""
    if stat.S_ISDIR(what.st_mode):
        mistake = Mistake("", "This is a folder.", "Name the drawing in it.")
        raise Refused(mistake, about=about(name))
    if not stat.S_ISREG(what.st_mode):
        mistake = Mistake("", "This is a device or a pipe.", "Give a file that is kept on a disk.")
        raise Refused(mistake, about=about(name))
    if what.st_size > limits.MOST_FILE_BYTES:
        raise _too_large(what.st_size, name)


def about(name: str) -> str:
    """The head of a refusal."""
    return f"{name} was not read." if name else "The file was not read."


def _too_large(size: int, name: str) -> Refused:
    most = limits.MOST_FILE_BYTES // 1_000_000
    what = f"The file has {size / 1e6:,.0f} MB, more than the {most} that are read here."
    return Refused(Mistake("", what, _ALONE), about=about(name))


def _ask(
    file: int, name: str, hints: Hints | None, do: str = "read", also: object = None
) -> _Found:
    order = {"do": do, "hints": hints_json(hints or Hints()), "also": also}
    if not _seats.acquire(timeout=_WAIT_S):
        what = "Too many files are being read just now."
        raise Refused(Mistake("", what, "Try again in a minute."), about=about(name))
    try:
        code, text = _run(order, file)
    finally:
        _seats.release()
    refusal = _outcome(code, text)
    if isinstance(refusal, Refused):
        raise Refused(*refusal.mistakes, about=refusal.about or about(name))
    return refusal


def _outcome(code: int | None, text: bytes) -> _Found | Refused:
    """What the other process came to; None for one that was ended because it took too long."""
    from farwall.readers.apart import wire

    if code is None or -code == getattr(signal, "SIGXCPU", 0):
        what = f"It takes longer than the {limits.CPU_S} seconds that one file is given."
        return Refused(Mistake("", what, _ALONE))
    if code != 0:
        # Killed by a fault in a library, or by the system for want of memory.
        return broke(f"signal {-code}" if code < 0 else f"exit {code}")
    try:
        found = wire.answer_in(text)
    except wire.Unsound:
        return broke("unsound answer")
    if isinstance(found, str) and found.startswith("MemoryError"):
        most = limits.MEMORY_BYTES / 1e9
        what = f"Reading it takes more memory than the {most:g} GB that one file is given."
        return Refused(Mistake("", what, _ALONE))
    return broke(found) if isinstance(found, str) else found


def broke(why: str) -> Refused:
    """The refusal where a reader broke off; why: for whoever mends the reader."""
    what = f"The reader broke off at something in it ({why})."
    remedy = "Save it anew in the program it was drawn with, or ask for it in another format."
    return Refused(Mistake("", what, remedy))


def _run(order: dict[str, Any], file: int) -> tuple[int | None, bytes]:
    """How the process ended (None: it was ended), and what it wrote."""
    path = places.search_path()
    order = {**order, "path": path, "parent": os.getpid()}
    # -I: no variables, no user folder. -S: the path is given, so nothing is run to find it.
    command = [sys.executable, "-I", "-S", "-B", "-X", "utf8", "-c", _BOOT, json.dumps(order)]
    with _nameless() as answer:
        try:
            process = subprocess.Popen(
                command, stdin=file, stdout=answer, stderr=subprocess.DEVNULL, cwd=os.sep,
                env=_surroundings(), start_new_session=True,
            )  # fmt: skip
        except OSError as error:
            what = f"No process could be started to read the file: {error.strerror}."
            raise FarwallError(f"{what} Close other programs and try again.") from error
        try:
            code = _wait(process)
        finally:
            _end(process)
        answer.seek(0)
        return code, answer.read(limits.MOST_ANSWER_BYTES + 1)


def _surroundings() -> dict[str, str]:
    """One thread in each library, no home, and nothing of ours that is nobody else's business."""
    one = ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS", "OPENCV_FOR_THREADS_NUM")
    kept = {name: os.environ[name] for name in ("SYSTEMROOT",) if name in os.environ}
    return {**dict.fromkeys(one, "1"), "MALLOC_ARENA_MAX": "1", "HOME": os.devnull, **kept}


def _wait(process: subprocess.Popen[bytes]) -> int | None:
    """The exit code, None when time is up. Asks to be told, rather than looking again and again."""
    ends = time.monotonic() + limits.WALL_S
    if sys.platform == "linux":
        told = os.pidfd_open(process.pid)
        try:
            poll = select.poll()
            poll.register(told, select.POLLIN)
            poll.poll(limits.WALL_S * 1000)
        finally:
            os.close(told)
    try:
        return process.wait(max(0.0, ends - time.monotonic()))
    except subprocess.TimeoutExpired:
        return None


def _end(process: subprocess.Popen[bytes]) -> None:
    """End it with all that it began, and take its number back from the system."""
    if process.poll() is None:
        if sys.platform == "win32":
            process.kill()
        else:
            os.killpg(process.pid, signal.SIGKILL)
    process.wait()


@contextmanager
def _nameless() -> Iterator[IO[bytes]]:
    """A file without a name, in memory where the system has such."""
    if sys.platform == "linux":
        with os.fdopen(os.memfd_create("farwall"), "w+b", buffering=0) as file:
            yield file
    else:
        with tempfile.TemporaryFile(buffering=0) as file:
            yield file
