"""An institute of 82 rooms on five storeys, IFC 2x3, against areas and doors reckoned beforehand.

Source: institute_five_storey_ifc2x3.ifc, GPL-3.0-or-later: read in ../shared, never copied.
"""

from collections.abc import Callable
from pathlib import Path

import pytest
from tests.published import ifc_plans as plans

from farwall.facts.reading import Reading
from farwall.floor.faults import faults_of
from farwall.readers.any_plan import read_bytes

pytest.importorskip("ifcopenshell")
pytestmark = pytest.mark.needs_shared
NAME = "institute_five_storey_ifc2x3.ifc"


@pytest.fixture(scope="module")
def both(shared: Callable[[str], Path]) -> tuple[Reading, plans.Json]:
    data, reference = plans.in_place(shared, NAME)
    return read_bytes(data), reference


def test_every_space_has_the_area_of_its_polygon(both: tuple[Reading, plans.Json]) -> None:
    plans.assert_every_space(*both)
    total = sum(room.polygon.shape.area for room in both[0].floor.rooms)
    assert total == pytest.approx(both[1]["stated_total_m2"], rel=1e-4)


def test_every_door_joins_what_lies_at_its_sides(both: tuple[Reading, plans.Json]) -> None:
    plans.assert_every_door(*both)
    assert not {"door-disagrees", "door-third-space", "door-flag"} & plans.codes(both[0])


def test_storeys_and_windows_are_all_there(both: tuple[Reading, plans.Json]) -> None:
    plans.assert_storeys_and_windows(*both)


def test_the_floor_can_be_planned_on(both: tuple[Reading, plans.Json]) -> None:
    reading = both[0]
    assert faults_of(reading.floor, reading.exits) == []
    assert len(reading.exits) == 1
    plans.assert_storeys_make_jobs(reading, "Erdgeschoss")
    assert {stated.kind for stated in reading.stated.values()} == {"gross"}
