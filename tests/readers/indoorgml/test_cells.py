"""Cells: rooms, doors, ways out and obstacles; storeys told in words; what has no floor."""

import pytest
from tests.readers.indoorgml.small import cell, indoorgml, polygon, solid

from farwall.readers.indoorgml.cells import cells_of
from farwall.readers.xml_text import parse_xml


@pytest.mark.parametrize(
    ("element", "kind"),
    [
        ("core:CellSpace", "room"),
        ("navi:GeneralSpace", "room"),
        ("navi:TransitionSpace", "room"),
        ("navi:ConnectionSpace", "door"),
        ("navi:AnchorSpace", "way out"),
        ("navi:NonNavigableSpace", "solid"),
    ],
)
def test_the_navigation_module_names_the_kinds(element: str, kind: str) -> None:
    root = parse_xml(indoorgml(cell("c", solid((0, 0, 1, 0.5)), kind=element)))
    ((found,), bare) = cells_of(root, {}, 1.0)
    assert (found.kind, found.state, bare) == (kind, "s-c", [])
    assert (found.plan.shape.area, found.plan.height_m) == (0.5, 2.5)


@pytest.mark.parametrize("element", ["navi:ConnectionSpace", "navi:AnchorSpace"])
def test_what_is_larger_than_a_doorway_is_a_room(element: str) -> None:
    root = parse_xml(indoorgml(cell("front-door-hall", solid((0, 0, 4, 3)), kind=element)))
    assert cells_of(root, {}, 1.0)[0][0].kind == "room"


def test_a_storey_may_be_told_in_the_description() -> None:
    words = '<gml:description>storey="F2":</gml:description>'
    root = parse_xml(indoorgml(cell("c", solid((0, 0, 4, 3)), extra=words)))
    assert cells_of(root, {}, 1.0)[0][0].storey == "F2"


def test_a_flat_cell_is_a_room_without_a_height() -> None:
    surface = polygon([(0, 0, 0), (4, 0, 0), (4, 3, 0), (0, 3, 0)])
    root = parse_xml(indoorgml(cell("c", f"<core:Geometry2D>{surface}</core:Geometry2D>")))
    (found,) = cells_of(root, {}, 1.0)[0]
    assert (found.plan.shape.area, found.plan.height_m) == (12, None)


def test_an_external_object_is_kept_by_name() -> None:
    words = (
        "<core:externalReference><core:externalObject><core:name>Q7</core:name>"
        "</core:externalObject></core:externalReference>"
    )
    root = parse_xml(indoorgml(cell("c", solid((0, 0, 4, 3)), extra=words)))
    assert cells_of(root, {}, 1.0)[0][0].other == "Q7"


def test_cells_without_a_floor_are_named_with_their_line() -> None:
    wall = polygon([(0, 0, 0), (4, 0, 0), (4, 0, 3), (0, 0, 3)])
    root = parse_xml(indoorgml(cell("c", wall), "<core:cellSpaceMember/>"))
    assert cells_of(root, {}, 1.0) == ([], [("c", 1)])


def test_millimetres_by_the_users_word() -> None:
    root = parse_xml(indoorgml(cell("c", solid((0, 0, 4000, 3000), tall=2500))))
    (found,) = cells_of(root, {}, 0.001)[0]
    assert found.plan.shape.area == pytest.approx(12)
    assert found.plan.height_m == pytest.approx(2.5)
