"""The score of a price: small runs of it, and what it would say of a range that is not honest."""

from dataclasses import replace

import pytest

from farwall.bench import price
from farwall.bench.price import score_price
from farwall.bench.price_jobs import TUNING


@pytest.fixture(scope="module")
def scored():
    return score_price(TUNING[:150])


def test_every_job_is_counted_once_in_its_group_and_its_band(scored):
    scores, losses = scored
    assert scores[0].jobs == sum(one.jobs for one in scores[1:]) == 150
    assert losses[-1].jobs == sum(one.jobs for one in losses[:-1]) == 150


def test_within_below_and_above_are_all_there_is(scored):
    for one in scored[0]:
        assert one.held_percent + one.below_percent + one.above_percent == pytest.approx(100)


def test_jobs_that_are_told_to_lose_more_lose_more(scored):
    bands = [one for one in scored[1][:-1] if one.jobs >= 20]
    assert len(bands) >= 3
    assert bands[0].lost_percent < bands[-1].lost_percent


@pytest.mark.parametrize(("times", "least", "most"), [(0.5, 0, 20), (1.6, 0, 20)])
def test_a_truth_that_is_elsewhere_is_seen(monkeypatch, times, least, most):
    plain = price.priced_job

    def moved(seed):
        job, true = plain(seed)
        return job, replace(true, cost=true.cost * times)

    monkeypatch.setattr(price, "priced_job", moved)
    held = score_price(TUNING[:60])[0][0].held_percent
    assert least <= held <= most
