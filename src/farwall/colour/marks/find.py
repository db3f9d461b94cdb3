"""The look at the mopped floor: marks that a photo shows, for a person to judge.

Nothing is named a defect here: each mark is proposed, with its place, how sure, and what speaks for
it. Lines are sought by the best path [smith-1981], areas by their outline [desolneux-2001],
crescents by their form [turin-1960]; all are weighed against mottle made from the same floor
[theiler-1992]. No book gives bounds for marks of stain; those here were chosen on invented floors
(rank: measured here, on no real stained floor).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.areas import areas_of
from farwall.colour.marks.called import (
    LEAST_OVER,
    Called,
    called,
    called_area,
    called_crescent,
    called_dot,
)  # fmt: skip
from farwall.colour.marks.cleared import cleared
from farwall.colour.marks.crescents import crescents_of
from farwall.colour.marks.dots import dots_of
from farwall.colour.marks.edges import edge_laps, of_no_edge
from farwall.colour.marks.glare import shine_on, unglared
from farwall.colour.marks.ground import Ground, ground_of
from farwall.colour.marks.lines import alone, hidden_share, lines_of
from farwall.colour.marks.nouns import Floats32, KnownEdge, Mark, Sheet
from farwall.colour.marks.patches import without_clouds
from farwall.colour.marks.placed import band, covered, disc, lighter_by, ring_of, spot
from farwall.colour.marks.profile import profile_of
from farwall.colour.marks.shape import shape_of
from farwall.colour.marks.sifted import by_trust, sifted
from farwall.colour.marks.surrogate import surrogate_of
from farwall.colour.marks.trust import likelihood
from farwall.colour.marks.walls import wall_laps

CRESCENT_SURE = 0.04
"""A crescent less likely than this is not proposed. Chosen on invented floors."""
MOST_CRESCENTS = 2
"""Where more places look like crescents they are the floor's own. Chosen likewise."""
BORNE_OUT_M = 0.1
"""A slim light area is a crescent where the search by form finds one so near. Chosen likewise."""
BESIDE_SLAB_M = 0.02
AREA_OVER = 1.1


def marks_in(sheet: Sheet, edges: Sequence[KnownEdge] = ()) -> tuple[Mark, ...]:
    """Marks proposed on a mopped floor, the surest first; the same sheet gives the same marks.

    edges: where bands met by the run sheet; along them lap lines are judged more mildly, and
    elsewhere more strictly. Without them lap lines are sought along every line that runs with the
    axes of the plan.

    Worked on in points of 5 mm or coarser, so what is smaller than 1 cm is not seen. Raises
    `Refused` for a sheet under half a metre or 96 points a side, or with almost no floor seen.
    """
    ground = ground_of(sheet)
    if not ground.seen.any() or float(np.ptp(ground.flat[ground.seen])) < 1e-4:
        return ()
    mottle = surrogate_of(ground.flat)
    slab, lines = _line_marks(sheet, ground, mottle)
    own = cleared(sheet, ground)
    laps = (
        edge_laps(sheet, ground, edges, slab, own) if edges
        else wall_laps(sheet, ground, slab, own)
    )  # fmt: skip
    shine = shine_on(ground)
    bare = unglared(ground, own, covered(sheet, ground, slab, BESIDE_SLAB_M), shine)
    found = [one for one in of_no_edge(lines) if not _lies_along(one, laps)]
    crescents = _crescent_marks(sheet, ground, bare)
    for mark in (*_area_marks(sheet, ground, mottle), *_dot_marks(sheet, ground)):
        if not _told_already(mark, [*slab, *laps, *found]) and _borne_out(mark, crescents):
            found.append(mark)
    kept = without_clouds(sheet, ground, own, shine, sifted(found))
    told = [replace(one, confidence=round(likelihood(one.confidence), 3)) for one in kept]
    told += [
        one for one in crescents[:MOST_CRESCENTS] if not _told_already(one, [*laps, *told])
    ]  # fmt: skip
    return tuple(sorted([*slab, *laps, *told], key=by_trust))


