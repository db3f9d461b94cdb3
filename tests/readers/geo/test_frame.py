"""Degrees, web metres, survey grids and the date line as local metres."""

from math import log, pi, radians, tan
from typing import Any

import pytest

from farwall.readers.geo.frame import WGS84_A_M, frame_of, from_mercator, metres_per_degree

SQUARE = [(10.0, 47.0), (10.0001, 47.0), (10.0001, 47.0001)]


def crs(name: Any) -> dict[str, Any]:
    return {"crs": {"type": "name", "properties": {"name": name}}}


def test_small_numbers_on_earth_are_degrees_about_the_first_point() -> None:
    frame = frame_of({}, SQUARE, None)
    assert (frame.unit, frame.origin) == ("degree", (10.0, 47.0))
    assert frame.at((10.0001, 47.0001)) == pytest.approx(
        tuple(m * 1e-4 for m in metres_per_degree(47.0))
    )
    assert [note.code for note in frame.mended] == ["degrees-to-metres"]


def test_the_users_word_and_a_told_unit_come_first() -> None:
    assert frame_of({}, SQUARE, 0.0254).at((2, 1)) == (0.0508, 0.0254)
    assert frame_of({"units": "ft"}, SQUARE, None).scale == (0.3048, 0.3048)


def mercator(longitude: float, latitude: float) -> tuple[float, float]:
    """The forward formula by hand: R·λ, R·ln tan(π/4 + φ/2)."""
    return WGS84_A_M * radians(longitude), WGS84_A_M * log(tan(pi / 4 + radians(latitude) / 2))


def test_web_mercator_is_brought_back_to_true_metres() -> None:
    """At 60 degrees its metres are twice too long."""
    points = [mercator(10, 60), mercator(10.001, 60), mercator(10.001, 60.001)]
    assert from_mercator(points[1]) == pytest.approx((10.001, 60), abs=1e-9)
    frame = frame_of(crs("urn:ogc:def:crs:EPSG::3857"), points, None)
    assert frame.at(points[2]) == pytest.approx(
        tuple(m * 1e-3 for m in metres_per_degree(60.0)), rel=1e-6
    )
    assert [note.code for note in frame.mended] == ["mercator", "degrees-to-metres"]


@pytest.mark.parametrize(
    ("name", "asked"),
    [("EPSG:25832", False), ("urn:ogc:def:crs:EPSG:9.9:32719", False), ("EPSG:2263", True)],
)
def test_survey_grids_are_metres_and_others_are_asked(name: str, asked: bool) -> None:
    frame = frame_of(crs(name), [(445_000.0, 5_444_000.0), (445_010.0, 5_444_000.0)], None)
    assert (frame.unit, frame.scale, frame.said) == ("m", (1.0, 1.0), name)
    assert [note.code for note in frame.asks] == (["scale"] if asked else [])


def test_large_numbers_without_a_word_are_metres_and_said() -> None:
    frame = frame_of({}, [(0.0, 0.0), (5.0, 4.0)], None)
    assert frame.scale == (1.0, 1.0)
    assert [note.code for note in frame.mended] == ["unit-metres"]


def test_a_floor_across_the_date_line_is_whole() -> None:
    frame = frame_of({}, [(179.9999, -17.0), (-179.9999, -17.0)], None)
    assert frame.at((-179.9999, -17.0))[0] == pytest.approx(2e-4 * metres_per_degree(-17.0)[0])
    assert "date-line" in [note.code for note in frame.mended]


@pytest.mark.parametrize("value", [None, 7, [], {"properties": 3}, {"properties": {"name": 5}}])
def test_a_crs_that_is_no_name_is_passed_over(value: Any) -> None:
    assert frame_of({"crs": value}, SQUARE, None).unit == "degree"
