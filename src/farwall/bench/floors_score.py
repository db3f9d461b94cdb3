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
from dataclasses import replace
from datetime import UTC, datetime, timedelta

from farwall.air.conditions import Conditions
from farwall.air.day import HourAtSlab, at
from farwall.air.learned import Watched, factor
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
    carried,
    kin_share,
    through,
    worth_min,
)
from farwall.bench.floors_drawn import AFTER_H, BEFORE_H, Floor, drawn
from farwall.bench.floors_tally import ClockScore, Foretold, tallied
from farwall.bench.floors_true import Truth, truth_of

START = datetime(2031, 5, 3, 8, tzinfo=UTC)
_EARLIEST_H = 30
_KINDS: tuple[tuple[str, Wait, int], ...] = (
    ("recoat", RECOAT, 0),
    ("neutralise", NEUTRALISE, 1),
    ("dry_down", DRY_DOWN, 0),
    ("sealer", SEALER, 0),
)


def score_floors(seeds: Sequence[int]) -> tuple[ClockScore, ...]:
    """Every clock over the floors of these seeds."""
    truth, floors = truth_of([drawn(seed) for seed in seeds])
    told: dict[str, list[Foretold]] = {}
    for n, floor in enumerate(floors):
        hours = hours_known(floor)
        for name, wait, coat in _KINDS:
            found = _drying(floor, hours, wait, coat, true_of(truth, name, n))
            if found is not None:
                told.setdefault(wait.name, []).append(found)
        told.setdefault(OPEN_TIME, []).append(
            _open_time(floor, hours, true_of(truth, "open_time", n))
        )
    return tuple(tallied(name, each) for name, each in told.items())


def score_second_coat(seeds: Sequence[int]) -> tuple[ClockScore, ...]:
    """The second coat of a room foretold after its own first coat was watched.

    Then once more, where both coats had been watched in the closet before.
    """
    truth, floors = truth_of([drawn(seed) for seed in seeds])
    alone: list[Foretold] = []
    closet_too: list[Foretold] = []
    for n, floor in enumerate(floors):
        hours = hours_known(floor)
        closet, room = (
            through(RECOAT, hours, begins=START + timedelta(hours=one))
            for one in (floor.closet_at_h, floor.room_at_h)
        )
        firsts, lasts = true_of(truth, "recoat", n), true_of(truth, "neutralise", n)
        own = [_kin(one) for one in seen_of(floor, RECOAT, (room, room), firsts[1], "room")]
        both = [
            *(_kin(one) for one in seen_of(floor, RECOAT, (closet, room), firsts[0], "closet")),
            *seen_of(floor, NEUTRALISE, (closet, room), lasts[0], "closet", coat=1),
        ]
        share = room.after(lasts[1]) / worth(floor, NEUTRALISE, 1)
        before = factor(NEUTRALISE.spread, room="room")
        for told, seen in ((alone, own), (closet_too, [*own, *both])):
            told.append(Foretold(share, before, factor(NEUTRALISE.spread, seen, room="room")))
    return (
        tallied("second coat after the first", alone),
        tallied("second after first, closet after both", closet_too),
    )


def _kin(one: Watched) -> Watched:
    share, since = (
        kin_share(x, seen=RECOAT.name, asked=NEUTRALISE.name) for x in (one.share, one.since)
    )
    return replace(one, share=share, since=since, blur=KIN_BLUR)


def score_same_room(seeds: Sequence[int]) -> tuple[ClockScore, ...]:
    """Each clock foretold from a strip watched in the very room, at the hour of the closet.

    The floors are the frozen ones; the strip has the film that the closet had,
    so that only what is the room's own is shared.
    """
    known = [drawn(seed) for seed in seeds]
    truth, floors = truth_of(known)
    strips, _ = truth_of([strip_of(one) for one in known])
    told: dict[str, list[Foretold]] = {}
    for n, floor in enumerate(floors):
        hours = hours_known(floor)
        for name, wait, coat in _KINDS:
            true = true_of(strips, name, n)[1], true_of(truth, name, n)[1]
            found = _drying(floor, hours, wait, coat, true, watched="room")
            if found is not None:
                told.setdefault(wait.name, []).append(found)
        true = true_of(strips, "open_time", n)[1], true_of(truth, "open_time", n)[1]
        told.setdefault(OPEN_TIME, []).append(_open_time(floor, hours, true, watched="room"))
    return tuple(tallied(f"{name}, same room", each) for name, each in told.items())


