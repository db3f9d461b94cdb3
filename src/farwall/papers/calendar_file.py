"""A calendar file after RFC 5545 [rfc-5545]: written whole, updates replace and never double.

Each event's UID comes from the job and the step, so that it is the same in
every later file. An event that has changed gets a higher SEQUENCE; one that
is no more is cancelled; events of other jobs in the earlier file stay as they
are. Times are in UTC, so no time zone has to travel along. The stamp is an
argument: nothing here looks at a clock.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from datetime import UTC, date, datetime, timedelta
from typing import Any

PRODUCT = "-//Farwall//Calendar//EN"
_FOLD_OCTETS = 75
_LOCKED = (
    "From cleaning to sealer + 24 h nobody else may be inside. The end is the likely one: ask "
    "before you go in."
)
_Event = list[tuple[str, str]]


def calendar_file(
    told: Mapping[str, Any], *, stamp: datetime, earlier: str = "", gone: Iterable[str] = ()
) -> str:
    """The text of the file, lines folded at 75 octets and ended by CRLF.

    told: a calendar document. stamp: DTSTAMP of what is new or changed (with
    offset). earlier: the file as it was; its events are replaced or kept. gone: ids of houses that
    are no more in hand; their events are cancelled.
    """
    old = {_uid(event): event for event in _events(earlier)}
    new = {_uid(event): event for house in told["houses"] for event in _house_events(house)}
    mine = [*(house["id"] for house in told["houses"]), *gone]
    own = tuple(f"{_plain(one)}." for one in mine)
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", f"PRODID:{PRODUCT}", "CALSCALE:GREGORIAN",
             "METHOD:PUBLISH"]  # fmt: skip
    for uid, event in new.items():
        lines += _written(_renewed(event, old.get(uid), stamp))
    for uid, event in old.items():
        if uid not in new:
            over = uid.startswith(own) and ("STATUS", "CANCELLED") not in event
            lines += _written(_cancelled(event, stamp) if over else event)
    lines.append("END:VCALENDAR")
    return "".join(f"{folded(line)}\r\n" for line in lines)


def folded(line: str) -> str:
    """The line in pieces of at most 75 octets, each further one begun with a space."""
    pieces, size = [""], 0
    for letter in line:
        octets = len(letter.encode())
        if size + octets > _FOLD_OCTETS:
            pieces.append("")
            size = 1  # the space that begins the line
        pieces[-1] += letter
        size += octets
    return "\r\n ".join(pieces)


def escaped(text: str) -> str:
    """TEXT with backslash, semicolon, comma and line end escaped (section 3.3.11)."""
    for plain, safe in (("\\", "\\\\"), (";", "\\;"), (",", "\\,")):
        text = text.replace(plain, safe)
    return text.replace("\r\n", "\\n").replace("\n", "\\n").replace("\r", "\\n")


def _house_events(house: Mapping[str, Any]) -> Iterator[_Event]:
    name, ident = str(house["name"]), _plain(house["id"])
    for step in house["steps"]:
        words = f"{house['crew']}. Common practice, no source: the floor decides."
        if step["wait"]:
            words = f"After: {step['wait']}. {words}"
        yield [
            ("UID", f"{ident}.{step['id']}@farwall"),
            *_span(step["starts_at"], step["ends_at"]),
            ("SUMMARY", escaped(f"{name}: {step['name']}")),
            ("DESCRIPTION", escaped(words)),
        ]
    lock = house["lock"]
    yield [
        ("UID", f"{ident}.lock@farwall"),
        *_span(lock["starts_at"], lock["ends_at"]),
        ("SUMMARY", escaped(f"{name}: locked to all other trades")),
        ("DESCRIPTION", escaped(_LOCKED)),
        ("TRANSP", "TRANSPARENT"),
    ]
    for number, one in enumerate(house["milestones"], 1):
        day = date.fromisoformat(one["date"])
        yield [
            ("UID", f"{ident}.before-{number}@farwall"),
            ("DTSTART;VALUE=DATE", f"{day:%Y%m%d}"),
            ("DTEND;VALUE=DATE", f"{day + timedelta(days=1):%Y%m%d}"),  # the end is exclusive
            ("SUMMARY", escaped(f"{name}: {one['what']}")),
            ("TRANSP", "TRANSPARENT"),
        ]


def _span(starts_at: str, ends_at: str) -> _Event:
    return [("DTSTART", _utc(starts_at)), ("DTEND", _utc(ends_at))]


def _utc(moment: str | datetime) -> str:
    at = datetime.fromisoformat(moment) if isinstance(moment, str) else moment
    return f"{at.astimezone(UTC):%Y%m%dT%H%M%SZ}"


def _plain(ident: object) -> str:
    """An id as it may stand in a UID: one line, no spaces."""
    return "-".join(str(ident).split())


def _renewed(event: _Event, old: _Event | None, stamp: datetime) -> _Event:
    """The event with its stamp and sequence; as it was when nothing in it has changed."""
    if old is not None and _said(old) == _said(event):
        return old
    sequence = 0 if old is None else _sequence(old) + 1
    return [event[0], ("DTSTAMP", _utc(stamp)), ("SEQUENCE", str(sequence)), *event[1:]]


def _cancelled(event: _Event, stamp: datetime) -> _Event:
    kept = [pair for pair in event if pair[0] not in {"UID", "DTSTAMP", "SEQUENCE", "STATUS"}]
    head = [("UID", _uid(event)), ("DTSTAMP", _utc(stamp))]
    return [*head, ("SEQUENCE", str(_sequence(event) + 1)), ("STATUS", "CANCELLED"), *kept]


def _said(event: _Event) -> _Event:
    return sorted(pair for pair in event if pair[0] not in {"DTSTAMP", "SEQUENCE"})


def _sequence(event: _Event) -> int:
    text = dict(event).get("SEQUENCE", "0")
    return int(text) if text.isdigit() else 0


def _uid(event: _Event) -> str:
    return dict(event).get("UID", "")


def _written(event: _Event) -> list[str]:
    return ["BEGIN:VEVENT", *(f"{name}:{value}" for name, value in event), "END:VEVENT"]


def _events(text: str) -> Iterator[_Event]:
    """The events of a calendar file, as pairs of name (with its parameters) and value."""
    unfolded = text.replace("\r\n", "\n").replace("\n ", "").replace("\n\t", "")
    event: _Event | None = None
    for line in unfolded.split("\n"):
        if line == "BEGIN:VEVENT":
            event = []
        elif line == "END:VEVENT" and event is not None:
            yield event
            event = None
        elif event is not None and ":" in line:
            name, _, value = line.partition(":")
            event.append((name, value))
