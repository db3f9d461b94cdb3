"""Lines of one lateness across a piece of floor, and the piece cut along them.

The lattice's values are carried one step beyond the floor, so that lines run
on into the walls, and each square of the grid is cut into four triangles about
its middle: inside a triangle the value is linear, so a line of one value is
straight there, without ambiguous cases.
Source: marching squares on triangles, as for contour lines of a map; common
in computer graphics, from memory.
"""

from __future__ import annotations

import numpy as np
import shapely
import shapely.ops
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import polygons_of
from farwall.nouns import dataclass
from farwall.spray.lattice import Floats, Lattice

_STRAIGHTEN_M = 0.05
"""Lines are drawn straight where they bend less than this: they are found by tape and film."""
_AROUND = 2
_SPOT_M = 1e-5
_AROUND_ONE = np.array([(c, r) for c in (-1, 0, 1) for r in (-1, 0, 1) if (c, r) != (0, 0)])
_STRAIGHT_ON = np.where((_AROUND_ONE == 0).any(axis=1), 1.0, 0.25)[:, None]
"""What is carried on along the grid counts four times what is carried on across it."""


@dataclass(frozen=True)
class Sheet:
    """Values on the grid around one piece: columns x rows, NaN where nothing is known."""

    values: Floats
    low: tuple[int, int]
    lattice: Lattice

    def to_xy(self, spots: Floats) -> Floats:
        """Grid spots (columns and rows, counted from this sheet's corner) as places in metres."""
        grid = self.lattice.grid
        uv = np.array(grid.low) + grid.step_m * (spots + np.array(self.low) + 0.5)
        return grid.to_xy(uv)

    def at(self, xy: Floats) -> Floats:
        """The value at each place, n x 2, linear in the triangles."""
        grid = self.lattice.grid
        uv = grid.to_uv(xy)
        spot = (uv - np.array(grid.low)) / grid.step_m - 0.5 - np.array(self.low)
        size = np.array(self.values.shape)
        corner = np.clip(np.floor(spot).astype(int), 0, size - 2)
        s, t = (spot - corner).T
        c, r = corner.T
        v = self.values
        four = np.stack([v[c, r], v[c + 1, r], v[c + 1, r + 1], v[c, r + 1]])
        middle = four.mean(axis=0)
        ds, dt = s - 0.5, t - 0.5
        sideways = np.abs(ds) > np.abs(dt)
        right, up = ds > 0, dt > 0
        near = np.where(
            sideways,
            np.where(right, (four[1] + four[2]) / 2, (four[0] + four[3]) / 2),
            np.where(up, (four[3] + four[2]) / 2, (four[0] + four[1]) / 2),
        )
        slant = np.where(
            sideways,
            np.where(right, four[2] - four[1], four[3] - four[0]) * dt,
            np.where(up, four[2] - four[3], four[1] - four[0]) * ds,
        )
        out = np.where(sideways, np.abs(ds), np.abs(dt)) * 2
        return np.asarray(middle + (near - middle) * out + slant)


def sheet_of(lattice: Lattice, number: int, values: Floats) -> Sheet:
    """The values of piece `number` and, across openings, of what it sees next to it."""
    mine = lattice.owner == number
    seen = mine.copy()
    seen[lattice.near[mine]] = True
    near = np.flatnonzero(seen)
    low_c, low_r = lattice.column[mine].min() - _AROUND, lattice.row[mine].min() - _AROUND
    size = (
        int(lattice.column[mine].max() - low_c + 1 + _AROUND),
        int(lattice.row[mine].max() - low_r + 1 + _AROUND),
    )
    sheet = np.full(size, np.nan)
    column, row = lattice.column[near] - low_c, lattice.row[near] - low_r
    inside = (column >= 0) & (row >= 0) & (column < size[0]) & (row < size[1])
    sheet[column[inside], row[inside]] = values[near[inside]]
    for _ in range(2 * _AROUND):
        sheet = _carried_on(sheet)
    return Sheet(sheet, (int(low_c), int(low_r)), lattice)


def _carried_on(sheet: Floats) -> Floats:
    """Unknown spots beside known ones, by carrying straight on; where that fails, by the mean."""
    pad = np.pad(sheet, 2, constant_values=np.nan)
    column, row = np.nonzero(np.isnan(sheet))
    at = column + 2 + _AROUND_ONE[:, :1], row + 2 + _AROUND_ONE[:, 1:]
    one = pad[at]
    two = pad[at[0] + _AROUND_ONE[:, :1], at[1] + _AROUND_ONE[:, 1:]]
    found = _weighed(2 * one - two, _STRAIGHT_ON)
    carried = sheet.copy()
    carried[column, row] = np.where(np.isnan(found), _weighed(one, _STRAIGHT_ON), found)
    return carried


