"""The floor that lies farthest from the ways out: where a house is begun, by the walk alone.

A figure for whoever looks at a drawing for the first time, before fields, tanks and clocks come in.
Walks are those of a point, over cells of 0.1 m (`fast_sweeping`): good to some 0.1 m in 10 m, and
no word on whether a body gets through. Rank: measured here (docs/spraying.md).
"""

from __future__ import annotations

import numpy as np
import shapely

from farwall.nouns import dataclass
from farwall.spray.fast_sweeping import Bools, Floats, walks_on_grid
from farwall.spray.world import World

_STEP_M = 0.1
_MOST_CELLS = 250_000
_BESIDE_M = 0.01


@dataclass(frozen=True)
class Farthest:
    """The place from which the walk to the nearest way out is longest; None where there is none.

    shut_in: rooms of whose floor no walk leads out, in their order.
    """

    room: str
    place: tuple[float, float]
    walk_m: float
    shut_in: tuple[str, ...]


def farthest_floor(world: World) -> Farthest | None:
    """Where the walk to the nearest way out is longest; None when no floor has a way out."""
    cells = _cells(world)
    start = _starts(world, cells)
    if not np.isfinite(start).any():
        return None
    east, north = _links(cells, axis=0), _links(cells, axis=1)
    walks = walks_on_grid(cells.owner >= 0, start, cells.step_m, east=east, north=north).metres
    rooms = [piece.room for piece in world.pieces.values()]
    reached = {rooms[number] for number in np.unique(cells.owner[np.isfinite(walks)])}
    shut = tuple(room for room in dict.fromkeys(rooms) if room not in reached)
    far = np.unravel_index(np.argmax(np.where(np.isfinite(walks), walks, -1.0)), walks.shape)
    x, y = cells.centres[far]
    return Farthest(rooms[cells.owner[far]], (float(x), float(y)), float(walks[far]), shut)


@dataclass(frozen=True)
class _Cells:
    ground: shapely.Geometry
    step_m: float
    centres: Floats
    owner: np.ndarray
    """The number of the piece that each centre lies on, -1 off the floor."""


def _cells(world: World) -> _Cells:
    ground = world.ground(world.pieces)
    x0, y0, x1, y1 = ground.bounds
    step = max(_STEP_M, float(np.sqrt((x1 - x0) * (y1 - y0) / _MOST_CELLS)))
    at = [
        low + (np.arange(max(1, round((high - low) / step))) + 0.5) * step
        for low, high in ((x0, x1), (y0, y1))
    ]
    centres = np.stack(np.meshgrid(*at, indexing="ij"), axis=-1)
    owner = np.full(centres.shape[:2], -1)
    for number, piece in enumerate(world.pieces.values()):
        shapely.prepare(piece.inner)
        owner[shapely.contains_xy(piece.inner, centres[..., 0], centres[..., 1])] = number
    return _Cells(ground, step, centres, owner)


def _starts(world: World, cells: _Cells) -> Floats:
    """From cells beside each way out to its line, told exactly two cells deep. [m]"""
    start = np.full(cells.owner.shape, np.inf)
    names = list(world.pieces)
    for seam in (one for one in world.seams if one.is_way_out):
        mine = np.nonzero(cells.owner == names.index(seam.a))
        away = np.asarray(shapely.distance(shapely.points(cells.centres[mine]), seam.chord))
        reach = max(2 * cells.step_m, float(away.min(initial=np.inf)) + _BESIDE_M)
        start[mine] = np.minimum(start[mine], np.where(away <= reach, away, np.inf))
    return start


def _links(cells: _Cells, *, axis: int) -> Bools:
    """Whether the straight line to the next cell along this axis stays on the floor."""
    linked = np.zeros(cells.owner.shape, dtype=bool)
    first = (slice(0, -1), slice(None)) if axis == 0 else (slice(None), slice(0, -1))
    second = (slice(1, None), slice(None)) if axis == 0 else (slice(None), slice(1, None))
    both = (cells.owner[first] >= 0) & (cells.owner[second] >= 0)
    ends = np.stack([cells.centres[first][both], cells.centres[second][both]], axis=1)
    shapely.prepare(cells.ground)
    here = np.zeros(both.shape, dtype=bool)
    here[both] = shapely.covers(cells.ground, shapely.linestrings(ends))
    linked[first] = here
    return linked
