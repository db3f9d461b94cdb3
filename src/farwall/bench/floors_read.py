"""The same invented floors, with more read beside the strip and beside the coat.

Moving air within 15 or 35 %, the slab by infrared at both hours, a wetted tile weighed twice
within 7 %, litres of strip and coat counted within 7 %: errors are `air.beside`'s own, thrown by
dice of their own, so that the floors stay those that were frozen.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from farwall.air.beside import (
    LITRES_ERROR,
    TILE_ERROR,
    TISSUE_ERROR,
    VANE_ERROR,
    Beside,
    carried_beside,
    spread_beside,
)
from farwall.air.day import HourAtSlab
from farwall.air.learned import Watched, factor
from farwall.air.waits import NEUTRALISE, RECOAT, Wait, through
from farwall.bench.floors_drawn import BEFORE_H, Chance, Floor, drawn
from farwall.bench.floors_score import START, hours_known, strip_of, true_of, worth
from farwall.bench.floors_tally import ClockScore, Foretold, tallied
from farwall.bench.floors_true import Array, tiles_of, truth_of
from farwall.nouns import dataclass

_DICE = 7_000_000
_HOURS = 72
"""From the night before the closet's stroke to the day after the room's."""
_SLAB_ERROR_K = 0.6
_AIR_KEEPS, _SLAB_KEEPS = 0.8, 0.9
"""How much of a reading is believed an hour later; the rest is the day's own figure. Guesses."""
WAYS = ("nothing more", "vane", "tissue", "slab", "vane and slab", "litres", "vane and litres",
        "tile", "tile and litres")  # fmt: skip


def score_read(seeds: Sequence[int], ways: Sequence[str] = WAYS) -> tuple[ClockScore, ...]:
    """Dry to recoat and to neutralise, by what is read beside, from a closet and the same room."""
    known = [drawn(seed) for seed in seeds]
    truth, floors = truth_of(known)
    strips = [strip_of(one) for one in known]
    strip_truth, _ = truth_of(strips)
    tiles = (*tiles_of(known), tiles_of(strips)[1])
    told: dict[str, list[Foretold]] = {}
    for n, floor in enumerate(floors):
        own = tuple(float(one[n]) for one in tiles)
        hours = hours_known(floor)[:_HOURS]
        read = {way: _hours_read(floor, hours, way, truth.slab_c[n]) for way in ways}
        for name, wait, coat in (("recoat", RECOAT, 0), ("neutralise", NEUTRALISE, 1)):
            closet, room = true_of(truth, name, n)
            strip = true_of(strip_truth, name, n)[1]
            if not all(map(math.isfinite, (closet, room, strip))):
                continue
            for where, true in (("closet", (closet, room)), ("room", (strip, room))):
                for way in ways:
                    seen = _Seen(where, true, own, read[way])
                    found = _foretold(floor, wait, coat, way, seen)
                    told.setdefault(f"{wait.name}, {where}: {way}", []).append(found)
    return tuple(tallied(name, each) for name, each in told.items())


@dataclass(frozen=True)
class _Seen:
    """Where it was watched, the true minutes there and here, tiles by place, hours as read."""

    where: str
    true: tuple[float, float]
    tiles: tuple[float, ...]
    hours: tuple[HourAtSlab, ...]


def _hours_read(
    floor: Floor, hours: tuple[HourAtSlab, ...], way: str, slab_c: Array
) -> tuple[HourAtSlab, ...]:
    """The hours as a person has them who also read air or slab at both."""
    off = _off(floor)
    if "vane" in way or "tissue" in way:
        error = VANE_ERROR if "vane" in way else TISSUE_ERROR
        hours = _air_read(floor, hours, (error * off[0], error * off[1]))
    if "slab" in way:
        hours = _slab_read(floor, hours, slab_c, (_SLAB_ERROR_K * off[2], _SLAB_ERROR_K * off[3]))
    return hours


def _off(floor: Floor) -> list[float]:
    dice = Chance(_DICE + floor.true.seed)
    return [dice.normal() for _ in range(7)]


def _foretold(floor: Floor, wait: Wait, coat: int, way: str, so: _Seen) -> Foretold:
    off = _off(floor)
    beside = Beside(air="vane" in way or "tissue" in way)
    if "tile" in way:
        seen = so.tiles[2] if so.where == "room" else so.tiles[0]
        beside = replace(
            beside,
            tile_seen=seen * math.exp(TILE_ERROR * off[4]),
            tile_asked=so.tiles[1] * math.exp(TILE_ERROR * off[5]),
        )
    if "litres" in way:
        films = floor.true.film_mm
        ratio = films[1][coat] / films[0][coat]
        beside = replace(beside, film_ratio=ratio * math.exp(LITRES_ERROR * off[6]))
    surer = spread_beside(wait, beside)
    usual = worth(floor, wait, coat)
    watched, asked = (
        through(wait, so.hours, begins=START + timedelta(hours=one))
        for one in (floor.closet_at_h, floor.room_at_h)
    )
    last = math.ceil(so.true[0] / floor.look_min) * floor.look_min
    damp, dry = (
        carried_beside(
            wait,
            watched.after(at) / usual,
            pace_seen=watched.after(last) / last,
            pace_asked=asked.after(wait.usual_min) / wait.usual_min,
            beside=beside,
        )
        for at in (last - floor.look_min, last)
    )
    return Foretold(
        asked.after(so.true[1]) / usual,
        factor(wait.spread, room="room"),
        factor(surer.spread, [Watched(so.where, dry, since=damp)], room="room"),
    )


def _at(floor: Floor) -> tuple[int, int]:
    return int(floor.closet_at_h + BEFORE_H), int(floor.room_at_h + BEFORE_H)


def _weights(floor: Floor, hour: int, keeps: float) -> tuple[float, float]:
    """How much each of the two readings counts at an hour."""
    first, second = (keeps ** abs(hour - at) for at in _at(floor))
    most = max(first + second, 1.0)
    return first / most, second / most


def _air_read(
    floor: Floor, hours: Sequence[HourAtSlab], off: tuple[float, float]
) -> tuple[HourAtSlab, ...]:
    """The day's one figure, pulled to what was read at both hours."""
    day = math.log(floor.known.air_speed_m_s)
    read = [
        math.log(floor.true.air_speed_m_s[at]) + error
        for at, error in zip(_at(floor), off, strict=True)
    ]
    return tuple(
        replace(
            one,
            conditions=replace(
                one.conditions,
                air_speed_m_s=math.exp(
                    day + sum(w * (r - day) for w, r in zip(weights, read, strict=True))
                ),
            ),
        )
        for one in hours
        for weights in [_weights(floor, _hour(one), _AIR_KEEPS)]
    )


def _slab_read(
    floor: Floor, hours: Sequence[HourAtSlab], slab_c: Array, off: tuple[float, float]
) -> tuple[HourAtSlab, ...]:
    """The reckoned slab, pulled to what infrared told at both hours."""
    slab = {_hour(one): one.conditions.surface_c for one in hours}
    read = [float(slab_c[at]) + error - slab[at] for at, error in zip(_at(floor), off, strict=True)]
    return tuple(
        replace(
            one,
            conditions=replace(
                one.conditions,
                surface_c=one.conditions.surface_c
                + sum(w * r for w, r in zip(weights, read, strict=True)),
            ),
        )
        for one in hours
        for weights in [_weights(floor, _hour(one), _SLAB_KEEPS)]
    )


def _hour(one: HourAtSlab) -> int:
    return round((one.starts_at - START) / timedelta(hours=1)) + BEFORE_H
