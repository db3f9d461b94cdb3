"""How well the clocks foretell the invented floors: the range's honesty, and the likely's error.

The clocks get what a person would have: hourly air as a thermometer and a
hygrometer tell it, one figure for moving air, one infrared reading, drop
tests, the coverage of a sample or the usual one. Then one wait is watched in
the closet, by looking in now and then, and the same wait is foretold for
another room at another hour.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta

from farwall.air.conditions import Conditions
from farwall.air.day import HourAtSlab, at
from farwall.air.learned import Factor, Watched, factor
from farwall.air.pace import sheen_loss_min
from farwall.air.slab import Seen, face_c
from farwall.air.waits import (
    DRY_DOWN,
    KIN_BLUR,
    NEUTRALISE,
    OPEN_TIME,
    OPEN_TIME_SPREAD,
    RECOAT,
    SEALER,
    Course,
    Wait,
    kin_share,
    through,
    worth_min,
)
from farwall.bench.floors_drawn import AFTER_H, BEFORE_H, Floor, drawn
from farwall.bench.floors_true import Truth, truth_of

_START = datetime(2031, 5, 3, 8, tzinfo=UTC)
_EARLIEST_H = 30
_KINDS: tuple[tuple[str, Wait, int], ...] = (
    ("recoat", RECOAT, 0),
    ("neutralise", NEUTRALISE, 1),
    ("dry_down", DRY_DOWN, 0),
    ("sealer", SEALER, 0),
)


@dataclass(frozen=True)
class ClockScore:
    """One clock over many floors: per cent within the range, median error of the likely value."""

    clock: str
    floors: int
    within_before: float
    within_after: float
    error_before: float
    error_after: float
    too_soon_before: float
    too_soon_after: float
    """Per cent of floors that were not done at the high end: the side that hurts."""


@dataclass(frozen=True)
class _Foretold:
    """What had passed over the usual wait when it truly ended, and the factor that was foretold."""

    true_share: float
    before: Factor
    after: Factor


def score_floors(seeds: Sequence[int]) -> tuple[ClockScore, ...]:
    """Every clock over the floors of these seeds."""
    truth, floors = truth_of([drawn(seed) for seed in seeds])
    told: dict[str, list[_Foretold]] = {}
    for n, floor in enumerate(floors):
        hours = _hours(floor)
        for name, wait, coat in _KINDS:
            found = _drying(floor, hours, wait, coat, _true(truth, name, n))
            if found is not None:
                told.setdefault(wait.name, []).append(found)
        told.setdefault(OPEN_TIME, []).append(
            _open_time(floor, hours, _true(truth, "open_time", n))
        )
    return tuple(_score(name, each) for name, each in told.items())


def score_second_coat(seeds: Sequence[int]) -> ClockScore:
    """The second coat of a room foretold after its own first coat was watched."""
    truth, floors = truth_of([drawn(seed) for seed in seeds])
    told = []
    for n, floor in enumerate(floors):
        hours = _hours(floor)
        begins = _START + timedelta(hours=floor.room_at_h)
        course = through(RECOAT, hours, begins=begins)
        first = _true(truth, "recoat", n)[1]
        seen = [
            replace(
                one,
                share=kin_share(one.share, seen=RECOAT.name, asked=NEUTRALISE.name),
                since=kin_share(one.since, seen=RECOAT.name, asked=NEUTRALISE.name),
                blur=KIN_BLUR,
            )
            for one in _seen(floor, course, worth(floor, RECOAT, 0), first, "room")
        ]
        second = through(NEUTRALISE, hours, begins=begins)
        share = second.after(_true(truth, "neutralise", n)[1]) / worth(floor, NEUTRALISE, 1)
        told.append(
            _Foretold(
                share,
                factor(NEUTRALISE.spread, room="room"),
                factor(NEUTRALISE.spread, seen, room="room"),
            )
        )
    return _score("second coat after the first", told)


def worth(floor: Floor, wait: Wait, coat: int) -> float:
    """Minutes of the mild day that this coat of the floor has to wait, as far as is known."""
    return worth_min(wait, m2_per_l=1 / floor.known.l_per_m2[coat])


def _hours(floor: Floor) -> tuple[HourAtSlab, ...]:
    known = floor.known
    ground_c = math.fsum(known.air_c) / len(known.air_c)
    face = face_c(known.air_c, ground_c=ground_c, seen=Seen(BEFORE_H, known.slab_c))
    return tuple(
        HourAtSlab(
            _START + timedelta(hours=n - BEFORE_H),
            Conditions(face[n], known.air_c[n], known.rh_percent[n], known.air_speed_m_s),
            {},
        )
        for n in range(BEFORE_H - _EARLIEST_H, BEFORE_H + AFTER_H)
    )


def _true(truth: Truth, name: str, n: int) -> tuple[float, float]:
    closet, room = getattr(truth, name)
    return float(closet[n]), float(room[n])


def _drying(
    floor: Floor, hours: Sequence[HourAtSlab], wait: Wait, coat: int, true: tuple[float, float]
) -> _Foretold | None:
    if not all(map(math.isfinite, true)):
        return None
    usual = worth(floor, wait, coat)
    closet, room = (
        through(wait, hours, begins=_START + timedelta(hours=one))
        for one in (floor.closet_at_h, floor.room_at_h)
    )
    seen = _seen(floor, closet, usual, true[0], "closet")
    return _Foretold(
        room.after(true[1]) / usual,
        factor(wait.spread, room="room"),
        factor(wait.spread, seen, room="room"),
    )


def _seen(floor: Floor, course: Course, usual: float, true: float, room: str) -> list[Watched]:
    """The last look that found it damp and the first that found it dry."""
    looks = math.ceil(true / floor.look_min)
    damp = course.after((looks - 1) * floor.look_min) / usual
    return [Watched(room, course.after(looks * floor.look_min) / usual, since=damp)]


def _open_time(floor: Floor, hours: Sequence[HourAtSlab], true: tuple[float, float]) -> _Foretold:
    """Sheen is watched from beside, to the minute."""
    known = floor.known
    usual = []
    for begins_h, drop_s in (
        (floor.closet_at_h, known.drop_closet_s),
        (floor.room_at_h, known.drop_room_s),
    ):
        now = at(hours, _START + timedelta(hours=begins_h)).conditions
        usual.append(
            sheen_loss_min(now, m2_per_l=1 / known.l_per_m2[0], drop_s=drop_s, finish=None)[1]
        )
    minute = math.ceil(true[0])
    seen = [Watched("closet", minute / usual[0], since=(minute - 1) / usual[0])]
    return _Foretold(
        true[1] / usual[1],
        factor(OPEN_TIME_SPREAD, room="room"),
        factor(OPEN_TIME_SPREAD, seen, room="room"),
    )


def _score(name: str, told: Sequence[_Foretold]) -> ClockScore:
    def within(pick: str) -> float:
        ends: list[Factor] = [getattr(one, pick) for one in told]
        hit = [f.low <= one.true_share <= f.high for f, one in zip(ends, told, strict=True)]
        return 100 * sum(hit) / len(hit)

    def error(pick: str) -> float:
        ends: list[Factor] = [getattr(one, pick) for one in told]
        off = sorted(abs(f.likely / one.true_share - 1) for f, one in zip(ends, told, strict=True))
        return 100 * off[len(off) // 2]

    def too_soon(pick: str) -> float:
        ends: list[Factor] = [getattr(one, pick) for one in told]
        late = sum(f.high < one.true_share for f, one in zip(ends, told, strict=True))
        return 100 * late / len(told)

    return ClockScore(
        name,
        len(told),
        within("before"),
        within("after"),
        error("before"),
        error("after"),
        too_soon("before"),
        too_soon("after"),
    )
