"""One journey through a real browser: the first link, an invitation, a helper's phone, the end."""

from __future__ import annotations

import re

import pytest
from tests.web.pages.serving import serving

from farwall.store.book import Book
from farwall.web.people.links import first_link

pytestmark = pytest.mark.slow

PASSWORD = "nine blue trowels lean here"


def come_in(page, name):
    page.get_by_label("Your name").fill(name)
    page.get_by_label("New password").fill(PASSWORD)
    page.get_by_label("The same again").fill(PASSWORD)
    page.get_by_label("The same again").press("Enter")


@pytest.fixture(scope="module")
def served(tmp_path_factory):
    """A server over an empty book, and its first link."""
    folder = tmp_path_factory.mktemp("people")
    with Book.open(folder / "book"), serving(folder) as here, Book.open(folder / "book") as book:
        yield here, first_link(book)


def test_from_the_first_link_to_a_helper_s_phone(served, browser):
    served, link = served
    context = browser.new_context(viewport={"width": 1280, "height": 800})
    page = context.new_page()
    complaints = []
    page.on("pageerror", lambda error: complaints.append(str(error)))
    page.goto(served + link)
    come_in(page, "Ann Field")
    page.get_by_role("link", name="Ann Field").wait_for()
    page.get_by_role("link", name="People").click()
    page.get_by_role("radio", name=re.compile("helper:")).check()
    page.get_by_role("button", name="Make a link", exact=True).click()
    invited = page.locator(".address").inner_text()

    phone = browser.new_context(viewport={"width": 390, "height": 800}).new_page()
    phone.goto(invited)
    phone.get_by_label("Your name").fill("Cy")
    phone.get_by_role("button", name="Only the run sheet on this phone").click()
    phone.get_by_role("heading", name="Cy, this phone is in").wait_for()
    assert phone.evaluate("document.documentElement.scrollWidth") <= 390
    phone.goto(served)
    assert phone.get_by_role("link", name="People").count() == 0

    page.get_by_role("link", name="People").click()
    page.get_by_text("Change what Cy may do").click()
    page.get_by_role("button", name="End the access of Cy").click()
    page.get_by_text("Access ended on").wait_for()
    phone.goto(served)
    phone.get_by_label("Password").wait_for()

    page.get_by_role("button", name="Leave").click()
    page.get_by_label("Name").fill("ann field")
    page.get_by_label("Password").fill(PASSWORD)
    page.get_by_role("button", name="Enter").click()
    page.get_by_role("link", name="Ann Field").wait_for()
    assert complaints == []
