"""What a phone offers is judged entry by entry and kept: the good never waits for the bad."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import TYPE_CHECKING, Any

from farwall.errors import Mistake, Refused
from farwall.facts.log import Entry
from farwall.facts.log_money import OFFICE_WORDS
from farwall.facts.log_words import SET_ASIDE
from farwall.nouns import dataclass

if TYPE_CHECKING:
    from farwall.store.book import Book

MOST_AT_ONCE = 1000
CLOCK_STEP_S = 5.0
"""A clock that is off by less is not told anew: the way of a message takes as long."""
_ABOUT = "This is no offer of entries."
_MONEY = "what was agreed, invoiced and paid is entered by a lead or the office: ask one."
_NOT_YOURS = {
    **dict.fromkeys(OFFICE_WORDS, _MONEY),
    SET_ASIDE: "a house is set aside by a lead or the office: ask one.",
}
"""Words that a helper may not enter, and what is said of them."""


@dataclass(frozen=True)
class Turned:
    """An entry that was not kept, and why; the phone keeps it and shows it."""

    id: str
    why: tuple[str, ...]


@dataclass(frozen=True)
class Answer:
    """What became of an offer: ids now on disk, ids that were there already, those turned away.

    places: the last place that the book has given, by which a phone sees that an older book
    was put back · received_at: the book's clock.
    """

    new: tuple[str, ...]
    known: tuple[str, ...]
    turned: tuple[Turned, ...]
    places: int
    received_at: str


@dataclass(frozen=True)
class Offer:
    """Entries of one device with its clock as it sent them; values that may be anything.

    money: whether who offers them may tell what was agreed, invoiced and paid, and set a house
    aside · tells_clock: whether `sent_at` is its clock as it sent them; else nothing is learned of
    that clock.
    """

    device: str
    era: int
    sent_at: str
    entries: tuple[Any, ...]
    money: bool = True
    tells_clock: bool = True


def offer_from(data: Any) -> Offer:
    """The offer in plain values. Raises Refused with every mistake about the offer itself."""
    if not isinstance(data, dict):
        raise Refused(
            Mistake("", "it is an object.", "Send device, sent_at, entries."), about=_ABOUT
        )
    mistakes = []
    device, era = data.get("device", ""), data.get("era", 0)
    sent_at, entries = data.get("sent_at", ""), data.get("entries")
    if not isinstance(device, str) or not device or len(device) > 200:
        mistakes.append(Mistake("device", "which device offers this?", "Send its name."))
    if not isinstance(era, int) or isinstance(era, bool) or era < 0:
        mistakes.append(Mistake("era", "it is a count.", "Send 0 for a clock that never jumped."))
    if not _is_moment(sent_at):
        remedy = "Send the device's clock, ISO 8601 with offset."
        mistakes.append(Mistake("sent_at", "when was it sent?", remedy))
    if not isinstance(entries, list):
        mistakes.append(Mistake("entries", "it is a list.", "Send a list, empty if need be."))
    elif len(entries) > MOST_AT_ONCE:
        what = f"{len(entries)} entries are too many at once."
        mistakes.append(
            Mistake("entries", what, f"Send at most {MOST_AT_ONCE}, and the rest after.")
        )
    if mistakes or not isinstance(entries, list):
        raise Refused(*mistakes, about=_ABOUT)
    return Offer(device, era, sent_at, tuple(entries))


def take(book: Book, offer: Offer, *, received_at: str) -> Answer:
    """Keep what can be kept and say of every entry what became of it.

    received_at: the book's clock, ISO 8601 with offset. Raises BookTrouble when the book cannot be
    used; then nothing was acknowledged and the phone offers all of it again.
    """
    good, turned = _judged(offer.entries)
    if not offer.money:
        turned += [Turned(one.id, (_NOT_YOURS[one.word],)) for one in good
                   if one.word in _NOT_YOURS]  # fmt: skip
        good = [one for one in good if one.word not in _NOT_YOURS]
    off_s = _off_s(offer.sent_at, received_at)
    clocks = {(offer.device, offer.era): off_s} if offer.tells_clock else {}
    new, known, late = _kept(book, good, received_at, clocks)
    return Answer(new, known, tuple(turned + late), book.last_place(), received_at)


def _judged(offered: Sequence[Any]) -> tuple[list[Entry], list[Turned]]:
    """Entries that the words of the log allow; whole batches first, for most are good."""
    from farwall.readers.log_json import entries_from

    try:
        return list(entries_from(list(offered))), []
    except Refused:
        pass
    good: list[Entry] = []
    turned: list[Turned] = []
    for one in offered:
        try:
            good += entries_from(one)
        except Refused as refusal:
            turned.append(Turned(_id_of(one), tuple(map(str, refusal.mistakes))))
    return good, turned


def _kept(
    book: Book, good: list[Entry], received_at: str, clocks: Mapping[tuple[str, int], float]
) -> tuple[tuple[str, ...], tuple[str, ...], list[Turned]]:
    """New and known ids, and what the book itself turns away: no job of that id, another entry."""
    from farwall.store.nouns import Differs, NoSuchJob

    turned: list[Turned] = []
    while True:
        try:
            taken = book.keep(good, received_at=received_at, clock_off_s=clocks)
        except NoSuchJob as missing:
            why = "the book has no job {}: add it, and offer this again."
            turned += [Turned(e.id, (why.format(e.job),)) for e in good if e.job in missing.ids]
            good = [one for one in good if one.job not in missing.ids]
        except Differs as unlike:
            why = "the book has another entry under this id: enter it anew."
            turned += [Turned(one, (why,)) for one in unlike.ids]
            good = [one for one in good if one.id not in unlike.ids]
        else:
            return taken.new, taken.known, turned


def _id_of(offered: Any) -> str:
    found = offered.get("id") if isinstance(offered, dict) else None
    return found[:200] if isinstance(found, str) else json.dumps(found)[:200]


def _off_s(sent_at: str, received_at: str) -> float:
    ahead = datetime.fromisoformat(sent_at) - datetime.fromisoformat(received_at)
    return round(ahead.total_seconds() / CLOCK_STEP_S) * CLOCK_STEP_S


def _is_moment(text: Any) -> bool:
    try:
        return datetime.fromisoformat(text).tzinfo is not None
    except (TypeError, ValueError):
        return False
