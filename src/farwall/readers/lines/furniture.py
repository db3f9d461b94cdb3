"""Furniture and fixtures among strokes that no layer tells apart: closed shapes with open floor
on a side of them, where a wall would have its other face.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry
from shapely.geometry.polygon import orient

from farwall.floor.geometry import polygons_of
from farwall.readers.lines.faces import breadth_m, polygons_between
from farwall.readers.lines.frames import connected, extremes
from farwall.readers.lines.parallels import Array, Strokes, in_twos
from farwall.readers.lines.sheet import Swing, Words
from farwall.readers.room_names import is_room_word

_LARGEST_M2, _LONGEST_M, _SMALLEST_M2 = 7.0, 3.3, 0.01
_BODY_M = 0.36
"""Closed shapes no broader than this and longer than broad may be pieces of wall."""
_DEPTH_M, _POST_M = 0.42, 0.62
_ELONGATED = 2.9
_FREE_SHARE, _SHARED = 0.35, 0.55
_HINGE_M, _HUNG_M = 0.12, 0.03


def find_furniture(strokes: Strokes, words: Sequence[Words], swings: Sequence[Swing]) -> set[int]:
    """Places of the strokes of what stands in the rooms."""
    if not len(strokes.given):
        return set()
    faces = [f for f in polygons_between(list(strokes.lines))
             if _SMALLEST_M2 <= f.area <= _LARGEST_M2]  # fmt: skip
    told = shapely.STRtree([shapely.Point(w.at) for w in words if is_room_word(w.text)])
    hinges = shapely.STRtree([shapely.Point(s.centre) for s in swings])
    floor = [f for f in faces if not len(told.query(f, "intersects"))]
    found, rest, free_strokes = _standing_free(strokes, floor, hinges)
    if in_twos(strokes):
        walls = np.ones(len(strokes.given), dtype=bool)
        walls[sorted(free_strokes)] = False
        broad = [f for f in rest if not _could_be_wall(f)]
        against = [f for f in broad if _free_share(strokes, f, walls) >= _FREE_SHARE]
        against = _with_parts(against, [f for f in rest if not any(f is g for g in against)])
        if against:
            found |= _strokes_of(strokes, shapely.unary_union(against), walls)
    return found


def _standing_free(
    strokes: Strokes, faces: list[shapely.Polygon], hinges: shapely.STRtree
) -> tuple[set[int], list[shapely.Polygon], set[int]]:
    """Strokes of small pieces among larger ones that hang together with nothing else, and the rest.

    The last are the strokes of all small closed pieces: none of them is the other face of a wall.
    """
    labels = connected(strokes)
    low, high = extremes(strokes, labels)
    small = (high - low).max(axis=1) <= _LONGEST_M
    if small.all():
        return set(), faces, set()
    plan_low, plan_high = low[~small].min(axis=0), high[~small].max(axis=0)
    small &= (low > plan_low).all(axis=1) & (high < plan_high).all(axis=1)
    of_piece: dict[int, list[shapely.Polygon]] = {}
    rest = []
    for face in faces:
        near = strokes.tree.query(shapely.Point(face.exterior.coords[0]), "dwithin", 0.004)
        pieces = {int(labels[i]) for i in near}
        if len(pieces) == 1 and small[min(pieces)]:
            of_piece.setdefault(pieces.pop(), []).append(face)
        else:
            rest.append(face)
    shapes = {piece: shapely.unary_union(own) for piece, own in of_piece.items()}
    counts = np.bincount(labels[_first_of_doubles(strokes)], minlength=labels.max() + 1)
    walls = {piece for piece, shape in shapes.items() if _has_door(shape, hinges)
             or all(_could_be_wall(part) for part in polygons_of(shape))}  # fmt: skip
    stuff = {piece for piece, shape in shapes.items()
             if piece not in walls and not _is_post(shape, int(counts[piece]))}  # fmt: skip
    stuff = {own for own in stuff if not _is_shaft(strokes, shapes[own], labels != own)}
    stuff |= _within(shapes, stuff)
    rest += [face for piece in sorted(walls - stuff) for face in of_piece[piece]]
    found = set(np.flatnonzero(np.isin(labels, sorted(stuff))).tolist())
    return found, rest, found


def _is_shaft(strokes: Strokes, shape: BaseGeometry, others: Array) -> bool:
    """Closed in all round by lines at a wall's depth: its outline is the walls' inner face."""
    parts = polygons_of(shape)
    return len(parts) == 1 and _free_share(strokes, parts[0], others) < _FREE_SHARE


def _first_of_doubles(strokes: Strokes) -> Array:
    """Places of strokes, of those drawn twice over each other only one."""
    ends = np.round(strokes.ends.reshape(-1, 2, 2), 3)
    turned = (ends[:, 0, 0] > ends[:, 1, 0]) | (
        (ends[:, 0, 0] == ends[:, 1, 0]) & (ends[:, 0, 1] > ends[:, 1, 1])
    )
    ends[turned] = ends[turned][:, ::-1]
    _, places = np.unique(ends.reshape(-1, 4), axis=0, return_index=True)
    return np.asarray(places)


def _within(shapes: dict[int, BaseGeometry], stuff: set[int]) -> set[int]:
    """The pieces that lie in furniture: drawers in a desk, pillows on a bed."""
    known, others = sorted(stuff), sorted(shapes.keys() - stuff)
    filled = [shapely.Polygon(part.exterior) for k in known for part in polygons_of(shapes[k])]
    if not filled or not others:
        return set()
    tree = shapely.STRtree(filled)
    inside, _ = tree.query([shapes[k] for k in others], predicate="covered_by")
    return {others[i] for i in inside.tolist()}


def _has_door(shape: BaseGeometry, hinges: shapely.STRtree) -> bool:
    """A leaf hangs on it; something large is no furniture even where a leaf only comes near."""
    reach = _HINGE_M if shape.area >= 1.0 else _HUNG_M
    return len(hinges.query(shape.boundary, "dwithin", reach)) > 0


def _is_post(shape: BaseGeometry, strokes: int) -> bool:
    """A small box of four lines with nothing in it: it stays, as a post may carry the house."""
    box = shape.minimum_rotated_rectangle
    return strokes == 4 and shape.area <= _POST_M**2 and shape.area > 0.97 * box.area


def _could_be_wall(face: shapely.Polygon) -> bool:
    """Thin, and twice as long as broad or longer: half its edge is three breadths or more."""
    breadth = breadth_m(face)
    return breadth <= _BODY_M and face.length / 2 > _ELONGATED * breadth


def _free_share(strokes: Strokes, face: shapely.Polygon, walls: Array) -> float:
    """How much of the edge has no other stroke running beside it, outside, at a wall's depth."""
    plain = face.simplify(0.02)
    ring = shapely.get_coordinates(orient(plain if isinstance(plain, shapely.Polygon) else face))
    free = 0.0
    for start, end in pairwise(ring):
        length = float(np.hypot(*(end - start)))
        if length > 0 and not _is_walled(strokes, start, end, _right(start, end), walls):
            free += length
    return free / max(face.exterior.length, 1e-9)


