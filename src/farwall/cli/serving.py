"""A server that says that it stops, finishes what it was asked, and tells by which names it is."""

from __future__ import annotations

import signal
import socket
import sys
from collections.abc import Sequence
from contextlib import suppress
from types import FrameType

import uvicorn
from fastapi import FastAPI

from farwall.errors import Mistake, Refused

FINISH_S = 30
"""How long what was begun may take when it stops. Rank: guess."""


class Stopping(uvicorn.Server):
    """A server that says so when it is told to stop."""

    def handle_exit(self, sig: int, frame: FrameType | None) -> None:
        """Take no more questions, finish those that were asked."""
        if not self.should_exit:
            print("Farwall stops: what was asked is finished first.", file=sys.stderr)
        super().handle_exit(sig, frame)


def serve(app: FastAPI, ear: socket.socket, **more: object) -> None:
    """Serve until told to stop; more: what uvicorn is told beside. Tells when nothing is left."""
    settings: dict[str, object] = {
        "log_config": None, "access_log": False, "server_header": False,
        # Who stands before it may say for whom it asks only when it is told to be trusted.
        "proxy_headers": False, "timeout_graceful_shutdown": FINISH_S, **more,
    }  # fmt: skip
    # Ended by the system's wish it closes the book too, as by Ctrl-C.
    signal.signal(signal.SIGTERM, signal.default_int_handler)
    with suppress(KeyboardInterrupt):  # Ctrl-C is how it is meant to end
        Stopping(uvicorn.Config(app, **settings)).run(sockets=[ear])  # type: ignore[arg-type]
    print("Stopped; all that was acknowledged is in the book.", file=sys.stderr)


def names_of(host: str, told: Sequence[str]) -> set[str]:
    """The names by which this machine may be asked: those told, and its own."""
    own = socket.gethostname().lower()
    return {one.lower() for one in (host, own, f"{own}.local", *told) if one}


def begin_log(target: str | None) -> None:
    """Begin the log. Raises Refused where it cannot be written."""
    from farwall.web.logs import log_to

    try:
        log_to(target)
    except OSError as error:
        what = f"{target} cannot be written ({error.strerror})."
        raise Refused(Mistake("--log", what, "Name another file, or - for stderr.")) from error
