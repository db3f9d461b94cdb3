"""The leaner way through a coat: little in the morning, more when the slab has spoken. Pure.

For a coat with a helper. In the morning two thirds of the likely need are mixed; at a stop line,
when the next field's gate asks for more, what all fields to come will likely take. A last field
that is looked into (`mix.look`) is begun on its likely need, any other on its reserve. Where a
field lies open to floor that is done, enough is kept at its stop line to box a new mix with.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from farwall.facts.look import LookIf, LookRow
from farwall.mix.gate import PAPER_FACTORS, taught
from farwall.mix.look import (
    LEAST_BOX_L,
    BandNeed,
    Place,
    late_and_rest,
    looks_into,
    mix_at_look_l,
)
from farwall.mix.thirst import Thirst, inside
from farwall.nouns import dataclass

LEAN_SHARE = 0.65
"""Of a coat's likely need, mixed in the morning. Set on tuning days."""
AHEAD_SHARE = 0.9
"""Of what all fields to come will likely take, mixed at a stop line. Set on tuning days."""
BEGIN_SHARE = 1.0
"""Of its likely need, what a last field that is looked into is begun on. Set on tuning days."""
_ROW_L = 0.473176473
"""Rows of the table of what to mix lie a US pint, an eighth of a gallon, apart."""
_MOST_ROWS = 8


@dataclass(frozen=True)
class Ahead:
    """A field to come: likely litres, its part of the budget, whether it is seen beside floor done.

    seen: a stop line without a leaf is all that lies between it and floor of the coat done before.
    bands, busy: as `look.looks_into` takes them; of the last field only.
    """

    likely_l: float
    chance_dry: float
    seen: bool = False
    bands: tuple[BandNeed, ...] = ()
    busy: tuple[tuple[float, float], ...] = ()


@dataclass(frozen=True)
class LeanMix:
    """Litres to mix before the field of this number, or inside it before a band."""

    before: int
    litres: float
    band: str = ""


def begin_need_l(ahead: Sequence[Ahead], belief: Thirst) -> float:
    """What must stand in tub and tanks before the first of `ahead` is begun.

    Before a field that another follows in its sight, `LEAST_BOX_L` more than its gate asks for.
    """
    first = ahead[0]
    enough = belief.enough_l(first.likely_l, chance_dry=first.chance_dry)
    if len(ahead) > 1:
        return enough + (LEAST_BOX_L if ahead[1].seen else 0.0)
    return BEGIN_SHARE * first.likely_l * belief.factor if looks_of(first, belief) else enough


def looks_of(last: Ahead, belief: Thirst, *, begin_l: float | None = None) -> tuple[Place, ...]:
    """The looks into the last field; none where it is too small, or nobody is there to mix."""
    return looks_into(
        last.bands,
        belief=belief,
        begin_l=BEGIN_SHARE * last.likely_l * belief.factor if begin_l is None else begin_l,
        chance_late=late_and_rest(last.chance_dry)[0],
        busy=last.busy,
    )


def morning_lean_l(ahead: Sequence[Ahead], belief: Thirst) -> float:
    """Litres to mix before the first field of a coat."""
    likely = math.fsum(one.likely_l for one in ahead)
    share = LEAN_SHARE if len(ahead) > 1 else 0.0
    return max(begin_need_l(ahead, belief), share * likely * belief.factor)


def mix_at_line_l(have_l: float, ahead: Sequence[Ahead], belief: Thirst) -> float:
    """Litres to mix before the first of `ahead` is begun; 0 when it may be."""
    need = begin_need_l(ahead, belief)
    if have_l >= need * (1 - 1e-9):
        return 0.0
    share = AHEAD_SHARE if len(ahead) > 1 else 0.0
    likely = math.fsum(one.likely_l for one in ahead) * belief.factor
    return max(need, share * likely) - have_l


def lean_mixes(ahead: Sequence[Ahead], belief: Thirst) -> tuple[LeanMix, ...]:
    """The mixes of a day on which every field takes what is believed."""
    have_l = morning_lean_l(ahead, belief)
    made = [LeanMix(0, have_l)]
    for number, one in enumerate(ahead):
        more_l = mix_at_line_l(have_l, ahead[number:], belief) if number else 0.0
        if more_l > 0:
            made.append(LeanMix(number, more_l))
            have_l += more_l
        if number + 1 == len(ahead):
            made += _inside(one, have_l, belief, number)
        have_l -= one.likely_l * belief.factor
        belief = taught(belief, [one.likely_l], belief.factor)
    return tuple(made)


def _inside(last: Ahead, begin_l: float, belief: Thirst, number: int) -> list[LeanMix]:
    places = looks_of(last, belief, begin_l=begin_l)
    for at, place in enumerate(places):
        used_l = place.done_l * belief.factor
        rest = inside(belief, done_l=place.done_l, used_l=used_l)
        litres = mix_at_look_l(
            places, at, left_l=begin_l - used_l, rest=rest, chance_dry=last.chance_dry
        )
        if litres > 0:
            return [LeanMix(number, litres, place.band)]
    return []


def look_tables(ahead: Sequence[Ahead], belief: Thirst) -> tuple[tuple[Place, list[LookIf]], ...]:
    """Each look into the last field, with what to mix by what is left, for slabs more or less so
    thirsty before it."""
    last = ahead[-1]
    before = [one.likely_l for one in ahead[:-1]]
    factors = PAPER_FACTORS if before else PAPER_FACTORS[:1]
    beliefs = [taught(belief, before, factor) for factor in factors]
    if not (last.bands and looks_of(last, beliefs[0])):
        return ()
    places = looks_of(last, beliefs[0])
    return tuple(
        (place, [
            _look_if(places, number, last, factor, known)
            for factor, known in zip(factors, beliefs, strict=True)
        ])
        for number, place in enumerate(places)
    )  # fmt: skip


def _look_if(
    places: Sequence[Place], number: int, last: Ahead, factor: float, belief: Thirst
) -> LookIf:
    place, begin_l = places[number], BEGIN_SHARE * last.likely_l * belief.factor

    def mix_l(left_l: float) -> float:
        rest = inside(belief, done_l=place.done_l, used_l=max(begin_l - left_l, 1e-3))
        return mix_at_look_l(places, number, left_l=left_l, rest=rest, chance_dry=last.chance_dry)

    low, high = 0.0, begin_l  # the more is left, the less is mixed
    for _ in range(40):
        middle = (low + high) / 2
        low, high = (low, middle) if mix_l(middle) <= 0 else (middle, high)
    keep_l = (place.until_ready_l - place.done_l) * belief.factor + LEAST_BOX_L
    steps = range(_MOST_ROWS, 0, -1)
    lefts = [round(high / _ROW_L - 1e-6) * _ROW_L - (n - 1) * _ROW_L for n in steps]
    rows = (LookRow(left, mix_l(left)) for left in lefts if keep_l <= left < high)
    return LookIf(factor, begin_l, high, keep_l, tuple(rows))
