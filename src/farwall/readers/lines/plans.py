"""Several drawings on one sheet: which groups of rooms are plans, and which storey each one is.

Rooms of one plan stand wall to wall. A group without a room's name, a stated size or a door's leaf
is an elevation or a detail where another group has them. Plans beside each other are storeys where
they are lettered so; else it is asked.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.reading import Note, Storey
from farwall.nouns import dataclass
from farwall.readers.lines.groups import numbered
from farwall.readers.lines.portals import Portal
from farwall.readers.lines.rooms import Found, Sorted
from farwall.readers.lines.sheet import Words
from farwall.readers.lines.signs import Signs
from farwall.readers.room_names import is_room_word

_BESIDE_M = 0.8
"""More than any wall is deep: rooms farther apart belong to two plans."""
_LABEL_REACH = 0.6
_STOREY = re.compile(
    r"\b((GROUND|MAIN|FIRST|SECOND|THIRD|FOURTH|UPPER|LOWER|1ST|2ND|3RD|4TH)\s+(FLOOR|LEVEL|STOR(E)?Y)"
    r"|(LEVEL|FLOOR|STOREY|STORY)\s*-?\d{1,2}|BASEMENT|ATTIC|LOFT|CELLAR"
    r"|PLANTA\s+(BAJA|ALTA|PRIMERA|SEGUNDA|SOTANO)|ERDGESCHOSS|OBERGESCHOSS|KELLERGESCHOSS"
    r"|REZ-DE-CHAUSSEE|SOUS-SOL)\b",
    re.IGNORECASE,
)
ONLY = (Storey("storey-1", ""),)


@dataclass(frozen=True)
class _Plan:
    rooms: list[int]
    shape: BaseGeometry
    told: bool
    """Whether a room's name, a stated size or a leaf speaks for it."""


def find_plans(
    faces: Sorted, portals: Sequence[Portal], signs: Sequence[Signs], words: Sequence[Words]
) -> tuple[tuple[Storey, ...], list[Note]]:
    """The storeys on the sheet; takes the rooms of elevations out of `faces`, sets `Found.storey`.

    The second is what to ask: which storeys plans are that bear no name.
    """
    plans = _plans(faces, portals, signs)
    if len(plans) < 2:
        return ONLY, []
    if any(plan.told for plan in plans):
        _leave_aside([plan for plan in plans if not plan.told], faces)
        plans = [plan for plan in plans if plan.told]
    rooms = faces.rooms
    storeys: tuple[Storey, ...] = ONLY
    asks: list[Note] = []
    if len(plans) > 1:
        names = _names(plans, words)
        if all(names) and len(set(names)) == len(names):
            storeys = tuple(Storey(f"storey-{n + 1}", name) for n, name in enumerate(names))
            for number, plan in enumerate(plans):
                for place in plan.rooms:
                    rooms[place] = replace(rooms[place], storey=number)
        else:
            asks = [_ask(plans, names)]
    kept = sorted(place for plan in plans for place in plan.rooms)
    faces.rooms = [rooms[place] for place in kept]
    return storeys, asks


def _plans(faces: Sorted, portals: Sequence[Portal], signs: Sequence[Signs]) -> list[_Plan]:
    """The groups of rooms that stand wall to wall, from the left."""
    shapes = [found.shape for found in faces.rooms]
    if len(shapes) < 2:
        return []
    tree = shapely.STRtree(shapes)
    first, second = tree.query(shapes, predicate="dwithin", distance=_BESIDE_M)
    labels = numbered(len(shapes), first.tolist(), second.tolist())
    leaves = [p.shape for p, s in zip(portals, signs, strict=True) if s.leaf]
    doors = {int(i) for leaf in leaves for i in tree.query(leaf, "dwithin", 0.02)}
    groups: dict[int, list[int]] = {}
    for place, label in enumerate(labels.tolist()):
        groups.setdefault(label, []).append(place)
    plans = [
        _Plan(
            group,
            shapely.unary_union([shapes[i] for i in group]),
            any(i in doors or _is_named(faces.rooms[i]) for i in group),
        )
        for group in groups.values()
    ]
    return sorted(plans, key=lambda plan: plan.shape.bounds)


def _is_named(found: Found) -> bool:
    return any(label.size or is_room_word(label.name) for label in found.labels)


def _leave_aside(plans: Sequence[_Plan], faces: Sorted) -> None:
    if not plans:
        return
    count = sum(len(plan.rooms) for plan in plans)
    area = sum(plan.shape.area for plan in plans)
    what = (
        f"{len(plans)} × drawing beside the plan ({count} closed shapes, {area:.1f} m²) without a "
        "room's name or a door: taken for elevations or details, and left out."
    )
    point = plans[0].shape.representative_point()
    faces.left.append(Note("other-drawing", what, (float(point.x), float(point.y))))


def _names(plans: Sequence[_Plan], words: Sequence[Words]) -> list[str]:
    """The storey lettered nearest to each plan, or nothing."""
    told = [(w, match[0]) for w in words if (match := _STOREY.search(w.text))]
    best: list[tuple[float, str]] = [(np.inf, "")] * len(plans)
    for lettering, name in told:
        away = [plan.shape.distance(shapely.Point(lettering.at)) for plan in plans]
        place = int(np.argmin(away))
        low_x, low_y, high_x, high_y = plans[place].shape.bounds
        if away[place] < min(best[place][0], _LABEL_REACH * max(high_x - low_x, high_y - low_y)):
            best[place] = away[place], name.strip().capitalize()
    return [name for _, name in best]


def _ask(plans: Sequence[_Plan], names: Sequence[str]) -> Note:
    known = ", ".join(dict.fromkeys(name for name in names if name))
    lettered = f" ({known} is lettered)" if known else ""
    what = (
        f"{len(plans)} plans lie beside each other on this sheet{lettered}. Say which storey each "
        "one is, or whether they are one house: all are read as one storey."
    )
    return Note("storeys", what)
