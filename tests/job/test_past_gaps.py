"""Told minutes that leave no time: a moment is found, and a messy day replays as it was told."""

from __future__ import annotations

import random
from dataclasses import replace

import pytest
from tests.midday import HOUSES, bands_of, day_of

from farwall.facts.so_far import Done, SoFar
from farwall.job.past_gaps import LEAST_MIN, parted
from farwall.job.replan import replan
from farwall.readers.plan_json import plan_to_dict
from farwall.spray.check import check_plan

PLAN = day_of("quince-street")
OWN = {band.id: band for band in bands_of(PLAN, 0)}
FIRST = list(OWN.values())[:4]


def at(band, start, end):
    return replace(band, start_min=start, end_min=end)


def gap(one, other):
    return other.start_min - one.end_min


def test_bands_as_planned_stay_as_they_are_to_the_last_digit():
    assert parted(OWN, OWN) == OWN


def test_a_band_that_begins_as_the_last_one_ends_begins_a_moment_later_and_ends_as_told():
    one, two = FIRST[:2]
    told = {one.id: at(one, 0.0, 1.0), two.id: at(two, 1.0, 2.0)}
    found = parted(told, OWN)
    due = min(gap(one, two), LEAST_MIN)
    assert due > 0
    assert gap(found[one.id], found[two.id]) == pytest.approx(due, abs=1e-4)
    assert found[two.id].end_min == found[two.id].path[-1][2] == 2.0
    assert found[two.id].path[0][2] == found[two.id].start_min
    assert found[one.id] == told[one.id]


def test_it_never_takes_more_than_half_of_a_band():
    one, two = FIRST[:2]
    told = {one.id: at(one, 0.0, 1.0), two.id: at(two, 1.0, 1.002)}
    assert parted(told, OWN)[two.id].start_min <= 1.001


def test_bands_told_in_one_minute_share_their_time_as_planned():
    told = {FIRST[0].id: at(FIRST[0], 2.0, 6.0)}
    told |= {band.id: at(band, 6.0, 6.0) for band in FIRST[1:]}
    found = list(parted(told, OWN).values())
    scale = 4.0 / (FIRST[-1].end_min - FIRST[0].start_min)
    for band, was in zip(found, FIRST, strict=True):
        assert band.end_min - band.start_min == pytest.approx(
            (was.end_min - was.start_min) * scale, abs=2e-4
        )
    assert (found[0].start_min, found[-1].end_min) == (2.0, 6.0)


def messy(plan, seed):
    """A first coat lived through untidily: slower, quicker, no time between, and a wait at last."""
    chance = random.Random(seed)
    bands = sorted(bands_of(plan, 0), key=lambda band: band.start_min)
    now = before = 0.0
    done = []
    for band in bands[: chance.randrange(1, len(bands))]:
        start = now + max(band.start_min - before, 0.0) * chance.choice([0, 0.5, 1, 1, 1.5])
        lasts = (band.end_min - band.start_min) * chance.choice([0.6, 0.9, 1, 1, 1.3])
        done.append(Done(band.id, round(start, 2), round(start + lasts, 2)))
        now, before = done[-1].end_min, band.end_min
    return SoFar(at_min=round(now + chance.choice([0, 0, 0.5, 2, 6]), 2), done=tuple(done))


@pytest.mark.parametrize("seed", [2, 5, 7, 11, 12, 13])
def test_a_messy_day_replays_and_an_edge_that_died_is_said_to_have(seed):
    """These seeds had shut-in, trodden, refill-astray (11, 12) and a dead edge (5) before."""
    plan = day_of(HOUSES[seed % 2])
    again = replan(plan, messy(plan, seed))
    faults = check_plan(plan_to_dict(again))
    assert {fault.code for fault in faults} <= {"dead-edge"}
    verdicts = {field.id: field.verdict for field in again.fields}
    assert all(verdicts[fault.field] == "cannot" for fault in faults)
    assert bool(faults) == (seed == 5)
