"""What rooms are called where there is little room for it, and many of one name in a row."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence

from farwall.floor.nouns import Room

_AND = " + "
"""Between the names that are written in one open-plan room."""


def short_labels(rooms: Sequence[Room]) -> dict[str, str]:
    """What each room is called for short, by id: of one that carries several names the first of
    them, unless another room begins with it too."""
    first = Counter(room.label.split(_AND)[0] for room in rooms)
    return {
        room.id: room.label.split(_AND)[0] if first[room.label.split(_AND)[0]] == 1 else room.label
        for room in rooms
    }


def together(names: Iterable[str]) -> list[str]:
    """Each name once, in the order of the first, counted where several are called so:
    `Bath`, `4 × Closet`."""
    return [name if n == 1 else f"{n} × {name}" for name, n in Counter(names).items()]
