"""Joins loose lettering to labels: a room's name, on one line or two, and its size under it."""

from __future__ import annotations

import re
from collections.abc import Sequence
from math import cos, radians, sin

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.sheet import Words
from farwall.readers.lines.stacks import Stacks
from farwall.readers.room_names import is_room_word, written_out
from farwall.readers.sizes import StatedSize, door_code, stated_size

_MOST_WORDS = 3
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
    names = Stacks([line for line in lines if _could_be_name(line.text)])
    labels = [_label(names.around(line), size, line.at, line.height) for line, size in sized]
    while free := names.free():
        top = names.take(free[0])
        stack = sorted([top, *names.around(top, like=top)], key=lambda line: -_up(top, line))
        labels.append(_label(stack, None, top.at, top.height))
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


def _up(base: Words, other: Words) -> float:
    turn = radians(base.turned_deg)
    dx, dy = other.at[0] - base.at[0], other.at[1] - base.at[1]
    return -dx * sin(turn) + dy * cos(turn)


def names_among(labels: Sequence[Label]) -> list[Label]:
    """The labels that name a room: sized ones and room words, else the tallest lettering."""
    sized = [label for label in labels if label.size is not None]
    roomy = [label for label in labels if not label.size and _is_short_room_name(label.name)]
    if roomy or any(label.name for label in sized):
        return [*sized, *roomy]
    named = [label for label in labels if label.name and not label.size]
    tallest = max((label.height for label in named), default=0.0)
    return [*sized, *[label for label in named if label.height >= 0.99 * tallest][:1]]


def _is_short_room_name(name: str) -> bool:
    """A note may speak of a room; its name is a word or three."""
    return len(name.split()) <= _MOST_WORDS and is_room_word(name)