def strip_of(floor: Floor) -> Floor:
    """The floor with a strip in the closet's place: in the very room, at the closet's hour."""
    film = floor.true.film_mm[0]
    return replace(
        floor, room_at_h=floor.closet_at_h, true=replace(floor.true, film_mm=(film, film))
    )


def worth(floor: Floor, wait: Wait, coat: int) -> float:
    """Minutes of the mild day that this coat of the floor has to wait, as far as is known."""
    return worth_min(wait, m2_per_l=1 / floor.known.l_per_m2[coat])


def hours_known(floor: Floor) -> tuple[HourAtSlab, ...]:
    """The hours over the slab by what a person has in hand."""
    known = floor.known
    ground_c = math.fsum(known.air_c) / len(known.air_c)
    face = face_c(known.air_c, ground_c=ground_c, seen=Seen(BEFORE_H, known.slab_c))
    return tuple(
        HourAtSlab(
            START + timedelta(hours=n - BEFORE_H),
            Conditions(face[n], known.air_c[n], known.rh_percent[n], known.air_speed_m_s),
            {},
        )
        for n in range(BEFORE_H - _EARLIEST_H, BEFORE_H + AFTER_H)
    )


def true_of(truth: Truth, name: str, n: int) -> tuple[float, float]:
    """True minutes of this wait on floor n: closet, room."""
    closet, room = getattr(truth, name)
    return float(closet[n]), float(room[n])


def _drying(
    floor: Floor,
    hours: Sequence[HourAtSlab],
    wait: Wait,
    coat: int,
    true: tuple[float, float],
    *,
    watched: str = "closet",
) -> Foretold | None:
    if not all(map(math.isfinite, true)):
        return None
    usual = worth(floor, wait, coat)
    closet, room = (
        through(wait, hours, begins=START + timedelta(hours=one))
        for one in (floor.closet_at_h, floor.room_at_h)
    )
    seen = seen_of(floor, wait, (closet, room), true[0], watched, coat=coat)
    return Foretold(
        room.after(true[1]) / usual,
        factor(wait.spread, room="room"),
        factor(wait.spread, seen, room="room"),
    )


def seen_of(
    floor: Floor,
    wait: Wait,
    courses: tuple[Course, Course],
    true: float,
    room: str,
    *,
    coat: int = 0,
) -> list[Watched]:
    """The last look that found it damp and the first that found it dry.

    courses: while it was watched, and of the wait foretold from it.
    """
    watched, asked = courses
    usual = worth(floor, wait, coat)
    last = math.ceil(true / floor.look_min) * floor.look_min
    seen = watched.after(last) / last
    pace = asked.after(wait.usual_min) / wait.usual_min
    damp, dry = (
        carried(wait, watched.after(at) / usual, pace_seen=seen, pace_asked=pace)
        for at in (last - floor.look_min, last)
    )
    return [Watched(room, dry, since=damp)]


def _open_time(
    floor: Floor,
    hours: Sequence[HourAtSlab],
    true: tuple[float, float],
    *,
    watched: str = "closet",
) -> Foretold:
    """Sheen is watched from beside, to the minute."""
    known = floor.known
    there_s = known.drop_room_s if watched == "room" else known.drop_closet_s
    usual = []
    for begins_h, drop_s in (
        (floor.closet_at_h, there_s),
        (floor.room_at_h, known.drop_room_s),
    ):
        now = at(hours, START + timedelta(hours=begins_h)).conditions
        usual.append(
            sheen_loss_min(now, m2_per_l=1 / known.l_per_m2[0], drop_s=drop_s, finish=None)[1]
        )
    minute = math.ceil(true[0])
    seen = [Watched(watched, minute / usual[0], since=(minute - 1) / usual[0])]
    return Foretold(
        true[1] / usual[1],
        factor(OPEN_TIME_SPREAD, room="room"),
        factor(OPEN_TIME_SPREAD, seen, room="room"),
    )
