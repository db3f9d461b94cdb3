"""A book with one planned house, and a server before it that can be killed and started again."""

from __future__ import annotations

import json
import os
import socket
import ssl
import subprocess
import sys
import time
import urllib.error
import urllib.request
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from tests.midday import EXAMPLES, day_of
from tests.web.pages.office import new_book

from farwall.readers.plan_json import plan_to_dict

KEY = "a key of our own, invented"
JOB = "quince"


def planned(folder: Path, *, begun_min: float = 2.0, jobs: Sequence[str] = (JOB,)) -> Path:
    """The folder of a book whose houses, all alike, began so many minutes ago."""
    starts = datetime.now(UTC) - timedelta(minutes=begun_min)
    plan = {
        **plan_to_dict(day_of("quince-street")),
        "starts_at": starts.isoformat(timespec="seconds"),
    }
    facts = json.loads((EXAMPLES / "quince-street" / "job.json").read_text())
    with new_book(folder / "book") as book:
        for job in jobs:
            version = book.put_facts(job, facts, who="", name="Quince", at=starts.isoformat())
            book.put_document("plan", job, plan)
            book.put_document("plan-of", job, {"facts": version, "faults": [], "no": []})
    return folder / "book"


def free_port() -> int:
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return int(one.getsockname()[1])


class Server:
    """`farwall serve` in a process of its own. more: further words, such as for a certificate."""

    def __init__(self, book: Path, *more: str) -> None:
        self.book, self.port, self.more = book, free_port(), more
        self._process: subprocess.Popen[bytes] | None = None

    @property
    def address(self) -> str:
        return f"http{'s' if self.more else ''}://127.0.0.1:{self.port}"

    def start(self) -> None:
        words = ["serve", "--book", str(self.book), "--port", str(self.port), *self.more]
        self._process = subprocess.Popen(
            [sys.executable, "-c", "from farwall.cli.main import main; main()", *words],
            env={**os.environ, "FARWALL_KEY": KEY},
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        for _ in range(300):
            try:
                self._asked("/api/clock", timeout_s=1)
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

    def entries(self, job: str = JOB) -> list[dict[str, Any]]:
        """What is in the book, as it answers."""
        found = json.loads(self._asked(f"/api/jobs/{job}/entries"))
        return [one["entry"] for one in found["entries"]]

    def file(self, sha: str) -> bytes:
        """A photo of the book."""
        return self._asked(f"/api/files/{sha}")

    def _asked(self, path: str, *, timeout_s: float = 10.0) -> bytes:
        # Who we are is no matter of these questions; the browser looks at the certificate.
        blind = ssl._create_unverified_context() if self.more else None
        request = urllib.request.Request(
            self.address + path, headers={"Authorization": f"Bearer {KEY}"}
        )
        with urllib.request.urlopen(request, timeout=timeout_s, context=blind) as answer:
            return bytes(answer.read())


@contextmanager
def serving(folder: Path, *more: str, **house: Any) -> Iterator[Server]:
    server = Server(planned(folder, **house), *more)
    server.start()
    try:
        yield server
    finally:
        server.kill()
