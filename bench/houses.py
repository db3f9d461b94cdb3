"""What the list of houses costs with 5,000 of them: first asked, asked again, sought, filtered.

python bench/houses.py [HOUSES]: a book of invented houses, nine in ten handed over, some in work;
each question as a browser puts it, processor and wall milliseconds.
"""

from __future__ import annotations

import asyncio
import json
import sys
import tempfile
import time
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime, timedelta
from importlib.resources import files
from pathlib import Path
from typing import Any

import httpx
from timing import ONCE

from farwall.facts.log import Entry
from farwall.store.book import Book
from farwall.web.app import app_for
from farwall.web.door import Door
from farwall.web.live_jobs import OF, LiveJobs

KEY, HERE = "a key for the bench", "http://farwall"
NOW = datetime(2026, 6, 8, 8, tzinfo=UTC)
AGAIN = 20
ASKED = (
    "/", "/?q=quince", "/?show=week", "/?show=drying&q=lot", "/?show=done", "/?after=house-100",
)  # fmt: skip


def main() -> None:
    """Fill a book, ask, tell."""
    told = [int(word) for word in sys.argv[1:] if word.isdigit()]
    count = 150 if ONCE else (told or [5000])[0]
    with tempfile.TemporaryDirectory() as folder, Book.open(Path(folder) / "book") as book:
        began = time.perf_counter()
        fill(book, count)
        print(f"{count} houses put in within {time.perf_counter() - began:.0f} s")
        asyncio.run(asked(book))


def fill(book: Book, count: int) -> None:
    """Houses that come in one after another, a day apart from one to the next ten."""
    text = files("farwall.cli").joinpath("demo_house.json").read_text(encoding="utf-8")
    raw: dict[str, Any] = json.loads(text)
    entries = []
    for n in range(count):
        name = f"house-{n}"
        day = NOW - timedelta(days=(count - 60 - n) // 10)
        facts = {**raw, "id": name, "starts_at": day.isoformat()}
        at = day.isoformat()
        book.put_facts(name, facts, who="bench", at=at, name=f"Quince Street, lot {n}")
        if n < count - 20:
            book.put_document(OF, name, {"facts": 1, "faults": [], "no": []})
        words = ["day-started", "coat-done"] if n < count - 100 else []
        words += ["handed-over"] if n < count * 9 // 10 else []
        entries += [
            Entry(f"{name}-{word}", name, word, at, device="bench", number=k)
            for k, word in enumerate(words, 1)
        ]
    for first in range(0, len(entries), 1000):
        book.keep(entries[first : first + 1000], received_at=NOW.isoformat())


async def asked(book: Book) -> None:
    """Each question the first time and some times more."""
    jobs = LiveJobs(book, make_hands=lambda: ThreadPoolExecutor(1))
    app = app_for(Door(book, KEY, lambda: NOW), jobs=jobs)
    way = httpx.ASGITransport(app=app)
    async with httpx.AsyncClient(transport=way, base_url=HERE, timeout=600) as client:
        await client.post("/enter", data={"key": KEY, "to": "/"}, headers={"origin": HERE})
        for path in ASKED:
            first = await _took(client, path)
            again = [await _took(client, path) for _ in range(AGAIN)]
            cpu, wall = (sorted(one[k] for one in again) for k in (0, 1))
            print(
                f"{path:<24} first {first[0]:7.0f} ms of the processor, again median "
                f"{cpu[len(cpu) // 2]:5.0f} (worst {cpu[-1]:.0f}); wall median "
                f"{wall[len(wall) // 2]:.0f}, worst {wall[-1]:.0f}"
            )


async def _took(client: httpx.AsyncClient, path: str) -> tuple[float, float]:
    cpu, wall = time.process_time(), time.perf_counter()
    answer = await client.get(path)
    assert answer.status_code == 200, (path, answer.status_code)
    return 1000 * (time.process_time() - cpu), 1000 * (time.perf_counter() - wall)


if __name__ == "__main__":
    main()
