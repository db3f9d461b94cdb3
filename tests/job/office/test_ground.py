"""What the office side reckons from."""

from __future__ import annotations

import math

import pytest
from tests.midday import EXAMPLES

from farwall.floor.takeoff import take_off
from farwall.job.office.ground import OfficeGround
from farwall.job.plan_job import plan_begun
from farwall.readers.job_json import read_job


@pytest.mark.parametrize("house", ["thistle-end", "fennel-court"])
def test_the_floor_that_is_priced_is_the_floor_of_the_run_sheet(house):
    """The floor under the doors is cleaned, stained, washed and sealed as the rest."""
    job = read_job(EXAMPLES / house / "job.json")
    plan = plan_begun(job).bare
    ground = OfficeGround(job, plan)
    rooms = math.fsum(one.polygon.shape.area for one in plan.inputs.floor.rooms)
    assert ground.measured.net_m2 == pytest.approx(rooms, abs=0.01)
    assert ground.measured.net_m2 > take_off(job.floor).net_m2 + 0.1
