"""What a floor teaches: each wait is a usual one times a factor, and seen ends narrow the factor.

ln(factor) = floor + room + occasion, all normal about zero: what this floor has
of its own (its slab, its air, the coat as laid), what a room differs by, and
what one time in a room differs from the next (gusts, the film just there). A wait
that was watched to its end tells both with a little error of watching; one
that was left unfinished ("still damp at 3 h") tells only that it is longer.
The step is Bayes' rule by sums over a grid: exact but for the grid, which a
test holds to a hundredth of a standard deviation against the closed form.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from functools import cache

import numpy as np
import numpy.typing as npt

from farwall.nouns import dataclass

Array = npt.NDArray[np.float64]

LOW, HIGH = 0.1, 0.9
"""Ends of the range that is shown: four times in five the wait ends within it."""
_FLOOR_POINTS, _ROOM_POINTS, _REACH = 201, 61, 4.5
_KIN_POINTS = 61
_EVERY = 0.02


@dataclass(frozen=True)
class Spread:
    """Standard deviations of the logarithm: between floors, rooms, of watching, between occasions.

    occasion: how one wait in a room differs from another in the same room. within: the same
    where both are of one coat on one day, and share its mix and its hours; None: no less.
    """

    floor: float
    room: float
    watch: float
    occasion: float = 0.0
    within: float | None = None

    def between(self, *, now: bool) -> float:
        """How one wait differs from the next, of the same coat (`now`) or of another."""
        return self.within if now and self.within is not None else self.occasion


@dataclass(frozen=True)
class Watched:
    """One wait that was watched in a room: `share` is what had passed over the usual wait.

    ended: it had ended then; False: it had not ended yet. since: the share at
    the last look that found it unended, where there was one; 0 says that the
    end itself was seen. blur: for a wait of another kind, how far floors differ
    in what that kind is to this one, as a standard deviation of the logarithm;
    on one floor it is the same in every room. now: seen in the very coat, and on
    the very day, of the wait that is foretold.
    """

    room: str
    share: float
    ended: bool = True
    since: float = 0.0
    blur: float = 0.0
    now: bool = False


@dataclass(frozen=True)
class Factor:
    """What the usual wait is to be multiplied with: low, likely, high; `seen` how often watched."""

    low: float
    likely: float
    high: float
    seen: int = 0


def factor(spread: Spread, watched: Sequence[Watched] = (), *, room: str = "") -> Factor:
    """The factor in `room` after what was watched, in whatever rooms.

    Laws: a wait watched longer never shortens it; without any watching the
    median is 1 and the range that of the prior. A wait of no length that
    ended, or one of endless length, is left out.
    """
    kept = [one for one in watched if 0 < one.share < math.inf]
    blur = max((one.blur for one in kept), default=0.0)
    joint = _joint(spread, kept, room)
    if blur and len(kept) > 1:  # of a single one the blur is part of its watching
        parts = _grid(blur, _KIN_POINTS)
        joint = np.logaddexp.reduce(
            [
                weight + _joint(spread, [_less(one, part) for one in kept], room)
                for part, weight in zip(parts, _log_normal(parts, blur), strict=True)
            ]
        )
    total = (_grid(spread.floor, _FLOOR_POINTS)[:, None] + _grid(spread.room, _ROOM_POINTS)).ravel()
    more = spread.between(now=any(one.now for one in kept))
    low, likely, high = _quantiles(total, joint.ravel(), (LOW, 0.5, HIGH), more=more)
    return Factor(math.exp(low), math.exp(likely), math.exp(high), len(kept))


def _less(one: Watched, part: float) -> Watched:
    """What was watched of another kind, once it is settled what that kind differs by here."""
    if not one.blur:
        return one
    by = math.exp(-part)
    return replace(one, share=one.share * by, since=one.since * by, blur=0.0)


def _joint(spread: Spread, kept: Sequence[Watched], room: str) -> Array:
    """Log weight of each floor (rows) and each part of `room` (columns) after what was watched."""
    floor = _grid(spread.floor, _FLOOR_POINTS)
    heard = np.zeros_like(floor)
    for name in sorted({one.room for one in kept} - {room}):
        there = _heard(floor, spread, [one for one in kept if one.room == name])
        heard += _log_mean(there, spread)
    rooms = _grid(spread.room, _ROOM_POINTS)
    weigh = _log_normal(floor, spread.floor) + heard
    joint = weigh[:, None] + _log_normal(rooms, spread.room)[None, :]
    return joint + _heard(floor, spread, [one for one in kept if one.room == room])


def _grid(sd: float, points: int) -> Array:
    return np.linspace(-_REACH * sd, _REACH * sd, points)


def _log_normal(values: Array, sd: float) -> Array:
    return np.asarray(-0.5 * (values / sd) ** 2)


def _bell(away: Array, sd: float) -> Array:
    return np.asarray(np.exp(_log_normal(away, sd)))


def _heard(floor: Array, spread: Spread, watched: Sequence[Watched]) -> Array:
    """Log likelihood of what was watched in one room, by floor (rows) and room (columns)."""
    rooms = _grid(spread.room, _ROOM_POINTS)
    both = floor[:, None] + rooms[None, :]
    told = np.zeros_like(both)
    for one in watched:
        watch = math.hypot(spread.watch, one.blur, spread.between(now=one.now))
        off = (math.log(one.share) - both) / watch
        if not one.ended:
            told += _log_above(off)
        elif 0 < one.since < one.share:
            told += _log_between((math.log(one.since) - both) / watch, off)
        else:
            told += -0.5 * off**2
    return told


@cache
def _tails() -> tuple[Array, Array]:
    """ln of the chance that a normal number lies above, at close steps: within 2e-5."""
    at = np.linspace(-40.0, 40.0, 8001)
    near = [math.log(0.5 * math.erfc(one / math.sqrt(2))) for one in at if one <= 30.0]
    out = at[len(near) :]  # far out by the first terms of the known tail
    far = -0.5 * out**2 - np.log(out * math.sqrt(2 * math.pi)) - 1 / out**2
    return at, np.concatenate([near, far])


def _log_above(off: Array) -> Array:
    at, tail = _tails()
    within = np.interp(off, at, tail)
    return np.where(off > at[-1], within - 0.5 * (off**2 - at[-1] ** 2), within)


def _log_between(low: Array, high: Array) -> Array:
    """ln of the chance between the two; by whichever tail is the smaller."""
    turned = low + high < 0
    near, far = np.where(turned, -high, low), np.where(turned, -low, high)
    log_near, log_far = _log_above(near), _log_above(far)
    return np.asarray(log_near + np.log1p(-np.exp(np.minimum(log_far - log_near, -1e-9))))


def _log_mean(told: Array, spread: Spread) -> Array:
    """The room's own part summed out: log of the mean likelihood for each floor."""
    weights = _log_normal(_grid(spread.room, _ROOM_POINTS), spread.room)
    sums = told + weights[None, :]
    top = sums.max(axis=1)
    return np.asarray(top + np.log(np.exp(sums - top[:, None]).sum(axis=1)))


def _quantiles(
    values: Array, logs: Array, shares: Sequence[float], *, more: float = 0.0
) -> tuple[float, ...]:
    """Quantiles of weighted values, gathered into narrow steps first.

    more: standard deviation of a normal part that comes on top of the values.
    """
    weights = np.exp(logs - logs.max())
    step = _EVERY * max(float(values.max() - values.min()) / (2 * _REACH), 1e-12)
    beyond = step * math.ceil(_REACH * more / step)
    edges = np.arange(values.min() - step - beyond, values.max() + 2 * step + beyond, step)
    counted, _ = np.histogram(values, bins=edges, weights=weights)
    if more:
        away: Array = step * np.arange(-round(beyond / step), round(beyond / step) + 1, dtype=float)
        counted = np.convolve(np.asarray(counted, dtype=float), _bell(away, more), "same")
    reached = np.concatenate([[0.0], np.cumsum(counted) / counted.sum()])
    return tuple(float(np.interp(share, reached, edges)) for share in shares)
