"""Whole houses and chances: the table of chances by hand, and that said is near to found."""

import numpy as np
import pytest

from farwall.bench.colour_houses import Room, Told, cost, house_job
from farwall.bench.colour_score import reliability, score_whole
from farwall.bench.colour_sealed import score_sealed


def test_chances_by_hand():
    told = [
        Told(0.0, False),
        Told(0.02, False),
        Told(0.02, True),
        Told(0.95, True),
        Told(1.0, True),
    ]
    low, small, high = reliability(told)
    assert (low.count, low.found) == (1, 0)
    assert (small.count, small.said, small.found) == (2, pytest.approx(2.0), 50)
    assert (high.low, high.high, high.count, high.found) == (90, 100, 2, 100)


def test_a_house_is_charged_by_area_and_once_for_an_overlay():
    rooms = [Room(30.0, False, 0.0, 2, 1.0, 1, 0.0), Room(10.0, True, 2.0, 1, 1.0, 0, 0.0)]
    assert cost(rooms) == pytest.approx((30 * 2 + 10 * 3) / 40 + 12)
    assert cost(rooms[:1]) == 2


@pytest.fixture(scope="module")
def jobs():
    return [house_job(seed) for seed in range(5)]


def test_what_is_said_of_too_dark_is_near_what_comes(jobs):
    """On a few houses of the tuning half; the judged table stands in docs/colour.md."""
    told = [one for job in jobs for one in job.told]
    said, came = np.array([one.said for one in told]), np.array([one.came for one in told])
    calm, sure = said < 0.03, said > 0.9
    assert came[calm].mean() < 0.05
    assert came[sure].mean() > 0.8
    assert -0.05 < (said - came).mean() < 0.15


def test_the_same_house_again_is_the_same_job(jobs):
    assert house_job(2) == jobs[2]


def test_all_of_it_on_two_houses_and_two_floors():
    found = score_whole(range(2), range(2))
    ours, habit = found.houses
    assert ours.jobs == habit.jobs == 2
    assert ours.rooms == habit.rooms >= 6
    assert found.two[0].jobs == 2


def test_samples_sealed_make_the_sealed_look_surer():
    none, one, three = score_sealed(range(40))
    assert (none.samples, one.samples, three.samples) == (0, 1, 3)
    assert max(none.median, one.median, three.median) < 1.5
