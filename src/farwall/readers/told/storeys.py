"""Which storey a space belongs to, where the model says so and where it does not."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from farwall.facts.reading import Storey
from farwall.nouns import dataclass
from farwall.readers.told.nouns import ToldSpace

STOREY_RISE_M = 1.8
"""Floors nearer in height than this, none above the other, are one storey. Rank: guess."""
_SLACK_M = 0.5


@dataclass(frozen=True)
class Shelved:
    """Spaces that all name a storey, and the storeys that they name."""

    spaces: list[ToldSpace]
    storeys: list[Storey]


def shelved(spaces: Sequence[ToldSpace], storeys: Sequence[Storey]) -> Shelved:
    """Each space on a storey: its own, else the one at its height, else one made for it."""
    known = list({storey.id: storey for storey in storeys}.values())
    ids = {storey.id for storey in known}
    homeless = [space for space in spaces if space.storey not in ids]
    if not homeless:
        return Shelved(list(spaces), known)
    heights = [(s.elevation_m, s.id) for s in known if s.elevation_m is not None]
    made: list[Storey] = []
    home: dict[int, str] = {}
    for space in sorted(homeless, key=_height):
        home[id(space)] = _below(space, heights) or _made_for(space, made, ids)
    placed = [replace(s, storey=home[id(s)]) if id(s) in home else s for s in spaces]
    return Shelved(placed, [*known, *made])


def _height(space: ToldSpace) -> float:
    return space.floor_m if space.floor_m is not None else float("-inf")


def _below(space: ToldSpace, heights: list[tuple[float, str]]) -> str:
    """The highest storey that is not above the floor of a space."""
    if space.floor_m is None or not heights:
        return ""
    under = [pair for pair in heights if pair[0] <= space.floor_m + _SLACK_M]
    return max(under)[1] if under else min(heights)[1]


def _made_for(space: ToldSpace, made: list[Storey], taken: set[str]) -> str:
    """The storey made last, when the floor lies near it, or a new one."""
    if made and not _rises(space.floor_m, made[-1].elevation_m):
        return made[-1].id
    number = len(made) + 1
    while f"storey-{number}" in taken:
        number += 1
    made.append(Storey(f"storey-{number}", "", space.floor_m))
    taken.add(made[-1].id)
    return made[-1].id


def _rises(floor_m: float | None, elevation_m: float | None) -> bool:
    if floor_m is None or elevation_m is None:
        return floor_m is not elevation_m
    return floor_m - elevation_m >= STOREY_RISE_M
