"""Cells and transitions as rooms and openings, and every transition accounted for."""

import pytest
from tests.readers.indoorgml.small import cell, indoorgml, polygon, solid, transition

from farwall.errors import Refused
from farwall.readers.any_plan import read_bytes
from farwall.readers.indoorgml.read import read_indoorgml, told_of

HALL, BATH = cell("hall", solid((0, 0, 4, 3))), cell("bath", solid((4, 1, 8, 2)))
THROUGH = [(2, 1, 0.5), (4, 1.5, 0.5), (6, 1.5, 0.5)]


def codes(notes: object) -> list[str]:
    return [note.code for note in notes]  # type: ignore[attr-defined]


def test_both_directions_of_a_transition_are_one_opening_where_the_cells_touch() -> None:
    there, back = (
        transition("t1", "hall", "bath", THROUGH),
        transition("t2", "bath", "hall", THROUGH[::-1]),
    )
    told = told_of(indoorgml(HALL, BATH, there, back))
    (way,) = told.openings
    assert way.id == "t1+t2"
    assert way.relations == ("bath", "hall")
    assert way.seam is not None
    assert sorted(way.seam) == [(4, 1), (4, 2)]
    (word,) = [note.what for note in told.mended if note.code == "transitions-paired"]
    assert "2 transitions make 1 way between" in word
    assert "leaf" in codes(told.asks)
    (bare,) = [note for note in told.left if note.code == "no-leaf"]
    assert bare.where == (4, 1.5)
    assert "1.00 m wide between “bath” and “hall”" in bare.what


def test_two_ways_between_the_same_cells_are_told_apart_by_their_paths() -> None:
    """The bath touches the hall on two stretches, and a path goes through each."""
    comb = cell(
        "bath",
        "<core:Geometry3D>"
        + polygon([
            (4, 0, 0), (5, 0, 0), (5, 3, 0), (4, 3, 0), (4, 2, 0), (4.5, 2, 0), (4.5, 1, 0),
            (4, 1, 0),
        ])
        + "</core:Geometry3D>",
    )  # fmt: skip
    low = transition("t1", "hall", "bath", [(2, 1, 0), (4, 0.5, 0), (4.7, 1, 0)])
    high = transition("t2", "hall", "bath", [(2, 1, 0), (4, 2.5, 0), (4.7, 1, 0)])
    told = told_of(indoorgml(HALL, comb, low, high))
    seams = {way.id: sorted(way.seam or ()) for way in told.openings}
    assert seams == {"t1": [(4, 0), (4, 1)], "t2": [(4, 2), (4, 3)]}


def test_a_boundary_that_the_transition_stands_for_gives_the_place() -> None:
    face = polygon([(4, 1.1, 0), (4, 1.9, 0), (4, 1.9, 2), (4, 1.1, 2)])
    boundary = (
        '<core:cellSpaceBoundaryMember><navi:ConnectionBoundary gml:id="b1">'
        f"<core:cellSpaceBoundaryGeometry>{face}</core:cellSpaceBoundaryGeometry>"
        "</navi:ConnectionBoundary></core:cellSpaceBoundaryMember>"
    )
    way = transition("t1", "hall", "bath", extra='<core:duality xlink:href="#b1"/>')
    (found,) = told_of(indoorgml(HALL, BATH, boundary, way)).openings
    assert sorted(found.seam or ()) == [(4, 1.1), (4, 1.9)]


def test_a_way_between_storeys_is_listed_and_is_no_opening() -> None:
    upper = cell("loft", solid((0, 0, 4, 3), foot=2.8))
    told = told_of(indoorgml(HALL, upper, transition("t1", "hall", "loft")))
    assert told.openings == ()
    (word,) = [note.what for note in told.left if note.code == "between-storeys"]
    assert "“hall” and “loft” (t1)" in word
    assert [storey.elevation_m for storey in told.storeys] == [0, 2.8]


def test_cells_apart_are_joined_without_a_place_and_that_is_said() -> None:
    far = cell("shed", solid((9, 0, 12, 3)))
    told = told_of(indoorgml(HALL, far, transition("t1", "hall", "shed")))
    assert [way.seam for way in told.openings] == [None]
    assert "opening-nowhere" in codes(told.left)


def test_transitions_to_nowhere_are_counted() -> None:
    told = told_of(indoorgml(HALL, transition("t1", "hall", "none")))
    (word,) = [note.what for note in told.left if note.code == "not-read"]
    assert word.startswith("1 transitions join no two cells")


def test_rooms_that_would_be_too_high_ask_for_the_scale() -> None:
    tall = indoorgml(cell("c", solid((0, 0, 4000, 3000), tall=2500)))
    assert "scale" in codes(told_of(tall).asks)
    assert read_bytes(tall).scale_m_per_unit is None
    assert "scale" not in codes(told_of(tall, scale_m_per_unit=0.001).asks)
    assert "unit-metres" in codes(told_of(indoorgml(HALL)).mended)


def test_no_cell_is_a_floor_to_trace() -> None:
    reading = read_indoorgml(indoorgml())
    assert (reading.floor.rooms, reading.format) == ((), "IndoorGML")
    assert "tracing" in codes(reading.asks)


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"<IndoorFeatures><a></IndoorFeatures>", "no XML"),
        (b"<!DOCTYPE a [<!ENTITY x 'y'>]><IndoorFeatures>&x;</IndoorFeatures>", "entities"),
        (b"<IndoorFeatures>" + b"<a>" * 100_000, "nested more than"),
    ],
)
def test_calm_refusals(data: bytes, words: str) -> None:
    with pytest.raises(Refused, match=words):
        read_bytes(data)


def test_another_root_is_refused_by_name() -> None:
    with pytest.raises(Refused, match="Its root is other"):
        read_indoorgml(b"<other/>")
