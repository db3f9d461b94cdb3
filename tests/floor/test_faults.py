"""A sound floor has no faults; each way of spoiling one is named, all of them at once."""

from collections.abc import Callable
from dataclasses import replace

import pytest
from hypothesis import given
from tests.shapes import AWKWARD, TWO_ROOMS, Place, box
from tests.strategies.floors import floors

from farwall.floor.faults import faults_of
from farwall.floor.geometry import PolygonGeometry
from farwall.floor.nouns import Exit, Fixture, Floor, Opening

Spoil = Callable[[Floor], Floor]


@pytest.mark.parametrize("place", AWKWARD.values(), ids=AWKWARD.keys())
def test_awkward_shapes_are_sound(place: Place) -> None:
    assert faults_of(place.floor, place.exits) == []


@given(floors())
def test_drawn_houses_are_sound(drawn: tuple[Floor, tuple[Exit, ...]]) -> None:
    assert faults_of(*drawn) == []


def room(floor: Floor, polygon: PolygonGeometry) -> Floor:
    return replace(floor, rooms=(replace(floor.rooms[0], polygon=polygon), *floor.rooms[1:]))


def opening(floor: Floor, **changes: object) -> Floor:
    first, *rest = floor.openings
    return replace(floor, openings=(replace(first, **changes), *rest))  # type: ignore[arg-type]


def ring(*points: tuple[float, float]) -> PolygonGeometry:
    return PolygonGeometry((points,))


@pytest.mark.parametrize(
    ("spoil", "place", "words"),
    [
        (lambda f: replace(f, rooms=()), "floor.rooms", "no room"),
        (lambda f: replace(f, rooms=f.rooms + f.rooms[:1]), "floor.rooms", "used 2 times"),
        (lambda f: replace(f, openings=f.openings * 2), "floor.openings", "used 2 times"),
        (lambda f: room(f, box(0, 0, 4, 3.5)), "floor.rooms", "overlap by 2.00 m²"),
        (
            lambda f: room(f, ring((0, 0), (4, 0), (0, 3), (4, 3), (0, 0))),
            "floor.rooms[0].polygon",
            "not sound",
        ),
        (
            lambda f: room(f, ring((0, 0), (0, 3), (4, 3), (4, 0), (0, 0))),
            "floor.rooms[0].polygon",
            "clockwise",
        ),
        (
            lambda f: room(f, ring((0, 0), (4, 0), (4, 3), (0, 3))),
            "floor.rooms[0].polygon",
            "does not close",
        ),
        (lambda f: room(f, ring((0, 0), (4, 0), (0, 0))), "floor.rooms[0].polygon", "four points"),
        (
            lambda f: room(f, ring((0, 0), (4, float("nan")), (4, 3), (0, 3), (0, 0))),
            "floor.rooms[0].polygon",
            "no number",
        ),
        (lambda f: room(f, box(0, 0, 4000, 9000)), "floor.rooms[0].polygon", "check the unit"),
        (lambda f: room(f, box(0, 0, 0.04, 0.03)), "floor.rooms[0].polygon", "check the unit"),
        (
            lambda f: opening(f, rooms=("cellar",)),
            "floor.openings[0].rooms",
            "“cellar” that is not there. There are: front, back.",
        ),
        (lambda f: opening(f, rooms=("front", "back")), "floor.openings[0].rooms", "names 2 rooms"),
        (lambda f: opening(f, kind="door"), "floor.openings[0].rooms", "names 1 rooms"),
        (lambda f: opening(f, line=((1, 0), (1, 0))), "floor.openings[0].line", "no length"),
        (lambda f: opening(f, line=((1, 1.5), (2, 1.5))), "floor.openings[0].line", "on a wall"),
        (lambda f: opening(f, line=((9, 0), (9.9, 0))), "floor.openings[0].line", "on a wall"),
        (
            lambda f: replace(f, fixtures=(Fixture("tub", box(20, 20, 21, 22)),)),
            "floor.fixtures[0]",
            "stands in no room",
        ),
    ],
)
def test_each_spoilt_floor_is_told_by_place_and_words(spoil: Spoil, place: str, words: str) -> None:
    told = {(m.where, f"{m.what} {m.remedy}") for m in faults_of(spoil(TWO_ROOMS.floor))}
    assert any(where == place and words in what for where, what in told), told


@pytest.mark.parametrize(
    ("exit_", "words"),
    [
        (Exit("e", "nowhere"), "“nowhere” that is not there. There are: way-out."),
        (Exit("e", "between"), "leads to another room"),
    ],
)
def test_exits_use_outside_openings(exit_: Exit, words: str) -> None:
    (fault,) = faults_of(TWO_ROOMS.floor, (exit_,))
    assert fault.where == "exits[0].opening"
    assert words in f"{fault.what} {fault.remedy}"


def test_all_faults_are_told_at_once() -> None:
    bad = replace(
        opening(room(TWO_ROOMS.floor, box(0, 0, 4, 3.5)), line=((9, 0), (9.9, 0))),
        fixtures=(Fixture("tub", box(20, 20, 21, 22)),),
    )
    faults = faults_of(bad, (Exit("e", "nowhere"), Exit("f", "between")))
    assert len(faults) == 6
    assert all(fault.where and fault.what and fault.remedy for fault in faults)


def test_rooms_of_two_storeys_may_lie_over_each_other() -> None:
    first, second = TWO_ROOMS.floor.rooms
    stacked = (replace(first, storey="1"), replace(second, polygon=first.polygon, storey="2"))
    assert faults_of(Floor(stacked)) == []


def test_an_opening_within_one_room_may_cross_it_from_wall_to_wall() -> None:
    neck = Opening("neck", "wide", ((0, 1.5), (4, 1.5)), ("front", "front"), 4.0)
    assert faults_of(replace(TWO_ROOMS.floor, openings=(neck,))) == []


def test_a_name_of_a_thousand_letters_does_not_fill_the_sentence():
    long = "d" * 1000
    odd = Opening(long, "door", ((1.0, 0.0), (2.0, 0.0)), ("r" * 1000,), 0.8)
    faults = faults_of(Floor((), openings=(odd,)), ())
    assert faults
    assert max(len(str(one)) for one in faults) < 400
