"""The same invented floors, a wait watched within the very coat that is foretold.

A house is sprayed from its far wall to the door, so the first room, or the far end of a great
room, dries while the rest is still damp. What is watched began 20 to 90 minutes before what is
foretold, by dice of their own, so that the floors stay those that were frozen; it is foretold at
the first look that finds the one dry. Floors whose other place is dry by then are left out, as
there is nothing left to foretell; that it is still damp counts as seen.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from farwall.air.learned import Watched, factor
from farwall.air.waits import HOUR_MIN, NEUTRALISE, RECOAT, Wait, through
from farwall.bench.floors_drawn import Chance, Floor, drawn
from farwall.bench.floors_score import START, hours_known, seen_of, strip_of, true_of, worth
from farwall.bench.floors_tally import ClockScore, Foretold, tallied
from farwall.bench.floors_true import truth_of

_DICE = 8_000_000
_BEFORE_MIN = (20.0, 90.0)
_HOURS = 72
_COATS: tuple[tuple[str, Wait, int], ...] = (("recoat", RECOAT, 0), ("neutralise", NEUTRALISE, 1))


def score_same_coat(seeds: Sequence[int]) -> tuple[ClockScore, ...]:
    """Dry to recoat and to neutralise, after the coat's first room, or the room's own far end."""
    known = [_earlier(drawn(seed)) for seed in seeds]
    truth, floors = truth_of(known)
    ends, _ = truth_of([strip_of(one) for one in known])
    told: dict[str, list[Foretold]] = {}
    for n, floor in enumerate(floors):
        for name, wait, coat in _COATS:
            first, room = true_of(truth, name, n)
            end = true_of(ends, name, n)[1]
            for where, true in (("first room", (first, room)), ("far end", (end, room))):
                found = _foretold(floor, wait, coat, where, true)
                if found is not None:
                    told.setdefault(f"{wait.name}, {where} of the coat", []).append(found)
    return tuple(tallied(name, each) for name, each in told.items())


def _earlier(floor: Floor) -> Floor:
    """The floor with its closet stained just before the room, in the same coat."""
    gap_min = Chance(_DICE + floor.true.seed).even(*_BEFORE_MIN)
    return replace(floor, closet_at_h=floor.room_at_h - gap_min / HOUR_MIN)


def _foretold(
    floor: Floor, wait: Wait, coat: int, where: str, true: tuple[float, float]
) -> Foretold | None:
    """What was foretold at the look that found the first place dry; None when all was dry then."""
    if not all(map(math.isfinite, true)):
        return None
    gone = _look(floor, true[0]) - (floor.room_at_h - floor.closet_at_h) * HOUR_MIN
    if gone >= true[1]:
        return None
    hours = hours_known(floor)[:_HOURS]
    watched, asked = (
        through(wait, hours, begins=START + timedelta(hours=one))
        for one in (floor.closet_at_h, floor.room_at_h)
    )
    usual = worth(floor, wait, coat)
    place = "room" if where == "far end" else "closet"
    seen = [
        replace(one, now=True)
        for one in seen_of(floor, wait, (watched, asked), true[0], place, coat=coat)
    ]
    if gone > 0:
        seen.append(Watched("room", asked.after(gone) / usual, ended=False, now=True))
    return Foretold(
        asked.after(true[1]) / usual,
        factor(wait.spread, room="room"),
        factor(wait.spread, seen, room="room"),
    )


def _look(floor: Floor, minutes: float) -> float:
    return math.ceil(minutes / floor.look_min) * floor.look_min
