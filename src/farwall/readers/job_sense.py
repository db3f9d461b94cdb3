"""Whether the parts of a job agree: names that name something, once each; cuts, dates, prices.

Works on the plain values, so that one wrong figure elsewhere hides nothing.
"""

from __future__ import annotations

import datetime
import re
from collections.abc import Iterator
from decimal import Decimal, InvalidOperation

from farwall.errors import Mistake, Refused
from farwall.facts.defaults import DEFAULT_CUTS, DEFAULT_STAINS
from farwall.mix.cut import parse_cut
from farwall.readers.discharge_sense import discharge_mistakes
from farwall.readers.job_asked import asked_mistakes
from farwall.readers.json_text import Place, place_text
from farwall.readers.material_sense import material_mistakes
from farwall.readers.office_sense import office_mistakes
from farwall.readers.people_sense import people_mistakes
from farwall.readers.sample_sense import Around, sample_mistakes
from farwall.readers.shape import did_you_mean, text_of
from farwall.readers.stain_sense import stain_mistakes
from farwall.readers.sun_sense import sun_mistakes
from farwall.readers.wording import shown

Row = tuple[Place, dict[str, object]]

_INNER = ["door", "cased", "wide"]

DEAREST = Decimal(1_000_000)


def sense_mistakes(raw: dict[str, object]) -> list[Mistake]:
    """Every disagreement between the parts of a job."""
    return [
        *_ids(raw),
        *_openings(raw),
        *_exits(raw),
        *_coats(raw),
        *_samples(raw),
        *_seen(raw),
        *_survey(raw),
        *asked_mistakes(raw),
        *stain_mistakes(raw),
        *_prices(raw),
        *_order(raw),
        *_start(raw),
        *sun_mistakes(raw),
        *discharge_mistakes(raw),
        *office_mistakes(raw),
        *people_mistakes(raw),
        *material_mistakes(raw, _stain_ids(raw)),
    ]


def rows(raw: object, *path: str) -> list[Row]:
    """The objects in the list at `path`, each with its place; empty when there is no such list."""
    found = _at(raw, *path)
    if not isinstance(found, list):
        return []
    return [((*path, n), item) for n, item in enumerate(found) if isinstance(item, dict)]


def _at(raw: object, *path: str) -> object:
    for key in path:
        raw = raw.get(key) if isinstance(raw, dict) else None
    return raw


def _named(raw: object, *path: str) -> list[str]:
    return [name for _, row in rows(raw, *path) if (name := text_of(row, "id")) is not None]


def _coat_ids(raw: object) -> list[str]:
    listed = _at(raw, "coats")
    return _named(raw, "coats") if listed else [f"coat-{n}" for n in (1, 2)][: len(DEFAULT_CUTS)]


def _stain_ids(raw: object) -> list[str]:
    """Stains that may be named: the listed ones, else those the coats name or the defaults."""
    if _at(raw, "stains"):
        return _named(raw, "stains")
    named = [name for _, row in rows(raw, "coats") if (name := text_of(row, "stain"))]
    return list(dict.fromkeys(named)) or [stain.id for stain in DEFAULT_STAINS]


def _unknown(place: Place, what: str, name: str, known: list[str]) -> Iterator[Mistake]:
    # With nothing known the list itself is missing or spoilt, and that is told elsewhere.
    if known and name not in known:
        said = f"There is no {what} {shown(name)}."
        yield Mistake(place_text(place), said, did_you_mean(name, known))


_WITH_IDS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("room", ("floor", "rooms")),
    ("opening", ("floor", "openings")),
    ("fixture", ("floor", "fixtures")),
    ("saw cut", ("floor", "saw_cuts")),
    ("window", ("floor", "windows")),
    ("exit", ("exits",)),
    ("sample", ("samples",)),
    ("stain", ("stains",)),
    ("coat", ("coats",)),
    ("material", ("materials",)),
)


def _ids(raw: dict[str, object]) -> Iterator[Mistake]:
    for what, path in _WITH_IDS:
        seen: dict[str, Place] = {}
        for place, row in rows(raw, *path):
            name = text_of(row, "id")
            if name is None:
                if what in {"room", "opening", "exit"} and row.get("id") == "":
                    yield Mistake(place_text((*place, "id")), "This id is empty.", "Name it.")
            elif name in seen:
                said = f"The {what} id {shown(name)} is already taken by {place_text(seen[name])}."
                yield Mistake(place_text((*place, "id")), said, "Give each its own.")
            else:
                seen[name] = place


def _openings(raw: dict[str, object]) -> Iterator[Mistake]:
    known = _named(raw, "floor", "rooms")
    for place, row in rows(raw, "floor", "openings"):
        sides = row.get("rooms")
        if not isinstance(sides, list):
            continue
        for number, name in enumerate(sides):
            if isinstance(name, str):
                yield from _unknown((*place, "rooms", number), "room", name, known)
        outside = row.get("kind") == "outside"
        if outside and len(sides) != 1:
            said = f"An outside opening names the one room it leads from, not {len(sides)}."
            yield Mistake(place_text((*place, "rooms")), said, "Name one room.")
        elif row.get("kind") in _INNER and len(sides) != 2:
            said = f"This opening lies between two rooms, and names {len(sides)}."
            remedy = 'Name both sides (one room twice if they are the same), or call it "outside".'
            yield Mistake(place_text((*place, "rooms")), said, remedy)
        line = row.get("line")
        if isinstance(line, list) and len(line) == 2 and line[0] == line[1]:
            said = "Both ends of this opening are the same point."
            yield Mistake(place_text((*place, "line")), said, "Give its two ends.")


