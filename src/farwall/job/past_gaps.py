"""Told minutes that leave no time between two bands: a moment is found for what lay between them.

Minutes are told to the nearest hundredth or to the whole minute, and walks and turns take their
time all the same. Without a moment of its own a walk would have happened before and after both
bands at once.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import pairwise

from farwall.facts.plan import Band, TimedPoint

LEAST_MIN = 0.02
"""Between two bands, where the plan has as much: a good second. Rank: guess."""


def parted(done: Mapping[str, Band], planned: Mapping[str, Band]) -> dict[str, Band]:
    """Bands done with time between them: a band that is told to begin as the last one ends begins
    a moment later, never more than half of its own time nor than the plan has between them, and
    ends as told. Several that are told to end in one minute share their time as planned.
    Where two spray all stays as told: halves of a band are begun together.
    """
    if len({band.sprayer for band in done.values()}) > 1:
        return dict(done)
    found: dict[str, Band] = {}
    before: Band | None = None
    order = sorted(done.values(), key=lambda one: (one.end_min, planned[one.id].start_min))
    for band in _shared_out(order, planned):
        one = band
        if before is not None:
            one = _later(band, before.end_min + _least(before, band, planned))
        found[band.id] = one
        before = one
    return {name: found[name] for name in done}


def _shared_out(order: Sequence[Band], planned: Mapping[str, Band]) -> Iterator[Band]:
    """Bands of no length that end together with one before them share its time with it."""
    runs: list[list[Band]] = []
    for band in order:
        at_once = bool(runs) and band.start_min >= band.end_min == runs[-1][-1].end_min
        runs[-1].append(band) if at_once else runs.append([band])
    for run in runs:
        yield from run if len(run) == 1 else _share(run, planned)


def _share(run: Sequence[Band], planned: Mapping[str, Band]) -> Iterator[Band]:
    own = [planned[band.id] for band in run]
    first, last = own[0].start_min, own[-1].end_min
    start, end = min(band.start_min for band in run), run[-1].end_min
    if last <= first or any(b.start_min < a.end_min for a, b in pairwise(own)):
        yield from run  # sprayed in another order: what lay between is not known
        return
    for band, was in zip(run, own, strict=True):
        times = [
            round(start + (at - first) * (end - start) / (last - first), 4)
            for at in (was.start_min, was.end_min)
        ]
        path = _over(was.path, times[0], times[1])
        yield replace(band, start_min=times[0], end_min=times[1], path=path)


def _least(before: Band, band: Band, planned: Mapping[str, Band]) -> float:
    """How much of the time that the plan has between two bands is kept at least. [min]"""
    between = planned[band.id].start_min - planned[before.id].end_min
    return min(max(between, 0.0), LEAST_MIN)


def _later(band: Band, start_min: float) -> Band:
    half = (band.start_min + band.end_min) / 2
    start = round(min(start_min, half), 4)
    if start <= band.start_min:
        return band
    return replace(band, start_min=start, path=_over(band.path, start, band.end_min))


def _over(path: tuple[TimedPoint, ...], start: float, end: float) -> tuple[TimedPoint, ...]:
    first, last = path[0][2], path[-1][2]
    share = (end - start) / (last - first) if last > first else 0.0
    moved = [(x, y, round(start + (t - first) * share, 4)) for x, y, t in path]
    return (*moved[:-1], (*moved[-1][:2], end))
