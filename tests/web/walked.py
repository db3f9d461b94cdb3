"""All screens of one small house in a browser: a server in a thread, a lead who is signed in."""

from __future__ import annotations

import shutil
import threading
import time
from contextlib import contextmanager
from urllib.parse import quote

import pytest
import uvicorn
from tests.web.pages.office import KEY, PASSWORD, Office

CHROMIUM = shutil.which("chromium")
SCREENS = {
    "list": "/",
    "house": "/houses/two",
    "days of a house": "/houses/two?scale=days",
    "order": "/houses/two/order",
    "draw": "/houses/two/draw",
    "survey": "/houses/two/survey",
    "samples": "/houses/two/samples",
    "crew": "/houses/two/crew",
    "workers": "/houses/two/workers",
    "acid people": "/houses/two/acid/people",
    "the ladder": "/houses/two/colour/ladder",
    "log": "/houses/two/log",
    "an entry": "/houses/two/log?word=mixed",
    "acid": "/houses/two/acid",
    "the next coat": "/houses/two/colour",
    "sample day": "/houses/two/colour/sample-day",
    "before and after": "/houses/two/colour/pairs",
    "price": "/houses/two/price",
    "quantities": "/houses/two/price/quantities",
    "supplies": "/houses/two/supplies",
    "pour": "/houses/two/pour?vessel=sprayer&first=sand&then=bleach",
    "materials": "/houses/two/materials",
    "amounts due": "/houses/two/price/due",
    "change order": "/houses/two/change",
    "terms": "/houses/two/terms",
    "to buy": "/houses/two/price/buying",
    "papers": "/houses/two/papers",
    "sheets": "/houses/two/sheets",
    "washing": "/houses/two/washing",
    "waste": "/houses/two/waste",
    "first facts": "/houses/two/first",
    "marks": "/houses/two/colour/marks",
    "masking": "/houses/two/masking",
    "offers": "/houses/two/offers",
    "call-back": "/houses/two/call-back",
    "to the phone": "/houses/two/phone",
    "calendar": "/days",
    "van": "/van",
    "lessons": "/lessons",
    "book": "/book",
    "settings": "/settings",
    "people": "/people",
    "me": "/me",
    "new house": "/draw",
    "sizes": "/rooms",
    "first call": "/enquiry",
    "walk": "/walk",
    "no such page": "/houses/two/nothing.pdf",
    "no such house": "/houses/none",
}
PHONE = f"/slab/two#{quote(KEY)}"
DOOR = "/enter"


@contextmanager
def served(folder):
    """The address of an office with a planned house and a lead, while it is open."""
    office = Office(folder)
    office.put_planned(name="Two rooms")
    office.name()
    told = uvicorn.Config(office.app, host="127.0.0.1", port=0, log_level="error")
    server = uvicorn.Server(told)
    work = threading.Thread(target=server.run, daemon=True)
    work.start()
    try:
        while not server.started:
            assert work.is_alive()
            time.sleep(0.05)
        yield f"http://127.0.0.1:{server.servers[0].sockets[0].getsockname()[1]}"
    finally:
        server.should_exit = True
        work.join(30)
        office.book.close()


@contextmanager
def browsing():
    """One browser, skipped aloud where there is none."""
    if CHROMIUM is None:
        pytest.skip("no chromium here: the screens were not tried in a browser")
    from playwright.sync_api import sync_playwright

    with sync_playwright() as play:
        found = play.chromium.launch(
            executable_path=CHROMIUM, args=["--no-sandbox", "--disable-background-networking"]
        )
        yield found
        found.close()


def signed_in(browser, address, *, language="en-US", width=1280, height=900):
    """A page in a browser of this language and width, the lead signed in."""
    context = browser.new_context(
        viewport={"width": width, "height": height}, locale=language, reduced_motion="reduce"
    )
    page = context.new_page()
    page.goto(address + DOOR)
    page.locator("#name").fill("Ann Field")
    page.locator("#password").fill(PASSWORD)
    page.locator("form[action='/enter'] button").click()
    page.wait_for_url(f"{address}/")
    return page
