"""The edges that a picture shows are as old as the planner says they grow."""

import json
from pathlib import Path

import pytest

from farwall.job.moments import moment_at, oldest_edge
from farwall.job.plan_job import plan_job
from farwall.readers.job_json import read_job

DEMO = Path(__file__).parents[3] / "examples" / "quince-street" / "job.json"


@pytest.fixture(scope="module")
def plan():
    assert json.loads(DEMO.read_text())
    return plan_job(read_job(DEMO))


def test_the_oldest_edge_of_every_field_is_its_peak_age(plan):
    """Sampled every 5 cm and told apart by 12 mm, against exact moments: within 6 s."""
    for field in plan.fields:
        edge = oldest_edge(field)
        assert edge is not None
        assert edge.age_min == pytest.approx(field.peak_age_min, abs=0.1)


def test_no_moment_shows_an_edge_older_than_the_plan_says(plan):
    for field in plan.fields[:8]:
        for share in (0.2, 0.5, 0.8):
            minute = field.start_min + share * (field.end_min - field.start_min)
            state = moment_at(plan, field.coat, minute)
            assert state.field is field
            assert state.edge is None or state.edge.age_min <= field.peak_age_min + 0.05
