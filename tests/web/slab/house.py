"""A book with one planned house, and a server before it that can be killed and started again."""

from __future__ import annotations

import json
import os
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.request
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path

from tests.midday import EXAMPLES, day_of

from farwall.readers.plan_json import plan_to_dict
from farwall.store.book import Book

KEY = "a key of our own, invented"
JOB = "quince"


def planned(folder: Path, *, begun_min: float = 2.0) -> Path:
    """The folder of a book whose house began so many minutes ago."""
    starts = datetime.now(UTC) - timedelta(minutes=begun_min)
    plan = {
        **plan_to_dict(day_of("quince-street")),
        "starts_at": starts.isoformat(timespec="seconds"),
    }
    facts = json.loads((EXAMPLES / "quince-street" / "job.json").read_text())
    with Book.open(folder / "book") as book:
        version = book.put_facts(JOB, facts, who="", name="Quince", at=starts.isoformat())
        book.put_document("plan", JOB, plan)
        book.put_document("plan-of", JOB, {"facts": version, "faults": [], "no": []})
    return folder / "book"


def free_port() -> int:
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return int(one.getsockname()[1])


class Server:
    """`farwall serve` in a process of its own."""

    def __init__(self, book: Path) -> None:
        self.book, self.port = book, free_port()
        self._process: subprocess.Popen[bytes] | None = None

    @property
    def address(self) -> str:
        return f"http://127.0.0.1:{self.port}"

    def start(self) -> None:
        words = ["serve", "--book", str(self.book), "--port", str(self.port)]
        self._process = subprocess.Popen(
            [sys.executable, "-c", "from farwall.cli.main import main; main()", *words],
            env={**os.environ, "FARWALL_KEY": KEY},
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        for _ in range(300):
            try:
                urllib.request.urlopen(self.address + "/api/clock", timeout=1).close()
                return
            except (urllib.error.URLError, OSError):
                time.sleep(0.1)
        raise AssertionError("the server does not answer")

    def kill(self) -> None:
        """At once, as a battery does it."""
        if self._process is not None:
            self._process.kill()
            self._process.wait()
            self._process = None

    def entries(self) -> list[dict[str, object]]:
        """What is in the book, as it answers."""
        request = urllib.request.Request(
            f"{self.address}/api/jobs/{JOB}/entries", headers={"Authorization": f"Bearer {KEY}"}
        )
        with urllib.request.urlopen(request, timeout=10) as answer:
            return [one["entry"] for one in json.load(answer)["entries"]]


@contextmanager
def serving(folder: Path):
    server = Server(planned(folder))
    server.start()
    try:
        yield server
    finally:
        server.kill()
