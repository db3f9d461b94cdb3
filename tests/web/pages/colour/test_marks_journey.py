"""A photo laid on the plan in a real browser, a point by mouse, another by keys; nothing a weak eye
would miss."""

from __future__ import annotations

import json

import pytest
from axe_playwright_python.sync_playwright import Axe
from tests.floor_photos import seen_at
from tests.spray.hand_floors import job
from tests.web.pages.colour.test_marks import FROM, HALL, file
from tests.web.pages.serving import KEY, serving

from farwall.facts.plain import plain

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def served(tmp_path_factory):
    with serving(tmp_path_factory.mktemp("marks")) as here:
        yield here


def test_points_are_set_by_mouse_and_by_keys(served, browser, tmp_path):
    facts, photo = tmp_path / "mopped.json", tmp_path / "hall.jpg"
    facts.write_text(json.dumps(plain(job(HALL, id="mopped"), omit_empty=True)), encoding="utf-8")
    photo.write_bytes(file())
    page = browser.new_context(viewport={"width": 1280, "height": 1000}).new_page()
    complaints = []
    page.on("pageerror", lambda error: complaints.append(str(error)))
    page.goto(served)
    page.get_by_label("Key").fill(KEY)
    page.get_by_role("button", name="Enter").click()
    page.locator("#file").set_input_files(facts)
    page.locator("form:has(#file) button").click()
    page.wait_for_url("**/houses/mopped**")
    page.goto(f"{served}/houses/mopped/colour/marks")
    page.get_by_label("Photo").set_input_files(photo)
    page.get_by_role("button", name="Bring it").click()
    svg = page.locator("#marks-photo")
    svg.wait_for()
    for name, place in (("A", (6, 0)), ("B", (6, 4)), ("C", (0, 4)), ("D", (0, 0))):
        page.get_by_role("button", name=name, exact=True).first.click()
        box = svg.bounding_box()
        x, y = seen_at(FROM, place)
        scale = box["width"] / 2000
        page.mouse.click(box["x"] + x * scale, box["y"] + y * scale)
        assert float(page.locator(f"input[name={name}_x]").input_value()) == pytest.approx(
            x * 0.8, abs=2
        )
    before = float(page.locator("input[name=A_x]").input_value())
    page.locator(".place[data-place=A]").focus()
    page.keyboard.press("ArrowRight")
    assert float(page.locator("input[name=A_x]").input_value()) > before
    page.keyboard.press("ArrowLeft")
    assert not Axe().run(page).response["violations"]
    page.get_by_role("button", name="Lay it on the plan").click()
    page.locator("#marks-floor svg").wait_for(timeout=120_000)
    assert "Laid by four points" in page.inner_text("main")
    assert complaints == []
