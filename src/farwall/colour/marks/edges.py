"""Lap lines sought where the run sheet says that two bands met.

A lap can lie only along the edge of a band. Such edges are few, so each is judged mildly: a faint
dark strip that no search over the whole floor may propose is proposed here. The strip is sought in
a corridor to each side of the edge, for the hand errs; cracks and joints are taken out before.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import shapely
from numpy.typing import NDArray

from farwall.colour.marks.cleared import cleared
from farwall.colour.marks.corridor import (
    PIECE_M,
    WIDTHS_M,
    Corridor,
    corridor_of,
    kernels_of,
)
from farwall.colour.marks.edge_paths import EdgePath, best_paths, gain_of
from farwall.colour.marks.ground import (
    BACKGROUND_M,
    Bools,
    Ground,
    blurred,
    filled,
)
from farwall.colour.marks.nouns import Floats32, KnownEdge, Mark, Sheet
from farwall.colour.marks.placed import band, covered, lighter_by, ring_of, spot
from farwall.colour.marks.sampled import smoothed
from farwall.colour.marks.sides import Sides, Strip, chance_of, sides_of
from farwall.nouns import dataclass

Floats = NDArray[np.float64]

REACH_SD = 2.5
"""So many standard deviations of the hand's error to each side are searched."""
BESIDE = 0.05
"""Weight of lying off the edge, against the error of the hand. Tuned on invented floors."""
ALONG = 1.5
"""Answers are evened along the edge over so many pieces: a lap runs on. Tuned likewise."""
LEAST_SURE = 0.085
"""Below so many chances a line along a known edge is not proposed. Tuned likewise."""
SURE_OF_NO_EDGE = 0.9
"""A lap line found without the edges has to be so sure where they are known. Rank: guess."""
_SLAB_M = 0.02
_SAME_M, _SAME = 0.12, 0.5


@dataclass(frozen=True)
class EdgeFind:
    """A strip along a known edge. points: (n, 2), rows and columns on the ground · beside_m: how
    far off the edge in the mean · sides: what it is like, None where too little of it is seen.
    """

    edge: KnownEdge
    points: Floats
    width_m: float
    score: float
    pieces: int
    beside_m: float
    sides: Sides | None = None

    @property
    def sure(self) -> float:
        """How many of such finds are laps, 0 to 1, on invented floors."""
        return chance_of(self.score, self.sides)


def edge_laps(
    sheet: Sheet,
    ground: Ground,
    edges: Sequence[KnownEdge],
    slab: Sequence[Mark],
    own: Ground | None = None,
) -> list[Mark]:
    """Lap lines proposed along known edges, the surest first; none along another.

    own: the ground with mottle thinned, where it is reckoned already.
    """
    found = edge_finds(sheet, ground, edges, slab, own=own)
    return [_mark(sheet, ground, one) for one in apart(found) if one.sure >= LEAST_SURE]


def of_no_edge(marks: Sequence[Mark]) -> list[Mark]:
    """Of lines that were found by the search at any slope: of lap lines only the sure ones.

    What lies along an edge, or with the walls, was judged there, and a lap line anywhere else is
    hardly one.
    """
    return [one for one in marks if one.kind != "lap line" or one.confidence >= SURE_OF_NO_EDGE]


def edge_finds(
    sheet: Sheet,
    ground: Ground,
    edges: Sequence[KnownEdge],
    slab: Sequence[Mark],
    *,
    off_edge: float = BESIDE,
    own: Ground | None = None,
) -> list[EdgeFind]:
    """The best strip along each edge that the sheet shows enough of, whether likely or not.

    off_edge: taken from each piece for lying a standard deviation off, by its square ·
    own: the ground with mottle thinned, where it is reckoned already.
    """
    if not edges or not ground.seen.any():
        return []
    own = own or cleared(sheet, ground)
    seen = own.seen & ~covered(sheet, ground, slab, _SLAB_M)
    if not seen.any():
        return []
    dark = filled(own.dark, seen, ground.step_m)
    flat: Floats32 = dark - blurred(dark, BACKGROUND_M / ground.step_m)
    kernels = kernels_of(flat, ground.step_m)
    cut = [
        (edge, corridor_of(dark, seen, ground.step_m, _onto(sheet, ground, edge), kernels,
                           reach_m=REACH_SD * edge.sd_m))
        for edge in edges
    ]  # fmt: skip
    shown = [(edge, one) for edge, one in cut if one is not None and one.seen.any()]
    if not shown:
        return []
    calm = [_evened(one) for _, one in shown]
    spread = _spread(calm, [one.seen for _, one in shown])
    gains = [
        gain_of(answers / spread[:, None, None], one.seen,
                off_edge * (one.across_m / edge.sd_m) ** 2 / 2)
        for (edge, one), answers in zip(shown, calm, strict=True)
    ]  # fmt: skip
    found = [
        _find(edge, one, path)
        for (edge, one), path in zip(shown, best_paths(gains), strict=True) if path is not None
    ]  # fmt: skip
    sides = sides_of(
        dark, seen, ground.step_m, [Strip(one.points - 0.5, one.width_m) for one in found]
    )
    return [replace(one, sides=of) for one, of in zip(found, sides, strict=True)]


