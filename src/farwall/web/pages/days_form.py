"""What a calendar is asked for, from its form: every mistake at once."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date, timedelta

from starlette.datastructures import FormData

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.web.calendar_work import Asked
from farwall.web.pages.forms.measures import NoNumber, measure_of
from farwall.web.pages.guard import text_of
from farwall.web.pages.where_stands import plainly
from farwall.web.words import said

MOST_HOUSES = 60
"""Open houses that the form offers; the newest. Rank: guess."""
_LEAST_DAYS, _MOST_DAYS = 14, 400
_MOST_CREWS = 20


@dataclass(frozen=True)
class Row:
    """A house that may be asked about, as the form shows it."""

    id: str
    name: str
    chosen: bool
    free: str
    due: str


FIRST_ROWS = 12
"""Houses that the form shows unfolded where no name is sought."""


@dataclass(frozen=True)
class Rows:
    """The houses of the form: those shown at once, those folded away, the words sought."""

    first: tuple[Row, ...]
    rest: tuple[Row, ...]
    sought: str

    @property
    def any(self) -> bool:
        """Whether there is a house at all."""
        return bool(self.first or self.rest)

    @property
    def chosen_in_rest(self) -> int:
        """How many of those folded away are chosen."""
        return sum(one.chosen for one in self.rest)


def folded(rows: Sequence[Row], sought: str = "") -> Rows:
    """Those that bear the words sought, else the chosen ones before the others, a dozen.

    All others stay in the form, folded away: what is chosen there stays chosen.
    """
    parts = plainly(sought).split()
    if parts:
        first = [one for one in rows
                 if all(part in plainly(f"{one.name} {one.id}") for part in parts)]  # fmt: skip
    else:
        first = sorted(rows, key=lambda one: not one.chosen)[:FIRST_ROWS]
    shown = {one.id for one in first}
    rest = tuple(one for one in rows if one.id not in shown)
    return Rows(tuple(first), rest, sought.strip()[:80])


def default_asked(ids: Sequence[str], today: date) -> Asked:
    """What is asked where nothing was asked yet: all open houses, from the next working day on."""
    day = today + timedelta(days=1)
    while day.weekday() > 4:
        day += timedelta(days=1)
    return Asked(tuple(ids[:12]), day.isoformat())


def rows_of(houses: Mapping[str, str], asked: Asked) -> list[Row]:
    """A row for each open house. houses: name by id."""
    return [
        Row(one, name, one in asked.houses, asked.free.get(one, ""), asked.due.get(one, ""))
        for one, name in houses.items()
    ]


def asked_of(form: FormData, houses: Sequence[str], was: Asked, units: Units) -> Asked:
    """The question that the form puts; the weather stays as it was. Raises Refused."""
    read = _Read(form)
    chosen = tuple(one for one in form.getlist("house") if one in houses)
    names = tuple(str(one) for one in dict.fromkeys(chosen))
    if not names:
        read.mistakes.append(Mistake(said("days-houses-asked"), said("days-none-chosen")))
    begins = read.day("begins", said("days-begins"))
    if not begins:
        read.mistakes.append(Mistake(said("days-begins"), said("days-no-day")))
    asked = Asked(
        houses=names,
        begins=begins,
        crews=read.count("crews", said("days-crews"), 1, _MOST_CREWS) or 1,
        people=read.count("people", said("days-people"), 2, 20) or 2,
        days=read.count("days", said("days-ahead"), _LEAST_DAYS, _MOST_DAYS),
        free=read.dates("free", names),
        due=read.dates("due", names),
        weather=None if text_of(form, "no-weather") else was.weather,
        forecast=None if text_of(form, "no-forecast") else was.forecast,
        readings=read.readings(units),
    )
    if asked.readings and len(names) > 1:
        read.mistakes.append(Mistake(said("days-readings"), said("days-readings-one")))
    if asked.readings and (asked.weather or asked.forecast):
        read.mistakes.append(Mistake(said("days-readings"), said("days-readings-file")))
    if read.mistakes:
        raise Refused(*read.mistakes)
    return asked


def what_if_of(form: FormData, was: Asked) -> Asked:
    """The standing question with rain, or another trade, as the form asks. Raises Refused."""
    read = _Read(form)
    rain = read.day("rain", said("days-if-rain"))
    trade = text_of(form, "trade")[:60]
    house = text_of(form, "where")
    day = read.day("back", said("days-if-back"))
    away = was.away
    if trade or day:
        if not trade:
            read.mistakes.append(Mistake(said("days-if-trade"), said("days-if-no-trade")))
        if not day:
            read.mistakes.append(Mistake(said("days-if-back"), said("days-no-day")))
        if house not in was.houses:
            read.mistakes.append(Mistake(said("days-if-where"), said("days-if-no-house")))
        away = (*was.away, (house, trade, day))
    if not rain and not trade and not day:
        read.mistakes.append(Mistake("", said("days-if-nothing")))
    if read.mistakes:
        raise Refused(*read.mistakes)
    return replace(was, rain=(*was.rain, rain) if rain else was.rain, away=away)


class _Read:
    """Fields of a form, and what is wrong with them."""

    def __init__(self, form: FormData) -> None:
        self.form = form
        self.mistakes: list[Mistake] = []

    def day(self, name: str, where: str) -> str:
        """An ISO date, empty where none was told."""
        text = text_of(self.form, name)
        if not text:
            return ""
        try:
            return date.fromisoformat(text).isoformat()
        except ValueError:
            self.mistakes.append(Mistake(where, said("days-day-wrong", text=text[:40])))
            return ""

    def dates(self, name: str, houses: Sequence[str]) -> dict[str, str]:
        """Dates by house, of the houses that tell one."""
        found = {one: self.day(f"{name}.{one}", said(f"days-{name}")) for one in houses}
        return {one: day for one, day in found.items() if day}

    def count(self, name: str, where: str, least: int, most: int) -> int | None:
        """A whole number; None where none was told."""
        text = text_of(self.form, name)
        if not text:
            return None
        if text.isdigit() and least <= int(text) <= most:
            return int(text)
        told = said("days-count-wrong", text=text[:20], least=least, most=most)
        self.mistakes.append(Mistake(where, told))
        return None

    def readings(self, units: Units) -> dict[str, float]:
        """Slab, air and humidity as read, in SI."""
        found = {}
        for key, name in (("slab_c", "slab"), ("air_c", "air"), ("rh_percent", "rh")):
            text = text_of(self.form, name)
            if not text:
                continue
            try:
                value = measure_of(key).si(text, units)
            except NoNumber:
                value = math.nan
            low, high = (0.0, 100.0) if key == "rh_percent" else (-30.0, 60.0)
            if not low <= value <= high:
                label = said(f"days-{name}")
                self.mistakes.append(Mistake(label, said("days-reading-wrong", text=text[:20])))
                continue
            found[key] = round(value, 3)
        return found
