"""What rinses of this job have shown of its floor, and how many more it takes: a step of Bayes.

Two things are left on a scrubbed floor, powder (the rag shows it) and acid (pH shows it). A rinse
of w litres on a square metre leaves of both the share h / (h + w), where h is what stays down after
the vacuum, badly mixed water counted into it; and the pores give back some powder after it, less
each time. Powder is counted in what a rag just calls clean, acid in what the tap water can take
(`rinse_ph`). Starts, h and what the pores give are not known: they are drawn once over their first
ranges, a value for the job and one for each room about it, and weighed by what was read.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.special import log_ndtr, ndtr, ndtri

from farwall.acid.rinse_ph import TAP_PH, rinse_ph
from farwall.acid.rinse_ranges import (
    ACID_LN,
    ACID_SD,
    FADES,
    GREY_LN,
    HOLD_UP_LN,
    HOLD_UP_SD,
    HOLDS,
    LEAST_ROUNDS,
    NIGHT,
    PH_SD,
    PORES_LN,
    PORES_SD,
    POWDER_LN,
    POWDER_SD,
    RAG_SD,
    ROOM_SHARE,
    SCRUB_ACID,
    SCRUB_LEAVES,
    SCRUB_PORES,
    SOUR,
    SOUR_SD,
)
from farwall.nouns import dataclass

Numbers = NDArray[Any]

MOST_MORE = 20
_JOBS, _ROOMS = 768, 16


@dataclass(frozen=True)
class Round:
    """One rinse of a room as read: litres a square metre, whether it was scrubbed before it.

    `rag`: clean, grey, coloured or empty; `phs`: all readings of that rinse; `powder`: the dry
    swipe next morning, None where nobody swiped.
    """

    l_per_m2: float
    rag: str = ""
    phs: tuple[float, ...] = ()
    scrubbed: bool = False
    powder: bool | None = None


@dataclass(frozen=True)
class _Drawn:
    """Values of all draws, jobs down and rooms across; each array is shaped alike."""

    powder: Numbers
    acid: Numbers
    hold_up: Numbers
    pores: Numbers


@lru_cache(maxsize=1)
def _drawn() -> _Drawn:
    """The first ranges, drawn evenly and always alike: an additive recurrence in eight ways.

    The step of each way is a power of the root of x⁹ = x + 1; no chance is in it.
    """
    root = 2.0
    for _ in range(60):
        root = (1 + root) ** (1 / 9)
    jobs = _normal(np.arange(1, _JOBS + 1), root, range(4))
    rooms = _normal(np.arange(1, _JOBS * _ROOMS + 1), root, range(4, 8)).reshape(4, _JOBS, _ROOMS)
    firsts = ((POWDER_LN, POWDER_SD), (ACID_LN, ACID_SD), (HOLD_UP_LN, HOLD_UP_SD),
              (PORES_LN, PORES_SD))  # fmt: skip
    one = [
        np.exp(mean + sd * (jobs[k][:, None] + ROOM_SHARE * rooms[k]))
        for k, (mean, sd) in enumerate(firsts)
    ]
    return _Drawn(*one)


def _normal(numbers: Numbers, root: float, ways: range) -> Numbers:
    steps = np.array([root ** -(k + 1) for k in ways])
    even = (0.5 + numbers[None, :] * steps[:, None]) % 1.0
    return np.asarray(ndtri(np.clip(even, 1e-6, 1 - 1e-6)))


@dataclass(frozen=True)
class _State:
    """What is left in every draw, and what the pores will still give after a rinse."""

    powder: Numbers
    acid: Numbers
    gives: Numbers

    def rinsed(self, drawn: _Drawn, l_per_m2: float, *, scrubbed: _Scrub) -> _State:
        """After a scrub, as far as there was one, and a rinse."""
        powder = self.powder * SCRUB_LEAVES**scrubbed.powder
        acid = self.acid * SCRUB_ACID**scrubbed.acid
        gives = self.gives * SCRUB_PORES**scrubbed.pores
        left = drawn.hold_up / (drawn.hold_up + l_per_m2)
        return _State(powder * left + gives, acid * left, gives * FADES)

    def to_come(self, done: int) -> _Scrub:
        """How surely it is scrubbed again after so many rinses, as `rinsing` has it.

        Smooth in what is left, so that less of it never comes to more: that is what keeps more
        water from asking more rinses.
        """
        late = done >= LEAST_ROUNDS
        dirty = ndtr((np.log(self.powder) - (0.0 if late else GREY_LN)) / RAG_SD)
        sour = ndtr(np.log(np.maximum(self.acid, 1e-12) / SOUR) / SOUR_SD)
        return _Scrub(dirty, sour, 1.0 if late else 0.0)


@dataclass(frozen=True)
class _Scrub:
    """A scrub, 0 to 1, as it counts for powder, acid and what the pores give."""

    powder: Numbers | float = 0.0
    acid: Numbers | float = 0.0
    pores: float = 0.0


_NONE, _WHOLE = _Scrub(), _Scrub(1.0, 1.0, 1.0)


def _first(drawn: _Drawn) -> _State:
    return _State(drawn.powder, drawn.acid, drawn.pores * drawn.powder)


def _weighed(rounds: Sequence[Round], tap_ph: float, drawn: _Drawn) -> tuple[Numbers, _State]:
    """How well each draw tells what was read (natural logarithm), and what it has left."""
    state, told = _first(drawn), np.zeros_like(drawn.powder)
    for one in rounds:
        state = state.rinsed(drawn, one.l_per_m2, scrubbed=_WHOLE if one.scrubbed else _NONE)
        level = np.log(state.powder)
        if one.rag:
            told = told + _rag(one.rag, level)
        for ph in one.phs:
            read = rinse_ph(state.acid, tap_ph=tap_ph)
            told = told - ((min(ph, tap_ph) - read) / PH_SD) ** 2 / 2
        if one.powder is not None:
            night = np.log(state.powder + NIGHT * state.gives) / RAG_SD
            told = told + log_ndtr(night if one.powder else -night)
    return told, state


def _rag(rag: str, level: Numbers) -> Numbers:
    clean, grey = -level / RAG_SD, (GREY_LN - level) / RAG_SD
    if rag == "clean":
        return np.asarray(log_ndtr(clean))
    if rag == "coloured":
        return np.asarray(log_ndtr(-grey))
    return np.asarray(np.log(np.maximum(ndtr(grey) - ndtr(clean), 1e-12)))


@dataclass(frozen=True)
class More:
    """How many more rinses a room takes: low and high hold it four times in five."""

    low: int
    likely: int
    high: int


@lru_cache(maxsize=512)
def _weights(rounds: tuple[Round, ...], tap_ph: float) -> Numbers:
    """How well each draw of the job tells one room: the mean over the room's own draws."""
    told, _ = _weighed(rounds, tap_ph, _drawn())
    top = told.max(axis=1, keepdims=True)
    return np.asarray(top[:, 0] + np.log(np.mean(np.exp(told - top), axis=1)))


