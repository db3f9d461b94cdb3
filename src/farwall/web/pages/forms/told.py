"""What was typed into a form, put into the facts: all mistakes at once, each beside its blank."""

from __future__ import annotations

import copy
import re
from collections.abc import Mapping, Sequence
from datetime import datetime, tzinfo
from typing import Any
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from farwall.errors import FarwallError, Mistake, Refused
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.readers.json_text import place_text
from farwall.web.pages.fact_form import start_of
from farwall.web.pages.forms.asked import YES, Asked, Field, Row
from farwall.web.pages.forms.measures import NoNumber, plain_number
from farwall.web.pages.forms.nouns import Part
from farwall.web.pages.forms.places import put, value_at
from farwall.web.words import said

Json = dict[str, Any]
_LONGEST = 2000
_MISSING = re.compile(r"`(\w+)` is missing\.")
"""What the reader of jobs says of a key that has to be there: the blank itself says it plainer."""


@dataclass(frozen=True)
class Slip:
    """A mistake: the name of its blank (empty: of none), where it is in words, what it is."""

    name: str
    where: str
    what: str

    def __str__(self) -> str:
        return f"{self.where}: {self.what}" if self.where else self.what


class Wrong(FarwallError):
    """What was typed cannot be kept; `slips` are all that is wrong with it."""

    def __init__(self, slips: list[Slip]) -> None:
        self.slips = tuple(slips)
        super().__init__("\n".join(map(str, slips)))


def changed_facts(asked: Asked, facts: Mapping[str, Any], told: Mapping[str, Any]) -> Json | None:
    """The facts with what was typed; None when that is what they say already. Raises Wrong.

    Blanks that the form does not show, and those that stand as they stood, are not touched.
    """
    filling = _Filling(asked, copy.deepcopy(dict(facts)), told)
    for part in asked.form.parts:
        filling.part(part)
    if filling.slips:
        raise Wrong(filling.slips)
    if not filling.touched:
        return None
    _judge(asked, filling.raw)
    return filling.raw


class _Filling:
    """Facts while blanks are put into them."""

    def __init__(self, asked: Asked, raw: Json, told: Mapping[str, Any]) -> None:
        self.asked, self.raw, self.told = asked, raw, told
        self.slips: list[Slip] = []
        self.touched = False

    def part(self, part: Part) -> None:
        """Put a part's rows in, then take away those that are ticked."""
        gone = []
        for row in self.asked.rows(part):
            if part.each == "rows" and self.told.get(row.away) == YES:
                gone += [] if row.fresh else [row.path[-1]]
                continue
            fields = [row.field(blank) for one in self.asked.sentences(part, row)
                      for blank in one.blanks]  # fmt: skip
            self._row(part, row, fields)
        rows = value_at(self.raw, part.path) if gone else None
        if isinstance(rows, list):
            self.touched = True
            for number in sorted(map(int, gone), reverse=True):
                del rows[number]

    def _row(self, part: Part, row: Row, fields: list[Field]) -> None:
        typed = {one.name: typed_in(self.told, one, self.asked) for one in fields}
        if row.fresh and all(typed[one.name] in {None, "", self.asked.text(one)} for one in fields):
            return  # a choice that stands there by itself makes no row
        for field in fields:
            text = typed[field.name]
            if text is None:
                continue
            if not text and field.blank.must:
                self.slips.append(_slip(field, said("must")))
            elif row.fresh or text != self.asked.text(field):
                self._put(field, text)
        if row.fresh and part.stem and not typed.get(f"{row.name}.id"):
            self._put_raw((*row.path, "id"), self._new_id(part))

    def _put(self, field: Field, text: str) -> None:
        try:
            value = value_of(field, text, self.asked)
        except ValueError as error:
            self.slips.append(_slip(field, str(error)))
        else:
            self._put_raw(field.path, value)

    def _put_raw(self, path: tuple[str | int, ...], value: Any) -> None:
        floor = self.raw.get("floor")
        if path[0] == "floor" and isinstance(floor, dict) and "features" in floor:
            # A collection of features has no rows of our own: the same floor in our own keys.
            self.raw |= {key: copy.deepcopy(self.asked.held[key]) for key in ("floor", "exits")}
        put(self.raw, path, value)
        self.touched = True

    def _new_id(self, part: Part) -> str:
        rows = value_at(self.asked.held, part.path) or []
        taken = {row.get("id") for row in rows if isinstance(row, dict)}
        return next(name for n in range(1, 10_000) if (name := f"{part.stem}-{n}") not in taken)


def value_of(field: Field, text: str, asked: Asked) -> Any:
    """The value in a text for its place; None for an empty one.

    Raises ValueError with what is wrong in words.
    """
    if not text:
        return None
    hint, kind = field.hint, field.hint.kind
    ids = tuple(asked.ticks(field))
    if ids or kind == "several":
        return _several(ids or hint.choices, text)
    if field.blank.of:
        if text not in dict(asked.choices(field.blank.of)):
            raise ValueError(said("no-choice", text=text[:40]))
        return text
    if kind == "moment":
        return _moment(text, asked)
    if kind == "list":
        return [part.strip() for part in text.split(",") if part.strip()]
    if kind == "text":
        return _price(text) if field.path[-1] in _AMOUNTS else text
    if kind in {"choice", "yes-no"}:
        known = {YES if one is True else "no" if one is False else str(one): one
                 for one in hint.choices}  # fmt: skip
        if text not in known:
            raise ValueError(said("no-choice", text=text[:40]))
        return known[text]
    return _number(field, text, asked.units)


