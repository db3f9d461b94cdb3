"""The score of lessons: small runs of it, and what it would say of ranges that are not honest."""

from dataclasses import replace

import pytest

from farwall.bench import learn
from farwall.bench.learn import KINDS, score_learning
from farwall.bench.learn_firms import TUNING
from farwall.bench.learn_gate import score_gate
from farwall.learn.lessons import lessons_of


def test_every_kind_is_scored_after_each_number_of_jobs():
    scores = score_learning(TUNING[:12], after=(3, 8))
    assert {(one.what, one.jobs) for one in scores} == {(what, n) for what in KINDS for n in (3, 8)}
    for one in scores:
        assert (one.next_percent is None) == (one.what == "call-backs")


def test_learned_figures_err_less_than_common_practice():
    scores = score_learning(TUNING[:50], after=(30,))
    for one in scores:
        if one.what != "call-backs":
            assert one.error < one.practice_error, one.what


def test_ranges_of_no_width_hold_nothing(monkeypatch):
    def narrow(jobs):
        found = lessons_of(jobs)
        return replace(found, lessons=tuple(
            replace(one, low=one.likely, high=one.likely, own_low=one.likely, own_high=one.likely)
            for one in found.lessons
        ))  # fmt: skip

    monkeypatch.setattr(learn, "lessons_of", narrow)
    for one in score_learning(TUNING[:6], after=(4,)):
        if one.what != "rinses until clean":  # whole numbers may be met
            assert one.own_percent in {0.0, None}


def test_the_gate_with_a_learned_spread_keeps_short_days_to_one_in_a_hundred():
    learned, guessed = score_gate(TUNING[:40])
    assert learned.days == guessed.days == 1600
    assert learned.short_percent <= 1.0
    assert 0 < learned.left_percent < 20
    assert learned.spread_percent != pytest.approx(guessed.spread_percent)
