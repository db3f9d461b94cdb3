"""Where the run sheet says that bands of an invented mopped floor ended: beside the frozen floors.

The floors draw nothing anew for it: a lap line lies along one of the edges told here, and a band's
width beside it, over the whole piece, lie the edges that stayed wet, where nothing shows. All are
moved by the error of the hand that sprayed along them, thrown by a generator of their own.
Rank of every figure: guess.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.bench.mopped_floors import MoppedFloor, TrueMark
from farwall.bench.mopped_noise import Chance, chance, ragged
from farwall.colour.marks.nouns import KnownEdge
from farwall.nouns import dataclass

OFF_M, WANDER_M = 0.10, 0.05
"""By how much an edge lies beside its place on the run sheet, and wavers about that; bands are
found by ticks along the walls."""
BAND_M = (0.85, 1.2)
"""Width of a band, as the floors' own circles fill them."""
SECOND_COAT = 0.45
_RIM_M, _NEAR_M, _STEP_M, _WAVE_M = 0.15, 0.6, 0.10, 1.5


@dataclass(frozen=True)
class _Coat:
    """along: axis the edges run along, 0: x · at: where they lie on the other axis [m]."""

    along: int
    at: list[float]


def known_edges(
    floor: MoppedFloor, *, off_m: float = OFF_M, wander_m: float = WANDER_M
) -> tuple[KnownEdge, ...]:
    """Every edge between two bands of every coat, as the run sheet has it; the same for a seed."""
    throws = chance(floor.seed, 40)
    coats = _coats(floor, throws)
    sizes = (floor.wide_m, floor.high_m)
    told = []
    for number, coat in enumerate(coats, 1):
        across = sizes[1 - coat.along]
        for band, at in enumerate(_filled(coat.at, across, throws), 1):
            line = _moved(at, sizes[coat.along], throws, off_m, wander_m)
            points = tuple((x, y) if coat.along == 0 else (y, x) for x, y in line.tolist())
            told.append(KnownEdge(points, float(np.hypot(off_m, wander_m)), number, band))
    return tuple(told)


def _coats(floor: MoppedFloor, throws: Chance) -> list[_Coat]:
    """Coats that the lap lines of the floor came of, and such as left none."""
    coats: list[_Coat] = []
    for mark in floor.marks:
        if mark.kind != "lap line" or not mark.lines:
            continue
        along, at = _lies(mark)
        fits = [
            one for one in coats
            if one.along == along and min(abs(at - o) for o in one.at) > _NEAR_M
        ]  # fmt: skip
        if fits:
            fits[0].at.append(at)
        else:
            coats.append(_Coat(along, [at]))
    wanted = 1 + int(throws.uniform() < SECOND_COAT)
    while len(coats) < wanted:
        coats.append(_Coat(int(throws.integers(0, 2)), []))
    return coats


def _lies(mark: TrueMark) -> tuple[int, float]:
    """The axis that a lap line runs along, and where it lies on the other in the mean. [m]"""
    points = np.concatenate([np.array(line) for line in mark.lines])
    gone = sum(np.abs(np.diff(np.array(line), axis=0)).sum(axis=0) for line in mark.lines)
    along = int(np.argmax(gone))
    return along, float(points[:, 1 - along].mean())


def _filled(known: list[float], across_m: float, throws: Chance) -> list[float]:
    """All edges of a coat across the piece: those known and others a band apart."""
    pitch = throws.uniform(*BAND_M)
    first = known[0] if known else throws.uniform(0, pitch)
    begins = first - pitch * np.floor((first - _RIM_M) / pitch)
    every = [float(at) for at in np.arange(begins, across_m - _RIM_M, pitch)]
    free = [at for at in every if all(abs(at - one) > _NEAR_M for one in known)]
    return sorted([*known, *free])


def _moved(
    at: float, long_m: float, throws: Chance, off_m: float, wander_m: float
) -> NDArray[np.float64]:
    count = max(round(long_m / _STEP_M), 2) + 1
    wander = wander_m * ragged(throws, count, _WAVE_M / _STEP_M, 2)
    line = at + throws.normal(0, off_m) + wander
    return np.asarray(
        np.round(np.stack([np.linspace(0, long_m, count), line], axis=1), 3), np.float64
    )