def _weighed(many: Floats, weights: Floats) -> Floats:
    """The mean of each column over the rows that are known, NaN where none is."""
    known = ~np.isnan(many)
    total = (np.where(known, many, 0.0) * weights).sum(axis=0)
    weight = (known * weights).sum(axis=0)
    return np.where(weight > 0, total / np.maximum(weight, 1e-12), np.nan)


def lines_at(sheet: Sheet, levels: Floats) -> list[BaseGeometry]:
    """For each level the lines of that value, in metres, straightened."""
    v = sheet.values
    c, r = np.nonzero(~np.isnan(v[:-1, :-1] + v[1:, :-1] + v[1:, 1:] + v[:-1, 1:]))
    corners = np.stack([[c, r], [c + 1, r], [c + 1, r + 1], [c, r + 1]]).astype(float)
    corners = corners.transpose(2, 0, 1)
    height = np.stack([v[c, r], v[c + 1, r], v[c + 1, r + 1], v[c, r + 1]], axis=1)
    middle = corners.mean(axis=1, keepdims=True)
    peak = height.mean(axis=1, keepdims=True)
    spots = np.concatenate(
        [np.concatenate([corners[:, [k, (k + 1) % 4]], middle], axis=1) for k in range(4)]
    )
    values = np.concatenate(
        [np.concatenate([height[:, [k, (k + 1) % 4]], peak], axis=1) for k in range(4)]
    )
    crossed = (values.min(axis=1) < levels[:, None]) & (values.max(axis=1) >= levels[:, None])
    which, triangle = np.nonzero(crossed)
    legs = _legs(sheet, spots[triangle], values[triangle], levels[which])
    long = np.abs(legs[:, 0] - legs[:, 1]).max(axis=1) > 0
    lines = np.full(len(levels), shapely.LineString(), dtype=object)
    shapely.multilinestrings(shapely.linestrings(legs[long]), indices=which[long], out=lines)
    return list(shapely.simplify(shapely.line_merge(lines), _STRAIGHTEN_M))


def _legs(sheet: Sheet, spots: Floats, values: Floats, levels: Floats) -> Floats:
    """The straight line through each triangle (n x 3 spots with values) at its level, n x 2 x 2."""
    below = values < levels[:, None]
    ends = np.empty((len(spots), 2, 2))
    filled = np.zeros(len(spots), dtype=int)
    for a, b in ((0, 1), (1, 2), (2, 0)):
        cut = np.flatnonzero(below[:, a] != below[:, b])
        one, two = spots[cut, a], spots[cut, b]
        # From the lower spot to the higher, whichever triangle asks: both then meet exactly.
        swap = below[cut, b]
        start, end = np.where(swap[:, None], two, one), np.where(swap[:, None], one, two)
        low = np.where(swap, values[cut, b], values[cut, a])
        high = np.where(swap, values[cut, a], values[cut, b])
        share = ((levels[cut] - low) / np.maximum(high - low, 1e-300))[:, None]
        ends[cut, filled[cut]] = start + share * (end - start)
        filled[cut] += 1
    return np.asarray(np.round(sheet.to_xy(ends) / _SPOT_M) * _SPOT_M)


def cut_along(
    piece: BaseGeometry, sheet: Sheet, levels: Floats
) -> list[tuple[int, shapely.Polygon]]:
    """The piece cut along its lines: each part with the number of levels below it."""
    lines = [line for line in lines_at(sheet, levels) if not line.is_empty]
    if not lines:
        return [
            (int(np.searchsorted(levels, _inside(sheet, part))), part)
            for part in polygons_of(piece)
        ]
    near = shapely.union_all([shapely.boundary(piece), *lines])
    parts = shapely.get_parts(shapely.polygonize(shapely.get_parts(near)))
    spots = shapely.point_on_surface(parts)
    shapely.prepare(piece)
    mine = shapely.contains(piece, spots)
    parts, spots = parts[mine], spots[mine]
    level = np.searchsorted(levels, sheet.at(shapely.get_coordinates(spots)))
    return list(zip(level.tolist(), parts.tolist(), strict=True))


def _inside(sheet: Sheet, part: shapely.Polygon) -> float:
    return float(sheet.at(shapely.get_coordinates(part.representative_point()))[0])
