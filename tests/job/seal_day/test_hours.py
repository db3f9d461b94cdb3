"""Hours that hold whole coats: by hand, with dew, nights and short windows."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.sealing import Sealing
from farwall.facts.plan import Clock
from farwall.job.seal_day.hours import SealHours, begins_for, in_working_day, next_half_hour

START = datetime(2026, 5, 18, 0, tzinfo=UTC)


def known(words, **more):
    """Hours from midnight of a Monday on, one letter each: g go, c care, d dew, w too warm."""
    told = {
        "g": ("go", ()),
        "c": ("care", ("damp air: 70 % humidity",)),
        "d": ("no", ("dew: the slab is 1.0 K above the dew point",)),
        "w": ("no", ("too warm: the slab is at 31 °C",)),
    }
    return SealHours(
        tuple(
            Sealing(START + timedelta(hours=n), *told[word], 20.0, 10.0, 50.0)
            for n, word in enumerate(words)
        ),
        **more,
    )


def after(hours):
    """The next coat is surely ready after so many hours."""
    return lambda number, _ends: Clock(f"seal-{number + 1}", "dry to recoat", 60, 60 * hours,
                                       60 * hours, "guess")  # fmt: skip


def found(words, minutes=(60, 60), *, wait_h=4, to_h=24, hour=0, **more):
    hours = known(words, **more)
    return begins_for(
        hours, minutes, after(wait_h), to_h * 60,
        not_before=START + timedelta(hours=hour), last=hours.hours[-1].starts_at,
    )  # fmt: skip


def at(hour):
    return START + timedelta(hours=hour)


def test_two_coats_fit_into_one_good_day():
    """By hand: work begins at 7:30, the first coat ends at 8:30, the next may begin at 12:30."""
    assert found("g" * 24).coats == (at(7.5), at(12.5))


def test_a_coat_ends_within_the_working_day_else_it_waits_for_the_next():
    """By hand: from 8:30 three hours, ready at 17:30; at 7:30 an hour is left until it is late."""
    assert found("g" * 48, (180, 60), wait_h=6).coats == (at(8.5), at(31.5))


def test_hours_without_an_hour_to_spare_are_taken_where_that_day_has_no_others():
    """By hand: with dew from 11 on only what begins at 7:30 is over; the next has no minute."""
    found_ = found("g" * 11 + "d" * 13 + "g" * 24, (180, 60), wait_h=6)
    assert found_.coats == (at(7.5), at(31.5))


def test_on_weekends_nobody_works():
    """By hand: dry on Saturday the floor waits for Monday; dry on Friday too, for its second coat
    would be too late after the weekend."""
    monday = 7 * 24 + 7.5
    for day in (5, 6):
        begun = found("g" * 240, hour=24 * day, weekends=False).coats
        assert begun == (at(monday), at(monday + 5))
    friday = found("g" * 240, wait_h=12, hour=24 * 4, weekends=False).coats
    assert friday == (at(monday + 1), at(monday + 24))
    assert found("g" * 240, hour=24 * 5).coats[0] == at(5 * 24 + 7.5)


def test_where_the_weekend_takes_all_hours_that_is_said():
    none = found("g" * 7 * 24, wait_h=12, hour=24 * 4, weekends=False)
    assert none.coats == ()
    assert any("or nobody works" in one for one in none.against)


def test_every_hour_of_a_coat_has_to_be_good():
    """By hand: dew until 9 pushes the first coat to 9; warm from 14 ends what begins after 13."""
    assert found("d" * 9 + "g" * 5 + "w" * 10, (60, 60), wait_h=2).coats == (at(9), at(12))


def test_dew_all_night_and_day_says_no_and_says_dew():
    none = found("d" * 48)
    assert none.coats == ()
    assert any("dew: the slab is 1.0 K" in one for one in none.against)


def test_a_window_shorter_than_the_wait_says_no_and_names_both_ends():
    none = found("g" * 72, wait_h=6, to_h=5)
    assert none.coats == ()
    assert "Recoat window too short" in none.against[0]
    assert "Mon 18 May 14:30" in none.against[0]  # ready: 8:30 and six hours
    assert "Mon 18 May 12:30" in none.against[0]  # abraded from: 7:30 and five hours


def test_a_night_with_dew_between_ready_and_too_late_is_named():
    """By hand: ready at 18:30, work over; the next morning sweats until the window has closed."""
    none = found("g" * 24 + "d" * 24, wait_h=10, to_h=24)
    assert none.coats == ()
    assert any("Coat 2 finds no hours" in one and "dew" in one for one in none.against)


def test_hours_that_nobody_knows_are_refused():
    assert known("g").against(at(40)) == ()  # one hour stands for conditions that stay
    assert "not known" in known("gg").against(at(2))[0]


@pytest.mark.parametrize(
    ("begins", "ends", "holds"),
    [(7.5, 17, True), (7, 9, False), (16, 17.5, False), (16, 32, False)],
)
def test_the_working_day(begins, ends, holds):
    assert in_working_day(at(begins), at(ends)) is holds


@given(st.integers(0, 60 * 24 * 60))
def test_half_hours_are_never_before_and_less_than_half_an_hour_away(seconds):
    moment = START + timedelta(seconds=seconds)
    full = next_half_hour(moment)
    assert timedelta() <= full - moment < timedelta(minutes=30)
    assert full.minute in {0, 30}


@given(
    st.text("gcdw", min_size=24, max_size=72), st.integers(30, 240), st.integers(1, 20),
    st.integers(2, 30),
)  # fmt: skip
def test_what_is_found_keeps_every_rule(words, minutes, wait_h, to_h):
    hours, one = known(words), found(words, (minutes, minutes), wait_h=wait_h, to_h=to_h)
    if not one.coats:
        assert one.against
        return
    first, second = one.coats
    length = timedelta(minutes=minutes)
    for begins in one.coats:
        assert in_working_day(begins, begins + length)
        assert not hours.first_against(begins, begins + length)
    assert second - first >= length + timedelta(hours=wait_h)
    assert second - first <= timedelta(hours=to_h)
