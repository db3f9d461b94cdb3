"""The floor of a moment: every storey, whoever is on it, what the tank holds."""

import xml.etree.ElementTree as ET

import pytest
from tests.web.pages.shown_house import house

from farwall.floor.geometry import PolygonGeometry
from farwall.job.moments import moment_at
from farwall.web.pages.floor_people import level_box
from farwall.web.pages.moment import floor_at, frames, in_order

SVG = "{http://www.w3.org/2000/svg}"


@pytest.fixture(scope="module")
def shown():
    return house()


def two_storeys(shown):
    """The same house with its rooms on two storeys, for the drawing alone."""
    from dataclasses import replace

    rooms = shown.plan.inputs.floor.rooms
    apart = tuple(
        replace(room, storey=f"level {n}", polygon=PolygonGeometry(room.polygon.coordinates))
        for n, room in enumerate(rooms, 1)
    )
    floor = replace(shown.plan.inputs.floor, rooms=apart)
    plan = replace(shown.plan, inputs=replace(shown.plan.inputs, floor=floor))
    return replace(shown, plan=plan)


def levels(root):
    return [
        float(e.get("height")) for e in root.iter(f"{SVG}rect")
        if e.get("width") == "8" and e.get("fill") == "#1f2a30"
    ]  # fmt: skip


def test_the_tank_beside_the_sprayer_falls_as_a_band_is_sprayed(shown):
    band = next(b for f in shown.plan.fields for b in f.bands)
    late = band.start_min + 0.9 * (band.end_min - band.start_min)
    first, then = (
        levels(ET.fromstring(floor_at(shown, at))) for at in (band.start_min + 0.01, late)
    )
    assert len(first) == len(then) == 1
    assert then[0] < first[0] <= 15


def test_it_stands_on_the_side_away_from_the_wand(shown):
    band = next(b for f in shown.plan.fields for b in f.bands)
    moment = moment_at(shown.plan, shown.plan.fields[0].coat, band.start_min + 0.1)
    frame = frames(shown.grounds)[0][1]
    person = moment.people[0]
    left, _, right, _ = level_box(person, frame)
    x = frame.at(person.at)[0]
    assert right < x or left > x


def test_every_storey_is_drawn_the_sprayed_one_first_or_the_one_asked_for(shown):
    split = two_storeys(shown)
    field = split.plan.fields[0]
    moment = moment_at(split.plan, field.coat, field.start_min + 0.5)
    grounds = split.grounds
    mine = in_order(moment, grounds, 0)[0]
    assert set(field.rooms) & set(mine.room_by_id)
    assert in_order(moment, grounds, 2)[0] is grounds[1]
    assert in_order(moment, grounds, 9)[0] is mine
    drawn = floor_at(split, field.start_min + 0.5, path="/houses/two")
    root = ET.fromstring(drawn)
    words = [text.text for text in root.iter(f"{SVG}text")]
    assert {"level 1", "level 2"} <= set(words)
    links = [e.get("href") for e in root.iter(f"{SVG}a")]
    assert len(links) == 1
    assert "storey=" in links[0]


def test_the_storeys_lie_beside_each_other(shown):
    (first, large), (second, small) = frames(two_storeys(shown).grounds)
    east = large.at((first.outside[2], 0))[0]
    west = small.at((second.outside[0], 0))[0]
    assert east < west
