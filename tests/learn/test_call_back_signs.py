"""Weights of signs counted from closed call-backs: none leaves the guesses, many find the truth."""

from __future__ import annotations

import math
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.facts.call_back_signs import WEIGHTS
from farwall.facts.closed import CallBack, ClosedJob
from farwall.learn.call_back_signs import BY_CHANCE, WORTH_CALLS, sign_weights
from farwall.learn.lessons import lessons_of


def job(n, *calls):
    return ClosedJob(1, f"job-{n}", f"2027-05-{1 + n % 28:02d}", called_back=calls)


def call(cause="residue", **signs):
    """kind=(for it, share of others)."""
    return CallBack(
        "haze", 2.0, cause, {kind: float(one) for kind, (one, _) in signs.items()},
        {kind: share for kind, (_, share) in signs.items()},
    )  # fmt: skip


def weights(*jobs):
    return {one.kind: one for one in sign_weights(jobs, {one.id: 1.0 for one in jobs})}


def test_without_a_closed_one_or_a_cause_there_is_nothing_to_learn():
    assert weights() == {}
    assert weights(job(1, CallBack("haze", 2.0))) == {}
    assert lessons_of([job(1, CallBack("haze", 2.0))]).signs == ()


def test_one_that_says_just_what_was_believed_leaves_the_guess():
    """p is 0.8 for a weight of 3 and q 0.1: such a call moves neither, log2(8) is 3."""
    fits = CallBack("haze", None, "residue", {"ph": 0.8}, {"ph": BY_CHANCE})
    found = weights(job(1, fits))["ph"]
    assert found.weight == pytest.approx(WEIGHTS["ph"])
    assert (found.call_backs, found.rank) == (1, "learned")
    assert found.source == "learned from 1 closed call-back"


def test_the_count_by_hand():
    """Two calls, for it once, for others 0.5 and 0: p = (6.4 + 1) / 10, q = (0.8 + 0.5) / 10."""
    found = weights(job(1, call(rag=(1, 0.5))), job(2, call(rag=(0, 0.0))))["rag"]
    assert WORTH_CALLS == 8
    assert found.weight == pytest.approx(math.log2(0.74 / 0.13))
    assert found.low < found.weight < found.high


def test_a_job_that_is_half_forgotten_counts_half():
    jobs = (job(1, call(rag=(0, 0.5))), job(2, call(rag=(1, 0.0))))
    half = {one.kind: one for one in sign_weights(jobs, {"job-1": 0.5, "job-2": 1.0})}
    assert half["rag"].weight == pytest.approx(math.log2((7.4 / 9.5) / (1.05 / 9.5)))


@given(st.lists(st.tuples(st.booleans(), st.floats(0, 1)), min_size=1, max_size=40))
def test_a_weight_is_never_below_nothing_and_lies_in_its_range(told):
    found = weights(*(job(n, call(margin=one)) for n, one in enumerate(told)))["margin"]
    assert 0 <= found.low <= found.weight <= found.high
    assert found.call_backs == len(told)


@given(st.lists(st.tuples(st.booleans(), st.floats(0, 1)), max_size=12), st.floats(0, 1))
def test_one_more_call_for_it_never_weighs_less_than_one_more_against(told, share):
    jobs = [job(n, call(slab=one)) for n, one in enumerate(told)]
    up = weights(*jobs, job(99, call(slab=(1, share))))["slab"].weight
    assert up >= weights(*jobs, job(99, call(slab=(0, share))))["slab"].weight


@pytest.mark.parametrize(("p", "q"), [(0.9, 0.3), (0.4, 0.35), (0.6, 0.05)])
def test_many_calls_find_the_true_doublings_whatever_was_guessed(p, q):
    drawn = random.Random(7)
    jobs = [job(n, call(copper=(drawn.random() < p, float(drawn.random() < q))))
            for n in range(4000)]  # fmt: skip
    found = weights(*jobs)["copper"]
    assert found.weight == pytest.approx(math.log2(p / q), abs=0.2)
    assert found.high - found.low < 0.6


def test_order_of_the_jobs_does_not_matter_and_lessons_carry_them():
    jobs = [job(n, call(rag=(n % 2, 0.1 * (n % 3)))) for n in range(6)]
    found = lessons_of(jobs)
    assert found.signs == lessons_of(jobs[::-1]).signs
    assert [one.kind for one in found.signs] == ["rag"]
    assert lessons_of(jobs, without=[one.id for one in jobs]).signs == ()
