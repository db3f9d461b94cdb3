"""Fifty phones that come back into signal at once, 400 entries each, and a screen in between.

    .venv/bin/python bench/phones.py            50 phones, 400 entries each, one real server

Wanted: all stored within 60 s, none lost, none doubled, the screen answered in 300 ms at p95.
"""

import asyncio
import os
import subprocess
import sys
import tempfile
import time
from datetime import UTC, datetime
from pathlib import Path

import httpx
from timing import FARWALL, ONCE

from farwall.facts.log import Entry
from farwall.readers.log_json import entry_to_dict
from farwall.store.book import Book
from farwall.web.phone import Phone, answered, tapped, to_offer

PHONES, EACH = (5, 20) if ONCE else (50, 400)
PORT, KEY, JOBS = 8799, "a key for the bench, invented", 10
SHOWN = {"Authorization": f"Bearer {KEY}"}
NOW = datetime.now(UTC)
FACTS = {"version": 1, "floor": {"rooms": []}, "exits": []}


def phone(number: int) -> Phone:
    """A phone that was without signal for a day."""
    made = Phone(f"phone-{number}")
    for one in range(EACH):
        name = f"0197{number:04x}-{one:04x}-7000-8000-{number:06x}{one:06x}"
        about = {"band": f"first.{one % 9}.{one % 30}", "tank_l": float(one % 7)}
        made = tapped(made, Entry(name, f"job-{number % JOBS}", "band-done", NOW.isoformat(),
                                  "Ann", made.device, one, about=about))  # fmt: skip
    return made


async def drain(client: httpx.AsyncClient, held: Phone) -> Phone:
    """Offer until nothing waits; what fails on the way is offered again."""
    while held.waiting:
        body = {
            "device": held.device, "sent_at": datetime.now(UTC).isoformat(),
            "entries": [entry_to_dict(one) for one in to_offer(held)],
        }  # fmt: skip
        try:
            told = (await client.post("/api/entries", json=body)).raise_for_status().json()
        except httpx.HTTPError:
            await asyncio.sleep(0.5)
            continue
        turned = {one["id"]: tuple(one["why"]) for one in told["turned"]}
        held = answered(held, taken=(*told["new"], *told["known"]), turned=turned,
                        places=told["places"], today=NOW.date().isoformat())  # fmt: skip
    return held


async def screen(client: httpx.AsyncClient, seen_ms: list[float], over: asyncio.Event) -> None:
    """Somebody who looks at the list and at a job in between."""
    while not over.is_set():
        for path in ("/api/jobs", "/api/jobs/job-3", "/api/clock"):
            began = time.perf_counter()
            (await client.get(path)).raise_for_status()
            seen_ms.append(1000 * (time.perf_counter() - began))
            await asyncio.sleep(0.05)


async def storm() -> tuple[float, list[float]]:
    """Seconds until every phone is empty, and how long the screen waited each time."""
    held, seen_ms, over = [phone(n) for n in range(PHONES)], [], asyncio.Event()
    limits = httpx.Limits(max_connections=PHONES + 2)
    base = f"http://127.0.0.1:{PORT}"
    async with (
        httpx.AsyncClient(base_url=base, headers=SHOWN, limits=limits, timeout=120) as phones,
        httpx.AsyncClient(base_url=base, headers=SHOWN, timeout=30) as eyes,
    ):
        for _ in range(200):
            try:
                await eyes.get("/api/clock")
                break
            except httpx.HTTPError:
                await asyncio.sleep(0.1)
        looking = asyncio.create_task(screen(eyes, seen_ms, over))
        began = time.perf_counter()
        done = await asyncio.gather(*(drain(phones, one) for one in held))
        took = time.perf_counter() - began
        over.set()
        await looking
    assert not any(one.waiting for one in done)
    return took, seen_ms


def main() -> None:
    """One server, the storm, and the count afterwards."""
    with tempfile.TemporaryDirectory() as folder:
        book = Path(folder) / "book"
        with Book.open(book) as opened:
            for number in range(JOBS):
                opened.put_facts(f"job-{number}", FACTS, who="Ann", at=NOW.isoformat())
        server = subprocess.Popen([FARWALL, "serve", "--book", str(book), "--port", str(PORT)],
                                  env={**os.environ, "FARWALL_KEY": KEY},
                                  stderr=subprocess.DEVNULL)  # fmt: skip
        try:
            took, seen_ms = asyncio.run(storm())
        finally:
            server.terminate()
            server.wait()
        with Book.open(book) as opened:
            ids = [k.entry.id for n in range(JOBS) for k in opened.entries(f"job-{n}")]
    seen_ms.sort()
    p95 = seen_ms[min(len(seen_ms) - 1, round(0.95 * len(seen_ms)))]
    lost, doubled = PHONES * EACH - len(set(ids)), len(ids) - len(set(ids))
    print(
        f"{PHONES} phones, {EACH} entries each: {took:.1f} s, {lost} lost, {doubled} doubled; "
        f"screen {len(seen_ms)} times: median {seen_ms[len(seen_ms) // 2]:.0f} ms, p95 {p95:.0f} ms"
    )
    if lost or doubled:
        sys.exit(1)


if __name__ == "__main__":
    main()
