"""The sun in the slab: by hand, to the last digit nothing without windows, safe ends with them."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, timedelta

import pytest
from tests.job.sun_house import covered, sun_job
from tests.strategies.weather import epw_text

from farwall.air.slab import chain_of, face_c
from farwall.facts.defaults import settle
from farwall.facts.job import Survey
from farwall.job.lasting import lasting_of
from farwall.job.plan_days import Ask, question_of
from farwall.job.plan_job import plan_job
from farwall.job.sealing import sealing_of
from farwall.job.sun_heat import heat_by_room
from farwall.job.sun_slab import sun_warmth, warmed
from farwall.job.sun_slab_words import sun_slab_warnings
from farwall.job.sunlight import sunlight_of
from farwall.job.waits import Waits
from farwall.readers.epw import parse_epw

BARE = Survey()


@pytest.fixture(scope="module")
def year():
    return parse_epw(epw_text())


def lasting(job, weather=None):
    settled = settle(job)
    return lasting_of(settled, weather), settled.coats[0]


def test_the_warmth_is_that_of_the_heat_in_the_slabs_own_model():
    """Shaded face plus warmth is the face reckoned with the sun's heat: the model is linear."""
    sunlight = sunlight_of(sun_job(at="08:00"))
    start = sunlight.starts_at
    flux = heat_by_room(sunlight, start - timedelta(days=3), 24 * 5)["west"]
    air = [20.0 + n % 24 / 4 for n in range(len(flux))]
    shaded = face_c(air, ground_c=12.0)
    lit = face_c(air, ground_c=12.0, absorbed_w_m2=flux)
    warmth = sun_warmth(sunlight, start, 48, every_days=1).by_room["west"]
    apart = [b - a for a, b in zip(shaded[72:], lit[72:], strict=True)]
    assert warmth == pytest.approx(apart, abs=1e-9)


def test_a_face_in_steady_sun_stands_above_the_air_by_hand():
    """7 W/m² of sun: 1 K for each 7 W/(m²·K) to the air, less what goes down into the ground."""
    down = 1 / sum(1 / one for one in chain_of().between_w_m2k)
    warm = face_c([0.0] * 24 * 400, ground_c=0.0, absorbed_w_m2=[7.0] * 24 * 400)[-1]
    assert warm == pytest.approx(7.0 / (7.0 + down), rel=1e-3)


def test_each_room_has_its_own_sun_and_a_hall_without_windows_none():
    found, _ = lasting(sun_job(at="08:00"))
    morning, evening = (found.starts_at + timedelta(hours=h) for h in (3, 9))
    assert found.sun.k("east", morning) > found.sun.k("west", morning)
    assert found.sun.k("west", evening) > found.sun.k("east", evening)
    assert found.sun.k("hall", evening) == 0.0
    assert 1.0 < found.sun.k("west", evening) < 8.0


def test_without_windows_or_with_film_on_them_nothing_changes_to_the_last_digit(year):
    for weather in (None, year):
        bare = sun_job(at="15:30", survey=BARE)
        plain = replace(bare, floor=replace(bare.floor, windows=()))
        for job in (plain, covered(bare)):
            found, coat = lasting(job, weather)
            assert found.sun.by_room == {}
            assert sun_slab_warnings(found) == ()
            for minute in (0.0, 100.0, 600.0):
                now = found.conditions(minute)
                assert found.conditions_in("west", minute) is now or now == found.conditions_in(
                    "west", minute
                )
                own = replace(found, sunlight=None)
                ends = [one.open_time(("west",), coat, minute) for one in (found, own)]
                assert ends[0] == ends[1]


def test_open_time_shortens_in_the_sunlit_room_and_waits_stay_those_of_the_shade(year):
    job = sun_job(at="15:30", survey=BARE)
    found, coat = lasting(job, year)
    shade = replace(found, sunlight=None)
    assert found.open_time(("west",), coat, 60.0).low < shade.open_time(("west",), coat, 60.0).low
    assert found.open_time(("hall",), coat, 60.0) == shade.open_time(("hall",), coat, 60.0)
    assert Waits(found).dry(coat, 60.0) == Waits(shade).dry(coat, 60.0)
    sunny, dull = (Waits(one).open_time(coat, 60.0) for one in (found, shade))
    assert sunny.low_min < dull.low_min


def test_a_slab_that_the_sun_brings_over_its_limit_is_a_no_only_there():
    job = sun_job(at="17:00", survey=Survey(slab_c=28.5, air_c=28.5, rh_percent=40.0))
    found, coat = lasting(job)
    assert found.refusal(("hall",), 0.0) is None
    no = found.refusal(("hall", "west"), 0.0).reason
    assert "above 85 °F (29.4 °C)" in no
    assert "where the sun comes in; in the shade 83 °F (28.5 °C)" in no
    assert Waits(found).open_time(coat, 0.0).likely_min is None


def test_the_plan_tells_the_warmer_slab_in_words():
    warnings = plan_job(sun_job(at="13:00")).warnings
    said = [one for one in warnings if "Sun through the windows warms" in one]
    assert len(said) == 1
    assert "West room by up to" in said[0]
    assert "Read the slab in the sun as well" in said[0]


def test_sealer_is_held_to_the_worse_of_shade_and_sun(year):
    job = sun_job(at="08:00", survey=BARE)
    plain = replace(job, floor=replace(job.floor, windows=()))
    start = datetime.fromisoformat(job.starts_at)
    lit, dull = (sealing_of(one, year, starts_at=start) for one in (job, plain))
    order = ["go", "care", "no"]
    words = [(order.index(a.word), order.index(b.word)) for a, b in
             zip(lit.hours, dull.hours, strict=True)]  # fmt: skip
    assert all(a >= b for a, b in words)
    changed = [one for one, (a, b) in zip(lit.hours, words, strict=True) if a > b]
    assert changed
    assert all("(in the sun, " in reason for one in changed for reason in one.reasons)
    assert any("Sun through" in note for note in lit.notes)


def test_the_calendar_holds_sealer_to_sunlit_rooms_and_waits_to_the_shade(year):
    job = sun_job(at="08:00", survey=BARE)
    plain = replace(job, floor=replace(job.floor, windows=()))
    ask = Ask(begins=date(2026, 6, 22))
    lit, dull = (question_of([one], ask, weather=year).ahead for one in (job, plain))
    assert sum(one.seal for one in lit.hours) < sum(one.seal for one in dull.hours)
    assert all(a.seal <= b.seal for a, b in zip(lit.hours, dull.hours, strict=True))
    assert [one.slab for one in lit.hours] == [one.slab for one in dull.hours]


def test_a_look_a_week_is_near_a_look_a_day():
    sunlight = sunlight_of(sun_job(at="00:00", day="2026-03-16"))
    start = sunlight.starts_at
    daily, weekly = (sun_warmth(sunlight, start, 24 * 21, every_days=n) for n in (1, 7))
    for room in ("west", "east"):
        apart = zip(daily.by_room[room], weekly.by_room[room], strict=True)
        assert max(abs(a - b) for a, b in apart) < 0.3  # a tenth of what the sun warms at most


def test_a_slab_is_never_warmed_beyond_what_has_a_meaning():
    found, _ = lasting(sun_job())
    now = found.conditions(0.0)
    assert warmed(now, 0.0) is now
    assert warmed(now, 500.0).surface_c < 100.0
