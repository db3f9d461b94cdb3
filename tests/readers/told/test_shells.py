"""Floors out of shells of faces: lowest faces, steps, galleries, sills, and what is no shell."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies.told_houses import shell

from farwall.readers.told.shells import Face, Plan, floor_of, outline_of

Box = tuple[float, float, float, float]


def flat(box: Box, z: float, *, up: bool) -> Face:
    x0, y0, x1, y1 = box
    ring = [(x0, y0, z), (x1, y0, z), (x1, y1, z), (x0, y1, z)]
    return (ring if up else ring[::-1]), ()


def box_faces(box: Box, tall: float = 2.5) -> list[Face]:
    return [(face, ()) for face in shell(box, tall)]


def plan_of(faces: list[Face], stated_m2: float | None = None) -> Plan:
    plan = floor_of(faces, stated_m2=stated_m2)
    assert plan is not None
    return plan


def test_a_box_has_its_floor_and_height() -> None:
    plan = plan_of(box_faces((1, 1, 5, 4)))
    assert (plan.shape.area, plan.floor_m, plan.height_m) == (12, 0, 2.5)
    assert (plan.steps, plan.parts, plan.apart_m2) == ((), (), 0)


@given(st.permutations(range(6)), st.lists(st.booleans(), min_size=6, max_size=6))
def test_neither_order_nor_winding_of_faces_matters_to_a_box(
    order: list[int], turned: list[bool]
) -> None:
    faces = [shell((0, 0, 4, 3), 2.5)[i] for i in order]
    wound = [(face[::-1] if turn else face, ()) for face, turn in zip(faces, turned, strict=True)]
    assert plan_of(wound).shape.area == pytest.approx(12)


def test_a_floor_in_pieces_that_meet_is_one() -> None:
    faces = [flat((0, 0, 2, 3), 0, up=False), flat((2, 0, 4, 3), 1e-9, up=False)]
    assert plan_of([*faces, flat((0, 0, 4, 3), 2.5, up=True)]).shape.area == pytest.approx(12)


def test_a_step_is_floor_and_is_told_by_hand() -> None:
    """3 m² lie 0.18 m above the other 9 m²."""
    faces = [
        flat((0, 0, 3, 3), 0, up=False),
        flat((3, 0, 4, 3), 0.18, up=False),
        flat((0, 0, 4, 3), 2.5, up=True),
    ]
    plan = plan_of(faces)
    assert plan.shape.area == pytest.approx(12)
    assert plan.floor_m == 0
    assert plan.steps == ((0.18, pytest.approx(3)),)


def test_a_ceiling_larger_than_the_floor_adds_nothing() -> None:
    faces = [flat((0, 0, 4, 3), 0, up=False), flat((-0.1, -0.1, 4.1, 3.1), 2.5, up=True)]
    assert plan_of(faces).shape.area == pytest.approx(12)
    assert plan_of(faces).parts == ()


def test_a_window_sill_is_no_floor() -> None:
    sill = [flat((4, 1, 4.2, 2), 0.9, up=False), flat((4, 1, 4.2, 2), 2.1, up=True)]
    plan = plan_of([*box_faces((0, 0, 4, 3)), *sill])
    assert plan.shape.area == pytest.approx(12)
    assert plan.apart_m2 == 0


def test_a_gallery_beside_is_a_piece_of_its_own() -> None:
    faces = [
        flat((0, 0, 4, 3), 0, up=False),
        flat((4, 0, 6, 3), 3, up=False),
        flat((0, 0, 6, 3), 5.5, up=True),
    ]
    plan = plan_of(faces)
    (gallery,) = plan.parts
    assert (plan.shape.area, gallery.shape.area) == (pytest.approx(12), pytest.approx(6))
    assert (gallery.floor_m, gallery.height_m) == (3, 2.5)
    assert plan.area_m2 == pytest.approx(18)


def test_a_gallery_over_the_same_floor_needs_the_stated_area() -> None:
    faces = [
        flat((0, 0, 4, 3), 0, up=False),
        flat((0, 0, 2, 3), 2.9, up=False),
        flat((0, 0, 4, 3), 5.5, up=True),
    ]
    assert plan_of(faces).parts == ()
    assert plan_of(faces, stated_m2=12.0).parts == ()
    (gallery,) = plan_of(faces, stated_m2=18.0).parts
    assert gallery.shape.area == pytest.approx(6)


def test_walls_and_steep_roofs_are_no_floor() -> None:
    wall: Face = [(0, 0, 0), (4, 0, 0), (4, 0, 3), (0, 0, 3)], ()
    roof: Face = [(0, 0, 3), (4, 0, 3), (4, 3, 6), (0, 3, 6)], ()
    assert floor_of([wall, roof]) is None
    assert outline_of([wall, roof]) is None


def test_holes_are_kept() -> None:
    ring, _ = flat((0, 0, 4, 3), 0, up=False)
    hole, _ = flat((1, 1, 2, 2), 0, up=True)
    assert plan_of([(ring, (hole,))]).shape.area == pytest.approx(11)


def test_the_outline_holds_reveals_at_any_height() -> None:
    sill = flat((4, 1, 4.2, 2), 0.9, up=False)
    outline = outline_of([*box_faces((0, 0, 4, 3)), sill])
    assert outline is not None
    assert outline.area == pytest.approx(12.2)


def test_a_loop_that_crosses_itself_gives_its_larger_half_or_nothing() -> None:
    bow: Face = [(0, 0, 0), (4, 0, 0), (0, 3, 0), (4, 3, 0)], ()
    plan = floor_of([bow])
    assert plan is None or plan.area_m2 <= 12


coordinates = st.floats(-1e6, 1e6, allow_nan=False) | st.sampled_from([0.0, 1.0, 1e-300, 1e6])
loops = st.lists(st.tuples(coordinates, coordinates, coordinates), max_size=6)


@given(st.lists(st.tuples(loops, st.just(())), max_size=4))
def test_any_faces_give_a_sound_plan_or_none(faces: list[Face]) -> None:
    plan = floor_of(faces)
    assert plan is None or (plan.shape.is_valid and plan.shape.area > 0)
