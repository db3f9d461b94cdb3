"""A front that no sweep of the field can undercut.

Both bounds are for a *swept* field: a spraying time T(x) with area{T < t} = R t
whose edge age is w |grad T|, the exit zone being sprayed last. They are proved
there, not for a walked path of bands, which may come out a little above or
below. With B = E / R the steepness of T:

1. Ball growth. Some point p of the exit zone is sprayed last, so that
   T(x) >= T_end - B d(x, p): the floor within a walk r of p is sprayed in the
   last B r minutes, hence its area is at most E r. The zone is as long as the
   exit seam, so E >= max over r of area(within r - seam) / r.
2. Inscribed square. When half of a square of side s inside the field is wet,
   the front within it is at least s long (relative isoperimetric inequality in
   a square), and area grows by front x 1 / |grad T| = R, hence E >= s.

Rank: derived here; the steps are written out in docs/decisions/0006.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely

from farwall.spray.geodesic import WalkMap
from farwall.spray.world import Seam


def least_front_m(walks: WalkMap, grown: Sequence[tuple[float, float]], exit_seam: Seam) -> float:
    """The larger of the two bounds, in metres."""
    return max(ball_growth_m(grown, exit_seam), inscribed_square_m(walks.floor))


def ball_growth_m(grown: Sequence[tuple[float, float]], exit_seam: Seam) -> float:
    """The most that the floor around the exit zone grows with the walk to it.

    grown: walks [m], each with the floor within it [m2].
    """
    zone = float(exit_seam.chord.length)
    return max((area / (walk + zone) for walk, area in grown), default=0.0)


def inscribed_square_m(floor: shapely.Polygon) -> float:
    """The side of the largest square found inside the floor, along its main direction.

    Any square inside gives a valid bound; the search looks at a grid of
    centres and is content with a near best.
    """
    turned, angle = _squared_up(floor)
    del angle
    x0, y0, x1, y1 = turned.bounds
    step = max(0.1, min(x1 - x0, y1 - y0) / 40)
    xs = np.arange(x0 + step / 2, x1, step)
    ys = np.arange(y0 + step / 2, y1, step)
    inside = np.asarray(shapely.contains_xy(turned, *np.meshgrid(xs, ys)))
    best, row, column = _largest_block(inside)
    shapely.prepare(turned)
    for cells in range(best, 0, -1):
        side = cells * step
        corner_x = float(xs[column - best + 1] - step / 2)
        corner_y = float(ys[row - best + 1] - step / 2)
        shift = (best - cells) * step / 2
        square = shapely.box(
            corner_x + shift, corner_y + shift, corner_x + shift + side, corner_y + shift + side
        )
        if turned.covers(square):
            return side
    return 0.0


def _squared_up(floor: shapely.Polygon) -> tuple[shapely.Polygon, float]:
    """The floor turned so that its longest wall lies along x."""
    xy = np.asarray(floor.exterior.coords)
    legs = np.diff(xy, axis=0)
    longest = legs[np.hypot(*legs.T).argmax()]
    angle = float(np.arctan2(longest[1], longest[0]))
    cos, sin = np.cos(-angle), np.sin(-angle)
    turned = shapely.transform(floor, lambda c: c @ np.array([[cos, sin], [-sin, cos]]))
    return turned, angle


def _largest_block(inside: np.ndarray) -> tuple[int, int, int]:
    """Side in cells of the largest all-true square, and its last row and column."""
    side = np.zeros(inside.shape, dtype=int)
    for row in range(inside.shape[0]):
        for column in range(inside.shape[1]):
            if inside[row, column]:
                if row and column:
                    side[row, column] = 1 + min(
                        side[row - 1, column], side[row, column - 1], side[row - 1, column - 1]
                    )
                else:
                    side[row, column] = 1
    last = np.unravel_index(int(side.argmax()), side.shape)
    return int(side[last]), int(last[0]), int(last[1])
