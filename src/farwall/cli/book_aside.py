"""`farwall book aside ID` and `farwall book back ID`: a house leaves all lists, and comes again."""

from __future__ import annotations

import argparse
import json
from datetime import datetime
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

    from farwall.facts.log import Entry
    from farwall.job.aside import Hand
    from farwall.store.book import Book


def aside(book: Book, options: argparse.Namespace) -> int:
    """Set a house aside; a house that is aside stays so. Raises NoSuchJob."""
    from farwall.job.aside import of_the_floor, set_aside

    kept = book.entries(options.id)
    _keep(book, set_aside(options.id, kept, _hand(options), why=options.why))
    return _said(options, is_aside=True, entries=len(of_the_floor(kept)))


def back(book: Book, options: argparse.Namespace) -> int:
    """Bring a house back; one that is in hand stays so. Raises NoSuchJob."""
    from farwall.job.aside import bring_back

    kept = book.entries(options.id)
    _keep(book, bring_back(options.id, kept, _hand(options)))
    return _said(options, is_aside=False, entries=len(kept))


def _hand(options: argparse.Namespace) -> Hand:
    from farwall.cli.device import device_name
    from farwall.job.aside import Hand
    from farwall.store.new_id import new_id

    return Hand(options.who, device_name(), _now(), new_id)


def _keep(book: Book, entries: Sequence[Entry]) -> None:
    if entries:
        book.keep(entries, received_at=_now())


def _now() -> str:
    return datetime.now().astimezone().isoformat(timespec="milliseconds")


def _said(options: argparse.Namespace, *, is_aside: bool, entries: int) -> int:
    if options.json:
        print(json.dumps({"job": options.id, "aside": is_aside}, ensure_ascii=False))
        return 0
    if not is_aside:
        print(f"Job {options.id} is in hand.")
        return 0
    print(f"Job {options.id} is set aside: out of lists, calendar and van; nothing is erased.")
    if entries:
        print(f"Its log has {entries} {'entry' if entries == 1 else 'entries'}: what is wet or in "
              "drums there stays so.")  # fmt: skip
    print(f"`farwall book back {options.id}` brings it back.")
    return 0
