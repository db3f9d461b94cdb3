"""The pictures of the sun: an hour each, what they say, and nothing where no sun falls."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from dataclasses import replace

from tests.job.sun_house import sun_job

from farwall.job.sun_day import sun_day
from farwall.papers.drawing.frame import Frame
from farwall.papers.drawing.sun_marks import draw_sun, north_arrow
from farwall.papers.sun_pictures import MOST_PICTURES, scenes_of, sun_svg
from farwall.papers.svg import Svg


def hour(minute: float) -> str:
    return f"{int(minute // 60)}:{int(minute % 60):02d}"


def drawn(job=None, **words):
    job = job or sun_job()
    scenes = scenes_of(job.floor, sun_day(job).patches)
    return sun_svg(scenes, time=hour, full_hour_min=0.0, **words)


def texts(svg: str) -> list[str]:
    return [one.text or "" for one in ET.fromstring(svg).iter("{http://www.w3.org/2000/svg}text")]


def test_each_picture_has_its_hour_and_names_the_rooms_in_the_sun():
    found = texts(drawn())
    hours = [one for one in found if re.fullmatch(r"\d+:00", one)]
    assert 3 < len(hours) <= MOST_PICTURES
    assert any(one.startswith("East room") for one in found)
    assert any(one.startswith("West room") for one in found)
    assert "N" in found


def test_sizes_come_in_the_users_units():
    assert "m²" in " ".join(texts(drawn(units="metric")))
    assert "ft²" in " ".join(texts(drawn(units="us")))


def test_the_sun_is_hatched_too_so_that_grey_shows_it():
    svg = drawn()
    assert svg.count("url(#sun-sun)") >= 4
    assert 'fill="#f2d98b"' in svg


def test_where_no_sun_falls_it_says_so():
    assert "No sun falls on this floor on that day" in texts(
        sun_svg([], time=hour, full_hour_min=0.0)
    )


def test_it_is_no_higher_than_asked():
    root = ET.fromstring(drawn(width=500, height=600))
    assert float(root.get("height")) <= 600.01


def test_the_arrow_points_to_the_north_of_the_plan():
    """By hand: north at 90 degrees clockwise from up lies to the right, its letter too."""
    svg = Svg(width=100, height=100, family="sans")
    north_arrow(svg, (50, 50), 90.0, size=10)
    letter = next(part for part in svg.parts if ">N<" in part)
    assert float(re.search(r'x="([\d.]+)"', letter)[1]) > 60


def test_nothing_is_drawn_for_no_patch():
    svg = Svg(width=10, height=10, family="sans")
    draw_sun(svg, Frame(0, 0, 0, 0, 1), [])
    assert svg.parts == []


def test_each_storey_that_the_sun_reaches_is_a_scene_of_its_own():
    job = sun_job()
    rooms = tuple(
        replace(room, storey="up" if room.id == "east" else "down") for room in job.floor.rooms
    )
    floor = replace(job.floor, rooms=rooms)
    scenes = scenes_of(floor, sun_day(replace(job, floor=floor)).patches)
    assert {tuple(room.id for room in scene.rooms) for scene in scenes} == {
        ("west", "hall"),
        ("east",),
    }
