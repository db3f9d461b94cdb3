"""The drop map: names on no other name, small rooms in the key, storeys above each other."""

from __future__ import annotations

import re
from dataclasses import replace

from tests.papers.office import houses

from farwall.papers.office.drop_drawing import drop_svg

TEXT = re.compile(r'<text x="([\d.-]+)" y="([\d.-]+)" font-size="([\d.]+)"[^>]*>([^<]*)<')


def drawn(plan, seconds=None, **more):
    told = {"units": "us", "width": 530.0, "height": 320.0} | more
    return drop_svg(plan, seconds or {}, **told)


def test_every_room_is_named_once_in_the_map_or_in_its_key():
    plan = houses.long_names().plan
    svg = drawn(plan)
    assert svg.count("____ s") == len(plan.inputs.floor.rooms)


def test_the_rooms_own_seconds_stand_in_it():
    plan = houses.twelve().plan
    first = plan.inputs.floor.rooms[0].id
    svg = drawn(plan, {first: 7.5})
    assert svg.count("7.5 s") == 1
    assert svg.count("____ s") == len(plan.inputs.floor.rooms) - 1


def test_two_storeys_are_two_drawings_with_hatches_of_their_own():
    plan = houses.twelve().plan
    rooms = plan.inputs.floor.rooms
    split = tuple(replace(r, storey="up" if n % 2 else "") for n, r in enumerate(rooms))
    floor = replace(plan.inputs.floor, rooms=split)
    svg = drawn(replace(plan, inputs=replace(plan.inputs, floor=floor)))
    assert 'id="drops0-tight"' in svg
    assert 'id="drops1-tight"' in svg


def test_the_same_floor_gives_the_same_drawing_within_its_width():
    plan = houses.twelve().plan
    svg = drawn(plan)
    assert svg == drawn(plan)
    for x, _, _, _ in TEXT.findall(svg):
        assert 0 <= float(x) <= 530
