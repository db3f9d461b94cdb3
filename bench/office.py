"""What the page of a house costs: moments and tapes in processor milliseconds, the page in bytes.

python bench/office.py: the invented house of `farwall demo`, 400 minutes of its plan, each drawn
anew; 200 windows of its tape; its page with all that it loads. --once: 20 and 10 of them.
"""

from __future__ import annotations

import asyncio
import json
import re
import tempfile
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime
from importlib.resources import files
from pathlib import Path
from typing import Any

import httpx
import numpy as np
from timing import ONCE

from farwall.job.plan_job import plan_job
from farwall.readers.job_json import job_from
from farwall.store.book import Book
from farwall.web.app import app_for
from farwall.web.door import Door
from farwall.web.live_jobs import LiveJobs
from farwall.web.pages.looking_at import Window, whole_of
from farwall.web.pages.moment import floor_at
from farwall.web.pages.shown import Shown
from farwall.web.pages.tape import tape

MOMENTS, WINDOWS = (20, 10) if ONCE else (400, 200)
KEY = "a key for the bench"
HERE = "http://farwall"


def main() -> None:
    """Measure and tell."""
    text = files("farwall.cli").joinpath("demo_house.json").read_text(encoding="utf-8")
    raw = json.loads(text)
    job = job_from(raw, "the invented house")
    shown = Shown(job, plan_job(job), 1, ())
    last = max(field.end_min for field in shown.plan.fields)
    minutes = np.linspace(0.0, last, MOMENTS).tolist()
    told("moments", minutes, lambda minute: floor_at(shown, minute))
    whole = whole_of(shown.course)
    spans = np.geomspace(6.0, whole.span_min, WINDOWS).tolist()

    def drawn(span: float) -> str:
        window = Window(30 - span / 2, 30 + span / 2).within(whole, 30.0)
        return tape(shown, window, minute=30.0, width=860.0).svg

    told("tapes", spans, drawn)
    with tempfile.TemporaryDirectory() as folder:
        asyncio.run(page_bytes(Path(folder), raw))


def told(name: str, asked: list[float], draw: Callable[[float], str]) -> None:
    """Draw all and tell what it took."""
    spent, size = [], []
    for one in asked:
        begun = time.process_time()
        size.append(len(draw(one)))
        spent.append(1e3 * (time.process_time() - begun))
    half, most = np.percentile(spent, [50, 95])
    took = f"{half:.0f} ms at the median, {most:.0f} at p95, {max(spent):.0f} at worst"
    big = f"{np.median(size) / 1e3:.0f} KB at the median, {max(size) / 1e3:.0f} at most"
    print(f"{len(asked)} {name}: {took}; {big}")


async def page_bytes(folder: Path, raw: dict[str, Any]) -> None:
    """The page of the house and everything it links to."""
    now = datetime(2026, 5, 1, 8, tzinfo=UTC)
    book = Book.open(folder / "book")
    book.put_facts(raw["id"], raw, who="bench", at=now.isoformat(), name=raw["name"])
    jobs = LiveJobs(book, make_hands=lambda: ThreadPoolExecutor(1))
    app = app_for(Door(book, KEY, lambda: now), jobs=jobs)
    transport = httpx.ASGITransport(app=app)
    async with httpx.AsyncClient(transport=transport, base_url=HERE) as client:
        await client.post("/enter", data={"key": KEY, "to": "/"}, headers={"origin": HERE})
        path = f"/houses/{raw['id']}"
        await client.get(path)
        await app.state.live.settled()
        begun = time.process_time()
        page = (await client.get(path)).content
        spent = 1e3 * (time.process_time() - begun)
        links = re.findall(rb'(?:href|src)="(/static/[^"]+)"', page)
        parts = {one.decode(): (await client.get(one.decode())).content for one in links}
        for name in [n for n in parts if n.partition("?")[0].endswith(".js")]:
            for part in re.findall(rb'from"\./([^"]+)"', parts[name]):
                address = f"/static/{part.decode()}"
                parts[address] = (await client.get(address)).content
    kinds = {end: sum(len(c) for n, c in parts.items() if n.partition("?")[0].endswith(end))
             for end in (".css", ".js", ".svg")}  # fmt: skip
    all_ = len(page) + sum(kinds.values())
    print(f"its page: {all_ / 1e3:.0f} KB all told ({len(page) / 1e3:.0f} page, "
          + ", ".join(f"{size / 1e3:.0f} {end[1:]}" for end, size in kinds.items())
          + f"); made in {spent:.0f} ms")  # fmt: skip
    jobs.close()
    app.state.live.door.writing.shutdown()
    book.close()


if __name__ == "__main__":
    main()
