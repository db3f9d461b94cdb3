"""A finger's signature on a change order: what is written is the file that goes into the book."""

import io

import numpy as np
import pytest
from PIL import Image
from tests.web.walked import browsing, served, signed_in


@pytest.fixture(scope="module")
def address(tmp_path_factory):
    with served(tmp_path_factory.mktemp("sign")) as found:
        yield found


@pytest.fixture(scope="module")
def browser():
    with browsing() as found:
        yield found


def stroke(page, across=0.7):
    pad = page.locator(".sign-pad canvas")
    pad.scroll_into_view_if_needed()
    box = pad.bounding_box()
    page.mouse.move(box["x"] + 20, box["y"] + 60)
    page.mouse.down()
    for part in range(1, 9):
        wave = 25 if part % 2 else -25
        page.mouse.move(box["x"] + 20 + box["width"] * across * part / 8, box["y"] + 60 + wave)
    page.mouse.up()


def files(page):
    return page.locator("input[name=signed]").evaluate("one => one.files.length")


def test_what_a_finger_writes_is_kept_with_the_order(browser, address):
    page = signed_in(browser, address, width=390)
    page.goto(f"{address}/houses/two/change")
    page.locator("#f-what").fill("one closet more")
    page.locator("#f-agreed_by").fill("Ann Field")
    page.locator("#f-amount").fill("240")
    stroke(page)
    page.get_by_role("button", name="Sign anew").wait_for()
    page.locator("button[value=keep]").click()
    paper = page.locator(".price-due-changes a").first
    paper.wait_for()
    kept = page.request.get(address + paper.get_attribute("href"))
    picture = np.asarray(Image.open(io.BytesIO(kept.body())).convert("L"))
    ink = picture < 128
    assert 0.002 < ink.mean() < 0.1
    columns = np.flatnonzero(ink.any(axis=0))
    assert columns[-1] - columns[0] > 0.6 * picture.shape[1]  # as wide as it was written
    page.context.close()


def test_signed_anew_nothing_of_the_first_is_left(browser, address):
    page = signed_in(browser, address, width=390)
    page.goto(f"{address}/houses/two/change")
    assert files(page) == 0
    stroke(page)
    page.get_by_role("button", name="Sign anew").click()
    assert files(page) == 0
    blank = page.locator(".sign-pad canvas").evaluate(
        "one => one.getContext('2d').getImageData(0, 0, one.width, one.height).data"
        ".every(value => value === 0)"
    )
    assert blank
    page.context.close()
