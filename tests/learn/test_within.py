"""Spreads inside a job: the inverse-gamma step, and far ones."""

import math
from random import Random

import pytest

from farwall.learn.within import within


def groups(sd, count, seed=5):
    random = Random(seed)
    found = {}
    for n in range(count):
        each = [random.gauss(0, sd) for _ in range(6)]
        middle = sum(each) / 6
        found[f"j{n}"] = [([one - middle for one in each], 5.0)]
    return found


def test_without_jobs_the_guess_stays():
    assert within({}, 0.1, {}).sd == pytest.approx(0.1)


def test_many_jobs_tell_the_spread():
    """The core of a Student number is narrower than a normal one of the same middle: by a tenth."""
    offs = groups(0.05, 80)
    found = within(offs, 0.1, dict.fromkeys(offs, 1.0))
    assert found.sd == pytest.approx(0.05, rel=0.15)


def test_one_wrong_field_moves_it_little():
    offs = groups(0.05, 10)
    before = within(offs, 0.07, dict.fromkeys(offs, 1.0)).sd
    offs["j0"][0][0][2] = math.log(5.0)
    after = within(offs, 0.07, dict.fromkeys(offs, 1.0)).sd
    assert abs(math.log(after / before)) < 0.05


def test_a_forgotten_job_counts_less():
    offs = groups(0.2, 6)
    all_of_it = within(offs, 0.05, dict.fromkeys(offs, 1.0)).sd
    half = within(offs, 0.05, dict.fromkeys(offs, 0.2)).sd
    assert 0.05 < half < all_of_it
