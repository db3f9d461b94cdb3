"""The night on which the clocks are changed is told; other nights and other houses are not."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.spray.hand_floors import HALL_OF_THREE
from tests.spray.hand_floors import job as job_of
from tests.strategies.plans import small_plan

from farwall.facts.job import Place
from farwall.phrasebook import in_spanish
from farwall.readers.clock_change import with_clock_change


def changes(starts_at: str, zone: str, high_min: float) -> tuple[str, ...]:
    """What a plan warns of whose last wait ends so late."""
    job = replace(job_of(HALL_OF_THREE), place=Place(time_zone=zone))
    plan = small_plan()
    clocks = tuple(replace(one, begins_min=0.0, high_min=high_min) for one in plan.clocks)
    plan = replace(plan, starts_at=starts_at, warnings=(), clocks=clocks)
    return with_clock_change(plan, job).warnings


@pytest.mark.parametrize(
    ("starts_at", "zone", "way"),
    [
        # By law in the United States: the second Sunday of March, the first of November, 2:00.
        ("2026-10-31T13:00:00-05:00", "America/Chicago", "back by 60 min on day 2"),
        ("2027-03-13T13:00:00-06:00", "America/Chicago", "forward by 60 min on day 2"),
        # South of the line the other way round, and by half an hour on one island.
        ("2026-10-03T13:00:00+10:00", "Australia/Sydney", "forward by 60 min on day 2"),
        ("2026-10-03T13:00:00+10:30", "Australia/Lord_Howe", "forward by 30 min on day 2"),
    ],
)
def test_a_change_within_the_plan_is_told(starts_at: str, zone: str, way: str):
    (told,) = changes(starts_at, zone, high_min=24 * 60)
    assert way in told
    assert in_spanish(told, frozenset())


def test_a_plan_by_the_clock_of_a_start_before_the_change_says_so():
    """As a seal day is: planned in November by the clock of the job's start in October."""
    (told,) = changes("2026-11-03T07:30:00-05:00", "America/Chicago", high_min=300.0)
    assert "back by 60 min before this plan begins" in told
    assert in_spanish(told, frozenset())


@pytest.mark.parametrize(
    ("starts_at", "zone"),
    [
        ("2026-10-31T13:00:00-07:00", "America/Phoenix"),
        ("2026-10-24T13:00:00-05:00", "America/Chicago"),
        ("2026-11-01T07:30:00-06:00", "America/Chicago"),
        ("2026-10-31T13:00:00-05:00", ""),
    ],
)
def test_without_a_change_nothing_is_told(starts_at: str, zone: str):
    assert changes(starts_at, zone, high_min=24 * 60) == ()


def test_a_plan_that_ends_before_the_night_says_nothing():
    assert changes("2026-10-31T13:00:00-05:00", "America/Chicago", high_min=300.0) == ()
