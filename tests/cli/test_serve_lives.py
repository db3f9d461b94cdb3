"""`farwall serve` as a program: the first link, a log, the end told when it is told to stop."""

from __future__ import annotations

import http.client
import json
import os
import re
import signal
import socket
import subprocess
import sys
import time

import pytest

KEY = "0123456789-invented-key"


@pytest.fixture
def served(tmp_path):
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        port = found.getsockname()[1]
    run = "from farwall.cli.main import main; raise SystemExit(main())"
    told = ["serve", "--book", str(tmp_path / "book"), "--port", str(port), "--log",
            str(tmp_path / "log"), "--name", "farwall.test"]  # fmt: skip
    work = subprocess.Popen(
        [sys.executable, "-c", run, *told],
        env={**os.environ, "FARWALL_KEY": KEY},
        stderr=subprocess.PIPE,
        text=True,
    )
    yield work, port
    if work.poll() is None:
        work.kill()
        work.communicate(timeout=60)


def ask(port, path, host=""):
    for _ in range(600):
        found = http.client.HTTPConnection("127.0.0.1", port, timeout=30)
        try:
            found.request("GET", path, headers={"Host": host or f"127.0.0.1:{port}"})
            answer = found.getresponse()
            return answer.status, answer.read().decode(), dict(answer.getheaders())
        except OSError:
            time.sleep(0.2)
        finally:
            found.close()
    return pytest.fail("it did not begin to answer")


def test_it_gives_a_first_link_logs_and_says_that_it_stops(served, tmp_path):
    work, port = served
    assert ask(port, "/healthz")[0] == 200
    assert ask(port, "/readyz")[0] == 200
    assert ask(port, "/healthz", "farwall.test")[0] == 200
    assert ask(port, "/healthz", "evil.example")[0] == 421
    work.send_signal(signal.SIGTERM)
    _, told = work.communicate(timeout=120)
    assert work.returncode == 0
    link = re.search(r"Name yourself: http://127\.0\.0\.1:\d+(/join/[\w-]{43})", told)
    assert link
    assert "what was asked is finished first" in told
    assert told.rstrip().endswith("all that was acknowledged is in the book.")
    lines = [json.loads(one) for one in (tmp_path / "log").read_text().splitlines()]
    assert [(one["route"], one["status"]) for one in lines][-3:] == [
        ("GET /readyz", 200), ("GET /healthz", 200), ("GET (none)", 421),
    ]  # fmt: skip
    text = (tmp_path / "log").read_text()
    assert KEY not in text
    assert link[1] not in text
