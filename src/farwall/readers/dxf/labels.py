"""Joins loose lettering to labels: a room's name, on one line or two, and its size under it."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from math import cos, radians, sin

from farwall.floor.geometry import Point
from farwall.readers.dxf.sheet import Words
from farwall.readers.room_names import is_room_word, written_out
from farwall.readers.sizes import StatedSize, door_code, stated_size

_LINE_STEP = 2.4  # letter heights from line to line within a label, at most (measured on plans)
_LONGEST_NAME = 30


@dataclass(frozen=True)
class Label:
    """What is lettered in a room: its name written out, its size where one stands with it."""

    name: str
    at: Point
    size: StatedSize | None
    height: float


def find_labels(words: Sequence[Words]) -> list[Label]:
    """Labels with sizes first, then every other lettering that could be a name."""
    lines = [part for line in words for part in _split(line)]
    sized = [(line, size) for line in lines if (size := stated_size(line.text)) is not None]
    names = [line for line in lines if _could_be_name(line.text)]
    taken: set[int] = set()
    labels = []
    for line, size in sized:
        stack = _stack(line, [n for n in names if id(n) not in taken])
        taken.update(map(id, stack))
        labels.append(_label(stack, size, line.at, line.height))
    rest = [n for n in names if id(n) not in taken]
    while rest:
        top = rest.pop(0)
        below = _stack(top, [n for n in rest if _same_lettering(top, n)])
        rest = [n for n in rest if not any(n is b for b in below)]
        lines_here = sorted([top, *below], key=lambda n: -_offset(top, n)[1])
        labels.append(_label(lines_here, None, top.at, top.height))
    return labels


def _label(lines: Sequence[Words], size: StatedSize | None, at: Point, height: float) -> Label:
    name = written_out(" ".join(line.text for line in lines))
    return Label(name, at, size, max([height, *(line.height for line in lines)]))


def _split(line: Words) -> list[Words]:
    """`KITCHEN 10' x 12'` as two pieces of lettering, one over the other."""
    if stated_size(line.text) is not None and not _AREA_BEHIND_NAME.match(line.text):
        return [line]
    for match in re.finditer(r"[\s,:]+(?=[\d(])", line.text):
        name, rest = line.text[: match.start()], line.text[match.end() :].strip("()")
        if _could_be_name(name) and stated_size(rest) is not None:
            up = -sin(radians(line.turned_deg)), cos(radians(line.turned_deg))
            lower = line.at[0] - up[0] * line.height, line.at[1] - up[1] * line.height
            top = Words(name, line.at, line.height, line.turned_deg, line.layer)
            return [top, Words(rest, lower, line.height, line.turned_deg, line.layer)]
    return [line]


_AREA_BEHIND_NAME = re.compile(r"^\s*[^\W\d]{2,}")


def _could_be_name(text: str) -> bool:
    if len(text) > _LONGEST_NAME or len(text.split()) > 5 or door_code(text):
        return False
    if stated_size(text) is not None and not _AREA_BEHIND_NAME.match(text):
        return False
    return sum(letter.isalpha() for letter in text) >= 2


def _stack(base: Words, names: list[Words]) -> list[Words]:
    """The lines of a name that stand over the base line, or else under it, top line first."""
    for side in (1, -1):
        stack: list[Words] = []
        at = base
        while len(stack) < 3:
            near = [n for n in names if n is not base and n not in stack and _next(at, n, side)]
            if stack:
                near = [n for n in near if _same_lettering(stack[0], n)]
            if not near:
                break
            at = min(near, key=lambda n: abs(_offset(at, n)[1]))
            stack.append(at)
        if stack:
            return stack[::-1] if side == 1 else stack
    return []


def _next(base: Words, other: Words, side: int) -> bool:
    if abs((base.turned_deg - other.turned_deg + 180) % 360 - 180) > 5:
        return False
    along, up = _offset(base, other)
    tall = max(base.height, other.height)
    wide = 0.4 * (len(base.text) * base.height + len(other.text) * other.height)
    return 0.4 * tall < side * up < _LINE_STEP * tall and abs(along) < max(wide, 2 * tall)


def _same_lettering(first: Words, second: Words) -> bool:
    return abs(first.height - second.height) < 0.1 * first.height and first.layer == second.layer


def _offset(base: Words, other: Words) -> tuple[float, float]:
    turn = radians(base.turned_deg)
    dx, dy = other.at[0] - base.at[0], other.at[1] - base.at[1]
    return dx * cos(turn) + dy * sin(turn), -dx * sin(turn) + dy * cos(turn)


def names_among(labels: Sequence[Label]) -> list[Label]:
    """The labels that name a room: those with a size, else room words, else the tallest letters."""
    sized = [label for label in labels if label.size is not None]
    if any(label.name for label in sized):
        return sized
    roomy = [label for label in labels if label.name and is_room_word(label.name)]
    if roomy:
        return [*sized, *roomy]
    named = [label for label in labels if label.name and not label.size]
    tallest = max((label.height for label in named), default=0.0)
    return [*sized, *[label for label in named if label.height >= 0.99 * tallest][:1]]
