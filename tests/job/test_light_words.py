"""Coats at the end of a day's light: when they begin, and what the plan says of it."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from functools import cache
from types import SimpleNamespace

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.job import Coat, Place, Stain, Wishes
from farwall.facts.plain import plain
from farwall.job.coats import last_step_min
from farwall.job.daylight import Daylight
from farwall.job.light_words import light_warnings
from farwall.job.plan_job import plan_job
from farwall.phrasebook import in_spanish
from farwall.spray.check import check_plan
from farwall.units import clock_words

ONE, TWO = Coat("base", "sand", "1:1"), Coat("top", "sand", "1:2")
MIDNIGHT = datetime(2026, 10, 6, tzinfo=UTC)


@cache
def planned(hour, *, coats=(ONE, TWO), units="metric", place=None):
    of = job(TWO_ROOMS, stains=(Stain("sand"),), coats=coats, wishes=Wishes(units=units))
    told = f"2026-10-06T{hour}:00-05:00"
    return plan_job(replace(of, starts_at=told, place=place or Place()))


def light(plan):
    return [one for one in plan.warnings if one.startswith("Coat ")]


def begins(plan, coat):
    """The first filling of a coat, minute of the plan."""
    return min(r.at_min for f in plan.fields if f.coat == coat for r in f.refills)


def waits(plan):
    """How long the second coat waits after the last step of the first, minutes."""
    return begins(plan, "top") - last_step_min([f for f in plan.fields if f.coat == "base"])


def test_two_coats_on_one_day_say_nothing_of_the_light():
    plan = planned("08:00")
    assert light(plan) == []
    assert waits(plan) == pytest.approx(plan.clocks[0].high_min, abs=0.1)


def test_a_coat_that_would_go_into_the_dark_waits_for_the_morning_and_says_why():
    plan = planned("15:00")
    assert begins(plan, "top") == 16.5 * 60
    (words,) = light(plan)
    assert words.startswith("Coat 2 waits until 7:30 of day 2: dry below only at ")
    assert "it would end after 18:30, our guess of the last light (with lamps," in words
    assert in_spanish(words)
    assert check_plan(plain(plan)) == []


def test_what_is_told_to_begin_by_does_leave_time_for_both():
    words = light(planned("15:00"))[0]
    by = words.partition("Begun by ")[2].partition(",")[0]
    assert int(by.partition(":")[2]) % 5 == 0
    sooner = planned(f"{by:0>5}")
    assert begins(sooner, "top") < 12 * 60
    assert light(sooner) == []


def test_a_first_coat_that_is_begun_late_says_by_when():
    plan = planned("18:20", coats=(ONE,), units="us")
    (words,) = light(plan)
    assert "past 6:30 pm, our guess of the last light." in words
    assert in_spanish(words)
    over_min = last_step_min(plan.fields) - 10
    by = words.partition("Begin by ")[2].partition(",")[0]
    early = 18 * 60 + 20 - over_min
    assert by == clock_words(MIDNIGHT + timedelta(minutes=early - early % 5), us=True)


def test_where_the_place_is_known_the_sun_ends_the_day():
    """Sunset of 6 October at 41.9 N, 87.9 W: 18:26 by the almanac, from memory."""
    (words,) = light(planned("18:20", coats=(ONE,), place=Place(41.9, -87.9)))
    assert "past sunset at 18:2" in words


@pytest.mark.parametrize(
    ("told", "minute"),
    [("2026-10-07T10:00:00-05:00", 26 * 60), ("2026-10-06T20:00:00-05:00", 12 * 60)],
    ids=["the next day", "by lamps"],
)
def test_a_told_hour_is_kept_and_nothing_said(told, minute):
    plan = planned("08:00", coats=(ONE, replace(TWO, not_before=told)))
    assert begins(plan, "top") == minute
    assert light(plan) == []


def test_a_first_coat_can_be_told_to_wait_too():
    plan = planned("08:00", coats=(replace(ONE, not_before="2026-10-06T09:30:00-05:00"),))
    assert begins(plan, "base") == 90


def hours_long(hour, *, fields=5, each_h=3.0, seen=(), units="us"):
    """The words on a coat begun at 8:00 of so many fields, one after another, 4 L each."""
    line = (SimpleNamespace(id="line", kind="saw cut"),)
    lines = {n: line for pair in seen for n in pair}
    made = [
        SimpleNamespace(
            id=f"base.{n}", coat="base", rooms=(f"r{n}",), end_min=60 * each_h * n,
            stop_lines=lines.get(n, ()), bands=(SimpleNamespace(litres=4.0),),
            refills=(SimpleNamespace(at_min=60 * each_h * (n - 1)),),
            walks=(SimpleNamespace(path=((0, 0, 60 * each_h * (n - 1)), (0, 0, 60 * each_h * n))),),
        )
        for n in range(1, fields + 1)
    ]  # fmt: skip
    rooms = [SimpleNamespace(id=f"r{n}", label=f"Room {n}") for n in range(1, fields + 1)]
    of = SimpleNamespace(wishes=Wishes(units=units), floor=SimpleNamespace(rooms=rooms))
    light = Daylight(datetime.fromisoformat(f"2026-10-06T{hour}:00-05:00"))
    return light_warnings(of, light, made, (), (ONE,))


def test_a_coat_longer_than_the_light_says_where_the_first_day_ends_by_hand():
    """Fields end at 11, 2, 5, 8 and 11: 5 pm is half an hour and more before 6:30."""
    (said,) = hours_long("08:00")
    assert said == (
        "Coat 1 takes 15 hours at a stretch, more than a day has light: stop after field 1.3 "
        "(Room 3) at 5:00 pm, 3.2 gal (12.0 L) sprayed, and plan the rest anew in the morning, "
        "from field 1.4 (Room 4) on, 2.1 gal (8.0 L)."
    )
    spanish = in_spanish(said, frozenset({"Room 3", "Room 4"}))
    assert spanish is not None
    assert "pare después del tramo 1.3 (Room 3), a las 5:00 p. m., con 3.2 gal (12.0 L)" in spanish


def test_a_field_that_ends_as_the_light_does_is_left_for_the_morning():
    """By hand: of fields of 3 h 30 the third ends at 6:30 pm, the second at 3 pm."""
    (said,) = hours_long("08:00", each_h=3.5, units="metric")
    assert "stop after field 1.2 (Room 2) at 15:00, 8.0 L (2.1 gal) sprayed" in said


def test_floors_of_two_days_that_are_seen_together_are_told():
    (said,) = hours_long("08:00", seen=[(2, 5)])
    end = (
        " Field 1.5 (Room 5) is then seen beside field 1.2 (Room 2) with no leaf between: one lot "
        "for both days."
    )
    assert said.endswith(end)
    assert in_spanish(said, frozenset(f"Room {n}" for n in range(1, 6))) is not None
    assert "seen beside" not in hours_long("08:00", seen=[(1, 2)])[0]


def test_a_coat_that_no_working_hour_makes_fit_is_not_told_to_begin_at_night():
    """11 h from 8:00 end at 7 pm: begun by 7:30 it would fit; 12 h would ask for 6:30 am."""
    assert "Begin by 7:30 am" in hours_long("08:00", fields=1, each_h=11.0)[0]
    (said,) = hours_long("08:00", fields=4)
    assert "Begin by" not in said
    assert "stop after field 1.3 (Room 3)" in said


def test_one_field_that_is_longer_than_the_light_has_no_line_to_stop_at():
    (said,) = hours_long("08:00", fields=1, each_h=14.0)
    assert said == "Coat 1 takes 14 hours at a stretch, more than a day has light."