def _exits(raw: dict[str, object]) -> Iterator[Mistake]:
    kinds = {
        name: row.get("kind")
        for _, row in rows(raw, "floor", "openings")
        if (name := text_of(row, "id")) is not None
    }
    outside = [name for name, kind in kinds.items() if kind == "outside"]
    for place, row in rows(raw, "exits"):
        name = text_of(row, "opening")
        where = (*place, "opening")
        if name is None:
            continue
        if name not in kinds:
            yield from _unknown(where, "opening", name, outside or list(kinds))
        elif kinds[name] in _INNER:
            said = f"{shown(name)} lies between rooms ({kinds[name]}); a way out leads outside."
            ways = ", ".join(outside) if outside else "none drawn yet"
            yield Mistake(place_text(where), said, f"Outside openings here: {ways}.")


def _coats(raw: dict[str, object]) -> Iterator[Mistake]:
    known = _stain_ids(raw)
    for place, row in rows(raw, "coats"):
        if (stain := text_of(row, "stain")) is not None:
            yield from _unknown((*place, "stain"), "stain", stain, known)
        elif row.get("stain") == "":
            yield Mistake(place_text((*place, "stain")), "No stain is named.", "Name one.")
        cut = row.get("cut")
        if isinstance(cut, str):
            try:
                parse_cut(cut, where=place_text((*place, "cut")))
            except Refused as refusal:
                yield from refusal.mistakes


def _samples(raw: dict[str, object]) -> Iterator[Mistake]:
    around = Around(
        rooms=_named(raw, "floor", "rooms"),
        coats=_coat_ids(raw),
        stains=_stain_ids(raw),
        told_coats={name: row for _, row in rows(raw, "coats") if (name := text_of(row, "id"))},
        told_stains={name: row for _, row in rows(raw, "stains") if (name := text_of(row, "id"))},
    )
    yield from sample_mistakes(rows(raw, "samples"), around)


def _seen(raw: dict[str, object]) -> Iterator[Mistake]:
    """A sighting may name any spot of the floor, but only a coat that there is."""
    coats = _coat_ids(raw)
    for place, row in rows(raw, "seen"):
        if (coat := text_of(row, "coat")) is not None:
            yield from _unknown((*place, "coat"), "coat", coat, coats)


def _survey(raw: dict[str, object]) -> Iterator[Mistake]:
    found = _at(raw, "survey", "rooms")
    known = _named(raw, "floor", "rooms")
    for name in found if isinstance(found, dict) else ():
        yield from _unknown(("survey", "rooms", name), "room", name, known)


def _prices(raw: dict[str, object]) -> Iterator[Mistake]:
    currency = _at(raw, "prices", "currency")
    if isinstance(currency, str) and not re.fullmatch("[A-Z]{3}", currency):
        said = f"{shown(currency)} is not a currency code."
        yield Mistake("prices.currency", said, "Write three capital letters, such as USD.")
    known = list(dict.fromkeys([*_stain_ids(raw), *_named(raw, "stains")]))
    for place, row in rows(raw, "prices", "containers"):
        if (stain := text_of(row, "stain")) is not None:
            yield from _unknown((*place, "stain"), "stain", stain, known)
    for noun in ("prices", "sealer"):
        yield from _container_prices(raw, noun)


def _container_prices(raw: dict[str, object], noun: str) -> Iterator[Mistake]:
    for place, row in rows(raw, noun, "containers"):
        price = text_of(row, "price")
        if price is not None and not _is_amount(price):
            said = f"{shown(price)} is not an amount."
            yield Mistake(place_text((*place, "price")), said, 'Write it as text: "62.50".')


def _is_amount(text: str) -> bool:
    try:
        return re.fullmatch(r"\d[\d.]*", text) is not None and Decimal(text) <= DEAREST
    except InvalidOperation:
        return False


def _order(raw: dict[str, object]) -> Iterator[Mistake]:
    order = _at(raw, "wishes", "order")
    known, seen = _named(raw, "floor", "rooms"), set()
    for number, name in enumerate(order if isinstance(order, list) else ()):
        if not isinstance(name, str):
            continue
        place = ("wishes", "order", number)
        yield from _unknown(place, "room", name, known)
        if name in seen:
            yield Mistake(place_text(place), f"{shown(name)} is there twice.", "Name it once.")
        seen.add(name)


def _start(raw: dict[str, object]) -> Iterator[Mistake]:
    yield from _moment("starts_at", raw.get("starts_at"))
    coats = raw.get("coats")
    for number, coat in enumerate(coats if isinstance(coats, list) else ()):
        if isinstance(coat, dict):
            yield from _moment(f"coats[{number}].not_before", coat.get("not_before"))


def _moment(place: str, text: object) -> Iterator[Mistake]:
    if not isinstance(text, str):
        return
    remedy = "Write day, time and offset from UTC, such as 2027-05-04T07:30:00-06:00."
    try:
        moment = datetime.datetime.fromisoformat(text)
    except ValueError:
        yield Mistake(place, f"{shown(text)} is not a date and time (ISO 8601).", remedy)
        return
    if moment.tzinfo is None:
        yield Mistake(place, f"{shown(text)} does not say its offset from UTC.", remedy)
