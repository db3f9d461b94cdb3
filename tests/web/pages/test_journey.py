"""Through a real browser: the key, a small house, its tape by mouse, fingers, keys and play."""

from __future__ import annotations

import json

import pytest
from tests.web.pages.office import two_rooms
from tests.web.pages.serving import KEY, PLANNED_MS, serving

from farwall.store.book import Book

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def served(tmp_path_factory):
    """A server over a book with a small house in it."""
    folder = tmp_path_factory.mktemp("journey")
    with Book.open(folder / "book") as book:
        facts = json.loads(json.dumps(two_rooms()))
        book.put_facts("two", facts, who="Ann", at="2026-06-01T08:00:00+00:00", name="Two rooms")
    with serving(folder) as here:
        yield here


def entered(served, browser, **how):
    """A page of the house, in by the key, and what the browser complained of."""
    page = browser.new_context(**{"viewport": {"width": 1280, "height": 800}} | how).new_page()
    complaints = []
    page.on("pageerror", lambda error: complaints.append(str(error)))
    page.on("console", lambda said: complaints.append(said.text) if said.type == "error" else None)
    page.goto(served)
    page.get_by_label("Key").fill(KEY)
    page.get_by_role("button", name="Enter").click()
    page.get_by_role("link", name="Two rooms").click()
    page.locator("#tape").wait_for(timeout=PLANNED_MS)  # the page looks again by itself
    return page, complaints


def span(page):
    drawn = page.locator(".tape-drawing").first
    return float(drawn.get_attribute("data-to")) - float(drawn.get_attribute("data-from"))


def zoomed_from(page, before):
    page.wait_for_function(
        "was => { const d = document.querySelector('.tape-drawing').dataset;"
        " return Math.abs(d.to - d.from - was) > 0.5 }", arg=before,
    )  # fmt: skip
    return span(page)


def moved_from(page, minute):
    page.locator(f'#floor:not([data-minute="{minute}"])').wait_for()
    return page.locator("#floor").get_attribute("data-minute")


def test_by_mouse_and_keys_the_tape_slides_and_zooms_and_the_floor_follows(served, browser):
    page, complaints = entered(served, browser)
    tape, floor, head = (
        page.get_by_role("slider"),
        page.locator("#floor"),
        page.locator("#now-head"),
    )
    first, told = floor.get_attribute("data-minute"), head.inner_text()
    box = tape.bounding_box()
    page.mouse.move(box["x"] + 60, box["y"] + 40)
    page.mouse.down()
    page.mouse.move(box["x"] + box["width"] * 0.7, box["y"] + 40, steps=4)
    page.mouse.up()
    slid = moved_from(page, first)
    page.wait_for_function(
        "was => document.getElementById('now-head').textContent !== was", arg=told
    )
    page.wait_for_url("**minute=**")  # all that was slid over has been shown

    tape.focus()
    before = span(page)
    page.keyboard.press("+")
    near = zoomed_from(page, before)
    assert near == pytest.approx(before / 2, rel=0.02)
    at = float(tape.get_attribute("aria-valuenow"))
    page.keyboard.press("ArrowRight")
    assert 0 < float(tape.get_attribute("aria-valuenow")) - at < 5
    page.get_by_role("link", name="survey to hand-over").click()
    whole = zoomed_from(page, near)
    assert whole > 10 * 1440
    page.mouse.move(box["x"] + 300, box["y"] + 40)
    page.keyboard.down("Control")
    page.mouse.wheel(0, -60)
    page.keyboard.up("Control")
    assert zoomed_from(page, whole) < whole
    assert slid
    assert complaints == []


def test_two_fingers_zoom_and_one_slides(served, browser):
    page, complaints = entered(
        served, browser, viewport={"width": 390, "height": 844}, has_touch=True
    )
    tape = page.locator("#tape")
    tape.scroll_into_view_if_needed()
    box = tape.bounding_box()
    y, middle = box["y"] + 30, box["x"] + box["width"] / 2
    touch = page.context.new_cdp_session(page)

    def fingers(kind, *places):
        points = [{"x": x, "y": y, "id": n} for n, x in enumerate(places)]
        touch.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": points})

    before, at = span(page), page.locator("#floor").get_attribute("data-minute")
    fingers("touchStart", middle - 30, middle + 30)
    for apart in (45, 60, 90):
        fingers("touchMove", middle - apart, middle + apart)
    fingers("touchEnd")
    page.wait_for_function(
        "to => { const d = document.querySelector('.tape-drawing').dataset;"
        " return Math.abs((d.to - d.from) / to - 1) < 0.1 }", arg=before / 3,
    )  # fmt: skip
    near = span(page)
    fingers("touchStart", middle)
    fingers("touchMove", middle + 60)
    fingers("touchEnd")
    moved_from(page, at)
    assert span(page) == pytest.approx(near, rel=0.02)
    assert complaints == []


def test_it_plays_at_a_speed_of_choice(served, browser):
    page, complaints = entered(served, browser)
    at = page.locator("#floor").get_attribute("data-minute")
    page.get_by_label("at", exact=True).select_option("60")
    page.get_by_role("button", name="Play").click()
    page.wait_for_function(
        "was => Number(document.getElementById('floor').dataset.minute) > was + 60", arg=float(at)
    )
    page.get_by_role("button", name="Pause").click()
    assert page.get_by_role("button", name="Play").is_visible()
    assert complaints == []


def test_without_script_the_tape_is_links_and_an_order_is_a_form(served, browser):
    page, _ = entered(served, browser, java_script_enabled=False)
    first = page.locator("#floor").get_attribute("data-minute")
    page.get_by_text("One step back").click()
    moved_from(page, first)
    before = span(page)
    page.get_by_role("link", name="nearer").click()
    page.locator(".tape-drawing").first.wait_for()
    assert span(page) < before
    assert page.locator("#playing").is_hidden()
    page.get_by_role("link", name="Weigh an order of your own").click()
    names = page.locator("#fields .names")
    names.first.wait_for()
    told = names.all_inner_texts()
    page.locator("#fields button").nth(1).click()
    page.locator("#fields").wait_for()
    assert names.all_inner_texts()[:2] == told[:2][::-1]
