"""Path data [svg-11] 8.3 as pieces of points, in the path's own frame."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from functools import lru_cache
from math import ceil

from farwall.floor.geometry import Point
from farwall.readers.lines.hand import Subpath
from farwall.readers.lines.matrices import bezier
from farwall.readers.lines.pen import MOST_STROKES, Piece, too_many

_NUMBER = r"[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?"
_NUMBERS = re.compile(_NUMBER)
_COMMAND = re.compile(r"([MmLlHhVvCcSsQqTtAaZz])([^MmLlHhVvCcSsQqTtAaZz]*)")
_PLAIN = re.compile(r"\s*M[\d\s.,+-]+(?:L[\d\s.,+-]+)*([Zz]?)\s*")
_STRANGE = re.compile(r"[^\d\s,.eE+-]")
_NEXT = r"[\s,]*"
_FLAGGED = (_NUMBER, _NUMBER, _NUMBER, "[01]", "[01]", _NUMBER, _NUMBER)
_ARC = re.compile("".join(rf"{_NEXT}({part})" for part in _FLAGGED))
_NEEDS = {"M": 2, "L": 2, "H": 1, "V": 1, "C": 6, "S": 4, "Q": 4, "T": 2, "A": 7, "Z": 0}
_LONGEST = 4_000_000
_ARC_STEP_RAD = 0.1


def subpaths(data: str) -> list[Subpath]:
    """The connected lines of path data, read up to the first fault as the standard asks.

    Raises ValueError when not even a beginning can be read.
    """
    if len(data) > _LONGEST:
        raise too_many()
    plain = _PLAIN.fullmatch(data)
    if plain:
        return _plain(data, closed=bool(plain[1]))
    pen = _Turtle()
    for command, numbers in _commands(data):
        pen.do(command, numbers)
    return [path for path in pen.done() if path.pieces]


def _plain(data: str, *, closed: bool) -> list[Subpath]:
    """One line of absolute places, the commonest kind by far."""
    numbers = list(map(float, _NUMBERS.findall(data)))
    if len(numbers) > 2 * MOST_STROKES:
        raise too_many()
    points = list(zip(numbers[::2], numbers[1::2], strict=False))
    return [Subpath([Piece(points)], closed)] if len(points) > 1 else []


def _commands(data: str) -> Iterator[tuple[str, list[float]]]:
    found = _COMMAND.search(data)
    if not found or data[: found.start()].strip():
        raise ValueError("path data without a command")
    for command, said in _COMMAND.findall(data):
        strange = _STRANGE.search(said)
        plain = said[: strange.start()] if strange else said
        yield (
            command,
            _arc_numbers(plain) if command in "aA" else list(map(float, _NUMBERS.findall(plain))),
        )
        if strange:
            return


def _arc_numbers(said: str) -> list[float]:
    """Numbers of arcs, whose two flags may stand without blanks (`a5,5 0 01.5.5`)."""
    numbers: list[float] = []
    at = 0
    while match := _ARC.match(said, at):
        numbers += map(float, match.groups())
        at = match.end()
    return numbers


class _Turtle:
    """Walks the commands; `at` is where the pen is."""

    def __init__(self) -> None:
        self.at: Point = (0.0, 0.0)
        self.start: Point = (0.0, 0.0)
        self.control: Point | None = None
        self.before = ""
        self.paths: list[Subpath] = [Subpath()]
        self.straight: list[Point] = []
        self.seen = 0

    def done(self) -> list[Subpath]:
        """All that was drawn."""
        self._lift()
        return self.paths

    def do(self, command: str, numbers: list[float]) -> None:
        """One command letter with all numbers behind it."""
        kind, relative = command.upper(), command.islower()
        if kind == "Z":
            self._close()
            return
        needs = _NEEDS[kind]
        whole = len(numbers) - len(numbers) % needs
        for first in range(0, whole, needs):
            self._step(kind, numbers[first : first + needs], relative=relative)
            if kind == "M":
                kind = "L"

    def _step(self, kind: str, n: list[float], *, relative: bool) -> None:
        ox, oy = self.at if relative else (0.0, 0.0)
        if kind == "H":
            to = [(n[0] + ox, self.at[1])]
        elif kind == "V":
            to = [(self.at[0], n[0] + oy)]
        elif kind == "A":
            to = [(n[5] + ox, n[6] + oy)]
        else:
            to = [(n[i] + ox, n[i + 1] + oy) for i in range(0, len(n), 2)]
        _DO[kind](self, to, n)
        self.before = kind
        self.at = to[-1]

    def move(self, to: list[Point], n: list[float]) -> None:
        """Begin a new line."""
        del n
        self._lift()
        self.paths.append(Subpath())
        self.start = to[0]

    def straight_on(self, to: list[Point], n: list[float]) -> None:
        """A straight line."""
        del n
        if not self.straight:
            self.straight = [self.at]
        self._count(1)
        self.straight.append(to[0])

    def cubic(self, to: list[Point], n: list[float]) -> None:
        """A cubic curve; with two points its first control mirrors the one before."""
        del n
        first = to[0] if len(to) == 3 else self._mirrored("CS")
        self.control = to[-2]
        self._curve(bezier([self.at, first, to[-2], to[-1]]))

    def quadratic(self, to: list[Point], n: list[float]) -> None:
        """A quadratic curve, or one whose control mirrors the one before."""
        del n
        self.control = to[0] if len(to) == 2 else self._mirrored("QT")
        self._curve(bezier([self.at, self.control, to[-1]]))

    def arc(self, to: list[Point], n: list[float]) -> None:
        """A piece of an ellipse; one without a radius is a straight line [svg-11] F.6.2."""
        if n[0] == 0 or n[1] == 0 or to[0] == self.at:
            self.straight_on(to, n)
            return
        self._curve(arc_points(self.at, to[0], tuple(n)))

    def _count(self, more: int) -> None:
        self.seen += more
        if self.seen > MOST_STROKES:
            raise too_many()

    def _mirrored(self, kinds: str) -> Point:
        if self.control is None or self.before not in kinds:
            return self.at
        return 2 * self.at[0] - self.control[0], 2 * self.at[1] - self.control[1]

    def _curve(self, points: list[Point]) -> None:
        self._lift()
        self._count(len(points))
        self.paths[-1].pieces.append(Piece(points, curve=True))

    def _lift(self) -> None:
        if len(self.straight) > 1:
            self.paths[-1].pieces.append(Piece(self.straight))
        self.straight = []

    def _close(self) -> None:
        self._lift()
        self.paths[-1].closed = True
        self.at = self.start
        self.paths.append(Subpath())
        self.before = "Z"


_DO: dict[str, Callable[[_Turtle, list[Point], list[float]], None]] = {
    "M": _Turtle.move,
    "L": _Turtle.straight_on,
    "H": _Turtle.straight_on,
    "V": _Turtle.straight_on,
    "C": _Turtle.cubic,
    "S": _Turtle.cubic,
    "Q": _Turtle.quadratic,
    "T": _Turtle.quadratic,
    "A": _Turtle.arc,
}


@lru_cache(maxsize=4096)
def arc_points(start: Point, end: Point, n: tuple[float, ...]) -> list[Point]:
    """Points on an elliptic arc: `n` holds both radii, the turning [deg], large and sweep flag."""
    from svgelements import Arc

    arc = Arc(start, n[0], n[1], n[2], n[3], n[4], end)
    steps = min(max(ceil(abs(float(arc.sweep)) / _ARC_STEP_RAD), 4), 64)
    middle = [arc.point(step / steps) for step in range(1, steps)]
    return [start, *((float(point.x), float(point.y)) for point in middle), end]
