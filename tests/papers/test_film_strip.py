"""The pictures of a coat at a few moments."""

from dataclasses import replace

from tests.papers.invented_plan import small_house
from tests.papers.pictures import colours, words

from farwall.papers import ink
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