def _find(edge: KnownEdge, of: Corridor, path: EdgePath) -> EdgeFind:
    points = smoothed(of.places[path.pieces, path.places], 2.0)
    return EdgeFind(
        edge, points + 0.5, WIDTHS_M[path.width], path.score, len(path.pieces),
        float(of.across_m[path.places].mean()),
    )  # fmt: skip


def _evened(of: Corridor) -> Floats:
    """Answers evened along the edge, what is hidden left out."""
    weight = smoothed(of.seen.astype(np.float64), ALONG)
    told = smoothed(of.answers * of.seen, ALONG, axis=1)
    return np.asarray(told / np.maximum(weight, 0.05), np.float64)


def _spread(answers: Sequence[Floats], seen: Sequence[Bools]) -> Floats:
    """Spread of the answers of each width over all corridors, from the middle two quarters."""
    made = []
    for width in range(len(WIDTHS_M)):
        every = np.concatenate([a[width][s] for a, s in zip(answers, seen, strict=True)])
        made.append(float(np.median(np.abs(every - np.median(every)))) / 0.6745)
    return np.maximum(np.array(made, np.float64), 1e-3)


def _onto(sheet: Sheet, ground: Ground, edge: KnownEdge) -> Floats:
    """Rows and columns of the middles of points, where the edge lies."""
    line = np.array(edge.line, np.float64)
    off = np.stack([sheet.top_m - line[:, 1], line[:, 0] - sheet.left_m], axis=1)
    return np.asarray(off / ground.step_m - 0.5, np.float64)


def apart(found: Sequence[EdgeFind]) -> list[EdgeFind]:
    """Of strips along one another only the surest: edges of two coats may lie side by side."""
    kept: list[EdgeFind] = []
    for one in sorted(found, key=lambda each: -each.sure):
        line = shapely.LineString(one.points)
        if all(_shared(line, other) < _SAME for other in kept):
            kept.append(one)
    return kept


def _shared(line: shapely.LineString, other: EdgeFind) -> float:
    per_m = other.pieces * PIECE_M / max(shapely.LineString(other.points).length, 1e-9)
    near = shapely.LineString(other.points).buffer(_SAME_M / per_m)
    return float(line.intersection(near).length / max(line.length, 1e-9))


def _mark(sheet: Sheet, ground: Ground, one: EdgeFind) -> Mark:
    return marked(sheet, ground, one, one.sure, (
        f"a darker strip along the edge of band {one.edge.band} of coat {one.edge.coat} by the run "
        f"sheet; {length_of(ground, one):.1f} m long, about {100 * abs(one.beside_m):.0f} cm "
        "beside that edge"
    ))  # fmt: skip


def length_of(ground: Ground, one: EdgeFind) -> float:
    """How long the strip is. [m]"""
    return float(shapely.LineString(one.points).length) * ground.step_m


def _shown_middle(ground: Ground, points: Floats) -> Floats:
    """Of the points that are seen the middle one: a strip may run on behind glare."""
    high, wide = ground.seen.shape
    at = np.clip(points.astype(int), 0, [high - 1, wide - 1])
    shown = points[ground.seen[at[:, 0], at[:, 1]]]
    every = shown if len(shown) else points
    return np.asarray(every[len(every) // 2], np.float64)


def marked(sheet: Sheet, ground: Ground, one: EdgeFind, sure: float, why: str) -> Mark:
    """The strip as a mark that is proposed."""
    outline = band(one.points, one.width_m / 2 / ground.step_m)
    length_m = length_of(ground, one)
    return Mark(
        "lap line", spot(sheet, ground, _shown_middle(ground, one.points)),
        ring_of(sheet, ground, outline), round(sure, 3),
        round(lighter_by(ground, outline), 2), round(length_m, 3), round(one.width_m, 3), why,
    )  # fmt: skip