_AMOUNTS = frozenset({
    "price", "labour_per_h", "visit", "least", "standby_per_h", "change_per_h", "mock_up",
    "cost_low", "cost", "cost_high", "rounded_to", "added",
})  # fmt: skip
"""Keys whose text is an amount of money."""


def _number(field: Field, text: str, units: Units) -> float | int:
    hint, measure = field.hint, field.measure
    try:
        value = measure.si(text, units)
    except NoNumber:
        raise ValueError(said("no-number", text=text[:40])) from None
    unit = said(measure.scale(units).unit) if measure.scale(units).unit else ""
    low, high = hint.low, hint.high
    if (low is not None and (value < low or (hint.above and value <= low))) or (
        high is not None and value > high
    ):
        least, most = ("" if end is None else measure.text(end, units) for end in (low, high))
        key = "no-sense" if least and most else "no-sense-open"
        unit = f" {unit}" if unit else ""
        raise ValueError(said(key, text=text[:40], low=least, high=most, unit=unit))
    if hint.kind == "whole":
        if not value.is_integer():
            raise ValueError(said("no-whole", text=text[:40]))
        return int(value)
    return int(value) if value.is_integer() and abs(value) < 1e15 else value


def _moment(text: str, asked: Asked) -> str:
    """A moment with its offset: of the house's time zone, else of the start told before."""
    try:
        moment = datetime.fromisoformat(text)
    except ValueError:
        raise ValueError(said("no-day", text=text[:40])) from None
    zone: tzinfo | None = None
    try:
        name = asked.job.place.time_zone
        zone = ZoneInfo(name) if name else None
    except (ZoneInfoNotFoundError, ValueError):
        zone = None
    return moment.replace(tzinfo=zone or start_of(asked.job).tzinfo).isoformat()


def _price(text: str) -> str:
    """An amount as text with a point, so that no cent is lost."""
    bare = text.replace("$", "").strip()
    try:
        plain_number(bare)
    except NoNumber:
        raise ValueError(said("no-amount", text=text[:40])) from None
    return (
        bare.replace(",", "")
        if re.fullmatch(r"\d{1,3}(,\d{3})+(\.\d+)?", bare)
        else (bare.replace(",", "."))
    )


def _typed(told: Mapping[str, Any], name: str) -> str | None:
    value = told.get(name)
    if not isinstance(value, str):
        return None
    # A browser ends the lines of a longer blank by two signs.
    return value.replace("\r\n", "\n").strip()[:_LONGEST]


def typed_in(told: Mapping[str, Any], field: Field, asked: Asked) -> str | None:
    """What was typed or ticked in a blank; None where the form did not show it."""
    ids = tuple(asked.ticks(field))
    if (field.hint.kind != "several" and not ids) or _typed(told, field.name) is None:
        return _typed(told, field.name)
    return ", ".join(ticked(told, field.name, ids or field.hint.choices))


def ticked(told: Mapping[str, Any], name: str, choices: Sequence[Any]) -> list[str]:
    """Of choices, those whose tick `NAME.CHOICE` was set."""
    return [str(one) for one in choices if told.get(f"{name}.{one}") == YES]


def _several(choices: Sequence[Any], text: str) -> list[str]:
    told = [part.strip() for part in text.split(",") if part.strip()]
    for one in told:
        if one not in choices:
            raise ValueError(said("no-choice", text=one[:40]))
    return told


def _slip(field: Field, what: str) -> Slip:
    return Slip(field.name, name_of(field), what)


def name_of(field: Field) -> str:
    """What a blank is called in a list of mistakes."""
    return said(f"name-{field.blank.name}")


def _judge(asked: Asked, raw: Json) -> None:
    """Raises Wrong with what the reader of jobs has against the whole."""
    from farwall.readers.job_json import job_from

    try:
        job_from(raw, said("try-facts"))
    except Refused as error:
        places = {place_text(one.path): one for one in asked.fields()}
        raise Wrong([_placed(one, places) for one in error.mistakes]) from None


def _placed(mistake: Mistake, places: Mapping[str, Field]) -> Slip:
    told = f"{mistake.what} {mistake.remedy}".strip()
    if lacks := _MISSING.fullmatch(mistake.what):
        own = places.get(".".join(filter(None, (mistake.where, lacks[1]))))
        if own is not None:
            return _slip(own, said("must"))
    field = places.get(mistake.where)
    if field is None and mistake.where:
        inside = (one for place, one in places.items() if place.startswith(mistake.where))
        field = next(inside, None)
    return Slip("", mistake.where, told) if field is None else _slip(field, told)