def _right(start: Array, end: Array) -> Array:
    """Square to the right of a way: outward along a ring that runs counter-clockwise."""
    along = (end - start) / np.hypot(*(end - start))
    return np.array([along[1], -along[0]])


def _is_walled(strokes: Strokes, start: Array, end: Array, outward: Array, walls: Array) -> bool:
    """Whether a stroke that may be a wall's runs beside one's middle, at a wall's depth outward."""
    middle = (start + end) / 2
    probe = shapely.LineString([middle + 0.03 * outward, middle + _DEPTH_M * outward])
    near = strokes.tree.query(probe, predicate="intersects")
    turn = strokes.ways[near] @ outward
    return bool(((np.abs(turn) < 0.05) & (strokes.lengths[near] > 0.1) & walls[near]).any())


def _with_parts(found: list[shapely.Polygon], rest: list[shapely.Polygon]) -> list[shapely.Polygon]:
    """The shapes with the smaller ones that hang on them: pillows, drawers, the backs of chairs."""
    if not found:
        return []
    while True:
        tree = shapely.STRtree([f.boundary for f in found])
        more = []
        for face in rest:
            near = [found[i] for i in tree.query(face.boundary, "intersects")]
            shared = sum(n.boundary.intersection(face.boundary).length for n in near)
            if shared > _SHARED * face.length:
                more.append(face)
        if not more:
            return found
        found = [*found, *more]
        rest = [f for f in rest if not any(f is m for m in more)]


def _strokes_of(strokes: Strokes, stuff: BaseGeometry, walls: Array) -> set[int]:
    """The strokes that lie on or in the furniture, but for walls that it stands against."""
    whole = stuff.buffer(0.004)
    shapely.prepare(whole)
    near = np.flatnonzero(shapely.covers(whole, strokes.lines))
    short = [int(i) for i in near if strokes.lengths[i] <= _LONGEST_M]
    inner = stuff.buffer(-0.006)
    found = set()
    for index in short:
        start, end = strokes.ends[index]
        if strokes.lengths[index] == 0 or strokes.lines[index].intersection(inner).length > 0.01:
            found.add(index)
            continue
        outward = _right(start, end)
        side = shapely.Point((start + end) / 2 + 0.02 * outward)
        outward = -outward if stuff.intersects(side) else outward
        if not _is_walled(strokes, start, end, outward, walls):
            found.add(index)
    return found
