"""The pictures of a coat at a few moments."""

import re
from dataclasses import replace

from tests.papers.invented_plan import small_house
from tests.papers.pictures import colours, words

from farwall.job.moments import Person
from farwall.papers import film_strip, ink
from farwall.papers.film_strip import NOTHING, film_strip_svg

LOOK = {ink.INK, ink.PAPER, ink.WHITE, ink.LINE, ink.SOFT, ink.DANGER, *ink.RAMP}


def test_six_pictures_tell_time_share_tank_and_edge():
    told = [word.text for word in words(film_strip_svg(small_house()))]
    assert sum("sprayed, " in text and "in the tank" in text for text in told) == 6
    assert sum(text.startswith(("live edge ", "no live edge")) for text in told) >= 6
    assert "sprayed, keep off" in told


def test_only_the_colours_of_the_look_are_used():
    assert colours(film_strip_svg(small_house())) <= LOOK


def test_the_strip_keeps_to_its_height():
    for width, height in ((532.0, 640.0), (960.0, 900.0), (960.0, 300.0)):
        svg = film_strip_svg(small_house(), width=width, height=height)
        told = float(svg.split('viewBox="0 0 ')[1].split('"')[0].split()[1])
        assert told <= height + 1


def test_moments_asked_for_are_the_ones_shown():
    plan = small_house()
    told = [word.text for word in words(film_strip_svg(plan, minutes=(3.0, 9.0)))]
    assert sum("in the tank" in text for text in told) == 2


def test_a_coat_that_cannot_be_sprayed_says_so():
    plan = small_house()
    none = replace(plan, fields=tuple(replace(f, verdict="cannot") for f in plan.fields))
    assert NOTHING in [word.text for word in words(film_strip_svg(none))]


def test_a_narrow_picture_tells_the_tank_in_one_unit_and_runs_into_no_neighbour():
    """Before, three pictures side by side cut each other's litres off."""
    wide = [w.text for w in words(film_strip_svg(small_house(), width=960.0)) if "tank" in w.text]
    thin = [w.text for w in words(film_strip_svg(small_house(), width=400.0, height=300.0))
            if "tank" in w.text]  # fmt: skip
    assert all("gal (" in one for one in wide)
    assert all("gal in the tank" in one for one in thin)


def test_who_waits_outside_is_drawn_whole(monkeypatch):
    """A second sprayer a metre and more before the door once lay over the edge of the page."""
    plan = small_house()
    whole = film_strip.moment_at

    def waiting(*told):
        found = whole(*told)
        west = min(x for room in plan.inputs.floor.rooms
                   for x, _ in room.polygon.coordinates[0])  # fmt: skip
        south = min(y for room in plan.inputs.floor.rooms
                    for _, y in room.polygon.coordinates[0])  # fmt: skip
        there = Person("sprayer 2", (west - 2.0, south - 1.3), None)
        return replace(found, people=(*found.people, there))

    monkeypatch.setattr(film_strip, "moment_at", waiting)
    svg = film_strip_svg(plan, width=532.0, height=640.0)
    places = [tuple(map(float, one)) for one in re.findall(r'cx="([-\d.]+)" cy="([-\d.]+)"', svg)]
    assert places
    assert min(x for x, _ in places) >= 5.0
    assert max(y for _, y in places) <= 640.0 - 5.0
