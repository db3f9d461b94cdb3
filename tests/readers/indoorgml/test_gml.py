"""Positions in their several spellings, faces by reference, numbers that are none."""

import pytest
from tests.readers.indoorgml.small import polygon

from farwall.readers.indoorgml.gml import faces_of, numbers, points_of, target
from farwall.readers.xml_text import Node, parse_xml

GML = 'xmlns:gml="http://www.opengis.net/gml/3.2" xmlns:xlink="http://www.w3.org/1999/xlink"'
SQUARE = [(0.0, 0.0, 1.0), (1.0, 0.0, 1.0), (1.0, 1.0, 1.0)]


def node(inner: str, given: str = "") -> Node:
    return parse_xml(f"<r {GML} {given}>{inner}</r>".encode())


@pytest.mark.parametrize(
    "inner",
    [
        "<gml:pos>0 0 1</gml:pos><gml:pos>1 0 1</gml:pos><gml:pos>1 1 1</gml:pos>",
        "<gml:posList>0 0 1 1 0 1 1 1 1</gml:posList>",
        '<gml:posList srsDimension="3"> 0 0 1\n1 0 1\n1 1 1 </gml:posList>',
        "<gml:coordinates>0,0,1 1,0,1 1,1,1</gml:coordinates>",
        (
            "<gml:pointProperty><gml:Point><gml:pos>0 0 1</gml:pos></gml:Point></gml:pointProperty>"
            "<gml:pos>1 0 1</gml:pos><gml:pos>1 1 1</gml:pos>"
        ),
    ],
)
def test_positions_in_several_spellings(inner: str) -> None:
    assert points_of(node(inner)) == SQUARE


def test_two_numbers_a_point_where_the_file_says_so() -> None:
    flat = [(0.0, 0.0, 0.0), (1.0, 0.0, 0.0)]
    assert points_of(node('<gml:posList srsDimension="2">0 0 1 0</gml:posList>')) == flat
    assert points_of(node("<gml:posList>0 0 1 0</gml:posList>", 'srsDimension="2"')) == flat
    assert points_of(node("<gml:posList>0 0 1 0</gml:posList>"), deep=2) == flat


@pytest.mark.parametrize(
    "inner",
    [
        "<gml:pos>0</gml:pos>",
        "<gml:pos>a b c</gml:pos>",
        "<gml:pos>NaN 0 0</gml:pos>",
        "<gml:pos>1e999 0 0</gml:pos>",
        "<gml:posList>0 0 1 1</gml:posList>",
    ],
)
def test_what_is_no_position_is_none(inner: str) -> None:
    assert points_of(node(inner)) is None


def test_numbers_are_finite_and_near() -> None:
    assert numbers("1 2,3") == [1, 2, 3]
    assert numbers("1e12") is None
    assert numbers("") == []


def test_faces_are_found_where_they_stand_and_where_they_are_pointed_to() -> None:
    here = node(f"<gml:surfaceMember>{polygon(SQUARE)}</gml:surfaceMember>")
    assert faces_of(here, {}) == ([([*SQUARE, SQUARE[0]], [])], 0)
    shared = node(polygon(SQUARE, "p1"))
    there = node('<gml:surfaceMember xlink:href="#p1"/>')
    assert faces_of(there, {"p1": shared.children[0]}) == faces_of(here, {})
    assert target(there.first("surfaceMember")) == "p1"


def test_pointing_in_a_circle_ends() -> None:
    loop = node('<gml:surfaceMember gml:id="a" xlink:href="#a"/>')
    assert faces_of(loop, {"a": loop.children[0]}) == ([], 0)


def test_broken_faces_are_counted() -> None:
    bad = polygon(SQUARE).replace("1.0 1.0 1.0", "1.0 here 1.0")
    assert faces_of(node(bad), {}) == ([], 1)
