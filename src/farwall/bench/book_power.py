"""A battery that dies while a book is written: what was not yet synced is lost or torn.

Simulated: a writer runs under strace, which notes every write, rename and sync in its order. At a
random moment of that record the disk is rebuilt as a power cut may leave it. What was synced is
there; each later write to a file is there, or not, or torn at sectors of 512 bytes, and each later
rename or new name of a folder that was not synced is there or not. Each write falls independently
of the others, in any order. Not simulated: a disk that lies about a sync, folders that vanish.
SQLite only: PostgreSQL syncs by itself.
"""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from dataclasses import field
from pathlib import Path
from random import Random

from farwall.bench.book_writer import found_wrong
from farwall.errors import Unanswerable
from farwall.nouns import dataclass

_SECTOR = 512
_CALLS = "pwrite64,write,fsync,fdatasync,ftruncate,unlink,unlinkat,rename,renameat,renameat2,openat"
_LINE = re.compile(r"^(?:\d+ +)?(\w+)\((.*)\) += (-?\d+)")
_TEXT = re.compile(r'"((?:\\x[0-9a-f]{2})*)"')
_HANDLE = re.compile(r"^(\d+)<((?:\\x[0-9a-f]{2})*)>")
_FOR_US = re.compile(r"-shm$")


@dataclass
class Cuts:
    """What came of cutting the power: images rebuilt, writes lost or torn in them, faults."""

    entries: int
    calls: int
    syncs: int
    cuts: int = 0
    lost: int = 0
    torn: int = 0
    wrong: list[str] = field(default_factory=list)


@dataclass(frozen=True)
class Call:
    """One call to the system: its name, the path, bytes and numbers it was about."""

    name: str
    path: str
    other: str = ""
    data: bytes = b""
    number: int = 0


@dataclass
class _File:
    durable: bytearray = field(default_factory=bytearray)
    waiting: list[tuple[int, bytes | None]] = field(default_factory=list)
    end: int = 0

    def sync(self) -> None:
        for at, data in self.waiting:
            _apply(self.durable, at, data)
        self.waiting.clear()


def cut_power(cuts: int, *, entries: int = 600, seed: int = 1) -> Cuts:
    """Record a writer of so many entries, cut it so many times; Unanswerable without strace."""
    if not shutil.which("strace"):
        raise Unanswerable("strace is not here (Debian has it in the package strace).")
    with tempfile.TemporaryDirectory(prefix="farwall-power-") as folder:
        book = Path(folder).resolve() / "book"
        calls = list(_recorded(book, Path(folder) / "trace", entries))
        syncs = sum(call.name in {"fsync", "fdatasync"} for call in calls)
        if not syncs:
            raise Unanswerable("strace may not look at programs here; nothing was recorded.")
        found = Cuts(entries, len(calls), syncs)
        dice = Random(seed)
        for moment in sorted(dice.choices(range(len(calls) + 1), k=cuts)):
            _cut(found, calls[:moment], book, Path(folder) / "image", dice)
        return found


def _cut(found: Cuts, calls: list[Call], book: Path, image: Path, dice: Random) -> None:
    disk = Disk()
    for call in calls:
        disk.take(call)
    shutil.rmtree(image, ignore_errors=True)
    image.mkdir()
    left, lost, torn = disk.left(dice)
    for name, content in left.items():
        path = image / Path(name).relative_to(book)
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content)
    found.lost += lost
    found.torn += torn
    found.cuts += 1
    wrong, _ = found_wrong(str(image), files=image / "files", said=disk.said)
    found.wrong += [f"after call {len(calls)}: {one}" for one in wrong]


