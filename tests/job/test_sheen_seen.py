"""Sheen watched on the floor: the edge's budget follows it, and nothing changes without it."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.spray.hand_floors import job, row

from farwall.air.clocks import DRAUGHT, SUN, Timed, edge_budget, open_time
from farwall.air.conditions import Conditions
from farwall.air.waits import OPEN_TIME_SPREAD
from farwall.facts.defaults import settle
from farwall.facts.job import RoomSurvey, Sighting, Survey
from farwall.facts.samples import Sample
from farwall.job.lasting import lasting_of
from farwall.job.waits import Waits

MILD = Survey(slab_c=21.0, air_c=21.0, rh_percent=45.0)


def lasting(*, seen=(), samples=(), survey=MILD):
    settled = settle(
        job(row(3, 3, 3), samples=samples, survey=survey, seen=seen,
            starts_at="2027-05-04T08:00:00-06:00")
    )  # fmt: skip
    return lasting_of(settled, None), settled.coats[0]


def budget(room="a", **facts):
    found, coat = lasting(**facts)
    return found.open_time((room,), coat, 0.0)


def gone(after_min, room="a", **more):
    return Sighting("open time", after_min, room=room, **more)


def sample(minutes):
    return Sample("board", coat="one", sheen_loss_min=minutes)


@settings(max_examples=60, deadline=None)
@given(
    slab=st.floats(11.0, 29.0),
    air=st.floats(8.0, 35.0),
    rh=st.floats(10.0, 95.0),
    drop=st.none() | st.floats(2.0, 50.0),
    minutes=st.none() | st.floats(1.0, 60.0),
    sun=st.booleans(),
    draught=st.booleans(),
)
def test_without_a_sighting_not_a_digit_changes(slab, air, rh, drop, minutes, sun, draught):
    """The budget as the rule of practice gives it, to the last bit that is kept."""
    rooms = {"a": RoomSurvey(drop_s=drop, sun=sun, draught=draught)}
    survey = Survey(slab_c=slab, air_c=air, rh_percent=rh, rooms=rooms)
    samples = () if minutes is None else (sample(minutes),)
    other = Sighting("dry to recoat", 100.0, room="a")
    found, coat = lasting(survey=survey, samples=samples, seen=(other,))
    now = Conditions(slab, air, rh, found.job.survey.air_speed_m_s)
    span = open_time(
        now, m2_per_l=coat.m2_per_l, drop_s=drop, finish=found.job.room("a").finish,
        timed=None if minutes is None else Timed(minutes),
    )  # fmt: skip
    plain = edge_budget(span, sample_min=minutes, sun=sun, draught=draught)
    told = found.open_time(("a",), coat, 0.0)
    assert (told.low, told.rank, told.source) == (
        round(plain.value, 2), plain.rank.value, plain.source,
    )  # fmt: skip


def test_one_sighting_in_the_room_by_hand():
    """By hand: usual 10 min, seen gone at 6: normal against normal, the low end at -1.2816 sd.

    What another occasion differs by blurs the sighting, and comes on top once more.
    """
    spread = OPEN_TIME_SPREAD
    own, blur = math.hypot(spread.floor, spread.room), math.hypot(spread.watch, spread.occasion)
    usual = 10.0
    keep = own**2 / (own**2 + blur**2)
    middle, sd = keep * math.log(0.6), math.sqrt(keep * blur**2 + spread.occasion**2)
    found, coat = lasting(seen=(gone(0.6 * usual),))
    told = found.believed("a", coat, 0.0)
    assert told.low == pytest.approx(usual * math.exp(middle - 1.2816 * sd), rel=0.02)
    assert told.likely == pytest.approx(usual * math.exp(middle), rel=0.02)
    edge = budget(seen=(gone(0.6 * usual),))
    assert edge.low == pytest.approx(told.likely / 2, abs=0.01)
    assert edge.rank == "learned"
    assert "watched once on this floor" in edge.source


def test_sheen_that_went_soon_shortens_and_late_lengthens():
    before = budget().low
    assert budget(seen=(gone(4.0),)).low < before < budget(seen=(gone(20.0),)).low


def test_another_room_tells_less_than_the_room_itself():
    own, other = (budget(room, seen=(gone(4.0),)).likely for room in ("a", "c"))
    assert own < other < budget("c", seen=(gone(10.0),)).likely


def test_a_sighting_elsewhere_is_halved_like_a_sample_by_hand():
    """By hand: 10 min usual, seen at 10 elsewhere: likely 10, low end 6.1; half of it is 5."""
    told = budget("c", seen=(gone(10.0),))
    assert told.likely == pytest.approx(10.0, rel=0.02)
    assert told.low == pytest.approx(told.likely / 2, abs=0.01)


def test_half_of_a_timed_sample_still_holds():
    """By hand: a sample of 8 min in these conditions holds it to 4, however late sheen went."""
    assert budget(samples=(sample(8.0),), seen=(gone(25.0),)).low == pytest.approx(4.0)
    low = budget(samples=(sample(30.0),), seen=(gone(4.0),)).low
    assert low < 5.0


def test_sun_and_draught_take_their_part_of_it():
    rooms = {"a": RoomSurvey(sun=True, draught=True)}
    shaded = budget(seen=(gone(8.0),)).low
    survey = Survey(slab_c=21.0, air_c=21.0, rh_percent=45.0, rooms=rooms)
    assert budget(seen=(gone(8.0),), survey=survey).low == pytest.approx(
        SUN * DRAUGHT * shaded, abs=0.02
    )


def test_still_wet_never_shortens_and_is_not_trusted_beyond_the_untimed_limit():
    wet = [budget(seen=(gone(at, ended=False),)).low for at in (2.0, 10.0, 40.0, 90.0)]
    assert wet == sorted(wet)
    assert wet[-1] == pytest.approx(15.0)


def test_what_is_believed_of_an_edge_follows_as_well():
    found, coat = lasting(seen=(gone(5.0),))
    told = found.believed("a", coat, 0.0)
    assert 5.0 < told.likely < 6.0
    assert told.low > budget(seen=(gone(5.0),)).low
    assert found.believed("c", coat, 0.0).high > told.high


def test_the_clock_of_open_time_and_the_budget_rest_on_the_same_watching():
    found, coat = lasting(seen=(gone(6.0),))
    clock = Waits(found).open_time(coat, 0.0)
    elsewhere = found.believed("c", coat, 0.0)
    assert clock.likely_min == pytest.approx(elsewhere.likely, rel=0.02)
