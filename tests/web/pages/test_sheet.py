"""The sheet of words: why, what it rests on, what would change it, in the order of need."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.plan import Remedy, Tightest
from farwall.job.plan_job import plan_job
from farwall.web.pages.sheet import sheet_of
from farwall.web.pages.shown import Shown


@pytest.fixture(scope="module")
def shown():
    facts = job(TWO_ROOMS, id="two", starts_at="2026-06-08T08:00:00+00:00")
    return Shown(facts, plan_job(facts), 1, ())


def with_fields(shown, *fields):
    return Shown(shown.job, replace(shown.plan, fields=fields), 1, ())


def test_every_figure_it_rests_on_tells_how_far_to_trust_it(shown):
    rests = sheet_of(shown).rests
    assert rests[0].what.startswith("in coat 1 an edge lives ")
    assert all(one.told and one.means for one in rests)
    keyed = [one for one in rests if "uno" in one.told.lower()]
    assert keyed
    assert all("Uno" in line.source for one in keyed for line in one.sources if "uno" in line.key)


def test_a_house_that_fits_says_so_and_one_with_faults_does_not(shown):
    good = sheet_of(shown).why[0]
    bad = sheet_of(Shown(shown.job, shown.plan, 1, ("dead-edge: x",))).why[0]
    assert "no edge outlives its time" in good
    assert "no edge outlives its time" not in bad


def test_the_tightest_edge_is_the_one_the_run_sheet_tells_also_in_a_field_that_cannot_be(
    shown,
):
    """Not the oldest edge, which may lie where edges live longer, against the shortest life."""
    tight = Tightest("left", (0.0, 0.0), 1.0, 5.1, 4.1, 2.8, -1.3)
    hard = replace(shown.plan.fields[-1], verdict="cannot", peak_age_min=4.3, tightest=tight)
    others = [replace(one, tightest=None, peak_age_min=0.1) for one in shown.plan.fields[:-1]]
    told = next(one for one in sheet_of(with_fields(shown, *others, hard)).why if "Tightest" in one)
    assert "its tightest edge is met after 4.1 min" in told.replace("\u00a0", " ")
    assert "2.8 min is how long" in told.replace("\u00a0", " ")


def test_what_is_needed_comes_first_and_of_that_what_works(shown):
    easy = replace(shown.plan.fields[0], remedies=(Remedy("a", "Merely possible.", works=True),))
    helps, works = Remedy("b", "It helps.", works=False), Remedy("c", "It works.", works=True)
    hard = replace(shown.plan.fields[-1], verdict="cannot", remedies=(helps, works))
    told = [one.what.partition(": ")[2] for one in sheet_of(with_fields(shown, easy, hard)).changes]
    assert told[:3] == ["It works.", "It helps.", "Merely possible."]


def test_a_remedy_tells_its_gain_its_price_and_its_caution(shown):
    one = Remedy(
        "d", "Two tanks.", peak_age_min=3.0, works=True, margin_min=1.25, more_min=-2.0,
        price="one more tank", cost="USD 90", caution="Lift with two.",
    )  # fmt: skip
    field = replace(shown.plan.fields[0], verdict="cannot", remedies=(one,))
    told = sheet_of(with_fields(shown, field)).changes[0]
    assert told.gain == (
        "then it fits; oldest edge then 3.0 min; 1.2 min to spare; 2.0 min shorter; one more tank; "
        "USD 90"
    )
    assert told.caution == "Lift with two."


def test_cautions_are_all_there_and_warnings_stand_apart(shown):
    plan = replace(shown.plan, warnings=("Mind this.",))
    words = sheet_of(Shown(shown.job, plan, 1, ()))
    assert [one.replace("\u00a0", " ") for one in words.cautions] == [*plan.cautions]
    assert words.mind == ("Mind this.",)
    assert any("Nobody works alone" in one for one in words.cautions)
