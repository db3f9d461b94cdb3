"""Other facts of slab and air: each is what the clocks say once the fact is changed."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from tests.spray.hand_floors import hall, job
from tests.strategies.weather import epw_text, plain_hour

from farwall.facts.defaults import settle
from farwall.facts.job import RoomSurvey, Site, Survey, Wishes
from farwall.facts.samples import Sample
from farwall.job.lasting import lasting_of
from farwall.job.other_facts import OtherFacts
from farwall.job.plan_job import plan_job
from farwall.readers.epw import parse_epw

ROOMS = ("hall",)


def others(*, weather=None, samples=(), survey=None, **facts):
    survey = survey or Survey(slab_c=21.0, air_c=21.0, rh_percent=45.0)
    told = job(hall(9, 5), samples=samples, survey=survey, **facts)
    settled = settle(told)
    return OtherFacts(told, settled, weather, lasting_of(settled, weather)), settled.coats[0]


def offered(facts, coat, *, at_min=0.0, peak_min=4.0):
    return {one.code: one for one in facts.for_field(ROOMS, coat, at_min, peak_min)}


def test_a_sample_is_asked_for_until_one_is_timed():
    facts, coat = others()
    assert offered(facts, coat)["sample"].sure is False, "only the sample will tell"
    timed = (Sample("board", coat="one", sheen_loss_min=9.0),)
    assert "sample" not in offered(*others(samples=timed))


def test_the_minutes_a_sample_needs_are_twice_the_edge_by_hand():
    """By hand: half of the sample is the budget: an edge of 6 min needs a sample of 12."""
    facts, coat = others()
    assert "At 12 min or more this field fits" in offered(facts, coat, peak_min=6.0)["sample"].what


def test_a_sample_that_could_hardly_be_long_enough_is_not_offered():
    """An edge of 30 min would need an hour of sheen: beyond the high end."""
    facts, coat = others()
    assert "sample" not in offered(facts, coat, peak_min=30.0)


def test_a_film_on_the_glass_gives_what_a_room_without_sun_has():
    sunny = Survey(slab_c=21.0, air_c=21.0, rh_percent=45.0, rooms={"hall": RoomSurvey(sun=True)})
    facts, coat = others(survey=sunny)
    found = offered(facts, coat)["window"]
    shaded, shaded_coat = others()
    assert found.lasting == shaded.lasting.open_time(ROOMS, shaded_coat, 0.0)
    assert "as open as the lungs need" in found.caution
    assert "window" not in offered(shaded, shaded_coat)


def test_a_draught_is_never_taken_away():
    windy = Survey(
        slab_c=21.0, air_c=21.0, rh_percent=45.0, rooms={"hall": RoomSurvey(draught=True)}
    )
    facts, coat = others(survey=windy)
    calm, calm_coat = others()
    best = calm.lasting.open_time(ROOMS, calm_coat, 0.0).low
    for code in ("window", "hour"):
        assert code not in offered(facts, coat)
    assert facts.lasting.open_time(ROOMS, coat, 0.0).low < best


def test_a_heavier_coat_is_weaker_in_stain_and_warns_of_dark():
    """By hand: 5 m²/L at 1:1 laid at 4.25 m²/L: the same stain is a share of 0.425: 1:1.35."""
    facts, coat = others()
    found = offered(facts, coat, peak_min=4.0)["film"]
    assert found.l_per_m2 == pytest.approx(1 / (5 * 0.85))
    assert "1:1.35" in found.what
    assert "darker" in found.caution
    assert "new sample" in found.caution
    heavier = replace(coat, m2_per_l=5 * 0.85, l_per_m2=1 / (5 * 0.85))
    assert found.lasting == facts.lasting.open_time(ROOMS, heavier, 0.0)


def warm_noon():
    """A year whose nights are mild and whose afternoons dry a floor fast."""

    def hour(month, day, hour_of_day):
        values = plain_hour(month, day, hour_of_day)
        noon = 10 <= hour_of_day <= 18
        return {**values, "air_c": 30.0 if noon else 20.0, "rh_percent": 20.0 if noon else 60.0}

    return parse_epw(epw_text(hour=hour))


def test_without_weather_no_hour_is_better_than_another():
    assert "hour" not in offered(*others())


def test_by_the_weather_a_cooler_hour_is_found_with_how_long_it_lasts():
    facts, coat = others(
        weather=warm_noon(),
        survey=Survey(),
        site=Site(house="open"),
        starts_at="2027-05-04T13:00:00-06:00",
    )
    found = offered(facts, coat)["hour"]
    assert found.lasting.low > facts.lasting.open_time(ROOMS, coat, 0.0).low
    hour, half = re.search(r" at (\d+):00 ([ap]m)", found.what).groups()
    hour = int(hour) % 12 + 12 * (half == "pm")
    assert not 10 <= hour <= 18
    assert "it fits from" in found.what
    again = others(
        weather=warm_noon(),
        survey=Survey(),
        site=Site(house="open"),
        starts_at=f"2027-05-04T{hour:02d}:00:00-06:00",
    )
    assert again[0].lasting.open_time(ROOMS, again[1], 1.0).low == found.lasting.low


def test_a_slab_refused_at_its_hour_is_told_the_hour_at_which_it_may_be_stained():
    """By hand: 26.7 °C on the average of the day is the end of care; hot days first, mild after."""

    def hour(month, day, hour_of_day):
        hot = (month, day) < (5, 4) or ((month, day) == (5, 4) and hour_of_day < 14)
        return {**plain_hour(month, day, hour_of_day), "air_c": 33.0 if hot else 5.0}

    plan = plan_job(
        job(
            hall(6, 3),
            survey=Survey(),
            site=Site(house="open"),
            starts_at="2027-05-04T08:00:00-06:00",
        ),
        weather=parse_epw(epw_text(hour=hour)),
    )
    field = plan.fields[0]
    assert field.verdict == "cannot"
    assert field.remedies[0].code == "conditions"
    told = [one for one in field.remedies if one.code == "hour"]
    assert told
    assert told[0].works


def test_a_heavier_coat_is_told_in_the_jobs_manner_and_not_as_more_stain():
    """The weaker cut keeps the stain on the floor: what is more is mix."""
    us, metric = (
        offered(*others(wishes=Wishes(units=units)))["film"] for units in ("us", "metric")
    )
    assert re.search(r": \d+ ft²/gal \([\d.]+ m²/L\) at 1:", us.what)
    assert re.search(r": [\d.]+ m²/L \(\d+ ft²/gal\) at 1:", metric.what)
    assert "More stain" not in us.caution
