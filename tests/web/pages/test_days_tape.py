"""The tapes of all houses under one ruler: one for each house, nothing outside, days in place."""

import re
import xml.etree.ElementTree as ET
from datetime import date, datetime, timedelta
from itertools import pairwise

import pytest
from tests.days.shop import shop

from farwall.days.calendar import calendar
from farwall.days.document import document
from farwall.papers.ink import RAMP
from farwall.papers.lettering import text_width
from farwall.web.pages.days_tape import Drawn, days_tape, span_of
from farwall.web.pages.light import LIGHT

TOLD = document(calendar(shop(4, crews=2)))
SVG = "{http://www.w3.org/2000/svg}"


def spanned(width=860.0, first=None, weeks=None):
    return span_of(TOLD, first=first, weeks=weeks, width=width)


def drawn(span, **more):
    return ET.fromstring(days_tape(Drawn(TOLD, span, **more)))


@pytest.mark.parametrize("width", [860.0, 358.0])
@pytest.mark.parametrize("weeks", [1, 4, None])
def test_every_house_has_a_tape_of_its_own_and_its_name_leads_there(width, weeks):
    root = drawn(spanned(width, weeks=weeks))
    links = [one.get("href") for one in root.iter(f"{SVG}a")]
    assert sorted(links) == sorted(f"/houses/{one['id']}" for one in TOLD["houses"])
    tapes = [one for one in root.iter(f"{SVG}rect") if one.get("stroke-width") == "1.2"]
    assert len(tapes) == 1 + len(TOLD["houses"])  # the ruler, then theirs


@pytest.mark.parametrize("width", [860.0, 358.0])
def test_nothing_is_drawn_outside_of_the_tape(width):
    root = drawn(spanned(width, weeks=1))
    for one in root.iter(f"{SVG}rect"):
        assert float(one.get("x")) >= -0.01
        assert float(one.get("x")) + float(one.get("width")) <= width + 0.01
    for one in root.iter(f"{SVG}text"):
        assert 0 <= float(one.get("x")) < width


def test_in_bright_sun_a_name_keeps_clear_of_what_stands_beside_it():
    """There small words are 15 px, not 12: the words beside a name begin a quarter further on."""

    def beside(light):
        before = LIGHT.set(light)
        try:
            root = drawn(spanned(358.0, weeks=1))
        finally:
            LIGHT.reset(before)
        names = [link[0] for link in root.iter(f"{SVG}a") if link[0].tag == f"{SVG}text"]
        return [
            (text_width(name.text, 12, bold=True), float(after.get("x")))
            for name, after in pairwise(root.iter(f"{SVG}text"))
            if name in names and after.get("y") == name.get("y")
        ]

    for light, px in (("paper", 12), ("sun", 15)):
        found = beside(light)
        assert len(found) == len(TOLD["houses"])
        assert all(at >= 5 + wide * px / 12 for wide, at in found)


def test_a_moment_lies_further_on_the_later_it_is_and_all_weeks_are_alike():
    span = spanned(weeks=3)
    at = [span.monday + timedelta(hours=h) for h in range(0, 21 * 24, 3)]
    places = [span.x(one) for one in at]
    assert places == sorted(places)
    for n in range(3):
        assert span.x(span.monday + timedelta(weeks=n)) == pytest.approx(n * span.width / 3)
    assert span.x(span.monday - timedelta(days=1)) == 0
    assert span.x(span.ends + timedelta(days=1)) == span.width


def test_the_ruler_begins_on_the_monday_of_the_day_asked_for():
    span = spanned(first=date(2026, 6, 11), weeks=1)
    assert span.monday.date() == date(2026, 6, 8)
    assert span.monday.tzinfo == datetime.fromisoformat(TOLD["begins"]).tzinfo


def test_the_first_day_at_a_house_is_a_bar_and_the_rest_is_dashed():
    text = days_tape(Drawn(TOLD, spanned(weeks=1)))
    bars = re.findall(r"<rect[^>]*height=\"18\"[^>]*>", text)
    assert any(RAMP[1] in one for one in bars)
    assert all("stroke-dasharray" not in one for one in bars if RAMP[1] in one)


def test_rain_and_another_trade_are_said_by_a_word_and_a_hatch_in_the_right_house():
    told = {**TOLD, "away": [
        {"house": TOLD["houses"][0]["id"], "trade": "plumber", "date": TOLD["begins"][:10]}
    ]}  # fmt: skip
    span = span_of(told, first=None, weeks=1, width=860.0)
    rain = (date.fromisoformat(TOLD["begins"][:10]) + timedelta(days=1),)
    root = ET.fromstring(days_tape(Drawn(told, span, rain=rain)))
    words = [one.text for one in root.iter(f"{SVG}text")]
    assert words.count("plumber") == 1
    assert words.count("rain") == len(TOLD["houses"])


def test_now_is_a_plumb_line_and_a_moment_outside_is_none():
    span = spanned(weeks=1)
    inside = days_tape(Drawn(TOLD, span, now=span.monday + timedelta(days=2)))
    assert 'class="plumb"' in inside
    assert 'class="plumb"' not in days_tape(Drawn(TOLD, span, now=span.ends))


def test_a_step_that_moved_leaves_a_dotted_outline_where_it_stood():
    one = TOLD["houses"][0]
    late = {**one, "steps": [
        {**step, "starts_at": (datetime.fromisoformat(step["starts_at"]) + timedelta(days=7))
         .isoformat(), "ends_at": (datetime.fromisoformat(step["ends_at"]) + timedelta(days=7))
         .isoformat()} for step in one["steps"]
    ]}  # fmt: skip
    told = {**TOLD, "houses": [late, *TOLD["houses"][1:]]}
    text = days_tape(Drawn(told, spanned(), was={one["id"]: one}))
    assert text.count("1 2.4") >= len(one["steps"])
    assert "1 2.4" not in days_tape(Drawn(told, spanned(), was={}))
