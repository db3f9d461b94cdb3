"""Faults of a replay as a person is told them."""

from __future__ import annotations

from datetime import datetime

import pytest

from farwall.job.faults_told import FaultWords, faults_told
from farwall.spray.check import Fault

START = "2026-05-14T08:00:00-06:00"
ROOMS = {"bed-2": "Bedroom 2"}
US = FaultWords(("first", "first.wash"), datetime.fromisoformat(START), us=True, rooms=ROOMS)
METRIC = FaultWords(US.coats, US.starts_at, us=False, rooms=ROOMS)


EDGE = "in Hall at (0.45, -5.21), band first.5.3 meets the edge of band first.wash.2.1"
EDGE_US = "in Hall at (1' 5½\", -17' 1\"), band 1.5.3 meets the edge of band 2.2.1"
EDGE_M = "in Hall at (0.45 m, -5.21 m), band 1.5.3 meets the edge of band 2.2.1"


@pytest.mark.parametrize(
    ("what", "us", "metric"),
    [
        (
            f"At 18.66 min, {EDGE} at an age of 3.88 min.",
            f"At 8:18 am (18.66 min), {EDGE_US} at an age of 3.88 min.",
            f"At 8:18 (18.66 min), {EDGE_M} at an age of 3.88 min.",
        ),
        (
            "Band first.1.2 was sprayed from 300.00 to 301.50 min.",
            "Band 1.1.2 was sprayed from 1:00 pm to 1:01 pm (300.00 to 301.50 min).",
            "Band 1.1.2 was sprayed from 13:00 to 13:01 (300.00 to 301.50 min).",
        ),
        (
            "It goes 3.05 m in 0.05 min: 61 m a minute, where the plan walks 45.",
            "It goes 10' 0\" (3.05 m) in 0.05 min: 200 ft a minute, where the plan walks 148.",
            "It goes 3.05 m in 0.05 min: 61 m a minute, where the plan walks 45.",
        ),
        (
            "Band b has 9.29 m² and 3.79 L, 25 mm more.",
            'Band b has 100.0 ft² (9.29 m²) and 1.00 gal (3.79 L), 1.0" (25 mm) more.',
            "Band b has 9.29 m² and 3.79 L, 25 mm more.",
        ),
        (
            "At 6.00 min band first.1.2 is sprayed in bed-2, where somebody stands.",
            "At 8:06 am (6.00 min) band 1.1.2 is sprayed in Bedroom 2, where somebody stands.",
            "At 8:06 (6.00 min) band 1.1.2 is sprayed in Bedroom 2, where somebody stands.",
        ),
        (
            "band first.1.2 closes the last dry way out of bed-2, where somebody stands.",
            "band 1.1.2 closes the last dry way out of Bedroom 2, where somebody stands.",
            "band 1.1.2 closes the last dry way out of Bedroom 2, where somebody stands.",
        ),
        (
            "Field first.1 has no open time for room 'bed-2'.",
            "Field 1.1 has no open time for room Bedroom 2.",
            "Field 1.1 has no open time for room Bedroom 2.",
        ),
    ],
    ids=["edge", "past", "pace", "figures", "closed", "shut in", "no open time"],
)
def test_a_fault_is_told_by_number_hour_and_the_units_of_the_job(what, us, metric):
    """By hand: 0.3048 m a foot, 0.09290 m² a square foot, 3.785 L a gallon."""
    assert US.told(what) == us
    assert METRIC.told(what) == metric


def test_what_is_no_name_of_the_plan_stays():
    assert US.told("Field other.1 is in no mix of coat other.") == (
        "Field other.1 is in no mix of coat other."
    )


def test_coats_come_from_inputs_and_fields():
    plan = {"starts_at": START, "inputs": {"coats": [{"id": "a"}]}, "fields": [{"coat": "b"}]}
    found = Fault("twice", "b.1", 3.0, "Band b.1.2 lies over band a.1.")
    plan["fields"][0] |= {"id": "b.1", "verdict": "fits"}
    assert faults_told(plan, [found], us=True) == ["twice: Band 2.1.2 lies over band 1.1."]


def test_a_field_that_may_not_be_sprayed_tells_of_its_faults_only_the_edges_that_die():
    fields = [{"id": "a.1", "coat": "a", "verdict": "cannot"}, {"id": "b.1", "coat": "b"}]
    plan = {"starts_at": START, "inputs": {"coats": [{"id": "a"}]}, "fields": fields}
    faults = [
        Fault("trodden", "a.1", 3.0, "trodden in one"),
        Fault("dead-edge", "a.1", 3.0, "dead in one"),
        Fault("trodden", "b.1", 3.0, "trodden in two"),
        Fault("edited", "", 0.0, "of the whole"),
    ]
    assert faults_told(plan, faults, us=True) == [
        "dead-edge: dead in one",
        "trodden: trodden in two",
        "edited: of the whole",
    ]
