"""The firm's screens in a real browser: clean, by keys alone, and showing what comes by itself."""

from __future__ import annotations

import pytest
from tests.web.pages.office import two_rooms, two_rooms_planned
from tests.web.pages.serving import KEY, PLANNED_MS, serving

from farwall.store.book import Book
from farwall.web.live_jobs import OF, PLAN

pytestmark = pytest.mark.slow

AT = "2026-06-08T08:00:00+00:00"
SCREENS = (
    "/", "/days", "/van?new=stock", "/lessons", "/book", "/houses/two/log?word=mixed",
    "/houses/two/papers",
)  # fmt: skip


@pytest.fixture(scope="module")
def served(tmp_path_factory):
    folder = tmp_path_factory.mktemp("served")
    with Book.open(folder / "book") as book:
        book.put_facts("two", two_rooms(), who="Ann", at=AT, name="Two rooms")
        book.put_document(PLAN, "two", two_rooms_planned())
        book.put_document(OF, "two", {"facts": 1, "faults": [], "no": []})
    with serving(folder) as here:
        yield here


@pytest.fixture(scope="module")
def context(served, browser):
    """A browser that has shown the key."""
    found = browser.new_context(viewport={"width": 1280, "height": 800})
    page = found.new_page()
    page.goto(served)
    page.get_by_label("Key").fill(KEY)
    page.get_by_role("button", name="Enter").click()
    page.get_by_role("heading", name="Houses").wait_for()
    page.close()
    return found


def test_a_calendar_shows_itself_when_it_is_made(served, context):
    page = context.new_page()
    page.goto(f"{served}/days")
    page.get_by_label("First day").fill("2026-06-08")
    page.get_by_role("button", name="Make the calendar").click()
    page.get_by_role("heading", name="House by house").wait_for(timeout=PLANNED_MS)
    assert page.locator(".days-drawing:visible").count() == 1
    page.get_by_role("link", name="a week", exact=True).click()
    page.locator('a.scale[aria-current]:has-text("a week")').wait_for()
    page.close()


def test_a_note_is_entered_and_struck_out_by_keys_alone(served, context):
    page = context.new_page()
    page.goto(f"{served}/houses/two/log")
    page.get_by_label("What happened").focus()
    page.get_by_label("What happened").press_sequentially("note")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    page.get_by_label("What it says").focus()
    page.keyboard.type("the pantry door sticks")
    page.keyboard.press("Enter")
    page.get_by_text("note: the pantry door sticks").wait_for()
    page.get_by_role("link", name="Strike this out").focus()
    page.keyboard.press("Enter")
    page.get_by_label("The reason").fill("it does not")
    page.keyboard.press("Enter")
    page.locator("s", has_text="the pantry door sticks").wait_for()
    page.close()


def test_every_screen_is_clean_wide_and_narrow_and_nothing_runs_over(served, context):
    from axe_playwright_python.sync_playwright import Axe

    page = context.new_page()
    complaints = []
    page.on("pageerror", lambda error: complaints.append(str(error)))
    page.on("console", lambda said: complaints.append(said.text) if said.type == "error" else None)
    for path in SCREENS:
        for width in (1280, 390):
            page.set_viewport_size({"width": width, "height": 800})
            page.goto(f"{served}{path}")
            page.wait_for_load_state("networkidle")
            found = Axe().run(page).response["violations"]
            assert [(one["id"], one["nodes"][0]["html"][:120]) for one in found] == [], path
            assert page.evaluate("document.documentElement.scrollWidth") <= width, path
    assert complaints == []
    page.close()
