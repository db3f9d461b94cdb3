"""How soon a dragged wall has its verdict and age: the whole question over HTTP, and its parts.

python bench/drawing.py [--once]: walls of invented houses dragged by chance (seeds 0 up), asked
as the drawing screen asks while a wall moves. Wanted: 100 ms. Milliseconds are those of a clock on
the wall, from the question to its answer; beside them the processor's in the preview alone.
"""

from __future__ import annotations

import asyncio
import json
import os
import tempfile
import time
from pathlib import Path

import httpx
import numpy as np
from timing import ONCE, ROOT

from farwall.bench.dice import Dice
from farwall.bench.drags import dragged
from farwall.readers.job_json import job_from, read_job
from farwall.store.book import Book
from farwall.web.app import app_for
from farwall.web.door import Door
from farwall.web.pages import drawn_preview
from farwall.web.pages.drawn import drawn_floor

DRAGS = 3 if ONCE else 60
HERE = "http://farwall"
KEY = "0123456789-invented-key"
HOUSES = ("quince-street",) if ONCE else ("thistle-end", "quince-street", "sorrel-rise")


def drags(floor):
    found = []
    for seed in range(DRAGS):
        dice = Dice(seed)
        moved = next((m for m in (dragged(floor, dice) for _ in range(60)) if m), None)
        if moved is not None:
            found.append(moved)
    return found


async def asked(app, job, floors, exits):
    """Milliseconds of each question, and what was answered."""
    path = f"/houses/{job}/draw"
    spent, told = [], []
    transport = httpx.ASGITransport(app=app)
    async with httpx.AsyncClient(transport=transport, base_url=HERE, timeout=600) as client:
        origin = {"origin": HERE}
        await client.post("/enter", data={"key": KEY, "to": "/"}, headers=origin)
        await client.get(path)

        async def ask(floor):
            drawn = json.dumps(drawn_floor(floor, exits))
            data = {"version": "1", "drawn": drawn, "moving": "yes"}
            begun = time.perf_counter()
            answer = await client.post(f"{path}/preview", data=data, headers=origin)
            return 1e3 * (time.perf_counter() - begun), answer.json()

        while (await ask(floors[0]))[1].get("waiting"):
            await asyncio.sleep(0.3)
        for floor in floors:
            took, answer = await ask(floor)
            spent.append(took)
            told.append(answer)
    return spent, told


def processor_ms(job, facts, floors, exits):
    """The preview alone, in this process."""
    drawn_preview.keep_plan(job, 1, facts)
    spent = []
    for floor in floors:
        drawn = json.loads(json.dumps(drawn_floor(floor, exits)))
        begun = time.process_time()
        drawn_preview.previewed(job, 1, drawn, moving=True)
        spent.append(1e3 * (time.process_time() - begun))
    return spent


def main() -> None:
    from datetime import UTC, datetime

    for name in HOUSES:
        facts = json.loads((ROOT / "examples" / name / "job.json").read_text())
        job = read_job(ROOT / "examples" / name / "job.json")
        assert job_from(facts, name).floor == job.floor
        floors = drags(job.floor)
        with tempfile.TemporaryDirectory() as folder:
            book = Book.open(Path(folder) / "book")
            book.put_facts(name, facts, who="Ann", at=datetime.now(UTC).isoformat())
            app = app_for(Door(book, KEY, lambda: datetime.now(UTC)))
            spent, told = asyncio.run(asked(app, name, floors, job.exits))
            app.state.live.jobs.close()
            book.close()
        own = processor_ms(name, facts, floors, job.exits)
        half, most = np.percentile(spent, [50, 95])
        own_half, own_most = np.percentile(own, [50, 95])
        within = np.mean(np.array(spent) <= 100)
        kinds = [one["head"] for one in told]
        print(f"{name}, {len(job.floor.rooms)} rooms, {len(floors)} drags: {half:.0f} ms at the")
        print(
            f"median, {most:.0f} at p95, {within:.0%} within 100; of the processor {own_half:.0f}"
        )
        print(
            f"and {own_most:.0f}; answers: { ({kind: kinds.count(kind) for kind in set(kinds)}) }"
        )
        print(f"load of the machine meanwhile: {os.getloadavg()[0]:.1f}", flush=True)


if __name__ == "__main__":
    main()
