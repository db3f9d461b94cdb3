"""The clocks of a job: near common practice, moved by weather, narrowed by what was watched."""

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.spray.hand_floors import job, row
from tests.strategies.weather import epw_text

from farwall.air.conditions import Conditions
from farwall.air.waits import PRESCRIBED, RECOAT, steady
from farwall.days.work_hours import rinsing_min
from farwall.facts.defaults import settle
from farwall.facts.job import Coat, Sighting, Site, Survey
from farwall.facts.samples import Sample
from farwall.floor.takeoff import take_off
from farwall.job.lasting import lasting_of
from farwall.job.plan_job import plan_job
from farwall.job.waits import Waits, paired
from farwall.readers.epw import parse_epw

MAY = "2027-05-04T08:00:00-06:00"
USUAL = (Coat("one", "sand", "1:1"),)


def waits(*, weather=None, coats=USUAL, seen=(), samples=(), site=None, **survey):
    told = Survey(**{"slab_c": 21.0, "air_c": 21.0, "rh_percent": 45.0, **survey})
    facts = job(
        row(3, 3, 3), coats=coats, survey=told, starts_at=MAY, seen=seen, samples=samples,
        site=site or Site(),
    )  # fmt: skip
    settled = settle(facts)
    return Waits(lasting_of(settled, weather)), settled.coats[0]


def dry(**facts):
    found, coat = waits(**facts)
    return found.dry(coat, 0.0)


def damp(after_min, room="closet"):
    return Sighting("dry to recoat", after_min, ended=False, room=room)


def ended(after_min, room="closet", **more):
    return Sighting("dry to recoat", after_min, room=room, **more)


def width(clock):
    return math.log(clock.high_min / clock.low_min)


def test_a_tile_weighed_at_both_hours_moves_the_wait_and_narrows_it():
    seen = ended(180.0, tile_kg_m2_h=0.10)
    plain = dry(seen=(ended(180.0),))
    quicker, slower = (dry(seen=(seen,), tile_kg_m2_h=one) for one in (0.15, 0.07))
    assert quicker.likely_min < plain.likely_min < slower.likely_min
    assert width(quicker) < width(plain)


def test_one_tile_for_both_hours_is_one_reading_and_changes_nothing():
    seen = ended(180.0, tile_kg_m2_h=0.10)
    assert dry(seen=(seen,), tile_kg_m2_h=0.10) == dry(seen=(ended(180.0),))
    assert dry(seen=(seen,)) == dry(seen=(ended(180.0),))


def test_air_read_at_both_hours_narrows_the_wait_and_the_plans_own_air_does_not():
    told = {"air_speed_m_s": 0.3}
    read, taken = (
        dry(seen=(ended(180.0, air_speed_m_s=0.2, air_read=one),), **told) for one in (True, False)
    )
    assert width(read) < width(taken)


@pytest.mark.common_practice
def test_a_coat_on_a_mild_day_dries_in_about_two_hours():
    """Common practice, no source: about 2 h, 1 to 4 h said elsewhere."""
    clock = dry()
    assert clock.likely_min == pytest.approx(120, rel=0.02)
    assert 60 < clock.low_min < clock.likely_min < clock.high_min < 240
    assert (clock.coat, clock.name, clock.rank) == ("one", "dry to recoat", "common practice")


@pytest.mark.common_practice
def test_three_hours_are_not_enough_at_fifty_degrees():
    """Common practice, no source: more than 3 h and still not dry at 50 °F."""
    assert dry(slab_c=10.0, air_c=10.0, rh_percent=60.0).likely_min > 180


@pytest.mark.common_practice
def test_hot_air_dries_far_quicker():
    """Common practice, no source: far quicker at 100 °F; the slab may be no warmer than 85 °F."""
    assert dry(slab_c=29.0, air_c=37.8, rh_percent=20.0, air_speed_m_s=0.5).likely_min < 50


@pytest.mark.common_practice
def test_dry_down_takes_a_night_or_a_day_in_warm_air_and_two_or_three_in_cool():
    """Common practice, no source: overnight to 24 h warm and moving, 48-72 h cool and humid."""

    def down(**survey):
        found, coat = waits(**survey)
        return found.after(coat, 0.0, found.dry(coat, 0.0, last=True))[1]

    warm = down(slab_c=24.0, air_c=25.0, rh_percent=40.0, air_speed_m_s=0.5)
    cool = down(slab_c=14.0, air_c=15.0, rh_percent=65.0)
    assert warm.name == cool.name == "dry-down before sealing"
    assert 10 < warm.likely_min / 60 < 24
    assert 40 < cool.likely_min / 60 < 80


def test_the_last_coat_waits_for_neutralising():
    found, coat = waits()
    assert found.dry(coat, 0.0, last=True).name == "dry to neutralise"


def test_a_slab_too_cold_to_stain_has_no_wait_but_a_reason():
    clock = dry(slab_c=5.0)
    assert (clock.likely_min, clock.high_min) == (None, None)
    assert "50 °F" in clock.source


def test_a_thicker_coat_takes_longer_in_proportion():
    """By hand: half the coverage, twice the film, twice the wait."""
    thin, thick = (
        dry(coats=(Coat("one", "sand", "1:1", m2_per_l=one),)).likely_min for one in (6.0, 3.0)
    )
    assert thick == pytest.approx(2 * thin, rel=1e-3)


def test_a_wait_watched_to_its_end_moves_and_narrows_the_clock():
    before, after = dry(), dry(seen=(ended(240.0),))
    assert before.likely_min < after.likely_min < 240
    assert after.high_min / after.low_min < before.high_min / before.low_min
    assert after.rank == "learned"
    assert "watched once" in after.source


