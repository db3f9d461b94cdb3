"""Real plans sent out as GeoJSON, DXF and SVG and read back: the same floors, ids and all.

Sources and licences: data/plans/README.md. The two models under the GPL are read in ../shared.
"""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from tests.published.packed_plans import PLANS, packed

from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.papers.exchange.files import exchange_files
from farwall.readers.any_plan import read_bytes

COPIED = [
    "duplex_apartment_ifc2x3.ifc", "small_house_brep_ifc4.ifc", "house_indoorgml.gml",
    "office_floor2.geojson", "test_house_feet_gbxml.xml",
]  # fmt: skip
IN_PLACE = ["institute_five_storey_ifc2x3.ifc", "seven_room_office_ifc2x3.ifc"]


def told(reading: Reading) -> Reading:
    """All but the notes and the words on the file that it came from."""
    return replace(
        reading, format="", length_unit="", header_unit="", scale_m_per_unit=1.0,
        origin_m=(0.0, 0.0), mended=(),
        left=(), asks=(),
    )  # fmt: skip


def assert_survives(data: bytes, name: str) -> None:
    reading = read_bytes(data, name=name)
    assert reading.floor.rooms
    for exported, content in exchange_files(reading, name=name).items():
        assert told(read_bytes(content, name=exported)) == told(reading), exported


@pytest.mark.parametrize("name", COPIED)
def test_a_copied_plan_survives_export_and_reading_back(name: str) -> None:
    if name.endswith(".ifc"):
        pytest.importorskip("ifcopenshell")
    assert_survives(packed(name), name)


def test_the_house_in_inches_survives_export_and_reading_back() -> None:
    name = "single_storey_house_inches.dxf"
    assert_survives((PLANS / name).read_bytes(), name)


@pytest.mark.needs_shared
@pytest.mark.parametrize("name", IN_PLACE)
def test_a_plan_read_in_place_survives_export_and_reading_back(
    name: str, shared: Callable[[str], Path]
) -> None:
    pytest.importorskip("ifcopenshell")
    assert_survives(shared(f"data/plans/{name}").read_bytes(), name)


def test_a_model_whose_rooms_lie_over_each_other_is_no_floor_to_send_out() -> None:
    """single_family_residential_gbxml.xml: its room polygons are not where its walls are."""
    reading = read_bytes(packed("single_family_residential_gbxml.xml"))
    with pytest.raises(Refused, match="overlap"):
        exchange_files(reading)
