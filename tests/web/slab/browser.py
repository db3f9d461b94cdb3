"""Debian's Chromium as a phone with touch; skipped aloud where it is missing."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING
from urllib.parse import quote

import pytest
from tests.web.slab.house import JOB, KEY

if TYPE_CHECKING:
    from playwright.sync_api import Browser, BrowserContext, Page, Playwright

CHROMIUM = Path("/usr/bin/chromium")
PHONES = [(390, 844), (360, 640)]
_AHEAD = """(ms) => {
  const { Date: True } = globalThis;
  globalThis.Date = class extends True {
    constructor(...told) { if (told.length) super(...told); else super(True.now() + ms); }
    static now() { return True.now() + ms; }
  };
}"""
_ARGS = ["--no-sandbox", "--disable-background-networking"]


@contextmanager
def playing() -> Iterator[Playwright]:
    """What drives a browser; one at a time."""
    if not CHROMIUM.exists():
        pytest.skip("no Chromium here: the page was not tried in a browser")
    from playwright.sync_api import sync_playwright

    with sync_playwright() as play:
        yield play


@contextmanager
def phone(play: Playwright, profile: Path, *more: str) -> Iterator[BrowserContext]:
    """A phone whose memory lies in `profile`: closed and opened again it is the same phone."""
    context = play.chromium.launch_persistent_context(
        str(profile), executable_path=str(CHROMIUM), accept_downloads=True, args=[*_ARGS, *more],
        viewport={"width": PHONES[0][0], "height": PHONES[0][1]}, has_touch=True, is_mobile=True,
    )  # fmt: skip
    try:
        yield context
    finally:
        context.close()


def browsing(play: Playwright) -> Browser:
    """One browser for many phones that need no memory on a disk."""
    return play.chromium.launch(executable_path=str(CHROMIUM), args=_ARGS)


@contextmanager
def fresh(
    browser: Browser,
    *,
    size: tuple[int, int] = PHONES[0],
    language: str = "en-US",
    zone: str = "UTC",
    ahead_min: float = 0.0,
) -> Iterator[BrowserContext]:
    """A phone that has never seen the page; its clock is so many minutes ahead."""
    context = browser.new_context(
        viewport={"width": size[0], "height": size[1]}, has_touch=True, is_mobile=True,
        locale=language, timezone_id=zone,
    )  # fmt: skip
    if ahead_min:
        context.add_init_script(f"({_AHEAD})({ahead_min * 60_000})")
    try:
        yield context
    finally:
        context.close()


def opened(context: BrowserContext, address: str, *, key: bool = True, job: str = JOB) -> Page:
    """The run sheet on that phone, with the plan in it."""
    page = context.new_page()
    page.goto(f"{address}/slab/{job}" + (f"#{quote(KEY)}" if key else ""))
    page.locator("button.main").wait_for(timeout=30_000)
    return page


def tapped(page: Page, times: int) -> None:
    """The main button, as often as told, each time when it asks for another band."""
    for _ in range(times):
        button = page.locator("button.main")
        before = button.inner_text()
        page.wait_for_timeout(310)  # within 300 ms a second tap is none
        button.tap()
        page.locator("button.main", has_not_text=before).wait_for()


def tap(page: Page, *names: str) -> None:
    """These keys, one after another."""
    for name in names:
        page.wait_for_timeout(310)
        page.get_by_role("button", name=name, exact=True).tap()


def sent(page: Page) -> None:
    """Wait until the page says that nothing waits on it."""
    page.locator(".status", has_text="All is sent").wait_for(timeout=60_000)
