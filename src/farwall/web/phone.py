"""What a device without signal holds: entries not yet acknowledged, and those that are, a month.

Pure: a device's program keeps a `Phone`, and changes it by these steps alone. Nothing leaves it
before the book has acknowledged it; what was acknowledged stays for 30 days, so that a book
put back from yesterday's copy gets back what it lost.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import field, replace
from datetime import datetime, timedelta

from farwall.facts.log import Entry
from farwall.nouns import dataclass

KEPT_DAYS = 30
MOST_AT_ONCE = 200


@dataclass(frozen=True)
class Phone:
    """A device and what it holds.

    waiting: entries not acknowledged, by id, in the order of tapping · turned: why the book did not
    keep one of them; it stays here to be seen · kept: those acknowledged, with the day of it ·
    places: the last place of the book that it has heard of · asked_on: the day on which it last
    asked the book for all it acknowledged.
    """

    device: str
    waiting: Mapping[str, Entry] = field(default_factory=dict)
    turned: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    kept: Mapping[str, tuple[Entry, str]] = field(default_factory=dict)
    places: int = 0
    asked_on: str = ""


def tapped(phone: Phone, entry: Entry) -> Phone:
    """With an entry more; one that it has already changes nothing."""
    if entry.id in phone.waiting or entry.id in phone.kept:
        return phone
    return replace(phone, waiting={**phone.waiting, entry.id: entry})


def to_offer(phone: Phone, *, most: int = MOST_AT_ONCE) -> tuple[Entry, ...]:
    """What to send next, oldest first; what was turned away comes last, for it may pass now."""
    fresh = [one for name, one in phone.waiting.items() if name not in phone.turned]
    again = [one for name, one in phone.waiting.items() if name in phone.turned]
    return tuple((fresh + again)[:most])


def answered(
    phone: Phone,
    *,
    taken: Collection[str],
    turned: Mapping[str, tuple[str, ...]],
    places: int,
    today: str,
) -> Phone:
    """After the book's answer: `taken` are ids on its disk, `turned` those it did not keep.

    A book whose last place lies below what was heard before is an older one: all that was
    acknowledged is offered again. today: ISO date.
    """
    waiting = {name: one for name, one in phone.waiting.items() if name not in taken}
    kept = dict(phone.kept)
    for name in taken:
        if name in phone.waiting:
            kept[name] = (phone.waiting[name], today)
    refused = {name: why for name, why in turned.items() if name in waiting}
    still = {name: why for name, why in phone.turned.items() if name in waiting}
    then = replace(
        phone, waiting=waiting, kept=kept, turned={**still, **refused}, places=places
    )  # fmt: skip
    if places < phone.places:
        then = lost(then, tuple(kept))
    return forgetting(then, today)


def to_ask(phone: Phone, today: str) -> tuple[str, ...]:
    """Ids to ask the book for once a day: an older copy may have grown past what was heard."""
    return () if phone.asked_on == today else tuple(phone.kept)


def told(phone: Phone, *, missing: Collection[str], today: str) -> Phone:
    """After the book said which of the ids asked for it does not have."""
    return replace(lost(phone, missing), asked_on=today)


def lost(phone: Phone, ids: Collection[str]) -> Phone:
    """With these acknowledged entries waiting again, before what waits already."""
    again = {name: phone.kept[name][0] for name in phone.kept if name in ids}
    kept = {name: one for name, one in phone.kept.items() if name not in again}
    return replace(phone, waiting={**again, **phone.waiting}, kept=kept)


def forgetting(phone: Phone, today: str) -> Phone:
    """Without what was acknowledged more than 30 days ago."""
    oldest = datetime.fromisoformat(today) - timedelta(days=KEPT_DAYS)
    kept = {
        name: (one, day)
        for name, (one, day) in phone.kept.items()
        if datetime.fromisoformat(day) >= oldest
    }
    return phone if len(kept) == len(phone.kept) else replace(phone, kept=kept)
