"""Looks inside the last field of a coat: where they are taken, and what is mixed by them. Pure.

With a helper the last field is begun on what it will likely take, not on a reserve for it. From
some band on tub and tank are looked at before each: while what is left lasts until a batch begun
at the next look would be boxed, one goes on; else what the rest asks for is mixed now, of the same
lots and cut, while the sprayer sprays, and boxed with all that is left. So a batch is never fresh
against the wet edge of another, and what the field has told by then makes its reserve small.

The last field's part of the budget is shared by the two ways in which it can fail: what is left
is gone before the batch is boxed (`LATE_PART`), or the batch was not enough. By the union bound
it runs dry no more often than its part.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from farwall.mix.thirst import Thirst
from farwall.nouns import dataclass

STIRRING_MIN = 4.0
"""Measuring, stirring and boxing a batch with the stain opened, the water in its pail and the jug
beside the tub, all set out before the field is begun. Rank: guess."""
SLACK_MIN = 0.5
"""So much longer it may take, and the batch is still boxed in time. Rank: guess."""
LEAST_BOX_L = 0.5
"""Less than this left does nothing for the shade of a new mix. Rank: guess."""
LATE_PART = 0.3
"""Of the last field's chance of running dry: that a look comes too late. Set on tuning days."""
LEAST_LOOKED_L = 0.5
"""A look tells nothing of a part that was planned for less than this. Rank: guess."""


@dataclass(frozen=True)
class BandNeed:
    """A band as the mix needs it: planned litres and minutes of the plan."""

    id: str
    litres: float
    start_min: float
    end_min: float


@dataclass(frozen=True)
class Place:
    """A look before band number `before` (0 the first) of a field.

    after: the band done last · at_min: the look · ready_min: the batch is boxed, the slack counted
    · done_l, to_do_l: planned litres before and after it · until_ready_l: those up to `ready_min`.
    """

    before: int
    band: str
    after: str
    at_min: float
    ready_min: float
    done_l: float
    to_do_l: float
    until_ready_l: float

    def bears(self, begin_l: float) -> float:
        """How many times the planned litres the field may take, and still something is to box."""
        return (begin_l - LEAST_BOX_L) / self.until_ready_l


def looks_into(
    bands: Sequence[BandNeed],
    *,
    belief: Thirst,
    begin_l: float,
    chance_late: float,
    busy: Sequence[tuple[float, float]] = (),
) -> tuple[Place, ...]:
    """The looks into a field begun on `begin_l`, in order; none where none comes in time.

    The first is the latest before which what is left lasts until a batch would be boxed, but for
    `chance_late`; then one before each band, as long as a batch is boxed before the field ends.
    `busy` are minutes in which the helper is at a tank, and mixes nothing.
    """
    ordered = sorted(bands, key=lambda one: (one.start_min, one.end_min))
    ends = max((one.end_min for one in ordered), default=0.0)
    places = [_place(ordered, number, busy) for number in range(1, len(ordered))]
    told = [one for one in places if one.done_l >= LEAST_LOOKED_L and one.ready_min <= ends]
    safe = [one for one in told if lasts(one, begin_l, belief, chance_late=chance_late)]
    return tuple(told[told.index(safe[-1]) :]) if safe else ()


def lasts(place: Place, left_l: float, belief: Thirst, *, chance_late: float) -> bool:
    """Whether the mix of a field's start lasts until the batch of a look is boxed with a rest."""
    return left_l - belief.enough_l(place.until_ready_l, chance_dry=chance_late) >= LEAST_BOX_L


def mix_at_look_l(
    places: Sequence[Place], number: int, *, left_l: float, rest: Thirst, chance_dry: float
) -> float:
    """Litres to mix at this look with `left_l` in tub and tanks; 0: go on to the next one.

    rest: the belief of what is left of the field (`thirst.inside`) · chance_dry: the last field's
    part of the budget. 0 at the last look is enough for the rest.
    """
    late, dry = late_and_rest(chance_dry)
    place = places[number]
    if number + 1 < len(places):
        until = places[number + 1].until_ready_l - place.done_l
        if left_l - rest.enough_l(until, chance_dry=late) >= LEAST_BOX_L:
            return 0.0
    return max(rest.enough_l(place.to_do_l, chance_dry=dry) - left_l, 0.0)


def lasts_until_l(
    places: Sequence[Place], number: int, *, rest: Thirst, chance_dry: float
) -> float:
    """What must be left at this look to go on without mixing, by a belief that it leaves alone."""
    late, dry = late_and_rest(chance_dry)
    place = places[number]
    enough = rest.enough_l(place.to_do_l, chance_dry=dry)
    if number + 1 == len(places):
        return enough
    until = places[number + 1].until_ready_l - place.done_l
    return min(enough, rest.enough_l(until, chance_dry=late) + LEAST_BOX_L)


def late_and_rest(chance_dry: float) -> tuple[float, float]:
    """The last field's part of the budget: for a look that comes too late, and for the rest."""
    return chance_dry * LATE_PART, chance_dry * (1 - LATE_PART)


def _place(bands: Sequence[BandNeed], number: int, busy: Sequence[tuple[float, float]]) -> Place:
    at_min = bands[number].start_min
    ready_min = _ready(at_min, busy)
    done_l = sprayed_l(bands, at_min)
    return Place(
        before=number,
        band=bands[number].id,
        after=max(bands[:number], key=lambda one: one.end_min).id,
        at_min=at_min,
        ready_min=ready_min,
        done_l=done_l,
        to_do_l=math.fsum(one.litres for one in bands) - done_l,
        until_ready_l=max(sprayed_l(bands, ready_min), 1e-9),
    )


def _ready(at_min: float, busy: Sequence[tuple[float, float]]) -> float:
    """When a batch begun now is boxed: the minutes at a tank are none of mixing."""
    ready, left = at_min, STIRRING_MIN + SLACK_MIN
    for begins, ends in sorted(busy):
        if ends <= ready:
            continue
        free = max(begins - ready, 0.0)
        if free >= left:
            break
        left -= free
        ready = ends
    return ready + left


def sprayed_l(bands: Sequence[BandNeed], until_min: float) -> float:
    """Planned litres sprayed until a minute."""
    return math.fsum(one.litres * _share(one, until_min) for one in bands)


def _share(band: BandNeed, until_min: float) -> float:
    lasts_min = max(band.end_min - band.start_min, 1e-9)
    return min(max((until_min - band.start_min) / lasts_min, 0.0), 1.0)
