"""The tape: where a minute lies on it, how it is ruled at each zoom, what stands on it."""

import xml.etree.ElementTree as ET
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.web.pages.shown_house import bands, house, logged

from farwall.facts.job import Place
from farwall.papers.lettering import text_width
from farwall.web.pages.looking_at import SCALES, Window, stretch, whole_of
from farwall.web.pages.tape import tape

WIDTHS = (860.0, 358.0)
SVG = "{http://www.w3.org/2000/svg}"


@pytest.fixture(scope="module")
def shown():
    return house()


def drawn(shown, window, minute=2.0, width=860.0, **more):
    found = tape(shown, window, minute=minute, width=width, **more)
    return found, ET.fromstring(found.svg)


def plumb_x(root):
    group = next(e for e in root.iter() if e.get("class") == "plumb")
    return float(group.get("transform").removeprefix("translate(").split()[0])


def words_on(root):
    return [text.text for text in root.iter(f"{SVG}text")]


@pytest.mark.parametrize("scale", SCALES)
@pytest.mark.parametrize("width", WIDTHS)
def test_the_plumb_line_stands_at_its_minutes_share_of_the_window(shown, scale, width):
    window = stretch(shown.course, scale, 3.0)
    _, root = drawn(shown, window, minute=3.0, width=width)
    share = (3.0 - window.from_min) / window.span_min
    assert plumb_x(root) == pytest.approx(share * width, abs=0.01)  # written to two places


@settings(max_examples=60, deadline=None)
@given(st.floats(0, 1), st.floats(0.5, 4.5), st.sampled_from(WIDTHS))
def test_at_every_zoom_no_word_runs_over_the_ends_and_none_over_the_next(at, span_log, width):
    shown = _HOUSE
    whole = whole_of(shown.course)
    middle = whole.from_min + at * whole.span_min
    asked = Window(middle - 10**span_log / 2, middle + 10**span_log / 2)
    _, root = drawn(shown, asked.within(whole, middle), minute=middle, width=width)
    rows = {}
    for text in root.iter(f"{SVG}text"):
        left = float(text.get("x"))
        if text.get("text-anchor") == "middle":
            left -= text_width(text.text, 12, bold=text.get("font-weight") is not None) / 2
        wide = text_width(text.text, 12, bold=text.get("font-weight") is not None)
        assert left >= 0
        assert left + wide < width
        rows.setdefault((text.get("y"), text.get("font-weight")), []).append((left, left + wide))
    for row in rows.values():
        row.sort()
        assert all(a[1] <= b[0] for a, b in pairwise(row))


_HOUSE = house()


def test_it_runs_from_survey_to_hand_over_and_names_the_work_between(shown):
    told = " ".join(words_on(drawn(shown, whole_of(shown.course))[1]))
    for name in ("survey", "clean", "coat 1", "hand-over"):
        assert name in told


def test_zoomed_to_minutes_a_field_has_its_rooms_and_bands(shown):
    field = max(shown.plan.fields, key=lambda one: len(one.bands))
    window = Window(field.start_min - 1, field.end_min + 1)
    _, near = drawn(shown, window)
    _, far = drawn(shown, whole_of(shown.course))
    label = shown.plan.inputs.floor.rooms[0].label
    assert any(label in one for one in words_on(near))
    assert not any(label in one for one in words_on(far))


def test_a_field_leads_to_its_own_moment_without_any_script(shown):
    window = stretch(shown.course, "coat", 1.0)
    _, root = drawn(shown, window, link="/houses/two?from=0&to=9&minute=")
    links = [e.get("href") for e in root.iter(f"{SVG}a")]
    minutes = sorted(float(one.rpartition("=")[2]) for one in links)
    first = [f for f in shown.plan.fields if f.coat == shown.plan.fields[0].coat]
    assert len(minutes) == len(first)
    for field, minute in zip(sorted(first, key=lambda f: f.start_min), minutes, strict=True):
        assert field.start_min - 0.05 <= minute <= field.end_min + 0.05


def test_what_is_done_is_solid_and_what_was_planned_stays_beside_it(shown):
    mine = bands(shown)
    told = logged(shown, ("band-done", mine[0].end_min + 2, {"band": mine[0].id}))
    window = stretch(told.course, "coat", 1.0)
    plain, entered = drawn(shown, window)[1], drawn(told, window)[1]

    def fills(root):
        return [e.get("fill") for e in root.iter(f"{SVG}rect")]

    solid = "#3b8697"
    assert solid not in fills(plain)
    assert solid in fills(entered)
    dashed = [e for e in entered.iter(f"{SVG}rect") if e.get("stroke-dasharray") == "3 2"]
    assert len(dashed) == len({f.id for f in shown.plan.fields if f.start_min < window.to_min})
    assert "band" in words_on(entered)


def test_the_minute_that_it_is_stands_on_it_only_where_it_is_seen(shown):
    window = stretch(shown.course, "coat", 1.0)
    assert "now" in words_on(drawn(shown, window, now_min=2.0)[1])
    assert "now" not in words_on(drawn(shown, window, now_min=9000.0)[1])


def test_nights_are_shaded_only_where_the_place_is_known():
    known = house(place=Place(40.0, -105.0))
    grey = [e for e in drawn(known, whole_of(known.course))[1].iter(f"{SVG}rect")
            if e.get("fill-opacity") == "0.3"]  # fmt: skip
    days = whole_of(known.course).span_min / 1440
    assert days - 1 <= len(grey) <= days + 1
    unknown = drawn(_HOUSE, whole_of(_HOUSE.course))[1]
    assert not [e for e in unknown.iter(f"{SVG}rect") if e.get("fill-opacity") == "0.3"]
