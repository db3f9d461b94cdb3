"""A saw cut is offered only when what lies in the slab is ruled out."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.spray.hand_floors import hall, job

from farwall.facts.job import Survey
from farwall.facts.plan import Remedy
from farwall.facts.slab import Hidden
from farwall.job.go.cuts import hold_cuts
from farwall.job.go.ground_rules import NOT_BEFORE
from farwall.job.plan_job import plan_job

WIDE_HALL = hall(20, 12)


def proposed(hidden=None):
    """Remedies of a hall so wide that its edge dies, where a saw cut is one of them."""
    survey = Survey(slab_c=21.0, air_c=21.0, hidden=hidden or Hidden())
    plan = plan_job(job(WIDE_HALL, survey=survey))
    return [one.what for field in plan.fields for one in field.remedies if "saw cut" in one.what]


def test_the_word_stands_before_every_cut_that_is_proposed():
    found = proposed()
    assert found
    assert all(one.startswith(NOT_BEFORE) for one in found)


def test_once_ruled_out_a_cut_is_offered_plainly():
    found = proposed(Hidden(False, False, False))
    assert found
    assert not any(NOT_BEFORE in one for one in found)


@pytest.mark.parametrize("hidden", [Hidden(True, False, False), Hidden(False, None, False)])
def test_one_open_question_is_enough(hidden):
    assert all(one.startswith(NOT_BEFORE) for one in proposed(hidden))


def test_the_word_is_put_once_and_other_remedies_are_left_alone():
    plan = plan_job(job(WIDE_HALL))
    told = Remedy("people", "A second sprayer.")
    fields = tuple(replace(one, remedies=(*one.remedies, told)) for one in plan.fields)
    once = hold_cuts(fields, job(WIDE_HALL))
    assert hold_cuts(once, job(WIDE_HALL)) == once
    assert all(one.remedies[-1] == told for one in once)