def test_still_damp_moves_the_clock_up_only():
    before, after = dry(), dry(seen=(damp(180.0),))
    assert after.low_min > before.low_min
    assert after.likely_min > before.likely_min
    never_long = dry(seen=(damp(10.0),))
    assert never_long.likely_min == pytest.approx(before.likely_min, rel=0.02)


def test_damp_then_dry_is_one_watching_between_two_looks():
    told = list(paired([damp(180.0), ended(240.0), damp(60.0), damp(30.0, room="bath")]))
    assert [(one.room, one.ended, one.after_min, since) for one, since in told] == [
        ("closet", True, 240.0, 180.0),
        ("bath", False, 30.0, 0.0),
    ]
    both = dry(seen=(damp(180.0), ended(240.0)))
    assert "watched once" in both.source


def test_a_watching_in_cooler_air_tells_of_a_quicker_floor():
    """Four hours in cool damp air are few; four hours on a mild day are many."""
    cool = dry(seen=(ended(240.0, slab_c=13.0, air_c=13.0, rh_percent=65.0),))
    assert cool.likely_min < dry(seen=(ended(240.0),)).likely_min


def test_kin_tells_less_than_the_wait_itself():
    own = dry(seen=(ended(240.0),))
    kin = dry(seen=(Sighting("dry to neutralise", 300.0, room="closet"),))
    assert dry().likely_min < kin.likely_min < own.likely_min


def test_a_timed_sample_moves_the_open_time():
    def likely(*samples):
        found, coat = waits(samples=samples)
        return found.open_time(coat, 0.0).likely_min

    quick = Sample("s", coat="one", sheen_loss_min=4.0)
    slow = Sample("s", coat="one", sheen_loss_min=20.0)
    assert likely(quick) < likely() < likely(slow)


def test_what_follows_comes_one_after_the_other():
    found, coat = waits()
    told = found.after(coat, 100.0, found.dry(coat, 100.0, last=True))
    dwell, down, sealer, traffic = told
    assert dwell.begins_min == 100.0
    # dwell ends at 17:40: rinsing begins at 7:30 next morning, 23.5 h after the start at 8:00
    job = found.lasting.job.job
    lasts = rinsing_min(area_m2=take_off(job.floor).net_m2, people=1 + job.crew.helper)
    assert down.begins_min == pytest.approx(23.5 * 60 + lasts, abs=0.1)
    assert sealer.begins_min == pytest.approx(down.begins_min + down.likely_min, abs=0.2)
    assert traffic.begins_min == pytest.approx(sealer.begins_min + sealer.likely_min, abs=0.2)
    assert "label" in traffic.source


def test_dwell_and_traffic_are_prescribed_whatever_was_seen():
    def told(**facts):
        found, coat = waits(**facts)
        after = found.after(coat, 100.0, found.dry(coat, 100.0, last=True))
        return [(one.low_min, one.likely_min, one.high_min, one.rank, one.source)
                for one in (after[0], after[3])]  # fmt: skip

    plain = told()
    assert plain == told(slab_c=12.0, air_c=12.0, rh_percent=80.0, seen=(ended(300.0),))
    for *_, rank, source in plain:
        assert (rank, source.partition(":")[0]) == ("common practice", PRESCRIBED)


@pytest.fixture(scope="module")
def year():
    return parse_epw(epw_text())


def test_the_weather_of_the_day_goes_into_the_waits(year):
    """A wait that begins in the dry afternoon is shorter than one into the damp night."""
    bare = {"slab_c": None, "air_c": None, "rh_percent": None}
    found, coat = waits(weather=year, site=Site(house="open"), **bare)
    noon, night = found.dry(coat, 3 * 60.0), found.dry(coat, 13 * 60.0)
    assert noon.likely_min < night.likely_min


def test_an_open_house_with_a_fan_dries_sooner(year):
    bare = {"weather": year, "slab_c": None, "air_c": None, "rh_percent": None}
    shut = dry(**bare, site=Site(house="shut"))
    fanned = dry(**bare, site=Site(house="open", fans=2))
    assert fanned.likely_min < shut.likely_min


@settings(max_examples=20)
@given(st.floats(20, 600), st.floats(1.05, 2.0))
def test_a_longer_watching_never_shortens_the_clock(after_min, longer):
    short, long = (dry(seen=(ended(one),)) for one in (after_min, after_min * longer))
    assert long.likely_min >= short.likely_min * 0.985


def test_the_plan_says_what_was_watched():
    facts = job(row(3, 3), coats=USUAL, seen=(ended(240.0),))
    told = plan_job(facts).clocks
    assert next(one for one in told if one.name == "dry to neutralise").rank == "learned"
    plain = plan_job(replace(facts, seen=())).clocks
    assert all(one.rank == "common practice" for one in plain)


def test_a_watching_in_slow_air_is_carried_over_by_the_root_of_the_paces():
    """The same minutes seen in cool damp air say more of a quick floor than in today's air."""
    cool = ended(200.0, slab_c=13.0, air_c=13.0, rh_percent=70.0)
    plain, carried_over = dry(), dry(seen=(cool,))
    now, then = (steady(RECOAT, Conditions(*one)).after(1.0) for one in (
        (21.0, 21.0, 45.0, waits()[0].lasting.job.survey.air_speed_m_s),
        (13.0, 13.0, 70.0, waits()[0].lasting.job.survey.air_speed_m_s),
    ))  # fmt: skip
    spread = RECOAT.spread
    apart = spread.room**2 + spread.occasion**2
    share = math.log(200.0 * then / 120.0) + 0.5 * math.log(now / then)
    keep = spread.floor**2 / (spread.floor**2 + apart + spread.watch**2)
    assert carried_over.likely_min == pytest.approx(
        plain.likely_min * math.exp(keep * share), rel=0.02
    )
