"""Our own plans over invented houses stand before the checker, and spoilt ones do not.

The checker knows nothing of the planner: where they agree on 500 houses, they agree on the
floor and not on a mistake that they share.
"""

from __future__ import annotations

from copy import deepcopy
from functools import cache

import pytest
from tests.spray.hand_day import rehashed
from tests.spray.spoil_any import ANY
from tests.strategies.houses import house

from farwall.errors import Unanswerable
from farwall.facts.plain import plain
from farwall.job.plan_job import plan_begun
from farwall.readers.job_json import job_from
from farwall.spray.check import check_plan

BLOCKS, PLANS_A_BLOCK = 20, 25


def planned(seed, *, whole):
    """The job of a house and its plan as a file would hold it; None where there is no answer.

    whole: with all that is told beside the fields. That takes a fifth of a plan's time, and the
    checker reads none of it: it judges what is sprayed where and when, which is `bare`.
    """
    job = house(seed)
    try:
        begun = plan_begun(job_from(job, f"house {seed}"))
        return job, plain(begun.whole() if whole else begun.bare)
    except Unanswerable:
        return job, None


def honest(plan, faults):
    """Faults that the plan does not own up to: an edge may die where its verdict is a no.

    "Fits with a helper" is a no only where there is none.
    """
    holds = {"fits", "helper"} if plan["inputs"]["crew"]["helper"] else {"fits"}
    said = {field["id"] for field in plan["fields"] if field["verdict"] not in holds}
    return [f for f in faults if not (f.code == "dead-edge" and f.field in said)]


def plans(block):
    """The first houses of a block that have an answer at all, with it; the first block whole."""
    found = []
    for seed in range(1000 * block, 1000 * block + 2 * PLANS_A_BLOCK):
        job, plan = planned(seed, whole=block == 0)
        if plan is not None:
            found.append((seed, job, plan))
        if len(found) == PLANS_A_BLOCK:
            break
    return found


@cache
def first_plans():
    """Those of the first block, which are spoilt as well."""
    return plans(0)


@pytest.mark.slow
@pytest.mark.parametrize("block", range(BLOCKS))
def test_five_hundred_plans_of_ours_stand(block):
    told, stood = [], 0
    for seed, job, plan in plans(block) if block else first_plans():
        faults = honest(plan, check_plan(plan, job=job))
        told += [f"house {seed}: {f.code} {f.field} at {f.at_min:.2f}: {f.what}" for f in faults]
        stood += 1
    assert told == []
    assert stood == PLANS_A_BLOCK


def test_what_is_told_beside_the_fields_changes_nothing_that_the_checker_reads():
    """So a bare plan is judged as the whole one: what differs is told beside, and only that."""
    for _, job, plan in first_plans()[:8]:
        bare = plain(plan_begun(job_from(job, "again")).bare)
        assert {key for key in plan if plan[key] != bare[key]} <= {"fields", "go", "warnings"}
        for told, own in zip(plan["fields"], bare["fields"], strict=True):
            assert {key for key in told if told[key] != own[key]} <= {"choices", "remedies"}
        assert check_plan(bare, job=job) == check_plan(plan, job=job)


@pytest.fixture(scope="module")
def sound():
    """A dozen plans that stand, one and two coats, small and larger."""
    found = [plan for _, job, plan in first_plans() if check_plan(plan, job=job) == []][:12]
    assert len(found) == 12
    return found


@pytest.mark.slow
@pytest.mark.parametrize("name", ANY)
def test_a_spoilt_plan_of_ours_is_refused_by_the_code_that_names_it(name, sound):
    code, spoil = ANY[name]
    spoilt = 0
    for plan in map(deepcopy, sound):
        if not spoil(plan):
            continue
        spoilt += 1
        rehashed(plan)
        plan["inputs_hash"] = plan.pop("keep_hash", plan["inputs_hash"])
        assert code in {fault.code for fault in check_plan(plan)}
    assert spoilt >= 2
