"""Frames while walls of a floor of 60 rooms are dragged, traced in Chromium; run by hand.

python bench/drawing_frames.py [--once]: an invented floor of 60 rooms in a book of its own, served;
walls dragged by the mouse for some seconds. Wanted: 50 frames a second or more, at the median. Told
are the milliseconds between drawn frames (Chromium's own trace) and of the page's script a frame.
"""

from __future__ import annotations

import json
import os
import shutil
import socket
import subprocess
import sys
import tempfile
import time
import urllib.error
import urllib.request
from pathlib import Path

import numpy as np
from timing import ONCE

from farwall.store.book import Book
from farwall.web.pages.drafts import DRAFT, draft_document

KEY = "0123456789-invented-key"
ACROSS, UP = 10, 6
WIDE_M, DEEP_M, WALL_M = 3.6, 3.0, 0.12
DRAGS = 2 if ONCE else 8
STEPS = 120
MOVES = """async ({frames, at, reach}) => {
  const svg = document.getElementById("floor-drawing");
  for (let n = 0; n < frames; n += 1) {
    await new Promise((done) => requestAnimationFrame(done));
    const clientX = at[0] + reach * Math.sin(n / 9);
    svg.dispatchEvent(new PointerEvent("pointermove", {
      pointerId: 1, pointerType: "mouse", isPrimary: true, buttons: 1, clientX, clientY: at[1],
    }));
  }
}"""
"""A movement of the mouse a frame: by the driver's own, each waits for the one before."""


def ring(x0, y0, x1, y1):
    corners = [[x0, y0], [x1, y0], [x1, y1], [x0, y1], [x0, y0]]
    points = [[round(x, 4), round(y, 4)] for x, y in corners]
    return {"type": "Polygon", "coordinates": [points]}


def sixty_rooms():
    """Rooms in rows, a door from each to the next, a way out at the first."""
    rooms, openings = [], []
    for row in range(UP):
        for column in range(ACROSS):
            x, y = column * (WIDE_M + WALL_M), row * (DEEP_M + WALL_M)
            name = f"r{row}-{column}"
            shape = ring(x, y, x + WIDE_M, y + DEEP_M)
            rooms.append({"id": name, "name": f"Room {len(rooms) + 1}", "polygon": shape})
            if column:
                a, b = x - WALL_M, y + 1.0
                sides = [f"r{row}-{column - 1}", name]
                openings.append({
                    "id": f"d{row}-{column}", "kind": "door", "rooms": sides,
                    "line": [[x - WALL_M / 2, b], [x - WALL_M / 2, b + 0.8]], "width_m": 0.8,
                    "threshold": ring(a, b, x, b + 0.8),
                })  # fmt: skip
    return {"rooms": rooms, "openings": openings, "fixtures": [], "saw_cuts": [], "exits": []}


def serving(book):
    """The server's process and its address."""
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        port = found.getsockname()[1]
    run = "from farwall.cli.main import main; raise SystemExit(main())"
    told = ["serve", "--book", str(book), "--port", str(port)]
    env = {**os.environ, "FARWALL_KEY": KEY}
    work = subprocess.Popen([sys.executable, "-c", run, *told], env=env, stderr=subprocess.DEVNULL)
    here = f"http://127.0.0.1:{port}"
    for _ in range(300):
        try:
            urllib.request.urlopen(f"{here}/api/clock", timeout=5).close()
        except (urllib.error.URLError, ConnectionError, TimeoutError):
            time.sleep(0.2)
        else:
            return work, here
    raise SystemExit("the server did not begin to answer")


def dragged(page):
    """Walls dragged there and back; nothing else is done."""
    svg = page.locator("#floor-drawing")
    box = svg.bounding_box()
    left, top, wide, _ = (float(one) for one in svg.get_attribute("viewBox").split())
    scale = box["width"] / wide

    def at(x, y):
        return box["x"] + (100 * x - left) * scale, box["y"] + (-100 * y - top) * scale

    for drag in range(DRAGS):
        column, row = 1 + drag % (ACROSS - 2), drag % UP
        x, y = column * (WIDE_M + WALL_M) + WIDE_M, row * (DEEP_M + WALL_M) + 2.4
        page.mouse.move(*at(x, y))
        page.mouse.down()
        page.mouse.move(*at(x + 0.1, y))  # past what counts as holding still
        page.evaluate(MOVES, {"frames": STEPS, "at": at(x, y), "reach": 0.8 * 100 * scale})
        page.mouse.up()
        page.get_by_text("The wall was moved").wait_for()


def frames_of(trace):
    """Milliseconds between drawn frames during drags, and of script in each animation frame."""
    events = json.loads(trace)["traceEvents"]
    drawn = sorted(one["ts"] for one in events if one.get("name") == "DrawFrame")
    fired = [one for one in events if one.get("name") == "FireAnimationFrame" and "dur" in one]
    script = [one["dur"] / 1e3 for one in fired]
    between = np.diff(drawn) / 1e3
    return between[between < 500], np.array(script)


def main():
    chromium = shutil.which("chromium")
    if chromium is None:
        print("no chromium here: the frames were not traced")
        return
    try:
        from playwright.sync_api import sync_playwright
    except ImportError:
        print("no playwright here: the frames were not traced")
        return
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as play:
        with Book.open(Path(folder) / "book") as book:
            book.put_document(DRAFT, "sixty", draft_document(0, "Sixty rooms", sixty_rooms()))
        work, here = serving(Path(folder) / "book")
        try:
            browser = play.chromium.launch(executable_path=chromium, args=["--no-sandbox"])
            page = browser.new_context(viewport={"width": 1280, "height": 900}).new_page()
            page.goto(here)
            page.get_by_label("Key").fill(KEY)
            with page.expect_navigation():  # who goes on before it is let in stands at the door
                page.get_by_role("button", name="Enter").click()
            page.goto(f"{here}/houses/sixty/draw")
            page.locator("#things li").nth(59).wait_for()
            categories = ["devtools.timeline", "disabled-by-default-devtools.timeline.frame"]
            browser.start_tracing(page=page, categories=categories)
            dragged(page)
            between, script = frames_of(browser.stop_tracing())
            browser.close()
        finally:
            work.terminate()
            work.wait()
    half, most = np.percentile(between, [50, 95])
    script_half, script_most = np.percentile(script, [50, 95])
    print(f"{len(between)} frames of 60 rooms: {half:.1f} ms at the median ({1e3 / half:.0f} a")
    print(f"second), {most:.1f} at p95; script {script_half:.1f} ms a frame, {script_most:.1f} at")
    print(f"p95; load of the machine meanwhile {os.getloadavg()[0]:.1f}")


if __name__ == "__main__":
    main()
