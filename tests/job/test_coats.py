"""All coats on the clock: the same, whoever does the work that may be done beside other work."""

from __future__ import annotations

import pickle

import pytest
from tests.shapes import L_HALL
from tests.spray.hand_floors import hall, job

from farwall.facts.plain import plain
from farwall.facts.samples import Sample
from farwall.job.plan_job import plan_job


@pytest.mark.parametrize(
    ("place", "minutes"),
    [(hall(9, 5), 2.0), (hall(8, 2), 2.0), (L_HALL, 20.0)],
    ids=["does not hold", "tight", "fits"],
)
def test_what_is_begun_beside_other_work_gives_the_same_plan(place, minutes):
    """Begun at once, by somebody who sends back a copy: remedies, choices, sweeps are the same."""
    begun = []

    def elsewhere(work):
        begun.append(work)
        found = pickle.loads(pickle.dumps(work()))
        return lambda: found

    of = job(place, samples=(Sample("board", coat="one", sheen_loss_min=minutes),))
    assert plain(plan_job(of, beside=elsewhere)) == plain(plan_job(of))
    assert begun
