"""Every screen in both languages, wide and narrow: what a reader of the screen would miss."""

from __future__ import annotations

import pytest
from axe_playwright_python.sync_playwright import Axe
from tests.web.walked import DOOR, PHONE, SCREENS, browsing, served, signed_in

from farwall.web.pages.house_ways import HOUSE_WAYS
from farwall.web.pages.ways import WAYS

pytestmark = pytest.mark.slow
OPTIONS = {"rules": {"target-size": {"enabled": True}}}
"""All rules of axe that hold unasked, and WCAG 2.2's smallest size of what is touched."""


@pytest.fixture(scope="module")
def address(tmp_path_factory):
    with served(tmp_path_factory.mktemp("walked")) as found:
        yield found


@pytest.fixture(scope="module")
def browser():
    with browsing() as found:
        yield found


def violations(page):
    """What is wrong on a page, a line for each thing: rule, where, why."""
    found = Axe().run(page, options=OPTIONS).response["violations"]
    return [
        f"{one['id']}: {node['target'][0]} - {node['failureSummary'].splitlines()[-1].strip()}"
        for one in found
        for node in one["nodes"]
    ]


def test_every_way_of_the_office_is_walked():
    walked = set(SCREENS.values())
    assert {to for to, _ in WAYS} <= walked
    assert {f"/houses/two{tail}" for tail, _ in HOUSE_WAYS} <= walked


def test_what_is_wrong_is_seen(browser):
    page = browser.new_page()
    page.set_content("<html lang='en'><title>x</title><main><h1>x</h1><img src='x'></main>")
    assert any(told.startswith("image-alt") for told in violations(page))
    page.close()


def test_the_tape_is_sound_before_its_first_drawing_has_come(browser, address):
    page = signed_in(browser, address)
    page.route("**/tape.svg?*", lambda route: route.abort())
    page.goto(address + SCREENS["house"], wait_until="load")
    assert page.get_by_role("slider").get_attribute("aria-valuetext")
    assert page.locator("#tape a").count() == 0
    assert page.locator("#tape .tape-marks rect").count() > 3
    assert violations(page) == []
    page.context.close()


def too_wide(page, width):
    """Whether a page is wider than its window: whoever reads has to push it to and fro."""
    wide = page.evaluate("document.documentElement.scrollWidth")
    return [f"{wide} px wide in {width}"] if wide > width else []


THUMB_PX = 44
SMALL = """(least) => [...document.querySelectorAll('a, button, select, textarea, input, summary')]
  .filter(one => !one.closest('svg, .unseen, .skip') && one.type !== 'hidden'
    && !['radio', 'checkbox', 'range', 'image'].includes(one.type)
    && !(one.tagName === 'A' && getComputedStyle(one).display === 'inline'
      && one.parentElement.textContent.trim() !== one.textContent.trim()))
  .map(one => [one.getBoundingClientRect(), one.textContent.trim().slice(0, 30) || one.name])
  .filter(([box]) => box.width > 1 && box.height > 0 && box.height < least - 0.5)
  .map(([box, name]) => `${name}: ${box.height} px`)"""
"""What is tapped and lower than a thumb needs; words of a running line are as high as the line."""


def too_low(page, width):
    """On a phone: each thing that is tapped and is lower than 44 px."""
    return page.evaluate(SMALL, THUMB_PX) if width < 600 else []


@pytest.mark.parametrize(("language", "width"), [("en-US", 1280), ("es-MX", 390)])
def test_no_screen_has_what_a_screen_reader_or_a_weak_eye_would_miss(
    browser, address, language, width
):
    page = signed_in(browser, address, language=language, width=width)
    wrong = {}
    for name, path in {**SCREENS, "phone": PHONE, "door": DOOR}.items():
        page.goto("about:blank")
        page.goto(address + path, wait_until="load")
        if name == "phone":
            page.locator("button.main").wait_for()
        assert page.locator("h1, button.main").count(), name
        assert page.evaluate("document.documentElement.lang") == language[:2], name
        wrong[name] = violations(page) + too_wide(page, width) + too_low(page, width)
    page.context.close()
    assert {name: told for name, told in wrong.items() if told} == {}
