"""`farwall serve`: the job book for phones and screens, over HTTP."""

from __future__ import annotations

import argparse
import socket
import sys
from datetime import UTC, datetime
from pathlib import Path

from farwall.cli import serve_https
from farwall.errors import Mistake, Refused

_DONE = 0
_PORT = 8750
_LAST_PORT = 65535


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall serve` takes."""
    parser.add_argument("--book", metavar="ADDRESS", help="the job book (default: the usual place)")
    parser.add_argument(
        "--host", default="127.0.0.1", help="who may come in; 0.0.0.0 lets the local network in"
    )
    parser.add_argument(
        "--port",
        type=int,
        default=_PORT,
        help=f"where it listens (default {_PORT}; 0: any free)",
    )
    parser.add_argument(
        "--name", action="append", default=[], help="a name by which it may be asked (repeatable)"
    )
    parser.add_argument("--log", metavar="FILE", help="a JSON line for each answer; - for stderr")
    serve_https.arguments(parser)


def run(options: argparse.Namespace) -> int:
    """Serve until stopped."""
    from farwall.cli.serving import begin_log, names_of, serve
    from farwall.store.book import Book
    from farwall.web.app import app_for
    from farwall.web.door import Door
    from farwall.web.key import key_of
    from farwall.web.people.links import first_link

    begin_log(options.log)
    with Book.open(options.book) as book, _listening(options.host, options.port) as ear:
        folder = Path(book.where.files).parent
        key = key_of(folder)
        https = serve_https.certificate_of(options, folder)
        port = ear.getsockname()[1]
        scheme = "https" if https else "http"
        print(f"Farwall answers at {scheme}://{options.host}:{port}", file=sys.stderr)
        print(f"Open it in a browser, or sync a device; the key: {key}", file=sys.stderr)
        print("The run sheet of a job on a phone: /slab/ID#KEY there", file=sys.stderr)
        if link := first_link(book):
            here = "127.0.0.1" if options.host in {"0.0.0.0", "localhost"} else options.host
            print(
                "Nobody manages this book's people yet. Name yourself: "
                f"{scheme}://{here}:{port}{link}",
                file=sys.stderr,
            )
        if not https and options.host not in {"127.0.0.1", "::1", "localhost"}:
            print(
                "Without a certificate whoever shares this network can read what is sent, the key "
                "too: use it among your own devices only.",
                file=sys.stderr,
            )
        names = names_of(options.host, options.name)
        serve(app_for(Door(book, key, lambda: datetime.now(UTC)), names=names), ear, **https)
    return _DONE


def _listening(host: str, port: int) -> socket.socket:
    """A socket that is bound there before anything is said. Raises `Refused` where it cannot be."""
    if not 0 <= port <= _LAST_PORT:
        raise Refused(Mistake("--port", f"{port} is no port.", f"Say one from 1 to {_LAST_PORT}."))
    try:
        family, _, _, _, address = socket.getaddrinfo(host, port, type=socket.SOCK_STREAM)[0]
    except OSError:
        what = f"{host} is not known here."
        raise Refused(Mistake("--host", what, "Say 127.0.0.1, or 0.0.0.0.")) from None
    try:
        return socket.create_server(address[:2], family=family)
    except OSError as error:
        what = f"{host}:{port} cannot be listened at ({error.strerror})."
        remedy = "Does another one run there? Say another --port."
        raise Refused(Mistake("--port", what, remedy)) from error
