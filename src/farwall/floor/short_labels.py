"""What rooms are called where there is little room for it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

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
