"""`farwall people`: who may come into the book, and a link for who cannot any more.

For who sits at the machine: whoever can read the book's files needs no password to help others.
"""

from __future__ import annotations

import argparse
import sys
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.store.book import Book

_DONE = 0


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall people` takes."""
    parser.add_argument("--book", metavar="ADDRESS", help="the job book (default: the usual place)")
    ways = parser.add_subparsers(dest="way", metavar="")
    reset = ways.add_parser("reset", help="print a link by which a person chooses a new password")
    reset.add_argument("name", metavar="NAME", help="the person")
    reset.add_argument(
        "--at", default="http://127.0.0.1:8750", metavar="ADDRESS", help="where Farwall answers"
    )


def run(options: argparse.Namespace) -> int:
    """The people of the book, a line each; or a link."""
    from farwall.store.address import insist_there
    from farwall.store.book import Book
    from farwall.store.people import People

    insist_there(options.book)
    with Book.open(options.book) as book:
        if options.way == "reset":
            print(_link(book, options.name, options.at))
            print("Good once and for 48 hours; shown once.", file=sys.stderr)
            return _DONE
        for one in People(book).all():
            ended = f", access ended on {one.ended_at[:10]}" if one.ended_at else ""
            bare = "" if one.has_password or one.ended_at else ", no password"
            print(f"{one.name}: {one.role}{bare}{ended}")
    return _DONE


def _link(book: Book, name: str, at: str) -> str:
    from farwall.store.comings import Comings
    from farwall.store.people import People
    from farwall.web.people.links import link_to_choose

    found = People(book).named(name)
    if found is None or found[0].ended_at:
        remedy = "`farwall people` tells who there is."
        raise Refused(Mistake("NAME", f"the book has no {name!r} who may come in.", remedy))
    now = datetime.now(UTC)
    path = link_to_choose(book, now.timestamp(), found[0])
    about = {"person": found[0].name}
    Comings(book).note(now.isoformat(timespec="milliseconds"), "the machine", "link-made", about)
    return at.rstrip("/") + path
