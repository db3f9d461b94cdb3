"""A field parted at a seam: which parts there are, in what order, and what comes of it."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from farwall.errors import Unanswerable
from farwall.nouns import dataclass
from farwall.spray.refills import Flow
from farwall.spray.remedies.case import CoatFacts, Outcome, Trial
from farwall.spray.schedule import time_sweep
from farwall.spray.sweep import Sweep
from farwall.spray.sweeps import Pieces, Sweeps
from farwall.spray.world import Seam, World

_NEVER = float("inf")


@dataclass(frozen=True)
class Part:
    """One part of a field and the seams by which a person may leave it."""

    pieces: Pieces
    ways: tuple[Seam, ...]


def parts_at(
    world: World, pieces: Pieces, exit_seam: Seam, closed: Collection[str]
) -> tuple[Part, ...]:
    """The parts of a field once spraying stops at the seams of these ids, in order of spraying.

    The part with the field's own exit goes last; of the others those with more stops between
    them and it go first, so that the way out is dry. Empty when the field stays in one.
    """
    inside = [seam for seam in world.seams if seam.a in pieces and seam.b in pieces]
    groups = _groups(pieces, [seam for seam in inside if seam.id not in closed])
    if len(groups) < 2:
        return ()
    at = {piece: index for index, group in enumerate(groups) for piece in group}
    last = at[exit_seam.a if exit_seam.a in pieces else exit_seam.b]
    stops = [seam for seam in inside if at[seam.a] != at[seam.b]]
    away = _away(len(groups), last, [(at[seam.a], at[seam.b]) for seam in stops])
    parts = []
    for index in sorted(range(len(groups)), key=lambda i: (-away[i], sorted(groups[i]))):
        nearer = [
            seam
            for seam in stops
            if index in (at[seam.a], at[seam.b])
            and min(away[at[seam.a]], away[at[seam.b]]) < away[index]
        ]
        own = [seam for seam in world.seams if seam.is_way_out and seam.a in groups[index]]
        ways = (exit_seam,) if index == last else (*nearer, *own)
        parts.append(Part(groups[index], ways))
    return tuple(parts)


def _groups(pieces: Pieces, joined: Sequence[Seam]) -> list[Pieces]:
    group = {piece: {piece} for piece in pieces}
    for seam in joined:
        if group[seam.a] is not group[seam.b]:
            whole = group[seam.a] | group[seam.b]
            group.update(dict.fromkeys(whole, whole))
    return [frozenset(one) for one in {id(one): one for one in group.values()}.values()]


def _away(count: int, last: int, pairs: Sequence[tuple[int, int]]) -> list[int]:
    away = [count] * count
    away[last] = 0
    for _ in range(count):
        for one, two in pairs:
            away[one] = min(away[one], away[two] + 1)
            away[two] = min(away[two], away[one] + 1)
    return away


def guessed_age_min(parts: Sequence[Part], sweeps: Sweeps) -> float:
    """A first guess at the oldest edge of all parts, infinite when one cannot be done."""
    return max(
        min((_guess(part, seam, sweeps) for seam in part.ways), default=_NEVER) for part in parts
    )


def _guess(part: Part, seam: Seam, sweeps: Sweeps) -> float:
    try:
        return sweeps.age_min(part.pieces, seam)
    except Unanswerable:
        return _NEVER


def timed_parts(trial: Trial, parts: Sequence[Part], sweeps: Sweeps) -> Outcome | None:
    """The parts planned and put on the clock one after the other; None if not doable."""
    coat, day = trial.case.coat, trial.case.day
    try:
        sweeps_of = [_sweep(part, sweeps, coat) for part in parts]
        peak, litres = 0.0, 0.0
        for index, sweep in enumerate(sweeps_of):
            ahead = sum(each.wetted_m2 for each in sweeps_of[index:]) * coat.l_per_m2
            flow = Flow(coat.id, coat.l_per_m2, coat.helper, coat.tools, ahead)
            timed, day = time_sweep(sweep, day, flow, field_id="trial")
            peak = max(peak, timed.peak_age_min)
            litres += sweep.wetted_m2 * coat.l_per_m2
    except Unanswerable:
        return None
    return Outcome(peak, day.minute - trial.case.day.minute, litres)


def _sweep(part: Part, sweeps: Sweeps, coat: CoatFacts) -> Sweep:
    """The part's sweep by its best way out that can be walked."""
    ways = sorted(part.ways, key=lambda seam: (_guess(part, seam, sweeps), seam.id))
    refusal = None
    for seam in ways:
        try:
            return sweeps.sweeper(part.pieces, seam).shortest(coat.tools)
        except Unanswerable as no:
            refusal = refusal or no
    raise refusal or Unanswerable("A part of the field has no way out.")