def chances_of_more(
    room: Sequence[Round],
    others: Sequence[Sequence[Round]] = (),
    *,
    l_per_m2: float,
    least_ph: float = 7.0,
    tap_ph: float | None = None,
    scrub: bool = False,
) -> Numbers:
    """Chance that so many more rinses are enough, at place n - 1 for n = 1 to 20; sums to 1.

    room: what was read in it so far, `others` in the other rooms of this job. l_per_m2: of each
    rinse to come. least_ph: from which on pH passes. scrub: the next one is scrubbed before.
    """
    tap = TAP_PH if tap_ph is None else tap_ph
    told = tuple(tuple(one) for one in others if one)
    return _chances(tuple(room), told, l_per_m2=l_per_m2, least_ph=least_ph, tap=tap, scrub=scrub)


@lru_cache(maxsize=512)
def _chances(
    room: tuple[Round, ...],
    others: tuple[tuple[Round, ...], ...],
    *,
    l_per_m2: float,
    least_ph: float,
    tap: float,
    scrub: bool,
) -> Numbers:
    """The same, kept: every tap of a day asks for it again."""
    drawn = _drawn()
    told, state = _weighed(room, tap, drawn)
    job = sum((_weights(one, tap) for one in others), np.zeros(_JOBS))
    weight = told + job[:, None]
    weight = np.exp(weight - weight.max())
    weight /= weight.sum()
    chances, not_yet = np.zeros(MOST_MORE), np.ones_like(weight)
    again = _WHOLE if scrub else _NONE
    for n in range(MOST_MORE):
        state = state.rinsed(drawn, l_per_m2, scrubbed=again)
        passes = _passes(state, least_ph, tap)
        chances[n] = float((weight * not_yet * passes).sum())
        not_yet = not_yet * (1 - passes)
        again = state.to_come(len(room) + n + 1)
    chances[-1] += max(1.0 - chances.sum(), 0.0)
    chances.flags.writeable = False
    return chances


def _passes(state: _State, least_ph: float, tap: float) -> Numbers:
    """Chance that rag and paper both pass, where this much is left."""
    read = rinse_ph(state.acid, tap_ph=tap)
    over = np.minimum(read, tap) - min(least_ph, tap - PH_SD)
    return np.asarray(ndtr(-np.log(state.powder) / RAG_SD) * ndtr(over / PH_SD))


def more_rinses(chances: Numbers) -> More:
    """The span of whole rinses whose chance lies nearest to four in five, the middle in it.

    A rinse more of width has to bring it nearer by one in a hundred. Of two as good the one that
    reaches further.
    """
    upto = np.cumsum(chances)
    likely = min(int(np.searchsorted(upto, 0.5)), len(chances) - 1)
    spans = (
        (_misses(float(upto[high] - upto[low] + chances[low]), high - low), -high, low)
        for low in range(likely + 1)
        for high in range(likely, len(chances))
    )
    _, high, low = min(spans)
    return More(low + 1, likely + 1, 1 - high)


def _misses(chance: float, width: int) -> float:
    return abs(chance - HOLDS) + 0.01 * width
