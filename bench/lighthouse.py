"""Lighthouse over five screens of the invented house: speed, access, good practice, out of 100.

    npm install lighthouse@12.8.2                     # in a folder of its own, outside this one
    CHROME_PATH=/usr/bin/chromium python bench/lighthouse.py FOLDER [list house draw calendar phone]

Office screens as on a desk, the phone's as on a slow phone (Lighthouse's own "mobile": four times
slower, 1.6 Mbit/s). The office is signed into; the server is on this machine.
"""

from __future__ import annotations

import json
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from datetime import UTC, datetime
from importlib.resources import files
from pathlib import Path
from typing import Any
from urllib.parse import quote

import httpx
import uvicorn

from farwall.store.book import Book
from farwall.web.app import app_for
from farwall.web.door import Door
from farwall.web.live_jobs import OF, PLAN, LiveJobs
from farwall.web.work import plan_of

KEY = "a key for the bench"
KINDS = ("performance", "accessibility", "best-practices")


def main() -> None:
    """Measure and tell."""
    folder, *names = [word for word in sys.argv[1:] if word != "--once"] or [""]
    if not (Path(folder) / "node_modules" / ".bin" / "lighthouse").exists():
        print("nothing measured: say the folder in which lighthouse is installed")
        return
    with tempfile.TemporaryDirectory() as there, served(Path(there)) as (address, job):
        cookie = signed_in(address)
        screens = {
            "list": "/", "house": f"/houses/{job}", "draw": f"/houses/{job}/draw",
            "calendar": "/days", "phone": f"/slab/{job}#{quote(KEY)}",
        }  # fmt: skip
        for name in names or screens:
            found = report(Path(folder), address + screens[name], cookie, desk=name != "phone")
            scores = [found["categories"][kind]["score"] or 0 for kind in KINDS]
            told = " ".join(
                f"{kind} {100 * score:.0f}" for kind, score in zip(KINDS, scores, strict=True)
            )
            low = [
                f"{one['id']} ({one['score']})"
                for one in found["audits"].values()
                if one.get("score") is not None and one["score"] < 0.9
            ]
            print(f"{name}: {told}; below 0.9: {', '.join(low) or 'nothing'}", flush=True)


@contextmanager
def served(folder: Path) -> Iterator[tuple[str, str]]:
    """The address of an office with the invented house, planned, and the id of the house."""
    text = files("farwall.cli").joinpath("demo_house.json").read_text(encoding="utf-8")
    facts: dict[str, Any] = json.loads(text)
    job, now = str(facts["id"]), datetime.now(UTC)
    with Book.open(folder / "book") as book:
        version = book.put_facts(job, facts, who="", at=now.isoformat(), name="Sample house")
        book.put_document(PLAN, job, plan_of(facts, job).document)
        book.put_document(OF, job, {"facts": version, "faults": [], "no": []})
        jobs = LiveJobs(book, make_hands=lambda: ThreadPoolExecutor(1))
        app = app_for(Door(book, KEY, lambda: datetime.now(UTC)), jobs=jobs)
        server = uvicorn.Server(uvicorn.Config(app, host="127.0.0.1", port=0, log_level="error"))
        work = threading.Thread(target=server.run, daemon=True)
        work.start()
        while not server.started:
            time.sleep(0.05)
        yield f"http://127.0.0.1:{server.servers[0].sockets[0].getsockname()[1]}", job
        server.should_exit = True
        work.join(30)


def signed_in(address: str) -> str:
    """The cookie of a session."""
    with httpx.Client(base_url=address, headers={"origin": address}) as client:
        client.post("/enter", data={"key": KEY, "to": "/"})
        return "; ".join(f"{name}={value}" for name, value in client.cookies.items())


def report(folder: Path, address: str, cookie: str, *, desk: bool) -> dict[str, Any]:
    """What Lighthouse finds of one screen."""
    words = [
        str(folder / "node_modules" / ".bin" / "lighthouse"), address, "--quiet", "--output=json",
        f"--only-categories={','.join(KINDS)}", "--chrome-flags=--headless=new --no-sandbox",
        "--extra-headers=" + json.dumps({"Cookie": cookie}),
        *(["--preset=desktop"] if desk else []),
    ]  # fmt: skip
    done = subprocess.run(words, capture_output=True, text=True, check=True, timeout=300)
    found: dict[str, Any] = json.loads(done.stdout)
    return found


if __name__ == "__main__":
    main()
