"""Call-backs: beta-binomial, by hand."""

import pytest

from farwall.facts.closed import CallBack, ClosedJob
from farwall.learn.rates import USUAL, WORTH_JOBS, call_backs


def test_two_of_ten_by_hand():
    """Likely = (a + 2)/(a + b + 10), a = worth × usual."""
    jobs = [
        ClosedJob(1, f"j{n}", "2027-05-14", called_back=(CallBack("haze"),) if n < 2 else ())
        for n in range(10)
    ]
    lesson = call_backs(jobs, {one.id: 1.0 for one in jobs})
    likely = 100 * (WORTH_JOBS * USUAL + 2) / (WORTH_JOBS + 10)
    assert lesson.likely == pytest.approx(likely)
    assert lesson.practice + sum(one.moved_by for one in lesson.shares) == pytest.approx(likely)
    assert lesson.own_low < likely < lesson.own_high


def test_three_causes_of_four_per_cent_come_to_one_in_nine():
    assert pytest.approx(11.5, abs=0.05) == 100 * USUAL
