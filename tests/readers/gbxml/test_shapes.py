"""Loops, shells and the lines of openings, by polygon and by rectangle."""

import pytest
from tests.readers.gbxml.small import flat, loop, planar, upright

from farwall.readers.gbxml.shapes import (
    foot_of,
    height_of,
    loop_of,
    loops_of,
    outer_faces,
    point_of,
    seam_of,
    shell_faces,
    upright_line,
)
from farwall.readers.gbxml.units import Units
from farwall.readers.xml_text import Node, parse_xml

METRES = Units("m", 1.0, 1.0)


def node(text: str) -> Node:
    return parse_xml(text.encode())


def test_points_may_have_two_or_three_coordinates() -> None:
    two = node("<P><Coordinate>1</Coordinate><Coordinate>2</Coordinate></P>")
    assert point_of(two, 0.3048) == pytest.approx((0.3048, 0.6096, 0))
    assert point_of(node("<P><Coordinate>1</Coordinate></P>"), 1.0) is None
    assert (
        point_of(node("<P><Coordinate>1</Coordinate><Coordinate>NaN</Coordinate></P>"), 1) is None
    )


def test_a_loop_needs_three_points_that_are_numbers() -> None:
    assert loop_of(node(loop(flat(0, 0, 1, 1))), METRES) == flat(0, 0, 1, 1)
    assert loop_of(node(loop(flat(0, 0, 1, 1)[:2])), METRES) is None
    assert loop_of(node(loop([(0, 0, 0), (1, float("nan"), 0), (1, 1, 0)])), METRES) is None
    assert loops_of(None, METRES) == []


def test_a_geometry_in_feet_within_a_file_in_metres() -> None:
    told = loop_of(node(planar(flat(0, 0, 10, 10), 'unit="Feet"')), METRES)
    assert told is not None
    assert told[2] == pytest.approx((3.048, 3.048, 0))


def test_the_inner_shell_is_taken_before_the_outer_one() -> None:
    inner, outer = loop(flat(0, 0, 4, 3)), loop(flat(-0.1, -0.1, 4.1, 3.1))
    both = node(
        f"<Space><ShellGeometry><ClosedShell>{inner}</ClosedShell><AnalyticalShell><ShellSurface>"
        f"{outer}</ShellSurface></AnalyticalShell></ShellGeometry></Space>"
    )
    assert shell_faces(both, METRES)[0] == [(flat(0, 0, 4, 3), ())]
    assert outer_faces(both, METRES) == [(flat(-0.1, -0.1, 4.1, 3.1), ())]
    alone = node(f"<Space><ShellGeometry>{outer}</ShellGeometry></Space>")
    assert shell_faces(alone, METRES)[0] == [(flat(-0.1, -0.1, 4.1, 3.1), ())]


def test_an_upright_face_has_a_line_and_a_flat_one_has_none() -> None:
    door = upright((1, 2), (1.9, 2), 0.1, 2.1)
    assert upright_line(door) == ((1, 2), (1.9, 2))
    assert (foot_of(door), height_of(door)) == (0.1, pytest.approx(2.0))
    assert upright_line(flat(0, 0, 4, 3)) is None
    assert upright_line([(0, 0, 0), (0, 0, 1), (0, 0, 2)]) is None


@pytest.mark.parametrize(
    ("bearing", "corner", "ends"),
    [
        # A wall that looks south runs east from its lower left corner; north, east, west likewise.
        (180, (10, 5), ((11, 5), (11.9, 5))),
        (0, (10, 5), ((9, 5), (8.1, 5))),
        (90, (10, 5), ((10, 6), (10, 6.9))),
        (270, (10, 5), ((10, 4), (10, 3.1))),
    ],
)
def test_a_rectangle_lies_from_the_lower_left_corner_of_its_wall_by_hand(
    bearing: float, corner: tuple[float, float], ends: tuple[tuple[float, float], ...]
) -> None:
    """One metre along the wall, 0.9 m wide, 2 m tall, seen from outside."""
    x, y = corner
    wall = node(
        f"<Surface><RectangularGeometry><Azimuth>{bearing}</Azimuth><Tilt>90</Tilt><CartesianPoint>"
        f"<Coordinate>{x}</Coordinate><Coordinate>{y}</Coordinate><Coordinate>3</Coordinate>"
        "</CartesianPoint></RectangularGeometry></Surface>"
    )
    door = node(
        "<Opening><RectangularGeometry><CartesianPoint><Coordinate>1</Coordinate>"
        "<Coordinate>0.2</Coordinate></CartesianPoint><Height>2</Height><Width>0.9</Width>"
        "</RectangularGeometry></Opening>"
    )
    seam, corners = seam_of(door, wall, METRES)
    assert seam is not None
    assert sorted(seam) == [pytest.approx(end) for end in sorted(ends)]
    assert (foot_of(corners), height_of(corners)) == pytest.approx((3.2, 2.0))


def test_an_opening_that_nothing_places_has_no_line() -> None:
    assert seam_of(node("<Opening/>"), node("<Surface/>"), METRES) == (None, [])
    flat_wall = node(
        "<Surface><RectangularGeometry><Azimuth>0</Azimuth><Tilt>0</Tilt><CartesianPoint>"
        "<Coordinate>0</Coordinate><Coordinate>0</Coordinate></CartesianPoint>"
        "</RectangularGeometry></Surface>"
    )
    door = node(
        "<Opening><RectangularGeometry><Height>2</Height><Width>1</Width></RectangularGeometry>"
        "</Opening>"
    )
    assert seam_of(door, flat_wall, METRES) == (None, [])
