"""Throws out what is no wall by the reason of its shape, where no layer tells it apart.

Borders and title blocks, grid lines, hatching and treads, furniture: each group with its count
among what is left aside, so that a wall taken for one of them can be looked for.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from farwall.facts.reading import Note
from farwall.readers.lines.bounds import leaves_among
from farwall.readers.lines.frames import find_frame, find_title
from farwall.readers.lines.furniture import find_furniture
from farwall.readers.lines.grids import find_bubbles, find_grid
from farwall.readers.lines.hatching import find_patterns
from farwall.readers.lines.parallels import Strokes
from farwall.readers.lines.sheet import Role, Sheet, Stroke
from farwall.readers.lines.swings import door_swings


def cleared(sheet: Sheet) -> tuple[Sheet, list[Note]]:
    """A sheet in metres without strokes that cannot be walls, and a note for each group.

    Only strokes whose layer says nothing are looked at, or all where everything lies on one layer.
    """
    role = _untold(sheet)
    if role is None:
        return sheet, []
    # Symbols close no rooms where anything else is drawn: `bounds` passes them over.
    untold = [s for s in sheet.strokes if s.role is role]
    untold = [s for s in untold if not s.block] or untold
    leaves = set(map(id, leaves_among(untold, door_swings(sheet))))
    looked_at = [s for s in untold if id(s) not in leaves]
    work = _Work(looked_at)
    work.drop("border", find_frame(work.left, sheet.swings), "the border of the sheet")
    title = find_title(work.left, sheet.words, sheet.swings)
    work.drop("title-block", title, "a title block")
    bubbles = find_bubbles([r for r in sheet.rings if r.role is role], sheet.words)
    work.drop("grid-lines", find_grid(work.left, bubbles), "grid lines crossing the whole plan")
    patterns = find_patterns(work.left)
    hatch = [p for p in patterns if not p.treads]
    work.drop("hatching", _all(p.strokes for p in hatch), "hatching: parallel, equally far apart")
    treads = _all(p.strokes for p in find_patterns(work.left) if p.treads)
    work.drop("treads", treads, "treads of stairs. Strike the stairs out of the floor")
    stuff = find_furniture(work.left, sheet.words, sheet.swings)
    work.drop("furniture", stuff, "furniture: closed shapes with open floor beside them")
    seen = set(map(id, looked_at))
    others = [s for s in sheet.strokes if id(s) not in seen]
    return replace(sheet, strokes=(*others, *work.left.given)), work.notes


def _untold(sheet: Sheet) -> Role | None:
    """The role of the strokes that must be told apart by their shape."""
    walls = [s for s in sheet.strokes if s.role in {Role.WALL, Role.AREA}]
    if not walls:
        return Role.OTHER
    layers = {s.layer for s in sheet.strokes} | {w.layer for w in sheet.words}
    # Lettering on the layer of the walls shows that everything is drawn on it.
    one = bool(sheet.words) and len(layers) == 1
    return Role.WALL if one and walls[0].role is Role.WALL else None


def _all(sets: Iterable[frozenset[int]]) -> set[int]:
    return set().union(*sets)


class _Work:
    """The strokes that are left, and the notes of those that went."""

    def __init__(self, strokes: list[Stroke]) -> None:
        self.left = Strokes(strokes)
        self.notes: list[Note] = []

    def drop(self, code: str, places: set[int], reason: str) -> None:
        if not places:
            return
        first = self.left.given[min(places)]
        middle = (first.start[0] + first.end[0]) / 2, (first.start[1] + first.end[1]) / 2
        what = f"{len(places)} lines were taken for {reason}, and left out of the walls."
        self.notes.append(Note(code, what, middle))
        kept = [s for i, s in enumerate(self.left.given) if i not in places]
        self.left = Strokes(kept)
