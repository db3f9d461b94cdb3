"""The waits of the live day where a look tells that they are not over."""

import math
from statistics import NormalDist

import pytest
from tests.job.live.test_now import PLAN, at
from tests.job.story.entries import Log

from farwall.facts.plan import Clock
from farwall.job.live.clocks import _not_before

FIRST = [field for field in PLAN.fields if field.coat == "first"]


def test_a_room_looked_at_while_others_are_still_sprayed_does_not_stop_the_answer():
    """The bath was found damp before the coat was done: that is no end of the coat's wait."""
    log = Log(PLAN)
    for field in FIRST[:2]:
        log("field-done", field.end_min, field=field.id)
    log("still-damp", FIRST[1].end_min + 1, room="bath", clock="recoat")
    for field in FIRST[2:]:
        log("field-done", field.end_min, field=field.id)
    found = at(log, FIRST[-1].end_min + 5)
    (wait,) = (one for one in found.waits if one.clock.name == "dry to recoat")
    assert wait.begins_min == pytest.approx(FIRST[-1].end_min, abs=0.1)
    assert any(one.kind == "dry to recoat" for one in found.alarms)


def clock(low, likely, high):
    return Clock("first", "dry to recoat", low, likely, high, "practice")


@pytest.mark.parametrize("least_min", [-40.0, 0.0, 59.0, 60.0])
def test_what_lies_before_the_early_end_cuts_nothing(least_min):
    assert _not_before(clock(60.0, 120.0, 240.0), least_min) == clock(60.0, 120.0, 240.0)


def test_a_wait_cut_at_its_likely_end_keeps_the_upper_half_by_hand():
    """By hand: ends a factor 2 off the median of 120 min are 1.2816 deviations. Known to be over
    120, the halves of the upper half lie at 55, 75 and 95 %: 0.1257, 0.6745 and 1.6449 deviations,
    so 120 min times 2 to the 0.0981, 0.5263 and 1.2835: 128.4, 172.8 and 292.1 min."""
    found = _not_before(clock(60.0, 120.0, 240.0), 120.0)
    assert (found.low_min, found.likely_min, found.high_min) == (128.4, 172.8, 292.1)


@pytest.mark.parametrize("least_min", [61.0, 240.0, 600.0, 4000.0, 1e5, 1e12])
def test_no_end_of_a_wait_lies_before_the_last_look_that_found_it_damp(least_min):
    """A law, however far the look lies beyond the range."""
    found = _not_before(clock(60.0, 120.0, 240.0), least_min)
    assert least_min <= found.low_min <= found.likely_min <= found.high_min


@pytest.mark.parametrize("least_min", [61.0, 130.0, 240.0, 480.0])
def test_the_cut_range_holds_nine_one_and_five_tenths_of_what_is_left(least_min):
    """A law of a range cut off: a tenth, a half and nine tenths of what is left lie below."""
    usual = NormalDist(math.log(120.0), math.log(2.0) / NormalDist().inv_cdf(0.9))
    found = _not_before(clock(60.0, 120.0, 240.0), least_min)
    below = usual.cdf(math.log(least_min))
    for end, share in ((found.low_min, 0.1), (found.likely_min, 0.5), (found.high_min, 0.9)):
        told = (usual.cdf(math.log(end)) - below) / (1 - below)
        assert told == pytest.approx(share, abs=0.01)  # ends are told to a tenth of a minute


@pytest.mark.parametrize(
    ("ends", "told"),
    [
        ((60.0, 120.0, None), (150.0, 150.0, None)),
        ((60.0, None, None), (150.0, None, None)),
        ((100.0, 100.0, 100.0), (150.0, 150.0, 150.0)),
        ((100.0, 160.0, None), (150.0, 160.0, None)),
    ],
)
def test_ends_without_a_range_come_no_sooner_than_the_look(ends, told):
    found = _not_before(clock(*ends), 150.0)
    assert (found.low_min, found.likely_min, found.high_min) == told
