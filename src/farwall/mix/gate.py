"""The gate: a field is begun only when what is mixed is enough for it.

Running dry inside a field is what cannot be mended: the edge dies while more
is mixed. Between fields, at a stop line, mixing more costs only minutes. So
the question is asked at each stop line, of the next field only, with all that
the fields before have taught. The chance of running dry is a budget for the
whole job, not for each field: the parts that the fields get add up to it, and
by the union bound the chance that any of them runs dry is no greater, however
the fields hang together. The last field gets most of it (`LAST_SHARE`), for
before any other field the tub already holds what comes later.

Each coat learns for itself: the second coat falls on a slab that the first
has changed.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from farwall.mix.thirst import Thirst
from farwall.nouns import dataclass

LAST_SHARE = 0.8
"""The last field's part of the budget: our choice; simulated, it left the least over."""

SMALLEST_TOP_UP_L = 1.0
"""A planned second mix below this is not worth the walk and goes into the first: our guess."""

PAPER_FACTORS = (1.0, 1.1, 1.2, 1.3, 1.5)
"""What was used over what was planned: the columns of the table that a run sheet can print."""


@dataclass(frozen=True)
class StartAt:
    """When `factor` times the planned litres were used so far, start with at least `start_l`."""

    factor: float
    start_l: float


@dataclass(frozen=True)
class Gate:
    """One field's start rule, litres of cut mix in tub and tanks together.

    `start_l` holds when all went as planned so far; `starts` gives it for a
    thirstier slab. `chance_dry` is this field's part of the job's budget.
    """

    field: str
    coat: str
    likely_l: float
    start_l: float
    starts: tuple[StartAt, ...]
    chance_dry: float


@dataclass(frozen=True)
class PlannedMix:
    """Litres to mix before the field of this number (0 the first), if all goes as believed."""

    before: int
    litres: float


def budget(chance_dry: float, count: int) -> tuple[float, ...]:
    """The parts of `chance_dry` (0 to 1) that `count` fields of one coat get, in order."""
    if count == 1:
        return (chance_dry,)
    each = chance_dry * (1 - LAST_SHARE) / (count - 1)
    return (*(each,) * (count - 1), chance_dry * LAST_SHARE)


def gates(
    fields: Sequence[tuple[str, float]], *, coat: str, belief: Thirst, chances: Sequence[float]
) -> tuple[Gate, ...]:
    """The start rule of each (field id, likely litres) of one coat, in order of spraying.

    `chances` are the parts of the budget, as `budget` gives them.
    """
    made: list[Gate] = []
    for number, (field, likely_l) in enumerate(fields):
        before = [litres for _, litres in fields[:number]]
        chance = chances[number]
        starts = tuple(
            StartAt(factor, taught(belief, before, factor).enough_l(likely_l, chance_dry=chance))
            for factor in (PAPER_FACTORS if before else PAPER_FACTORS[:1])
        )
        made.append(Gate(field, coat, likely_l, starts[0].start_l, starts, chance))
    return tuple(made)


def hand_l(likely_l: Sequence[float], *, belief: Thirst, chances: Sequence[float]) -> float:
    """Litres to have in hand so that no gate stops the fields to come, if they go as believed.

    `likely_l` and `chances` are those of the fields not yet begun, in order.
    Each gate asks for its own reserve on top of what the fields before it will
    likely have taken; the most demanding of them sets the amount.
    """
    most, taken, known = 0.0, 0.0, belief
    for litres, chance in zip(likely_l, chances, strict=True):
        most = max(most, taken + known.enough_l(litres, chance_dry=chance))
        known = taught(known, (litres,), belief.factor)
        taken += litres * belief.factor
    return most


def mix_now_l(
    have_l: float, likely_l: Sequence[float], *, belief: Thirst, chances: Sequence[float]
) -> float:
    """Litres to mix more before the next field is begun; 0 when its gate is open.

    `have_l` is what stands in tub and tanks. When more must be mixed at all,
    it is as much as lets the fields to come go by without another stop.
    """
    if have_l >= belief.enough_l(likely_l[0], chance_dry=chances[0]) * (1 - 1e-9):
        return 0.0
    return hand_l(likely_l, belief=belief, chances=chances) - have_l


def morning_l(likely_l: Sequence[float], *, belief: Thirst, chances: Sequence[float]) -> float:
    """Litres to mix before the first field: its own gate, and all fields' likely need.

    The reserve of the later fields stays uncut until the first ones have told
    how thirsty the slab is: cut stain that is left over is waste. Only when
    that reserve is small is it mixed at once.
    """
    first = belief.enough_l(likely_l[0], chance_dry=chances[0])
    lean = max(first, math.fsum(likely_l) * belief.factor)
    full = hand_l(likely_l, belief=belief, chances=chances)
    return max(lean, full) if full - lean < SMALLEST_TOP_UP_L else lean


def planned_mixes(
    likely_l: Sequence[float], *, belief: Thirst, chances: Sequence[float]
) -> tuple[PlannedMix, ...]:
    """The mixes of a day on which every field takes what is believed."""
    have_l = morning_l(likely_l, belief=belief, chances=chances)
    made = [PlannedMix(0, have_l)]
    for number, litres in enumerate(likely_l):
        rest, its_chances = likely_l[number:], chances[number:]
        more_l = mix_now_l(have_l, rest, belief=belief, chances=its_chances)
        if more_l > 0:
            made.append(PlannedMix(number, more_l))
        taken = litres * belief.factor
        have_l += more_l - taken
        belief = belief.after(likely_l=litres, used_l=taken)
    return tuple(made)


def taught(belief: Thirst, likely_l: Sequence[float], factor: float) -> Thirst:
    """The belief after fields that each took `factor` times their likely litres."""
    for litres in likely_l:
        belief = belief.after(likely_l=litres, used_l=litres * factor)
    return belief
