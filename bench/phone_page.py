"""How soon the run sheet can be used on a slow phone, and a long day without signal kept.

    .venv/bin/python bench/phone_page.py          a real server, Chromium, ten loads of 10 rooms
    .venv/bin/python bench/phone_page.py --once   one load of each kind, 20 entries instead of 200

The phone: processor 4 times slower, 1.6 Mbit/s down, 750 kbit/s up, 150 ms there and back, by the
browser's own throttle. Two times run from the call of the address: until the big key stands there
and is tapped (by a script, the moment it can be), and until that tap has been kept on the phone's
disk and shows, which is stricter. Bytes are those on the wire, heads of answers too, as packed by
the server; requests and bytes are those of the worst load, without the copy that the worker keeps.
The grown log is a second house's: half of its first coat sprayed late by another phone, a drip
after each band, and the rest of the day laid anew. Wanted: 1 s, 60 KB, 8 requests; 200 entries
once each.
"""

import json
import os
import subprocess
import tempfile
import time
import urllib.error
import urllib.request
import uuid
from collections import Counter
from datetime import UTC, datetime, timedelta

from playwright.sync_api import BrowserContext, Page, Playwright, sync_playwright
from timing import FARWALL, ONCE, ROOT

PORT, KEY, JOB, GROWN = 8796, "a key for the bench, invented", "quince", "grown"
HERE = f"http://127.0.0.1:{PORT}"
TIMES, ENTRIES = (1, 20) if ONCE else (10, 200)
WANTED = 8
BROWSER = {"executable_path": "/usr/bin/chromium", "args": ["--no-sandbox"]}
SCREEN = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True}
TAP = """
(() => {
  const look = () => {
    const main = document.querySelector("button.main[data-do=main]:not([disabled])");
    const undo = document.querySelector("[data-do=undo] b");
    if (undo) window.worked ??= performance.now();
    else if (main && !window.tapped) { window.tapped = performance.now(); main.click(); }
  };
  new MutationObserver(look).observe(document, { childList: true, subtree: true });
})();
"""


def main() -> None:
    """One server, loads of two kinds, then a day without signal."""
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as play:
        facts = str(ROOT / "examples" / "quince-street" / "job.json")
        for job in (JOB, GROWN):
            subprocess.run([FARWALL, "book", "add", facts, "--id", job, "--book", f"{folder}/book"],
                           check=True, stdout=subprocess.DEVNULL)  # fmt: skip
        server = serve(folder)
        try:
            loads(play, folder)
            loads(play, folder, GROWN, f"a log of {grown()} entries")
            server.kill()
            server.wait()
            server = a_day(play, folder, lambda: serve(folder))
        finally:
            server.kill()
            server.wait()


def serve(folder: str) -> subprocess.Popen:
    """A server that answers, its plan made."""
    env = {**os.environ, "FARWALL_KEY": KEY}
    server = subprocess.Popen([FARWALL, "serve", "--book", f"{folder}/book", "--port", str(PORT)],
                              env=env, stderr=subprocess.DEVNULL)  # fmt: skip
    while True:
        try:
            for job in (JOB, GROWN):
                asked("/sheet", job)
        except urllib.error.URLError:
            time.sleep(0.2)
        else:
            return server


def asked(path: str, job: str = JOB, body: dict | None = None) -> dict:
    """An answer about the job, or to what is sent."""
    head = {"Authorization": f"Bearer {KEY}", "Content-Type": "application/json"}
    data = None if body is None else json.dumps(body).encode()
    where = f"{HERE}/api/jobs/{job}{path}" if body is None else f"{HERE}{path}"
    request = urllib.request.Request(where, data=data, headers=head)
    with urllib.request.urlopen(request, timeout=30) as answer:
        return json.load(answer)


