"""A newcomer before an empty book, in a browser: by mouse, by keyboard alone, on a phone."""

from __future__ import annotations

import pytest
from tests.web.pages.serving import KEY, PLANNED_MS, serving

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def served(tmp_path_factory):
    with serving(tmp_path_factory.mktemp("first")) as here:
        yield here


def opened(browser, served, **more):
    """A page that is in, and what its console complains of."""
    page = browser.new_context(**more).new_page()
    complaints: list[str] = []
    page.on("pageerror", lambda error: complaints.append(str(error)))
    page.goto(served)
    page.locator("#key").fill(KEY)
    page.keyboard.press("Enter")
    page.locator('a[href="/rooms"]').wait_for()
    return page, complaints


def faults(page):
    """What axe finds against the page."""
    from axe_playwright_python.sync_playwright import Axe

    found = Axe().run(page).response["violations"]
    return [(one["id"], one["nodes"][0]["html"][:120]) for one in found]


def test_by_mouse_from_the_empty_book_to_a_plan(served, browser):
    page, complaints = opened(browser, served, viewport={"width": 1280, "height": 800})
    page.get_by_role("link", name="Type the rooms").click()
    page.get_by_label("Room 1: name").fill("Great room")
    page.get_by_label("Room 1: length").fill("16")
    page.get_by_role("button", name="Make this floor").click()
    slips = page.get_by_role("alert")
    slips.wait_for()
    assert page.evaluate("document.activeElement.id") == "slips"
    assert faults(page) == []
    slips.get_by_role("link").first.click()
    assert page.evaluate("document.activeElement.id") == "b-room-1-wide"
    page.keyboard.type("14")
    page.get_by_role("button", name="Make this floor").click()
    page.get_by_label("Day and hour").wait_for()
    assert faults(page) == []
    page.get_by_text("What is this?").first.click()
    page.get_by_text("The first stroke, by the clock of the house").wait_for()
    page.get_by_role("button", name="Plan this floor").click()
    page.locator("#tape").wait_for(timeout=PLANNED_MS)
    for way in ("survey", "samples", "crew"):
        page.get_by_role("link", name=way, exact=True).click()
        page.locator("form[data-start]").wait_for()
        assert faults(page) == []
    assert complaints == []


def test_by_keyboard_alone(served, browser):
    page, complaints = opened(browser, served, viewport={"width": 1280, "height": 800})

    def tab_to(what):
        page.locator(what).first.wait_for()
        for _ in range(80):
            page.keyboard.press("Tab")
            if page.evaluate("(it) => document.activeElement.matches(it)", what):
                return
        pytest.fail(f"no way to {what} by Tab")

    tab_to('a[href="/rooms"]')
    page.keyboard.press("Enter")
    tab_to("#b-room-1-name")
    page.keyboard.type("Study")
    page.keyboard.press("Tab")
    page.keyboard.type("12")
    page.keyboard.press("Tab")
    page.keyboard.type("10' 6\"")
    page.keyboard.press("Enter")
    tab_to("#b-tools-tank-l")
    page.keyboard.type("3")  # what Tab enters is selected: typing replaces it
    page.keyboard.press("Enter")
    page.locator("#tape").wait_for(timeout=PLANNED_MS)
    page.goto(f"{page.url.split('?')[0]}/crew")
    assert page.get_by_label("Tank, gal").input_value() == "3"
    assert complaints == []


def test_on_a_phone_a_drop_is_timed_by_one_tap_and_kept(served, browser):
    page, complaints = opened(
        browser, served, viewport={"width": 390, "height": 844}, has_touch=True
    )
    page.goto(f"{served}/rooms")
    page.get_by_label("Room 1: name").fill("Pantry")
    page.get_by_label("Room 1: length").fill("8")
    page.get_by_label("Room 1: width").fill("6")
    page.get_by_role("button", name="Make this floor").tap()
    page.get_by_role("button", name="Plan this floor").wait_for()
    page.goto(f"{page.url.removesuffix('/first')}/survey")
    assert page.evaluate("document.documentElement.scrollWidth") == 390
    page.get_by_role("button", name="Time with a watch: Drop test, s").first.tap()
    watch = page.get_by_role("button", name="Stop: Drop test, s")
    assert watch.bounding_box()["height"] >= 120
    page.wait_for_timeout(700)
    watch.tap()
    seconds = page.get_by_label("Drop test, s", exact=True).first.input_value()
    assert 0.5 <= float(seconds) < 30
    page.get_by_role("button", name="Keep this").tap()
    page.get_by_text("Kept as facts").wait_for()
    assert page.get_by_label("Drop test, s", exact=True).first.input_value() == seconds
    assert faults(page) == []
    assert complaints == []