class Disk:
    """Files and names, as far as they are synced and beyond."""

    def __init__(self) -> None:
        self.now: dict[str, _File] = {}
        self.durable: dict[str, _File] = {}
        self.waiting: list[tuple[str, str, _File | None]] = []
        self.said: set[str] = set()

    def take(self, call: Call) -> None:
        """One call more."""
        match call.name:
            case "said":
                self.said |= set(call.data.decode().split())
            case "made":
                if call.path not in self.now:
                    self._name(call.path, _File())
            case "written":
                self._write(call)
            case "cut":
                self.now[call.path].waiting.append((call.number, None))
                self.now[call.path].end = call.number
            case "renamed":
                self._name(call.other, self.now[call.path])
                self._name(call.path, None)
            case "gone":
                self._name(call.path, None)
            case _:
                self._sync(call.path)

    def _write(self, call: Call) -> None:
        file = self.now[call.path]
        at = call.number if call.number >= 0 else file.end
        file.waiting.append((at, call.data))
        file.end = max(file.end, at + len(call.data))

    def _name(self, path: str, file: _File | None) -> None:
        if file is None:
            self.now.pop(path, None)
        else:
            self.now[path] = file
        self.waiting.append((str(Path(path).parent), path, file))

    def _sync(self, path: str) -> None:
        if path in self.now:
            self.now[path].sync()
        for folder, name, file in [one for one in self.waiting if one[0] == path]:
            _rename(self.durable, name, file)
            self.waiting.remove((folder, name, file))

    def left(self, dice: Random) -> tuple[dict[str, bytearray], int, int]:
        """A disk that a power cut may leave: content by name, writes that are lost, and torn."""
        names = dict(self.durable)
        for _, name, file in self.waiting:
            if dice.random() < 0.5:
                _rename(names, name, file)
        lost = torn = 0
        found = {}
        for name, file in names.items():
            found[name] = bytearray(file.durable)
            for at, data in file.waiting:
                fate = dice.choice(("there", "lost", "torn"))
                lost += fate == "lost"
                torn += fate == "torn"
                _fall(found[name], at, data, fate, dice)
        return found, lost, torn


def _rename(names: dict[str, _File], name: str, file: _File | None) -> None:
    if file is None:
        names.pop(name, None)
    else:
        names[name] = file


def _fall(content: bytearray, at: int, data: bytes | None, fate: str, dice: Random) -> None:
    if fate == "there" or (fate == "torn" and data is None):
        _apply(content, at, data)
    elif fate == "torn" and data is not None:
        for start in range(0, len(data), _SECTOR):
            if dice.random() < 0.5:
                _apply(content, at + start, data[start : start + _SECTOR])


def _apply(content: bytearray, at: int, data: bytes | None) -> None:
    if data is None:
        content[at:] = bytes(max(0, at - len(content)))
        return
    if len(content) < at:
        content.extend(bytes(at - len(content)))
    content[at : at + len(data)] = data


def _recorded(book: Path, trace: Path, entries: int) -> Iterator[Call]:
    """What a writer of so many entries asked of the system about its book, in order."""
    writer = (
        "from farwall.bench.book_writer import write_on; from pathlib import Path; import sys; "
        "write_on(sys.argv[1], files=Path(sys.argv[1]) / 'files', name='w', say=1, "
        "most=int(sys.argv[2]))"
    )
    strace = ["strace", "-f", "-y", "-xx", "-s", "10000000", "-o", str(trace), "-e", _CALLS]
    run = subprocess.run(
        [*strace, sys.executable, "-c", writer, str(book), str(entries)],
        check=False,
        capture_output=True,
    )
    if run.returncode:
        said = run.stderr.decode(errors="replace").strip().splitlines()
        raise Unanswerable(f"The writer did not run under strace: {said[-1] if said else ''}")
    with trace.open() as lines:
        for line in lines:
            if (found := _LINE.match(line)) and int(found[3]) >= 0:
                yield from _call(found[1], found[2], int(found[3]), str(book))


def _call(name: str, told: str, gave: int, book: str) -> Iterator[Call]:
    texts = [_bytes(one) for one in _TEXT.findall(told)]
    if name == "write" and told.startswith("1<"):
        yield Call("said", "", data=texts[0])
        return
    handle = _HANDLE.match(told)
    paths = [_bytes(handle[2])] if handle else texts
    names = [one.decode(errors="replace") for one in paths]
    if not names or not names[0].startswith(book) or _FOR_US.search(names[0]):
        return
    numbers = [int(one) for one in re.findall(r", (\d+)", _TEXT.sub("", told))]
    match name:
        case "openat" if "O_CREAT" in told:
            yield Call("made", names[0])
        case "pwrite64":
            yield Call("written", names[0], data=texts[0][:gave], number=numbers[-1])
        case "write":
            yield Call("written", names[0], data=texts[0][:gave], number=-1)
        case "ftruncate":
            yield Call("cut", names[0], number=numbers[-1])
        case "rename" | "renameat" | "renameat2":
            yield Call("renamed", names[0], names[1])
        case "unlink" | "unlinkat":
            yield Call("gone", names[0])
        case "fsync" | "fdatasync":
            yield Call(name, names[0])


def _bytes(hexed: str) -> bytes:
    return bytes.fromhex(hexed.replace("\\x", ""))
