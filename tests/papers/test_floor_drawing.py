"""The floor drawing: every room told, no word on another, only the colours of the look."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest
import shapely
from tests.papers.invented_plan import big_house, long_names, many_bands, refused, small_house
from tests.papers.pictures import SVG, colours, outside, overlaps, parsed, words

from farwall.facts.plan import Plan
from farwall.floor.geometry import polygon_geometry
from farwall.floor.nouns import Room
from farwall.job.moments import oldest_edge
from farwall.papers import ink
from farwall.papers.floor_drawing import field_svg, floor_svg
from farwall.papers.lettering import PAPER_LETTERING, SCREEN_LETTERING, Lettering

ROOT = Path(__file__).resolve().parents[2]
HOUSES: list[Callable[[], Plan]] = [small_house, long_names, many_bands, refused, big_house]
LOOK = {ink.INK, ink.PAPER, ink.WHITE, ink.LINE, ink.SOFT, ink.DANGER, *ink.RAMP}
SIZES: list[tuple[Lettering, float, float]] = [
    (SCREEN_LETTERING, 960.0, 680.0),
    (PAPER_LETTERING, 532.0, 300.0),
    (PAPER_LETTERING, 340.0, 190.0),
]


@pytest.mark.parametrize("house", HOUSES)
@pytest.mark.parametrize(("lettering", "width", "height"), SIZES)
def test_no_word_of_the_floor_lies_on_another_or_sticks_out(
    house: Callable[[], Plan], lettering: Lettering, width: float, height: float
):
    svg = floor_svg(house(), width=width, height=height, lettering=lettering)
    found = words(svg)
    assert overlaps(found) == []
    assert outside(found, svg) == []


@pytest.mark.parametrize("house", HOUSES)
@pytest.mark.parametrize(("lettering", "width", "height"), SIZES)
def test_no_word_of_a_field_lies_on_another_or_sticks_out(
    house: Callable[[], Plan], lettering: Lettering, width: float, height: float
):
    plan = house()
    for field in plan.fields[: len(plan.fields) // len(plan.inputs.coats)][-7:]:
        svg = field_svg(plan, field, width=width, height=height, lettering=lettering)
        found = words(svg)
        assert overlaps(found) == [], field.id
        assert outside(found, svg) == [], field.id


@pytest.mark.parametrize("house", HOUSES)
@pytest.mark.parametrize(("lettering", "width", "height"), SIZES)
def test_every_room_is_named_on_the_floor_or_in_its_key(
    house: Callable[[], Plan], lettering: Lettering, width: float, height: float
):
    plan = house()
    svg = floor_svg(plan, width=width, height=height, lettering=lettering)
    told = " ".join(word.text for word in words(svg)).split()
    for room in plan.inputs.floor.rooms:
        for part in room.label.split():
            assert part in told, room.label


@pytest.mark.parametrize("house", HOUSES)
def test_only_the_colours_of_the_look_are_used(house: Callable[[], Plan]):
    plan = house()
    assert colours(floor_svg(plan)) <= LOOK
    for field in plan.fields[:5]:
        assert colours(field_svg(plan, field)) <= LOOK


def test_red_is_kept_for_the_live_edge_and_for_no():
    plan = small_house()
    assert ink.DANGER in colours(floor_svg(plan))
    for field in plan.fields:
        assert (ink.DANGER in colours(field_svg(plan, field))) == (len(field.bands) > 1)
    none = replace(plan, fields=())
    assert ink.DANGER not in colours(floor_svg(none))
    no = refused()
    assert ink.DANGER in colours(field_svg(no, no.fields[4]))


def test_the_oldest_edge_is_marked_with_its_age():
    plan = small_house()
    tightest = max(
        (f for f in plan.fields if f.coat == plan.fields[0].coat),
        key=lambda f: f.peak_age_min / f.open_time_min.low,
    )
    told = " ".join(word.text for word in words(floor_svg(plan)))
    assert "oldest edge" in told
    field = " ".join(word.text for word in words(field_svg(plan, tightest)))
    edge = oldest_edge(tightest)
    assert edge is not None
    assert f"{edge.age_min:.1f} min" in field


def lightness(colour: str) -> float:
    """L* of an sRGB colour: IEC 61966-2-1 to linear light, CIE 15:2018 for Y to L*."""
    channels = [int(colour[k : k + 2], 16) / 255 for k in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    y = 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]
    return 116 * y ** (1 / 3) - 16 if y > (6 / 29) ** 3 else y * (29 / 3) ** 3


def test_the_ramp_darkens_in_even_steps_in_grey():
    """The look names L* 92, 79, 66, 52, 38, 24; half a unit each for rounding to 8-bit colour."""
    steps = [lightness(colour) for colour in ink.RAMP]
    assert steps == pytest.approx([92, 79, 66, 52, 38, 24], abs=0.75)
    falls = [a - b for a, b in pairwise(steps)]
    assert max(falls) - min(falls) < 2


def test_the_ramp_runs_from_first_to_last():
    assert [ink.ramp_colour(k, 6) for k in range(6)] == list(ink.RAMP)
    assert (ink.ramp_colour(0, 2), ink.ramp_colour(1, 2)) == (ink.RAMP[0], ink.RAMP[-1])
    assert ink.ramp_colour(0, 1) == ink.RAMP[0]
    places = [ink.RAMP.index(ink.ramp_colour(k, 30)) for k in range(30)]
    assert places == sorted(places)


def test_bands_are_numbered_in_their_order():
    plan = many_bands()
    svg = field_svg(plan, plan.fields[0], width=532, height=300, lettering=PAPER_LETTERING)
    told = [word.text for word in words(svg)]
    assert [n for n in map(str, range(1, 31)) if n not in told] == []


def test_the_map_says_where_to_start_refill_and_leave():
    plan = small_house()
    great_room = plan.fields[4]
    told = [word.text for word in words(field_svg(plan, great_room))]
    assert {"start", "way out", "stop line", "walk"} <= set(told)
    assert "full tank 8:56" in told
    hall = [word.text for word in words(field_svg(plan, plan.fields[3]))]
    assert {"leave to", "Great room"} <= set(hall)


def test_a_field_that_cannot_be_done_shows_no_bands():
    plan = refused()
    svg = field_svg(plan, plan.fields[4])
    told = [word.text for word in words(svg)]
    assert "NO" in told
    assert not set(told) & {"1", "2", "start"}
    assert not colours(svg) & set(ink.RAMP)


def test_stop_lines_are_dashed_seven_three():
    plan = small_house()
    dashes = [
        node.get("stroke-dasharray")
        for node in parsed(field_svg(plan, plan.fields[3])).iter(f"{SVG}path")
        if node.get("stroke-dasharray")
    ]
    assert dashes.count("7 3") == len(plan.fields[3].stop_lines) + 1  # and one in the legend


@pytest.mark.parametrize("house", HOUSES)
def test_the_drawing_tells_itself_to_those_who_do_not_see_it(house: Callable[[], Plan]):
    plan = house()
    root = parsed(floor_svg(plan))
    title, described = root.find(f"{SVG}title"), root.find(f"{SVG}desc")
    assert title is not None
    assert described is not None
    assert plan.job in (title.text or "")
    assert all(room.label in (described.text or "") for room in plan.inputs.floor.rooms)
    assert root.get("role") == "img"


def test_marks_that_mean_something_to_xml_are_only_letters_here():
    plan = long_names()
    rooms = tuple(replace(room, name="a\x00b\x0b<b>&amp;\"'") for room in plan.inputs.floor.rooms)
    odd = replace(plan, inputs=replace(plan.inputs, floor=replace(plan.inputs.floor, rooms=rooms)))
    text = " ".join(word.text for word in words(floor_svg(odd)))
    assert "<b>&amp;" in text


def test_the_same_plan_draws_the_same_picture():
    assert floor_svg(small_house()) == floor_svg(small_house())
    plan = small_house()
    assert field_svg(plan, plan.fields[4]) == field_svg(plan, plan.fields[4])


def test_the_picture_does_not_hang_on_the_seed_of_hashes():
    """Each run of Python orders its sets anew; a file must not differ for that."""
    draw = (
        "from dataclasses import replace\n"
        "from tests.papers.invented_plan import small_house\n"
        "from farwall.papers.floor_drawing import floor_svg\n"
        "plan = small_house()\n"
        "name = 'Great room + Dining room + Kitchen + Hall + Entry'\n"
        "rooms = tuple(replace(room, name=name) for room in plan.inputs.floor.rooms)\n"
        "floor = replace(plan.inputs.floor, rooms=rooms)\n"
        "print(floor_svg(replace(plan, inputs=replace(plan.inputs, floor=floor))))\n"
    )
    pictures = {
        subprocess.run(
            [sys.executable, "-c", draw],
            cwd=ROOT, env={**os.environ, "PYTHONHASHSEED": seed}, check=True, capture_output=True,
        ).stdout
        for seed in "1234"
    }  # fmt: skip
    assert len(pictures) == 1


def test_storeys_stand_one_above_the_other():
    """Two storeys share their coordinates; their rooms must not be drawn over each other."""
    plan = small_house()
    below = plan.inputs.floor.rooms
    above = tuple(
        replace(room, id=f"u{room.id}", name=f"Upper {room.id}", storey="2") for room in below
    )
    two = replace(
        plan, inputs=replace(plan.inputs, floor=replace(plan.inputs.floor, rooms=(*below, *above)))
    )
    svg = floor_svg(two)
    found = words(svg)
    assert overlaps(found) == []
    middle = float(parsed(svg).get("viewBox", "").split()[3]) / 2
    upper = [w for w in found if w.text.startswith("Upper")]
    assert upper
    assert all(w.box[1] > middle - 20 for w in upper)


def test_a_room_smaller_than_a_letter_still_has_its_name():
    plan = small_house()
    tiny = Room("tiny", polygon_geometry(shapely.box(6.0, 6.0, 6.1, 6.1)), "Chase")
    inputs = replace(
        plan.inputs, floor=replace(plan.inputs.floor, rooms=(*plan.inputs.floor.rooms, tiny))
    )
    svg = floor_svg(replace(plan, inputs=inputs), width=340, height=190, lettering=PAPER_LETTERING)
    assert any("Chase" in word.text for word in words(svg))
    assert overlaps(words(svg)) == []


def test_two_sprayers_have_two_starts():
    plan = small_house()
    field = plan.fields[4]
    bands = tuple(replace(band, sprayer=1 + k % 2) for k, band in enumerate(field.bands))
    told = [word.text for word in words(field_svg(plan, replace(field, bands=bands)))]
    assert {"start 1", "start 2"} <= set(told)
