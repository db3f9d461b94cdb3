"""A one-family house with attic, IFC 4, against areas and doors reckoned by other means.

Source: small_house_brep_ifc4.ifc, MPL-2.0 (tests/published/data/plans/README.md).
"""

import pytest
from tests.published import ifc_plans as plans

from farwall.facts.reading import Reading
from farwall.floor.faults import faults_of
from farwall.readers.any_plan import read_bytes

pytest.importorskip("ifcopenshell")
DATA, REFERENCE = plans.copied("small_house_brep_ifc4.ifc")


@pytest.fixture(scope="module")
def house() -> Reading:
    return read_bytes(DATA)


def test_every_space_has_the_area_of_its_polygon(house: Reading) -> None:
    plans.assert_every_space(house, REFERENCE)


def test_every_door_joins_what_lies_at_its_sides(house: Reading) -> None:
    plans.assert_every_door(house, REFERENCE)


def test_storeys_and_windows_are_all_there(house: Reading) -> None:
    plans.assert_storeys_and_windows(house, REFERENCE)


def test_the_floor_can_be_planned_on(house: Reading) -> None:
    assert faults_of(house.floor, house.exits) == []
    assert len(house.exits) == 2


def test_its_ground_floor_makes_a_job(house: Reading) -> None:
    plans.assert_storeys_make_jobs(house, "Erdgeschoss")


def test_north_lies_where_the_file_turns_it(house: Reading) -> None:
    # TrueNorth is (0.766044, 0.642788): 40 degrees from the plan's right, 50 clockwise from its up.
    assert house.floor.north_deg == pytest.approx(50.0, abs=0.001)


def test_gross_areas_are_taken_and_net_ones_told(house: Reading) -> None:
    assert {stated.kind for stated in house.stated.values()} == {"gross"}
    assert "stated-differs" not in plans.codes(house)
    (said,) = plans.words(house, "stated-net-too")
    # 3 % for plaster; the attic's 107.16 against 74.51 m² by headroom.
    assert "3.0 to 30.5 %" in said


def test_the_kitchen_is_entered_by_open_edges_alone(house: Reading) -> None:
    by_id = house.floor.room_by_id
    wide = {
        frozenset(by_id[room].name for room in opening.rooms)
        for opening in house.floor.openings
        if opening.kind == "wide"
    }
    assert wide == {
        frozenset({"Küche", "Wohnen"}),
        frozenset({"Küche", "Flur"}),
        frozenset({"Flur", "Wohnen"}),
    }


def test_the_attic_has_no_way_in(house: Reading) -> None:
    (said,) = plans.words(house, "no-way-in")
    assert "Galerie" in said
