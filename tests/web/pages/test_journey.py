"""One journey through a real browser: the key, the sample house, its plan, the tape, the sheet."""

from __future__ import annotations

import os
import shutil
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.request
from contextlib import contextmanager

import pytest

pytestmark = pytest.mark.slow

KEY = "0123456789-invented-key"
CHROMIUM = shutil.which("chromium")
PLANNED_MS = 240_000
"""Long, for the machine may be busy; nothing is asserted of it."""


@pytest.fixture
def served(tmp_path):
    with serving(tmp_path) as here:
        yield here


@contextmanager
def serving(folder):
    """A server of its own over an empty book in a folder; its address."""
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        port = found.getsockname()[1]
    run = "from farwall.cli.main import main; raise SystemExit(main())"
    told = ["serve", "--book", str(folder / "book"), "--port", str(port)]
    work = subprocess.Popen(
        [sys.executable, "-c", run, *told],
        env={**os.environ, "FARWALL_KEY": KEY},
        stderr=subprocess.PIPE,
        text=True,
    )
    here = f"http://127.0.0.1:{port}"
    try:
        _wait_for(here, work)
        yield here
    finally:
        work.terminate()
        work.communicate(timeout=60)


def _wait_for(here, work):
    for _ in range(600):
        assert work.poll() is None, work.stderr.read()
        try:
            urllib.request.urlopen(f"{here}/api/clock", timeout=5).close()
        except (urllib.error.URLError, ConnectionError, TimeoutError):
            time.sleep(0.2)
        else:
            return
    pytest.fail("the server did not begin to answer")


@pytest.fixture
def browser():
    if CHROMIUM is None:
        pytest.skip("no chromium here: the pages were not tried in a browser")
    from playwright.sync_api import sync_playwright

    with sync_playwright() as play:
        found = play.chromium.launch(
            executable_path=CHROMIUM, args=["--no-sandbox", "--disable-background-networking"]
        )
        yield found
        found.close()


def test_from_the_key_to_the_sheet_by_mouse_and_keys(served, browser):
    page = browser.new_context(viewport={"width": 1280, "height": 800}).new_page()
    complaints = []
    page.on("pageerror", lambda error: complaints.append(str(error)))
    page.on("console", lambda said: complaints.append(said.text) if said.type == "error" else None)

    page.goto(served)
    page.get_by_label("Key").fill(KEY)
    page.get_by_role("button", name="Enter").click()
    page.get_by_role("button", name="Take the sample house").click()
    tape = page.get_by_role("slider")
    tape.wait_for(timeout=PLANNED_MS)  # the page looks again by itself

    floor, head = page.locator("#floor"), page.locator("#now-head")
    first, told = floor.get_attribute("data-minute"), head.inner_text()
    box = tape.bounding_box()
    assert box is not None
    page.mouse.move(box["x"] + 60, box["y"] + 40)
    page.mouse.down()
    page.mouse.move(box["x"] + 90, box["y"] + 40, steps=4)
    page.mouse.up()
    page.locator(f'#floor:not([data-minute="{first}"])').wait_for()
    assert head.inner_text() != told
    page.wait_for_url("**minute=**")  # all that was slid over has been shown

    slid = floor.get_attribute("data-minute")
    tape.focus()
    page.keyboard.press("ArrowRight")
    page.locator(f'#floor:not([data-minute="{slid}"])').wait_for()
    keyed = float(tape.get_attribute("aria-valuenow"))
    assert 0 < keyed - float(slid) < 5

    day = float(tape.get_attribute("data-to"))
    tape.focus()
    page.keyboard.press("-")
    page.locator('a.scale[aria-current]:has-text("hand-over")').wait_for()
    assert float(tape.get_attribute("data-to")) > day
    page.get_by_role("link", name="this coat").click()
    page.locator('a.scale[aria-current]:has-text("this coat")').wait_for()
    assert float(tape.get_attribute("data-to")) < day

    page.get_by_role("button", name="Play").click()
    page.locator(f'#floor:not([data-minute="{keyed:g}"])').wait_for()
    page.get_by_role("button", name="Pause").click()

    sheet = page.request.get(f"{served}/houses/quince-street/run-sheet.pdf")
    assert sheet.body().startswith(b"%PDF")
    assert complaints == []

    page.get_by_role("button", name="Leave").click()
    page.get_by_label("Key").wait_for()


def test_without_script_the_tape_is_links(served, browser):
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(served)
    page.get_by_label("Key").fill(KEY)
    page.get_by_role("button", name="Enter").click()
    page.get_by_role("button", name="Take the sample house").click()
    page.get_by_text("One step on").wait_for(timeout=PLANNED_MS)  # by the refresh of the page
    first = page.locator("#floor").get_attribute("data-minute")
    page.get_by_text("One step back").click()
    page.locator(f'#floor:not([data-minute="{first}"])').wait_for()
    assert page.locator("#play").is_hidden()
