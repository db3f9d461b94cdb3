"""The few figures of a plan, from its nouns and from its file alike; what a change gained."""

from dataclasses import replace

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.job.plan_job import plan_job
from farwall.readers.plan_json import plan_to_dict
from farwall.web.pages.facts import gain_told
from farwall.web.pages.figures import Figures, figures_in, figures_of, noted, spare_min
from farwall.web.pages.lines import figures_told

AT = "2026-06-08T08:00:00+00:00"


@pytest.fixture(scope="module")
def plan():
    return plan_job(job(TWO_ROOMS, id="two", starts_at=AT))


def test_a_plan_and_its_file_give_the_same_figures(plan):
    assert figures_in(plan_to_dict(plan)) == figures_of(plan)


def test_the_least_to_spare_is_that_of_the_field_with_least(plan):
    assert figures_of(plan).spare_min == round(min(map(spare_min, plan.fields)), 2)


def test_a_field_that_cannot_be_done_does_not_fit_and_is_named(plan):
    first = replace(plan.fields[0], verdict="cannot")
    found = figures_of(replace(plan, fields=(first, *plan.fields[1:])))
    assert found.fit == figures_of(plan).fit - 1
    assert len(found.refused) == len(first.rooms)
    assert "cannot be done" in figures_told(found)


def test_an_edge_that_dies_is_told_as_too_late_and_not_as_room_to_spare():
    found = Figures(2, 1, -0.4, ("Hall",), tight=True, refused=(), ends_min=60)
    assert figures_told(found) == "an edge dies in Hall, 0.4 min too late"


def test_a_tight_room_is_named_and_a_roomy_house_is_not():
    tight = Figures(2, 2, 0.8, ("Hall",), tight=True, refused=(), ends_min=60)
    assert figures_told(tight) == "Hall is tight, 0.8 min to spare"
    roomy = replace(tight, tight=False, spare_min=5.0)
    assert "Hall" not in figures_told(roomy)


def gain(now, starts_at=AT, **before):
    was = Figures(8, 7, 0.5, ("Hall",), tight=True, refused=(), ends_min=60)
    note = noted(replace(was, **before), version=3, starts_at=AT, told="no helper")
    return gain_told(note, now, starts_at)


def test_the_gain_is_told_in_one_sentence_by_hand():
    """7 of 8 become 8 of 8; 0.5 to 1.7 min is 1.2 more; 30 min later and 5 min quicker: 25."""
    now = Figures(8, 8, 1.7, ("Hall",), tight=False, refused=(), ends_min=55)
    assert gain(now, "2026-06-08T08:30:00+00:00") == (
        "Against facts 3 (no helper): 8 of 8 fields fit, before 7 of 8, 1.2 min more to spare at "
        "the tightest edge, sprayed 25 min later."
    )


def test_a_loss_and_a_standstill_are_told_as_such():
    worse = Figures(8, 7, 0.1, ("Hall",), tight=True, refused=(), ends_min=40)
    assert "as before, 0.4 min less to spare" in gain(worse)
    assert "sprayed 20 min earlier" in gain(worse)
    same = Figures(8, 7, 0.5, ("Hall",), tight=True, refused=(), ends_min=60)
    assert "the tightest edge as before, sprayed as early as before" in gain(same)
