"""A newcomer before an empty book: taps, letters and time from the key to a plan of a typed floor.

    .venv/bin/python bench/first_run.py [--phone] [--quick] [--once]

A person is played in Chromium: reads each new page at 220 words a minute (but no more than the
first 60 words, for nobody reads on), looks 1.2 s before each tap, types 3 letters a second (2 on a
phone). These paces are guesses. Times are printed and never asserted. --quick counts the pauses
and does not wait them out; the machine's own waits are real in any case. --once: phone and quick.
"""

from __future__ import annotations

import os
import shutil
import socket
import subprocess
import sys
import tempfile
import time
import urllib.error
import urllib.request

from playwright.sync_api import Locator, Page, sync_playwright

KEY = "0123456789-invented-key"
LOOK_S, WORDS_A_S, MOST_WORDS = 1.2, 220 / 60, 60
ROOMS = (("Great room", "20", "16"), ("Bedroom", "12", "11"), ("Bath", "8", "5"))


class Person:
    """Somebody with a pace: taps and letters are counted, pauses are waited out or only counted."""

    def __init__(self, page: Page, *, letters_a_s: float, quick: bool) -> None:
        self.page, self.letters_a_s, self.quick = page, letters_a_s, quick
        self.taps = self.letters = 0
        self.paused_s, self.begun = 0.0, time.monotonic()

    @property
    def took_s(self) -> float:
        """All of it: pauses and the machine."""
        return time.monotonic() - self.begun + (self.paused_s if self.quick else 0.0)

    def pause(self, seconds: float) -> None:
        """Look, read or type."""
        self.paused_s += seconds
        if not self.quick:
            time.sleep(seconds)

    def reads(self) -> None:
        """What is new on the page."""
        words = len(self.page.locator("main").inner_text().split())
        self.pause(min(words, MOST_WORDS) / WORDS_A_S)

    def taps_on(self, what: Locator) -> None:
        """One tap."""
        self.pause(LOOK_S)
        self.taps += 1
        what.click()

    def types(self, what: Locator, text: str) -> None:
        """A tap into the blank, then letters."""
        self.taps_on(what)
        self.letters += len(text)
        self.pause(len(text) / self.letters_a_s)
        what.fill(text)


def comes_in(person: Person, here: str) -> None:
    """From nothing to the houses."""
    person.page.goto(here)
    person.reads()
    person.types(person.page.locator("#key"), KEY)
    person.taps_on(person.page.locator("form button").first)
    person.page.locator('a[href="/rooms"]').wait_for()
    person.reads()


def sample_plan(person: Person, here: str) -> None:
    """From the key to the plan of the sample house."""
    comes_in(person, here)
    person.taps_on(person.page.locator('form[action="/houses/sample"] button'))
    stands(person, "the sample house")


def typed_plan(person: Person, here: str) -> None:
    """From the key to the plan of a floor typed by its sizes."""
    page = person.page
    comes_in(person, here)
    person.taps_on(page.locator('a[href="/rooms"]'))
    person.reads()
    for n, told in enumerate(ROOMS, 1):
        for key, text in zip(("name", "long", "wide"), told, strict=True):
            person.types(page.locator(f"#b-room-{n}-{key}"), text)
    person.taps_on(page.locator(".save button").first)
    page.locator("#b-starts-at").wait_for()
    person.reads()
    person.taps_on(page.locator(".save button"))
    stands(person, "three rooms typed")


def stands(person: Person, what: str) -> None:
    """Wait for the plan, and tell what it took."""
    person.page.locator("#tape").wait_for(timeout=240_000)
    told = f"{person.taps} taps, {person.letters} letters, {person.paused_s:.0f} s of it pauses"
    print(f"  {what}: the plan stands after {person.took_s:.0f} s: {told} of a person")


def main() -> None:
    """Play it on a desk and on a phone, or on a phone alone."""
    if shutil.which("chromium") is None:
        print("no chromium here: nobody was played")
        return
    once = "--once" in sys.argv
    quick, phone = once or "--quick" in sys.argv, once or "--phone" in sys.argv
    for name, size, pace in (("a desk", (1280, 800), 3.0), ("a phone", (390, 844), 2.0)):
        if phone and name != "a phone":
            continue
        print(f"on {name}:")
        with tempfile.TemporaryDirectory() as folder, sync_playwright() as play:
            work, here = _served(folder)
            browser = play.chromium.launch(
                executable_path=shutil.which("chromium"), args=["--no-sandbox"]
            )
            try:
                for way in (typed_plan, sample_plan):
                    page = browser.new_page(viewport={"width": size[0], "height": size[1]})
                    way(Person(page, letters_a_s=pace, quick=quick), here)
                    page.close()
            finally:
                browser.close()
                work.terminate()
                work.wait()


def _served(folder: str) -> tuple[subprocess.Popen[bytes], str]:
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        port = found.getsockname()[1]
    run = "from farwall.cli.main import main; raise SystemExit(main())"
    told = ["serve", "--book", f"{folder}/book", "--port", str(port)]
    work = subprocess.Popen(
        [sys.executable, "-c", run, *told], env={**os.environ, "FARWALL_KEY": KEY},
        stderr=subprocess.DEVNULL,
    )  # fmt: skip
    here = f"http://127.0.0.1:{port}"
    for _ in range(300):
        try:
            urllib.request.urlopen(f"{here}/api/clock", timeout=5).close()
        except (urllib.error.URLError, ConnectionError, TimeoutError):
            time.sleep(0.2)
        else:
            return work, here
    raise SystemExit("the server did not begin to answer")


if __name__ == "__main__":
    main()
