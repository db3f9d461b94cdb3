"""The masking on the plan: every room numbered as in the list, no word on another, grey alone."""

from __future__ import annotations

from dataclasses import replace

import pytest
import shapely
from tests.papers.invented_plan import big_house, long_names, small_house
from tests.papers.pictures import colours, outside, overlaps, words

from farwall.facts.job import Job
from farwall.facts.supplies import Masking, MaskItem, Supplies
from farwall.floor.nouns import Floor
from farwall.job.office.masking.reckon import masked_in
from farwall.papers import ink
from farwall.papers.lettering import PAPER_LETTERING, SCREEN_LETTERING
from farwall.papers.masking.drawing import masking_svg, place_on_floor
from farwall.papers.masking.strips import style_of
from farwall.phrasebook import speaking

HOUSES = [small_house, long_names, big_house]
SIZES = [(PAPER_LETTERING, 532.0, 380.0), (SCREEN_LETTERING, 900.0, 640.0),
         (SCREEN_LETTERING, 390.0, 420.0)]  # fmt: skip


def job_of(plan, **masking):
    inputs = plan.inputs
    floor = Floor(inputs.floor.rooms, inputs.openings, inputs.fixtures)
    return Job(1, floor, inputs.exits, supplies=Supplies(masking=Masking(**masking)))


def things(plan):
    """One of each kind that a drawing has a mark for, in the middle of the first rooms."""
    kinds = ("drain", "register", "metal", "appliance", "stair", "post", "other")
    rooms = plan.inputs.floor.rooms
    found = []
    for n, kind in enumerate(kinds):
        room = rooms[n % len(rooms)]
        at = room.polygon.shape.representative_point()
        found.append(MaskItem(kind, room.id, (at.x, at.y), count=n + 1, take_out=n % 2 == 0))
    return tuple(found)


@pytest.mark.parametrize("house", HOUSES)
@pytest.mark.parametrize(("lettering", "width", "height"), SIZES)
@pytest.mark.parametrize("language", ["en", "es"])
def test_no_word_lies_on_another_or_sticks_out(house, lettering, width, height, language):
    plan = house()
    masked = masked_in(job_of(plan, stage="after paint", items=things(plan)))
    with speaking(language, {room.name for room in masked.rooms}):
        svg = masking_svg(plan, masked, width=width, height=height, lettering=lettering)
    found = words(svg)
    assert overlaps(found) == []
    assert outside(found, svg) == []


@pytest.mark.parametrize("house", HOUSES)
@pytest.mark.parametrize("units", ["us", "metric"])
def test_every_room_stands_on_the_plan_by_its_number_of_the_list(house, units):
    plan = house()
    masked = masked_in(job_of(plan, stage="after paint"))
    seen = [one.text.split()[0] for one in words(masking_svg(plan, masked, units=units))]
    for room in masked.rooms:
        assert str(room.number) in seen


def test_a_room_that_is_not_masked_says_so_and_has_no_number():
    plan = small_house()
    masked = masked_in(job_of(plan, not_masked=(plan.inputs.floor.rooms[-1].id,)))
    told = " ".join(one.text for one in words(masking_svg(plan, masked)))
    assert "not masked" in told
    assert len(masked.rooms) == len(plan.inputs.floor.rooms) - 1


def test_what_is_taken_out_says_so_by_its_letter():
    plan = small_house()
    masked = masked_in(job_of(plan, items=things(plan)))
    told = [one.text for one in words(masking_svg(plan, masked))]
    assert "a drain: take out" in told
    assert "b 2 × register" in told


def test_a_height_of_its_own_stands_in_its_room_and_in_the_key():
    plan = small_house()
    room = max(plan.inputs.floor.rooms, key=lambda one: one.polygon.shape.area).id
    masked = masked_in(job_of(plan, stage="after paint", room_film_m={room: 2.4384}))
    told = [one.text for one in words(masking_svg(plan, masked))]
    assert any(one.startswith('96"') for one in told)
    assert 'film 96"' in told


def test_dams_are_named_with_their_length():
    plan = small_house()
    masked = masked_in(job_of(plan))
    told = [one.text for one in words(masking_svg(plan, masked))]
    outs = [one for one in plan.inputs.openings if one.kind == "outside"]
    assert sum(one.startswith("dam ") for one in told) == len(outs) > 0


def test_heights_are_told_apart_by_shape():
    assert [style_of(inches * 0.0254) for inches in (20, 36, 40, 48, 72, 96)] == [
        "low", "low", "usual", "usual", "full", "full",
    ]  # fmt: skip


@pytest.mark.parametrize("house", HOUSES)
def test_it_has_inks_and_no_colour(house):
    plan = house()
    svg = masking_svg(plan, masked_in(job_of(plan, items=things(plan))), ground=ink.PAPER)
    assert colours(svg) <= {ink.INK, ink.PAPER, ink.WHITE, ink.LINE, ink.SOFT}


def test_before_board_no_strip_is_drawn_along_walls():
    plan = small_house()
    bare = masked_in(job_of(replace(plan), stage="before board"))
    assert masking_svg(plan, bare).count("<path") < masking_svg(
        plan, masked_in(job_of(plan, stage="after paint"))
    ).count("<path")


def test_the_same_floor_gives_the_same_drawing():
    plan = big_house()
    masked = masked_in(job_of(plan, items=things(plan)))
    assert masking_svg(plan, masked) == masking_svg(big_house(), masked)


@pytest.mark.parametrize("house", HOUSES)
def test_a_place_of_the_drawing_is_read_back_to_the_room_whose_number_stands_there(house):
    plan = house()
    masked = masked_in(job_of(plan, stage="after paint"))
    drawn = {"units": "us", "width": 920.0, "height": 660.0, "lettering": SCREEN_LETTERING}
    svg = masking_svg(plan, masked, **drawn)
    by_number = {str(room.number): room.room for room in masked.rooms}
    shapes = {one.id: one.polygon.shape for one in plan.inputs.floor.rooms}
    seen = set()
    for word in words(svg):
        room = by_number.get(word.text)
        if room is not None:
            left, top, right, low = word.box
            at = ((left + right) / 2, (top + low) / 2)
            place, found = place_on_floor(plan, masked, at, **drawn)
            assert found == room
            assert shapes[room].buffer(0.02).contains(shapely.Point(place))
            seen.add(room)
    assert seen


def test_no_floor_lies_at_the_corner_of_the_drawing_or_beyond_it():
    plan = small_house()
    masked = masked_in(job_of(plan))
    drawn = {"units": "us", "width": 920.0, "height": 660.0, "lettering": SCREEN_LETTERING}
    for at in ((0.0, 0.0), (-1.0, -1.0), (5000.0, 10.0), (10.0, 5000.0), (float("nan"), 10.0)):
        assert place_on_floor(plan, masked, at, **drawn) is None
