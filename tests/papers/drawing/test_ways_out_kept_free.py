"""Where one begins and which line has which letter are not hidden by the arrow of a way out."""

from __future__ import annotations

import re
from functools import cache

import pytest
import shapely
from tests.midday import EXAMPLES
from tests.papers.pictures import SVG, parsed, words

from farwall.job.plan_job import plan_job
from farwall.papers.film_strip import film_strip_svg
from farwall.papers.floor_drawing import field_svg
from farwall.papers.lettering import PAPER_LETTERING
from farwall.papers.office.stop_drawing import stop_svg
from farwall.papers.office.stop_lines import stops_of
from farwall.papers.words import names_in
from farwall.phrasebook import speaking
from farwall.readers.job_json import read_job

_PERSON_R, _ARROW_WIDE = "8", "1.3"
_NUMBERS = re.compile(r"-?\d+(?:\.\d+)?")


@cache
def planned(name):
    return plan_job(read_job(EXAMPLES / name / "job.json"))


def arrows(svg):
    """The shafts of arrows: what is drawn with their stroke and no fill."""
    found = []
    for one in parsed(svg).iter(f"{SVG}path"):
        if one.get("stroke-width") == _ARROW_WIDE and one.get("fill") == "none":
            numbers = [float(each) for each in _NUMBERS.findall(one.get("d"))]
            found.append(shapely.LineString(list(zip(numbers[::2], numbers[1::2], strict=True))))
    return found


@pytest.mark.parametrize("language", ["en", "es"])
def test_no_word_lies_on_the_mark_of_who_begins(language):
    plan = planned("quince-street")
    with speaking(language, names_in(plan)):
        for field in plan.fields[:8]:
            svg = field_svg(plan, field, width=330.0, height=280.0, lettering=PAPER_LETTERING)
            people = [
                shapely.Point(float(one.get("cx")), float(one.get("cy"))).buffer(8)
                for one in parsed(svg).iter(f"{SVG}circle")
                if one.get("r") == _PERSON_R
            ]
            assert people, field.id
            hidden = [
                word.text
                for word in words(svg)
                if any(shapely.box(*word.box).intersects(one) for one in people)
            ]
            assert hidden == [], field.id


def test_a_letter_of_a_stop_line_lies_on_no_arrow():
    plan = planned("quince-street")
    stops = stops_of(plan)
    svg = stop_svg(plan, stops, (), units="us", width=532.0, height=300.0)
    shafts = arrows(svg)
    assert len(shafts) == 2
    letters = [word for word in words(svg) if word.text in {one.mark for one in stops}]
    assert len(letters) == len(stops)
    for letter in letters:
        assert not any(shapely.box(*letter.box).intersects(one) for one in shafts), letter.text


@pytest.mark.parametrize("width", [532.0, 960.0])
def test_every_arrow_of_the_moments_lies_whole_on_the_strip(width):
    svg = film_strip_svg(planned("fennel-court"), width=width, height=640.0)
    shafts = arrows(svg)
    assert shafts
    assert min(one.bounds[0] for one in shafts) >= 0
    assert max(one.bounds[2] for one in shafts) <= width
