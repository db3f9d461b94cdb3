"""What each stop line spares: the fields on both sides tried as one, and parted elsewhere."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from farwall.nouns import dataclass
from farwall.spray.fields import COMFORT
from farwall.spray.remedies.parts import guessed_age_min, parts_at
from farwall.spray.sweep import one_tank_m2
from farwall.spray.sweeps import Pieces, Sweeps
from farwall.spray.unparted import HIDDEN, seam_cost
from farwall.spray.world import Seam

_STOPS = HIDDEN | {"cased"}
ROUGHLY = 0.02
"""First guesses of less apart are alike."""


@dataclass(frozen=True)
class StopReason:
    """A stop between two fields, and what there would be without it, by first guesses.

    `age_min` and `share` are those of both fields as one (infinite when nobody can do it),
    `apart_share` the worse of the two as they are;
    `another` is the best other place to part them, with the worst share of its parts.
    """

    seam: Seam
    cost: float
    fields: tuple[Pieces, Pieces]
    age_min: float
    share: float
    apart_share: float
    one_tank: bool
    another: tuple[Seam, float] | None

    @property
    def needed(self) -> bool:
        """Whether without it the edge grows older, and nearer its budget than the plan goes."""
        return self.share > max(COMFORT, self.apart_share + ROUGHLY)


def stop_reasons(
    fields: Sequence[Pieces], sweeps: Sweeps, budget: Callable[[Pieces], float]
) -> tuple[StopReason, ...]:
    """A reason for every pair of fields that meet at a stop inside the house."""
    owner = {piece: pieces for pieces in fields for piece in pieces}
    pairs: dict[frozenset[Pieces], Seam] = {}
    for seam in sweeps.world.seams:
        if seam.b and owner[seam.a] != owner[seam.b]:
            pairs.setdefault(frozenset({owner[seam.a], owner[seam.b]}), seam)
    return tuple(
        _reason(seam, (owner[seam.a], owner[seam.b]), sweeps, budget) for seam in pairs.values()
    )


def _reason(
    seam: Seam,
    both: tuple[Pieces, Pieces],
    sweeps: Sweeps,
    budget: Callable[[Pieces], float],
) -> StopReason:
    whole = both[0] | both[1]
    age = sweeps.best_age_min(whole)
    area_m2 = sum(sweeps.world.pieces[piece].shape.area for piece in whole)
    return StopReason(
        seam,
        seam_cost(seam),
        both,
        age,
        age / budget(whole),
        max(sweeps.best_age_min(pieces) / budget(pieces) for pieces in both),
        area_m2 <= one_tank_m2(sweeps.tools, sweeps.litres_per_m2),
        _elsewhere(seam, whole, sweeps, budget),
    )


def _elsewhere(
    seam: Seam, whole: Pieces, sweeps: Sweeps, budget: Callable[[Pieces], float]
) -> tuple[Seam, float] | None:
    """The best other line at which the two fields together could be parted."""
    ways = sorted(sweeps.ways_out(whole), key=lambda way: way.id)
    best: tuple[Seam, float] | None = None
    for other in sweeps.world.seams:
        if not {other.a, other.b} <= whole or other.kind not in _STOPS or other.id == seam.id:
            continue
        for way in ways[:1]:
            parts = parts_at(sweeps.world, whole, way, {other.id})
            if parts:
                share = guessed_age_min(parts, sweeps) / budget(whole)
                if best is None or share < best[1]:
                    best = (other, share)
    return best