def grown() -> int:
    """How many entries the second house's log then has; its day is laid anew."""
    fields = asked("/sheet", GROWN)["fields"]
    first = [row[0] for one in fields if one["coat"] == fields[0]["coat"] for row in one["bands"]]
    words = [(word, band) for band in first[: len(first) // 2] for word in ("band-done", "drip")]
    now = datetime.now(UTC)
    taps = [
        {
            "id": str(uuid.uuid4()), "job": GROWN, "word": word, "who": "", "device": "other",
            "at": (now - timedelta(minutes=2 * (len(words) - n))).isoformat(), "number": n + 1,
            "era": 0, "about": {"band": band} if word == "band-done" else {}, "version": 1,
        }
        for n, (word, band) in enumerate(words)
    ]  # fmt: skip
    asked("/api/entries", body={"device": "other", "era": 0, "sent_at": now.isoformat(),
                                "entries": taps})  # fmt: skip
    while asked("/sheet/rest", GROWN)["upto"] < len(taps):
        time.sleep(0.5)
    return len(taps)


def slow(page: Page) -> None:
    """The page as on a slow phone."""
    told = page.context.new_cdp_session(page)
    told.send("Emulation.setCPUThrottlingRate", {"rate": 4})
    told.send("Network.enable")
    told.send("Network.emulateNetworkConditions", {
        "offline": False, "latency": 150,
        "downloadThroughput": 1.6e6 / 8, "uploadThroughput": 0.75e6 / 8,
    })  # fmt: skip


def loads(play: Playwright, folder: str, job: str = JOB, name: str = "") -> None:
    """The first load, and one more with the page kept by its worker."""
    first, again = [], []
    for number in range(TIMES):
        with play.chromium.launch_persistent_context(
            f"{folder}/{job}{number}", **BROWSER, **SCREEN
        ) as context:
            first.append(one(context, f"{job}#{KEY}"))
            page = context.pages[-1]
            page.evaluate("navigator.serviceWorker.ready.then(() => true)")
            page.locator(".status", has_text="All is sent").wait_for()
            page.locator("[data-do=undo]").tap()
            page.locator(".status", has_text="All is sent").wait_for()
            page.wait_for_timeout(500)
            page.close()
            again.append(one(context, job))
    for kind, found in (("first load", first), ("again", again)):
        tapped, kept = ([load[n] for load in found] for n in (0, 1))
        requests, size = (max(load[n] for load in found) for n in (2, 3))
        what = ", ".join(filter(None, (kind, name)))
        print(f"{what}: the key is tapped after {middle(tapped)}, the tap "
              f"kept after {middle(kept)}, "
              f"at most {requests} requests, {size / 1000:.1f} KB")  # fmt: skip


def middle(times: list[float]) -> str:
    """The middle one and the worst."""
    told = sorted(times)
    return f"{told[len(told) // 2]:.0f} ms (worst {told[-1]:.0f})"


def one(context: BrowserContext, path: str) -> tuple[float, float, int, int]:
    """Milliseconds until the tap and until it is kept; requests and bytes until a second after
    all is sent, so that a question that comes once more is counted."""
    page = context.new_page()
    seen = []

    def answered(answer) -> None:  # a method of a list cannot be listened with
        seen.append(answer)

    page.on("response", answered)
    page.add_init_script(TAP)
    slow(page)
    page.goto(f"{HERE}/slab/{path}")
    page.locator("[data-do=undo] b").wait_for(timeout=60_000)
    tapped, kept = page.evaluate("[window.tapped, window.worked]")
    page.locator(".status", has_text="All is sent").wait_for(timeout=60_000)
    page.wait_for_timeout(1000)
    mine = [o for o in seen if not o.from_service_worker and "/log" not in o.url]
    sizes = [o.request.sizes() for o in mine]
    size = sum(o["responseBodySize"] + o["responseHeadersSize"] for o in sizes)
    if len(mine) > WANTED:
        told = Counter(f"{o.request.method} {o.request.resource_type} {o.url}" for o in mine)
        print("more than wanted:", *told, sep="\n  ")
    return tapped, kept, len(mine), size


def a_day(play: Playwright, folder: str, again) -> subprocess.Popen:
    """Entries by a wireless key while no server runs, the browser closed in the middle."""
    place = f"{folder}/{JOB}0"
    for part in range(2):
        with play.chromium.launch_persistent_context(place, **BROWSER, **SCREEN) as context:
            page = context.new_page()
            page.goto(f"{HERE}/slab/{JOB}")
            for number in range(ENTRIES // 2 * part + 1, ENTRIES // 2 * (part + 1) + 1):
                page.wait_for_timeout(320)  # sooner again on the same key counts as one tap
                page.locator("[data-do=drip]").tap()
                many = "1 entry" if number == 1 else f"{number} entries"
                page.locator(".status", has_text=many).wait_for()
    server = again()
    with play.chromium.launch_persistent_context(place, **BROWSER, **SCREEN) as context:
        page = context.new_page()
        began = time.perf_counter()
        page.goto(f"{HERE}/slab/{JOB}")
        page.locator(".status", has_text="All is sent").wait_for(timeout=120_000)
        took = time.perf_counter() - began
    found = [one["entry"]["id"] for one in asked("/entries")["entries"]]
    drips = [one for one in asked("/entries")["entries"] if one["entry"]["word"] == "drip"]
    print(f"{len(drips)} of {ENTRIES} entries in the book, {len(found) - len(set(found))} double; "
          f"sent {took:.1f} s after the page was opened with signal")  # fmt: skip
    return server


if __name__ == "__main__":
    main()
