"""`farwall serve`: the job book for phones and screens, over HTTP."""

from __future__ import annotations

import argparse
import sys
from datetime import UTC, datetime
from pathlib import Path

_DONE = 0
_PORT = 8750


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall serve` takes."""
    parser.add_argument("--book", metavar="ADDRESS", help="the job book (default: the usual place)")
    parser.add_argument(
        "--host", default="127.0.0.1", help="who may come in; 0.0.0.0 lets the local network in"
    )
    parser.add_argument("--port", type=int, default=_PORT)


def run(options: argparse.Namespace) -> int:
    """Serve until stopped."""
    import uvicorn

    from farwall.store.book import Book
    from farwall.web.app import app_for
    from farwall.web.door import Door
    from farwall.web.key import key_of

    with Book.open(options.book) as book:
        key = key_of(Path(book.where.files).parent)
        print(f"Farwall answers at http://{options.host}:{options.port}", file=sys.stderr)
        print(f"Open it in a browser, or sync a device; the key: {key}", file=sys.stderr)
        print("The run sheet of a job on a phone: /slab/ID#KEY there", file=sys.stderr)
        if options.host not in {"127.0.0.1", "::1", "localhost"}:
            print(
                "Without a certificate whoever shares this network can read what is sent, the key "
                "too: use it among your own devices only.",
                file=sys.stderr,
            )
        app = app_for(Door(book, key, lambda: datetime.now(UTC)))
        uvicorn.run(app, host=options.host, port=options.port, log_level="warning")
    return _DONE
