"""From the air outside to the room over the slab, hour by hour: a few nodes and two balances.

Walls and furnishings, the room's air, and the slab with its ground stand in
one chain (`air.chain`), warmed by the air outside, a heater and the sun on
the floor; vapour is carried by the air that passes and held back by what
soaks it up. Nobody measured any of it in the house at hand: every figure is
a guess until a reading comes. A reading wins at its hour, and pulls the
hours about it by what it differed, less as they lie farther off.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from farwall.air import moist
from farwall.air.chain import BACKWARD_EULER, Chain, joined, stepped
from farwall.air.house import AIR_J_M3K, CEILING_M, House, air_changes_h, over_floor_m_s
from farwall.air.slab import FACE_W_M2K, ON_GRADE, Seen, chain_of, face_c
from farwall.nouns import dataclass

WALLS_J_M2K = 80e3
"""Board, framing and furnishings for a square metre of floor: a guess."""
WALLS_TO_AIR_W_M2K, OUT_THROUGH_WALLS_W_M2K, OUT_THROUGH_GLASS_W_M2K = 12.0, 0.7, 0.7
"""For a square metre of floor, an insulated house of one storey: guesses."""
SOAKS = 4.0
"""Board and furnishings hold several times the vapour of the air: a guess."""
PULL_H = 6.0
"""Hours after which a reading pulls with a third of its force: a guess."""
_STEPS_AN_HOUR = 3


@dataclass(frozen=True)
class Outside:
    """Hours outside, and the sun that the floor takes up (none where not reckoned). SI."""

    air_c: Sequence[float]
    rh_percent: Sequence[float]
    wind_m_s: Sequence[float]
    sun_w_m2: Sequence[float] | None = None


@dataclass(frozen=True)
class ReadingsAt:
    """What was read, and at the beginning of which hour. °C, %, m/s; None where nothing was."""

    hour: int
    slab_c: float | None = None
    air_c: float | None = None
    rh_percent: float | None = None
    air_speed_m_s: float | None = None


@dataclass(frozen=True)
class Room:
    """Over the slab, an hour each: face of the slab, air [°C], damp [%], moving [m/s], changes."""

    face_c: tuple[float, ...]
    air_c: tuple[float, ...]
    rh_percent: tuple[float, ...]
    air_speed_m_s: tuple[float, ...]
    air_changes_h: tuple[float, ...]


def room_over_slab(
    outside: Outside,
    *,
    house: House | None = None,
    ground_c: float | None = None,
    read: ReadingsAt | None = None,
) -> Room:
    """The room for each hour outside. Rank: a guess, but for a reading at its hour.

    outside: the first day or more before the hours that matter; ten days are
    better, for the slab remembers. ground_c: below the slab; left out, the
    mean of the air outside. read: readings, which win at their hour.
    """
    house = house or House()
    read = read or ReadingsAt(0)
    ground = _mean(outside.air_c) if ground_c is None else ground_c
    warm, changes = _warmth(outside, house, ground)
    air_c = _pulled(warm, read.air_c, read.hour)
    seen = None if read.slab_c is None else Seen(read.hour, read.slab_c)
    face = list(face_c(air_c, ground_c=ground, absorbed_w_m2=outside.sun_w_m2, seen=seen))
    if read.slab_c is not None:
        face[read.hour] = read.slab_c
    moving = [over_floor_m_s(house, wind_m_s=wind) for wind in outside.wind_m_s]
    return Room(
        face_c=tuple(face),
        air_c=tuple(air_c),
        rh_percent=tuple(_damp(outside, air_c, changes, read)),
        air_speed_m_s=tuple(
            max(one, 0.0) for one in _pulled(moving, read.air_speed_m_s, read.hour)
        ),
        air_changes_h=tuple(changes),
    )


def _warmth(outside: Outside, house: House, ground_c: float) -> tuple[list[float], list[float]]:
    """Air of the room, the mean of each hour, and how often it changes."""
    slab = chain_of(ON_GRADE)
    chain = joined(
        Chain((WALLS_J_M2K, AIR_J_M3K * CEILING_M), (WALLS_TO_AIR_W_M2K,)),
        Chain(slab.holds_j_m2k[:-1], slab.between_w_m2k[:-1]),
        ties_w_m2k=[FACE_W_M2K],
    )
    last = slab.between_w_m2k[-1]
    nodes = len(chain.holds_j_m2k)
    warmth = [_mean(outside.air_c[:24])] * nodes
    heat = house.heat_kw * 1000 / house.floor_m2
    told, changes = [], []
    for hour, (out, wind) in enumerate(zip(outside.air_c, outside.wind_m_s, strict=True)):
        sun = outside.sun_w_m2[hour] if outside.sun_w_m2 is not None else 0.0
        an_hour = air_changes_h(house, inside_c=warmth[1], outside_c=out, wind_m_s=wind)
        through = OUT_THROUGH_GLASS_W_M2K + an_hour * CEILING_M * AIR_J_M3K / 3600
        ties = [OUT_THROUGH_WALLS_W_M2K, through, *[0.0] * (nodes - 3), last]
        given = [one * out for one in ties[:2]] + [0.0] * (nodes - 3) + [last * ground_c]
        given[2] += sun
        total = 0.0
        for _ in range(_STEPS_AN_HOUR):
            warmth = _heated(chain, warmth, ties, given, heat=heat, to_c=house.heat_to_c)
            total += warmth[1]
        told.append(total / _STEPS_AN_HOUR)
        changes.append(an_hour)
    return told, changes


def _heated(
    chain: Chain,
    warmth: list[float],
    ties: Sequence[float],
    given: Sequence[float],
    *,
    heat: float,
    to_c: float | None,
) -> list[float]:
    """One step later; a thermostat lets in the share of the heat that brings the air to `to_c`."""

    def with_heat(share: float) -> list[float]:
        into = [given[0], given[1] + share * heat, *given[2:]]
        return stepped(
            chain,
            warmth,
            step_s=3600 / _STEPS_AN_HOUR,
            ties_w_m2k=ties,
            given_w_m2=into,
            share_new=BACKWARD_EULER,
        )

    full = with_heat(1.0)
    if to_c is None or full[1] <= to_c:
        return full
    none = with_heat(0.0)
    if full[1] <= none[1]:
        return none
    # The step is linear in the heat, so the share that just reaches `to_c` is known.
    share = min(max((to_c - none[1]) / (full[1] - none[1]), 0.0), 1.0)
    return [n + share * (f - n) for n, f in zip(none, full, strict=True)]


def _damp(
    outside: Outside, air_c: Sequence[float], changes: Sequence[float], read: ReadingsAt
) -> list[float]:
    """Relative humidity of the room. [%] What passes brings the vapour of outside, slowly."""
    held = None
    vapour = []
    for out_c, rh, changed in zip(outside.air_c, outside.rh_percent, changes, strict=True):
        there = moist.vapour_pressure_pa(air_c=out_c, rh_percent=min(max(rh, 0.0), 100.0))
        share = changed / (changed + SOAKS)
        held = there if held is None else held + share * (there - held)
        vapour.append(held)
    if read.rh_percent is not None:
        told = moist.vapour_pressure_pa(air_c=air_c[read.hour], rh_percent=read.rh_percent)
        vapour = [max(one, 0.0) for one in _pulled(vapour, told, read.hour)]
    damp = [
        moist.rh_percent_from_vapour_pressure(air_c=air, vapour_pressure_pa=one)
        for air, one in zip(air_c, vapour, strict=True)
    ]
    if read.rh_percent is not None:
        damp[read.hour] = read.rh_percent
    return damp


def _pulled(values: Sequence[float], told: float | None, at: int) -> list[float]:
    """The values, brought to what was told at that hour, less before and after it."""
    if told is None:
        return list(values)
    off = told - values[at]
    pulled = [one + off * math.exp(-abs(n - at) / PULL_H) for n, one in enumerate(values)]
    pulled[at] = told
    return pulled


def _mean(values: Sequence[float]) -> float:
    return math.fsum(values) / len(values)
