"""Which proposals meet which true marks of a mopped floor, by the rules that stand here.

A lap line is found when proposals, grown by 0.10 m, lie along at least 40 % of its length; of
stripes and tape ghosts, when they do of any one line. Any other mark is found when the middle of a
proposal lies in its outline grown by 0.10 m, or its own middle lies in a proposal's outline. A
proposal more than four times as large as the mark grown by 0.10 m finds nothing. A proposal that
finds nothing is a false alarm unless at least 30 % of it lies on a mark grown so. A proposal that
calls itself crack or joint is counted apart, and so is one that lies along a true crack, cut or
edge of another pour (at least half of it within 0.10 m: clicks move a place by as much).
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from shapely import LineString, MultiPoint, Point, Polygon, get_parts, make_valid, union_all
from shapely.geometry.base import BaseGeometry

from farwall.bench.mopped_floors import MoppedFloor, TrueMark
from farwall.bench.mopped_slab import Ring
from farwall.colour.marks.nouns import Mark, Sheet
from farwall.nouns import dataclass

GROWN_M, ALONG, LARGEST, LIES_ON = 0.10, 0.40, 4.0, 0.30
BESIDE_LINE_M, SEEN_SHARE = 0.10, 0.6
APART = ("crack", "joint")


@dataclass(frozen=True)
class Sought:
    """A true mark and what came of it; seen: whether the sheet shows at least 60 % of it."""

    kind: str
    lighter: float
    seen: bool
    found: bool
    called: tuple[str, ...]


@dataclass(frozen=True)
class Proposed:
    """A proposal and the kind of mark it met ("": none).

    on_line, on_drying: whether half of it lies along a line of the slab, on ground that dries.
    """

    kind: str
    confidence: float
    met: str
    on_line: bool
    on_drying: bool = False


def matched(
    floor: MoppedFloor, sheet: Sheet, marks: Sequence[Mark]
) -> tuple[list[Sought], list[Proposed]]:
    """Every true mark and every proposal of one sheet, weighed by the rules above."""
    sprayed = [one for one in marks if one.kind not in APART]
    shapes = [_outline(one.outline) for one in sprayed]
    met: list[str] = ["" for _ in sprayed]
    sought = []
    for true in floor.marks:
        body = _body(true)
        found = _found(true, body, sprayed, shapes)
        for n in found:
            met[n] = met[n] or true.kind
        grown = body.buffer(GROWN_M)
        for n, shape in enumerate(shapes):
            if not met[n] and shape.intersection(grown).area >= LIES_ON * shape.area:
                met[n] = true.kind
        called = tuple(sorted({sprayed[n].kind for n in found}))
        sought.append(Sought(true.kind, true.lighter, _shown(true, sheet), bool(found), called))
    lines = union_all([_line(one.kind, one.line) for one in floor.decoys if one.wide_m])
    drying = union_all([_outline(one.line) for one in floor.decoys if one.kind == "drying"])
    told = [
        Proposed(m.kind, m.confidence, met[n], _on(shapes[n], lines), _on(shapes[n], drying))
        for n, m in enumerate(sprayed)
    ]
    told += [
        Proposed(m.kind, m.confidence, "", _on(_outline(m.outline), lines))
        for m in marks if m.kind in APART
    ]  # fmt: skip
    return sought, told


def _found(
    true: TrueMark, body: BaseGeometry, marks: Sequence[Mark], shapes: Sequence[BaseGeometry]
) -> list[int]:
    grown = body.buffer(GROWN_M)
    near = [
        n for n, shape in enumerate(shapes)
        if shape.area <= LARGEST * grown.area and shape.distance(body) <= GROWN_M
    ]  # fmt: skip
    if not true.lines:
        middle = _middle(body)
        return [n for n in near if grown.contains(Point(marks[n].at)) or shapes[n].contains(middle)]
    cover = union_all([shapes[n].buffer(GROWN_M) for n in near])
    shares = [(_along(line, cover), LineString(line).length) for line in true.lines]
    if true.kind == "lap line":
        whole = sum(length for _, length in shares)
        enough = sum(share * length for share, length in shares) >= ALONG * whole
    else:
        enough = any(share >= ALONG for share, _ in shares)
    return near if enough else []


def _along(line: Ring, cover: BaseGeometry) -> float:
    path = LineString(line)
    steps = max(4, int(path.length / 0.02))
    at = MultiPoint([path.interpolate(n / steps, normalized=True) for n in range(steps + 1)])
    inside = at.intersection(cover)
    count = 0 if inside.is_empty else len(getattr(inside, "geoms", [inside]))
    return count / (steps + 1)


def _middle(body: BaseGeometry) -> Point:
    largest = max(getattr(body, "geoms", [body]), key=lambda part: float(part.area))
    return Point(largest.representative_point())


def _body(true: TrueMark) -> BaseGeometry:
    return union_all([_outline(ring) for ring in true.rings])


def _outline(ring: Ring) -> BaseGeometry:
    if len(ring) < 3:
        return Point(ring[0]).buffer(0.005) if len(ring) == 1 else LineString(ring).buffer(0.005)
    # An outline that goes out and back along itself leaves a line, which cannot be laid on areas.
    areas = [part for part in get_parts(make_valid(Polygon(ring))) if part.area > 0]
    return union_all(areas) if areas else LineString(ring).buffer(0.005)


def _line(kind: str, line: Ring) -> BaseGeometry:
    closed = (*line, line[0]) if kind.startswith("patch") else line
    return LineString(closed).buffer(BESIDE_LINE_M)


def _on(shape: BaseGeometry, ground: BaseGeometry) -> bool:
    return bool(shape.intersection(ground).area >= 0.5 * shape.area)


def _shown(true: TrueMark, sheet: Sheet) -> bool:
    """Whether enough of the mark's body lies where the sheet shows floor."""
    import cv2

    drawn, whole_m2 = np.zeros(sheet.floor.shape, np.uint8), 0.0
    for ring in true.rings:
        at = (np.array(ring) - [sheet.left_m, sheet.top_m]) * [1, -1] / sheet.m_per_px
        cv2.fillPoly(drawn, [np.round(at).astype(np.int32)], 1)
        whole_m2 += _outline(ring).area
    inside = drawn > 0
    if not inside.any():
        return False
    # A fill takes the points of the edge too: what lies beyond the sheet is told by true areas.
    on_sheet = min(1.0, float(inside.sum()) * sheet.m_per_px**2 / whole_m2)
    return float(sheet.floor[inside].mean()) * on_sheet >= SEEN_SHARE
