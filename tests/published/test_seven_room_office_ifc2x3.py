"""Seven rooms with one door, IFC 2x3, against areas reckoned beforehand.

Source: seven_room_office_ifc2x3.ifc, GPL-3.0-or-later: read in ../shared, never copied.
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
NAME = "seven_room_office_ifc2x3.ifc"


@pytest.fixture(scope="module")
def both(shared: Callable[[str], Path]) -> tuple[Reading, plans.Json]:
    data, reference = plans.in_place(shared, NAME)
    return read_bytes(data), reference


def test_every_space_has_the_area_of_its_polygon(both: tuple[Reading, plans.Json]) -> None:
    plans.assert_every_space(*both)


def test_the_door_joins_two_rooms_though_it_is_called_an_outside_one(
    both: tuple[Reading, plans.Json],
) -> None:
    plans.assert_every_door(*both)
    assert len(plans.words(both[0], "door-flag")) == 1
    assert both[0].exits == ()


def test_rooms_without_a_door_are_named_and_a_way_out_is_asked_for(
    both: tuple[Reading, plans.Json],
) -> None:
    reading = both[0]
    # Of seven rooms the one door joins two.
    assert len(plans.words(reading, "no-way-in")) == 5
    assert "way-out" in plans.codes(reading)
    assert faults_of(reading.floor, reading.exits) == []


def test_stated_areas_run_along_the_outlines_here(both: tuple[Reading, plans.Json]) -> None:
    assert {stated.kind for stated in both[0].stated.values()} == {"net"}


def test_storeys_and_windows_are_all_there(both: tuple[Reading, plans.Json]) -> None:
    plans.assert_storeys_and_windows(*both)
