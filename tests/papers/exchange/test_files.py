"""Any floor survives its export as GeoJSON, DXF and SVG, and reading back."""

import io
import json
from dataclasses import replace

import ezdxf
import pytest
from hypothesis import given, settings
from tests.shapes import AWKWARD, TWO_ROOMS, Place
from tests.strategies.plans import small_plan
from tests.strategies.whole_floors import wholes

from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.job.exchange import exchanged_plan
from farwall.papers.exchange.files import DXF, GEOJSON, SVG, exchange_files
from farwall.readers.any_plan import read_bytes


def reading_of(place: Place) -> Reading:
    return Reading("DXF", "m", "m", 1.0, place.floor, place.exits)


def told(reading: Reading) -> Reading:
    """What is told of the floor: notes are made anew by whoever reads."""
    return replace(reading, format="", mended=(), left=(), asks=())


@given(wholes())
@settings(deadline=None, max_examples=60)
def test_any_floor_survives_export_and_reading_back(reading: Reading) -> None:
    for name, data in exchange_files(reading, name="A house").items():
        assert told(read_bytes(data, name=name)) == told(reading), name


@given(wholes())
@settings(deadline=None, max_examples=25)
def test_the_same_floor_gives_the_same_bytes_and_a_sound_dxf(reading: Reading) -> None:
    files = exchange_files(reading, name="A house")
    assert exchange_files(reading, name="A house") == files
    document = ezdxf.read(io.StringIO(files[DXF].decode()))
    audit = document.audit()
    assert (audit.errors, audit.fixes) == ([], [])


@pytest.mark.parametrize("place", AWKWARD.values(), ids=AWKWARD.keys())
def test_awkward_shapes_survive(place: Place) -> None:
    reading = reading_of(place)
    for name, data in exchange_files(reading).items():
        assert told(read_bytes(data, name=name)) == told(reading), name


@pytest.mark.parametrize("name", [GEOJSON, DXF, SVG])
def test_a_plan_adds_stop_lines_and_bands_that_are_not_taken_for_floor(name: str) -> None:
    plan = small_plan()
    reading = exchanged_plan(plan)
    back = read_bytes(exchange_files(reading, plan=plan)[name])
    assert told(back) == told(reading)
    assert [(note.code, note.what[:40]) for note in back.left] == [
        ("plan-marks", "1 stop lines and 1 bands of a plan are d")
    ]


def test_a_field_that_cannot_be_done_shows_no_bands() -> None:
    plan = small_plan()
    shut = replace(plan, fields=tuple(replace(f, verdict="cannot") for f in plan.fields))
    files = exchange_files(exchanged_plan(shut), plan=shut)
    kinds = [f["properties"]["kind"] for f in json.loads(files[GEOJSON])["features"]]
    assert "band" not in kinds
    assert "stop line" in kinds


def test_without_a_scale_there_are_no_metres_to_write() -> None:
    with pytest.raises(Refused, match="how long its unit is"):
        exchange_files(replace(reading_of(TWO_ROOMS), scale_m_per_unit=None))
