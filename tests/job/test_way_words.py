"""By which door a field is left, in words a person knows."""

from __future__ import annotations

from dataclasses import replace

from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.job.plan_job import plan_job
from farwall.job.way_words import near_words, no_dry_way, seam_words, way_words
from farwall.phrasebook import speaking, told


def test_a_door_is_told_by_what_lies_beyond_it_and_never_by_its_id():
    plan = plan_job(job(TWO_ROOMS))
    told = [way_words(plan, field) for field in plan.fields]
    label = {room.id: room.label for room in plan.inputs.floor.rooms}
    for words, field in zip(told, plan.fields, strict=True):
        assert field.exit not in words
        assert any(words.endswith(f" {name}") for name in label.values())
    assert any(words.startswith("the outside door of ") for words in told)


def test_an_open_plan_room_is_told_by_the_first_of_its_names():
    plan = plan_job(job(TWO_ROOMS))
    names = ("Great room + Kitchen + Hall", "Great room + Den")

    def told(*names):
        rooms = [
            replace(one, name=n) for one, n in zip(plan.inputs.floor.rooms, names, strict=True)
        ]
        floor = replace(plan.inputs.floor, rooms=tuple(rooms))
        named = replace(plan, inputs=replace(plan.inputs, floor=floor))
        return [way_words(named, field) for field in named.fields]

    assert any(words.endswith(" Great room") for words in told(names[0], "Bath"))
    # Where two begin alike, each is told whole.
    assert any(words.endswith(f" {names[0]}") for words in told(*names))


def test_what_is_no_door_is_told_as_it_stands():
    plan = plan_job(job(TWO_ROOMS))
    field = replace(plan.fields[0], exit="nowhere")
    assert way_words(plan, field) == "nowhere"


def test_a_line_is_told_by_the_rooms_on_its_sides():
    plan = plan_job(job(TWO_ROOMS))
    label = {room.id: room.label for room in plan.inputs.floor.rooms}
    for opening in plan.inputs.openings:
        words = seam_words(plan, opening.id)
        assert all(label[room] in words for room in opening.rooms)
    inside = next(one for one in plan.inputs.openings if len(set(one.rooms)) == 2)
    assert " between " in seam_words(plan, inside.id)
    assert seam_words(plan, "nowhere") == "nowhere"


def test_a_place_is_told_by_the_way_in_nearest_to_it_by_hand():
    """Three metres inwards from the middle of its outside door: 9.84 ft, told as 10."""
    plan = plan_job(job(TWO_ROOMS))
    out = next(one for one in plan.inputs.openings if len(one.rooms) == 1)
    (x0, y0), (x1, y1) = out.line[0], out.line[-1]
    alone = replace(plan, inputs=replace(plan.inputs, openings=(out,)))
    told = near_words(alone, out.rooms[0], ((x0 + x1) / 2 + 3.0, (y0 + y1) / 2))
    assert told == f"about 10 ft (3.0 m) from {seam_words(plan, out.id)}"
    at_door = near_words(plan, out.rooms[0], ((x0 + x1) / 2, (y0 + y1) / 2))
    assert at_door == f"about 0 ft (0.0 m) from {seam_words(plan, out.id)}"
    assert near_words(plan, "nowhere", (0.0, 0.0)) == ""


def test_where_nobody_gets_dry_is_told_by_the_rooms_and_not_by_figures():
    plan = plan_job(job(TWO_ROOMS))
    front, back = (
        next(one for one in plan.inputs.floor.rooms if one.id == name) for name in ("front", "back")
    )
    inside = [one.polygon.shape.representative_point().coords[0] for one in (front, back)]
    assert no_dry_way(plan, *inside) == f"No dry way leads from {front.label} to {back.label}."
    assert no_dry_way(plan, inside[0], inside[0]) == f"No dry way leads on through {front.label}."
    with speaking("es", [front.label, back.label]):
        assert told(no_dry_way(plan, *inside)).startswith("Ningún camino seco lleva de ")
