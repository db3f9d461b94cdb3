"""A server as a program of its own, and the browser that goes to it."""

from __future__ import annotations

import os
import shutil
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.request
from contextlib import contextmanager

import pytest

KEY = "0123456789-invented-key"
CHROMIUM = shutil.which("chromium")
PLANNED_MS = 240_000
"""Long, for the machine may be busy; nothing is asserted of it."""


@contextmanager
def serving(folder):
    """A server of its own over the book in a folder; its address."""
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        port = found.getsockname()[1]
    run = "from farwall.cli.main import main; raise SystemExit(main())"
    told = ["serve", "--book", str(folder / "book"), "--port", str(port)]
    work = subprocess.Popen(
        [sys.executable, "-c", run, *told],
        env={**os.environ, "FARWALL_KEY": KEY},
        stderr=subprocess.PIPE,
        text=True,
    )
    here = f"http://127.0.0.1:{port}"
    try:
        _wait_for(here, work)
        yield here
    finally:
        work.terminate()
        work.communicate(timeout=60)


def _wait_for(here, work):
    for _ in range(600):
        assert work.poll() is None, work.stderr.read()
        try:
            urllib.request.urlopen(f"{here}/api/clock", timeout=5).close()
        except (urllib.error.URLError, ConnectionError, TimeoutError):
            time.sleep(0.2)
        else:
            return
    pytest.fail("the server did not begin to answer")
