"""What a file states of its rooms' sizes, compared with their outlines; never used in their place.

A stated area may be another thing than the floor between the walls: gross figures take the walls
in, wall-centre figures half of them, net figures may leave out plaster or low headroom. Which of
these a file means is its `kind`; how far apart the two lie is told, and the outline is what is
mixed and sprayed for.
"""

from __future__ import annotations

from math import inf

from farwall.facts.reading import Reading, StatedKind
from farwall.nouns import dataclass
from farwall.units import ft2_from_m2

AGREES = 0.005
"""Stated and drawn within this share are called equal: figures rounded for print. Rank: guess."""
_SIZE_TEXT_AGREES = 0.03
"""A lettered "13'8 x 14'" is rounded to inches, and a room is no plain rectangle. Rank: guess."""


@dataclass(frozen=True)
class Compared:
    """All rooms of one class: `drawn_share` is outlines' area over what is stated, of all of them.

    off: ids of rooms that lie apart, the farthest first, each with its own share.
    """

    kind: StatedKind
    rooms: int
    agree: int
    stated_m2: float
    drawn_m2: float
    off: tuple[tuple[str, float], ...]

    @property
    def drawn_share(self) -> float:
        """Drawn over stated, of all rooms of the class."""
        return self.drawn_m2 / self.stated_m2


def compared(reading: Reading) -> list[Compared]:
    """One row for each class of stated areas; empty without a scale or without such figures."""
    if reading.scale_m_per_unit is None:
        return []
    kinds = dict.fromkeys(one.kind for one in reading.stated.values())
    return [row for kind in kinds if (row := _of_kind(reading, kind)) is not None]


def _of_kind(reading: Reading, kind: StatedKind) -> Compared | None:
    limit = _SIZE_TEXT_AGREES if kind == "size-text" else AGREES
    stated, drawn, off, rooms = 0.0, 0.0, [], 0
    for room in reading.floor.rooms:
        said = reading.stated.get(room.id)
        if said is None or said.kind != kind or not 0 < said.area_m2 < inf:
            continue
        area = room.polygon.shape.area
        rooms, stated, drawn = rooms + 1, stated + said.area_m2, drawn + area
        share = area / said.area_m2
        if abs(share - 1) > limit:
            off.append((room.id, share))
    if not rooms:
        return None
    off.sort(key=lambda one: -abs(one[1] - 1))
    return Compared(kind, rooms, rooms - len(off), stated, drawn, tuple(off))


def stated_words(reading: Reading) -> list[str]:
    """A plain sentence or two for each class."""
    return [" ".join(_sentences(row)) for row in compared(reading)]


_NAMES: dict[StatedKind, str] = {
    "net": "Net areas", "gross": "Gross areas", "wall-centre": "Areas to wall centres",
    "size-text": "Lettered sizes",
}  # fmt: skip
_WHY: dict[StatedKind, str] = {
    "net": "Net figures may leave out plaster, built-in things or low headroom.",
    "gross": "Gross figures may take walls in.",
    "wall-centre": "They run to the middle of the walls; the outline is the floor between them.",
    "size-text": "A lettered size is rounded, and tells two sides of a room that may have more.",
}


def _sentences(row: Compared) -> list[str]:
    name, stated = (
        _NAMES[row.kind],
        f"{ft2_from_m2(row.stated_m2):,.0f} ft² ({row.stated_m2:.2f} m²)",
    )
    drawn = f"{ft2_from_m2(row.drawn_m2):,.0f} ft² ({row.drawn_m2:.2f} m²)"
    agree = f"{row.agree} of {row.rooms} agree with the outline"
    said = [f"{name}: {agree}; stated {stated}, drawn {drawn}."]
    if row.off:
        worst = ", ".join(f"{room} {100 * (share - 1):+.1f} %" for room, share in row.off[:3])
        said.append(f"Drawn against stated: {worst}{' …' if len(row.off) > 3 else ''}.")
        said.append(f"{_WHY[row.kind]} The outline counts.")
    return said
