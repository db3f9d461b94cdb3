"""Two mirrored flats on two storeys, IFC 2x3, against areas and doors reckoned by other means.

Source: duplex_apartment_ifc2x3.ifc, CC BY 4.0: BSI (2020) "Duplex Apartment Test Files",
buildingSMART International (tests/published/data/plans/README.md).
"""

import pytest
from tests.published import ifc_plans as plans

from farwall.facts.reading import Reading
from farwall.floor.faults import faults_of
from farwall.readers.any_plan import read_bytes

pytest.importorskip("ifcopenshell")
DATA, REFERENCE = plans.copied("duplex_apartment_ifc2x3.ifc")


@pytest.fixture(scope="module")
def flats() -> Reading:
    return read_bytes(DATA)


def test_every_space_has_the_area_of_its_polygon(flats: Reading) -> None:
    plans.assert_every_space(flats, REFERENCE)


def test_every_door_joins_what_lies_at_its_sides(flats: Reading) -> None:
    plans.assert_every_door(flats, REFERENCE)


def test_storeys_and_windows_are_all_there(flats: Reading) -> None:
    plans.assert_storeys_and_windows(flats, REFERENCE)
    by_id = flats.floor.room_by_id
    without = [by_id[window.room].name for window in flats.floor.windows if window.sill_m is None]
    assert without == ["Roof", "Roof"]  # lights in the roof, under the floor of that space


def test_the_floor_can_be_planned_on(flats: Reading) -> None:
    assert faults_of(flats.floor, flats.exits) == []
    assert {opening.kind for opening in flats.floor.openings} == {"door", "wide", "outside"}


def test_its_ground_floor_makes_a_job(flats: Reading) -> None:
    plans.assert_storeys_make_jobs(flats, "Level 1")


def test_four_outside_doors_are_the_ways_out(flats: Reading) -> None:
    names = sorted(
        flats.floor.room_by_id[flats.floor.opening_by_id[way.opening].rooms[0]].name
        for way in flats.exits
    )
    assert names == ["Foyer A101", "Foyer B101", "Living Room A102", "Living Room B102"]


def test_stated_areas_run_to_the_wall_centres(flats: Reading) -> None:
    assert {stated.kind for stated in flats.stated.values()} == {"wall-centre"}
    (said,) = plans.words(flats, "stated-differs")
    assert "21 of 21 rooms" in said
    assert "77.3 to 93.2 %" in said


def test_the_wrong_third_space_of_a_door_is_named(flats: Reading) -> None:
    (said,) = plans.words(flats, "door-third-space")
    assert "Utility A205" in said
    assert "Hallway A201" in said


def test_virtual_boundaries_are_wide_openings_once_each(flats: Reading) -> None:
    by_id = flats.floor.room_by_id
    wide = [
        frozenset(by_id[room].name for room in opening.rooms)
        for opening in flats.floor.openings
        if opening.kind == "wide"
    ]
    for flat, stair in (("A", "Stair"), ("B", "Room")):
        foyer, living, kitchen = f"Foyer {flat}101", f"Living Room {flat}102", f"Kitchen {flat}103"
        for pair in ({foyer, living}, {foyer, kitchen}, {kitchen, living}):
            assert wide.count(frozenset(pair)) == 1
        # The stair is open along its side and at its foot.
        assert wide.count(frozenset({foyer, stair})) == 2
    assert len(wide) == 10


def test_open_edges_of_the_upper_halls_lead_to_the_stair_below(flats: Reading) -> None:
    assert "edge-reframed" in plans.codes(flats)
    assert len(plans.words(flats, "open-edge")) == 2


def test_north_is_asked_for_as_the_file_does_not_say(flats: Reading) -> None:
    assert flats.floor.north_deg is None
    assert "north" in plans.codes(flats)
