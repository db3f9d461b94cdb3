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
    from playwright.sync_api import BrowserContext, Page

CHROMIUM = Path("/usr/bin/chromium")
PHONES = [(390, 844), (360, 640)]


@contextmanager
def phone(profile: Path, *, size: tuple[int, int] = PHONES[0]) -> Iterator[BrowserContext]:
    """A browser whose memory lies in `profile`: closed and opened again it is the same phone."""
    if not CHROMIUM.exists():
        pytest.skip("no Chromium here: the page was not tried in a browser")
    from playwright.sync_api import sync_playwright

    with sync_playwright() as play:
        context = play.chromium.launch_persistent_context(
            str(profile), executable_path=str(CHROMIUM), accept_downloads=True,
            args=["--no-sandbox", "--disable-background-networking"],
            viewport={"width": size[0], "height": size[1]}, has_touch=True, is_mobile=True,
        )  # fmt: skip
        try:
            yield context
        finally:
            context.close()


def opened(context: BrowserContext, address: str, *, key: bool = True) -> Page:
    """The run sheet on that phone, with the plan in it."""
    page = context.new_page()
    page.goto(f"{address}/slab/{JOB}" + (f"#{quote(KEY)}" if key else ""))
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
