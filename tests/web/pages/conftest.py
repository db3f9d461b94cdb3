"""What several screens are tried with: one browser for a file, an office with a small house."""

import pytest
from tests.web.pages.office import Office, two_rooms
from tests.web.pages.serving import CHROMIUM


@pytest.fixture(scope="module")
def browser():
    """Debian's Chromium, which is skipped aloud where it is missing."""
    if CHROMIUM is None:
        pytest.skip("no chromium here: the pages were not tried in a browser")
    from playwright.sync_api import sync_playwright

    with sync_playwright() as play:
        found = play.chromium.launch(
            executable_path=CHROMIUM, args=["--no-sandbox", "--disable-background-networking"]
        )
        yield found
        found.close()


@pytest.fixture
def own(tmp_path):
    """An office, entered, with a house of two rooms whose plan was begun."""
    found = Office(tmp_path)
    found.enter()
    found.put(two_rooms())
    found.get("/houses/two")
    yield found
    found.close()
