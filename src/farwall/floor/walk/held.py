"""How well each wall is held by what else was measured, and which diagonal would hold it better.

Least slip that would be seen: sigma (k + 0.84) / sqrt(r), with k the limit of the alarm and 0.84
for four alarms in five. Two readings are told apart badly when the correlation of their test
values is near one. Source: [baarda-1968], internal reliability; [forstner-1983], separability.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import sqrt
from statistics import NormalDist

import numpy as np
from numpy.typing import NDArray

from farwall.floor.walk.adjust import Adjusted
from farwall.floor.walk.net import READ, Net
from farwall.floor.walk.nouns import Spread, Walk
from farwall.floor.walk.suspect import LEVEL
from farwall.nouns import dataclass

SEEN_M = 0.15
"""A slip of this size ought to be seen: half a foot, our choice."""
ALIKE = 0.98
_POWER = 0.84
_MOST_CORNERS = 12


@dataclass(frozen=True)
class Held:
    """How a wall is held: r, least slip seen [m] (infinite: none), rows it is mistaken for."""

    room: int
    wall: int
    r: float
    seen_m: float
    alike: tuple[int, ...]

    @property
    def seen(self) -> bool:
        """Whether a slip of half a foot would be seen."""
        return self.seen_m <= SEEN_M

    @property
    def sure(self) -> bool:
        """Whether a slip would be seen and named for this wall and no other."""
        return self.seen and not self.alike


@dataclass(frozen=True)
class Advice:
    """A check worth measuring in a room, and how many more of its walls would then be sure.

    From corner `start` to corner `end`; with `across`, between the middles of two walls instead.
    """

    room: int
    start: int
    end: int
    more: int
    across: bool = False


def held_walls(net: Net, fit: Adjusted) -> tuple[Held, ...]:
    """Every wall that was measured, as the rest of the walk holds it."""
    rows = [i for i, row in enumerate(net.rows) if row.kind in READ and fit.weights[i] > 0]
    return _held(net, fit, rows, fit.inverse)


def _limit(net: Net) -> float:
    return NormalDist().inv_cdf(1 - LEVEL / 2 / max(len(net.rows), 1)) + _POWER


def _held(
    net: Net, fit: Adjusted, rows: Sequence[int], inverse: NDArray[np.float64]
) -> tuple[Held, ...]:
    """Walls among some rows, judged with the cofactors `inverse`."""
    a, p = fit.design[list(rows)], fit.weights[list(rows)]
    c = np.diag(p) - (p[:, None] * (a @ inverse @ a.T)) * p[None, :]
    own = np.sqrt(np.maximum(np.diag(c), 1e-12))
    like = np.abs(c) / np.outer(own, own)
    limit = _limit(net)
    found = []
    for k, i in enumerate(rows):
        row = net.rows[i]
        if row.kind != "wall":
            continue
        r = float(np.clip(c[k, k] / p[k], 0.0, 1.0))
        seen_m = row.sigma_m * limit / sqrt(r) if r > 1e-6 else float("inf")
        alike = tuple(
            rows[j] for j in range(len(rows))
            if j != k and r > 1e-4 and like[k, j] > ALIKE and c[j, j] / p[j] > 1e-4
        )  # fmt: skip
        found.append(Held(row.room, row.wall, r, seen_m, alike))
    return tuple(found)


def advice(walk: Walk, net: Net, fit: Adjusted, spread: Spread | None = None) -> tuple[Advice, ...]:
    """For each room with a wall that is not sure, the diagonal that would make most of them so."""
    unsure = {one.room for one in held_walls(net, fit) if not one.sure}
    told = [_best(walk, net, fit, room, spread or Spread()) for room in sorted(unsure)]
    return tuple(one for one in told if one is not None)


def _best(walk: Walk, net: Net, fit: Adjusted, room: int, spread: Spread) -> Advice | None:
    rows = [i for i, row in enumerate(net.rows)
            if row.room == room and row.kind in READ and fit.weights[i] > 0]  # fmt: skip
    before = sum(one.sure for one in _held(net, fit, rows, fit.inverse))
    best: tuple[int, float, Advice] | None = None
    for check in _able(walk, room):
        a, far = _told_by(walk, net, fit, check)
        if far < 0.1:
            continue
        qa = fit.inverse @ a
        inverse = fit.inverse - np.outer(qa, qa) / (spread.of_tape(far) ** 2 + float(a @ qa))
        held = _held(net, fit, rows, inverse)
        more = sum(one.sure for one in held) - before
        worst = max((min(one.seen_m, 99.0) for one in held), default=99.0)
        if more > 0 and (best is None or (more, -worst) > best[:2]):
            best = (more, -worst, replace(check, more=more))
    return best[2] if best else None


def _told_by(
    walk: Walk, net: Net, fit: Adjusted, check: Advice
) -> tuple[NDArray[np.float64], float]:
    """What a check would tell of the unknowns, and how long it is [m]."""
    count = len(walk.rooms[check.room].walls)
    wide = (0, 1) if check.across else (0,)
    at = [
        [net.first[check.room] + 2 * ((end + k) % count) for k in wide]
        for end in (check.start, check.end)
    ]
    middle = [np.array([np.mean(fit.x[one]), np.mean(fit.x[[k + 1 for k in one]])]) for one in at]
    far = float(np.hypot(*(middle[1] - middle[0])))
    way = (middle[1] - middle[0]) / (far or 1.0)
    a = np.zeros(net.unknowns)
    for places, sign in zip(at, (-1.0, 1.0), strict=True):
        for k in places:
            a[[k, k + 1]] += sign * way / len(places)
    return a, far


def _able(walk: Walk, room: int) -> list[Advice]:
    """Checks not measured yet: diagonals, and in rooms of four walls the widths in the middle."""
    told = {frozenset((one.wall, one.other)) for one in walk.rooms[room].across}
    widths = [(0, 2), (1, 3)] if len(walk.rooms[room].walls) == 4 else []
    return [
        *[Advice(room, a, b, 0) for a, b in _diagonals(walk, room)],
        *[Advice(room, a, b, 0, across=True) for a, b in widths if frozenset((a, b)) not in told],
    ]


def _diagonals(walk: Walk, room: int) -> list[tuple[int, int]]:
    count = min(len(walk.rooms[room].walls), _MOST_CORNERS)
    told = {frozenset((one.start, one.end)) for one in walk.rooms[room].diagonals}
    return [
        (a, b) for a in range(count) for b in range(a + 2, count)
        if (b + 1) % len(walk.rooms[room].walls) != a and frozenset((a, b)) not in told
    ]  # fmt: skip