def _line_marks(sheet: Sheet, ground: Ground, mottle: Floats32) -> tuple[list[Mark], list[Mark]]:
    """Cracks and joints; other lines."""
    slab: list[Mark] = []
    other: list[Mark] = []
    for line in alone(lines_of(ground, mottle, least=LEAST_OVER), ground):
        like, points = profile_of(ground, line.points)
        if hidden_share(points, ground.seen) > 0.3:
            continue
        name = called(line, like)
        if name is None:
            continue
        wide_m = min(max(like.width_m, 0.02), 0.1)
        mark = _mark(
            sheet, ground, name, at=points[len(points) // 2], length_m=like.length_m,
            outline=band(points, wide_m / 2 / ground.step_m), width_m=wide_m,
        )  # fmt: skip
        (slab if name.kind in {"crack", "joint"} else other).append(mark)
    return slab, other


def _area_marks(sheet: Sheet, ground: Ground, mottle: Floats32) -> list[Mark]:
    found = []
    for area in areas_of(ground, mottle, least=AREA_OVER):
        shape = shape_of(ground, area)
        name = called_area(area, shape)
        if name is not None:
            rows, columns = np.nonzero(area.inside)
            middle = np.array([rows.mean() + area.row, columns.mean() + area.column])
            inside = np.stack((rows + area.row, columns + area.column), axis=1) + 0.5
            at = inside[np.argmin(((inside - middle) ** 2).sum(axis=1))]
            found.append(_mark(
                sheet, ground, name, at=at, outline=shape.outline,
                length_m=shape.length_m, width_m=shape.width_m,
            ))  # fmt: skip
    return found


def _crescent_marks(sheet: Sheet, ground: Ground, bare: Ground) -> list[Mark]:
    """Crescents by their form, the likeliest first."""
    return [
        _mark(
            sheet, ground, called_crescent(one), at=np.array(one.at),
            outline=one.outline(ground.step_m), length_m=one.form.length_m,
            width_m=one.form.thick_m,
        )
        for one in crescents_of(bare) if one.sure >= CRESCENT_SURE
    ]  # fmt: skip


def _dot_marks(sheet: Sheet, ground: Ground) -> list[Mark]:
    return [
        _mark(
            sheet, ground, called_dot(dot), at=np.array(dot.at), length_m=dot.wide_m,
            outline=disc(dot.at, dot.wide_m / 2 / ground.step_m), width_m=dot.wide_m,
        )
        for dot in dots_of(ground)
    ]  # fmt: skip


def _mark(
    sheet: Sheet, ground: Ground, name: Called, *, at: NDArray[np.float64],
    outline: NDArray[np.float64], length_m: float, width_m: float,
) -> Mark:  # fmt: skip
    return Mark(
        name.kind, spot(sheet, ground, at), ring_of(sheet, ground, outline),
        round(name.confidence, 3), round(lighter_by(ground, outline), 2),
        round(length_m, 3), round(width_m, 3), name.why,
    )  # fmt: skip


def _lies_along(mark: Mark, laps: Sequence[Mark]) -> bool:
    """Whether half of it lies on lap lines that are told already."""
    if not laps:
        return False
    import shapely

    shape = shapely.make_valid(shapely.Polygon(mark.outline))
    told = shapely.union_all([shapely.make_valid(shapely.Polygon(one.outline)) for one in laps])
    return bool(shape.intersection(told.buffer(0.05)).area >= 0.5 * shape.area)


def _borne_out(mark: Mark, crescents: Sequence[Mark]) -> bool:
    """Whether what an outline calls a crescent has the form of one, too."""
    return mark.kind != "missed crescent" or any(
        math.dist(one.at, point) < BORNE_OUT_M
        for one in crescents for point in (mark.at, *mark.outline)
    )  # fmt: skip


def _told_already(mark: Mark, marks: list[Mark]) -> bool:
    """Whether its middle lies on the outline of another, or nearly."""
    near = 0.06
    return any(
        math.dist(mark.at, point) < near for other in marks for point in (other.at, *other.outline)
    )
