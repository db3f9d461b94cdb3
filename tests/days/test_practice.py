"""Hours of work by floor and people, and what the chain consists of."""

import pytest

from farwall.days.practice import chain, step_min, whole_slots
from farwall.days.waits import LABEL
from farwall.days.work_hours import TYPICAL_M2, rinsing_min, work_min
from farwall.evidence import Rank


def test_two_people_halve_the_hours_of_a_typical_floor_by_hand():
    assert work_min(16.0, area_m2=TYPICAL_M2, people=2) == pytest.approx(8 * 60)


def test_a_floor_of_twice_the_size_takes_less_than_twice_as_long_by_hand():
    """A fifth stays, four fifths double: 1.8 times."""
    assert work_min(10.0, area_m2=2 * TYPICAL_M2, people=1) == pytest.approx(18 * 60)


def test_a_third_person_does_not_speed_a_coat():
    coat = next(step for step in chain(2) if step.id == "coat-1")
    two, three = (step_min(coat, "likely", area_m2=100, people=n) for n in (2, 3))
    assert two == three


@pytest.mark.common_practice
def test_the_hours_of_a_typical_floor_add_up_to_what_is_said_no_source():
    """No source: 45 to 77 hours of two people without travel; the likely sum lies between."""
    hours = sum(step.labour_h.likely for step in chain(2))
    assert 45 < hours < 77


@pytest.mark.common_practice
@pytest.mark.parametrize(
    ("ids", "low", "high"),
    [
        (("clean", "mask"), 8 + 8, 14 + 16),
        (("coat-1", "coat-2"), 3, 6),
        (("neutralise",), 1 + 10, 2 + 18),
        (("seal-1", "seal-2", "finish"), 6, 10),
        (("hand-over",), 3, 5),
    ],
)
def test_each_part_of_a_typical_floor_adds_up_to_its_line_by_hand_no_source(ids, low, high):
    """No source: protect 8-14 and clean 8-16, stain 3-6, judge 1-2 and rinse 10-18, seal and
    finish 6-10, unmask and hand over 3-5; the likely hours are the middle of each."""
    spans = [step.labour_h for step in chain(2) if step.id in ids]
    assert len(spans) == len(ids)
    assert sum(one.low for one in spans) == pytest.approx(low)
    assert sum(one.high for one in spans) == pytest.approx(high)
    assert sum(one.likely for one in spans) == pytest.approx((low + high) / 2)


def test_what_may_be_left_at_night_is_no_stain_no_rinse_and_no_sealer():
    assert [step.id for step in chain(2) if step.split] == ["clean", "mask", "hand-over"]


def test_each_coat_of_stain_is_a_step_and_waits_for_the_one_before():
    ids = [step.id for step in chain(3)]
    assert ids[2:5] == ["coat-1", "coat-2", "coat-3"]
    assert [wait.name for wait in chain(3)[4].waits] == ["dry to recoat"]


def test_no_figure_claims_more_than_practice():
    spans = [step.labour_h for step in chain(2)]
    spans += [wait.minutes for step in chain(2) for wait in step.waits if wait.name != LABEL]
    assert {span.rank for span in spans} <= {Rank.PRACTICE, Rank.GUESS}
    assert all(span.low < span.likely < span.high for span in spans)


def test_slots_are_rounded_up():
    assert [whole_slots(minutes, 15) for minutes in (1, 15, 16)] == [1, 1, 2]


@pytest.mark.common_practice
def test_a_rinse_by_hand():
    """Common practice, no source: 15.5 h of work at 1,500 ft². By hand: 7.75 h for two; for one
    15.5 h, more than the 11 h from 7:30 to 18:30; half the floor takes 0.6 of it, 4.65 h."""
    assert rinsing_min(area_m2=TYPICAL_M2, people=2) == pytest.approx(465)
    assert rinsing_min(area_m2=TYPICAL_M2, people=1) == pytest.approx(660)
    assert rinsing_min(area_m2=TYPICAL_M2 / 2, people=2) == pytest.approx(279)


def test_the_rinse_of_the_clocks_is_the_calendars_own_step():
    (step,) = [one for one in chain(2) if one.id == "neutralise"]
    assert step_min(step, "likely", area_m2=100.0, people=2) == pytest.approx(
        rinsing_min(area_m2=100.0, people=2)
    )
