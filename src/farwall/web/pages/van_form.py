"""The van edited by forms: something put in, changed, taken out; all mistakes at once."""

from __future__ import annotations

import hashlib
import math
from collections.abc import Mapping
from dataclasses import replace
from datetime import date
from typing import Any, get_args

from farwall.errors import Mistake, Refused
from farwall.facts.plain import plain
from farwall.facts.van import Flow, SprayerKind, Stock, StockKind, UsedUp, Van, VanSprayer
from farwall.papers.wall_clock import Units
from farwall.units import KG_PER_LB, ft_from_m, gal_from_l
from farwall.web.pages.forms.measures import COUNT, FEET, Measure, NoNumber, Scale, measure_of
from farwall.web.words import said

SPRAYER_KINDS: tuple[str, ...] = get_args(SprayerKind)
STOCK_KINDS: tuple[str, ...] = get_args(StockKind)
UNITS = {"us": ("gal", "lb", "ft", "count"), "metric": ("L", "kg", "m", "count")}
"""Units that an amount may be typed in."""
_SI = {"gal": "l", "L": "l", "lb": "kg", "kg": "kg", "ft": "m", "m": "m", "count": "count"}
_TANK, _FLOW = measure_of("tank_l"), measure_of("tip_l_min")
_POUNDS = Measure(Scale("unit-lb", KG_PER_LB), Scale("unit-kg"))
_AMOUNTS = {"gal": _TANK, "L": _TANK, "lb": _POUNDS, "kg": _POUNDS, "ft": FEET, "m": FEET}


def flow_named(units: Units) -> str:
    """What the blank of a tip's flow is called, with its unit."""
    return said("van-f-flow", unit=said(_FLOW.scale(units).unit))


def seen_of(van: Van) -> str:
    """A word that changes with the van: a form made of another one is not taken."""
    return hashlib.sha256(repr(plain(van)).encode()).hexdigest()[:16]


def with_sprayer(van: Van, form: Mapping[str, str], units: Units, today: date) -> Van:
    """The van with the sprayer that the form tells, in the place of `was`. Raises Refused."""
    read = _Read(form)
    old = next((one for one in van.sprayers if one.id == form.get("was")), None)
    uses = read.count("uses", said("van-f-uses"))
    made = VanSprayer(
        id=read.text("id", said("van-f-id"), must=True),
        kind=read.choice("kind", said("van-f-kind"), SPRAYER_KINDS),
        tank_l=read.litres("tank", said("van-f-tank"), units),
        tip=read.text("tip", said("van-f-tip")),
        uses=uses,
        seals_at=read.count("seals_at", said("van-f-seals")),
        flows=old.flows if old else (),
        unsound=read.text("unsound", said("van-f-unsound")),
    )
    if old is not None and form.get("tank") == shown_tank(old.tank_l, units):
        made = replace(made, tank_l=old.tank_l)
    flow = read.number("flow", flow_named(units), may_lack=True, measure=_FLOW, units=units)
    if flow is not None and flow > 0:
        made = replace(made, flows=(*made.flows, Flow(today.isoformat(), round(flow, 4), uses)))
    read.done()
    others = [one for one in van.sprayers if one is not old]
    return _judged(replace(van, sprayers=(*others, made)))


def with_stock(van: Van, form: Mapping[str, str]) -> Van:
    """The van with the thing that the form tells, in the place of `was`. Raises Refused."""
    read = _Read(form)
    unit = read.choice("unit", said("van-f-unit"), tuple(_SI))
    system: Units = "us" if unit in UNITS["us"] else "metric"
    measure = _AMOUNTS.get(unit, COUNT)
    amount = read.number("amount", said("van-f-amount"), measure=measure, units=system) or 0.0
    old = next((one for one in van.stock if one.id == form.get("was")), None)
    if old is not None and _same(old, form):
        amount = old.amount  # what nobody touched does not drift by the digits of the form
    made = Stock(
        id=read.text("id", said("van-f-id"), must=True),
        kind=read.choice("kind", said("van-f-what"), STOCK_KINDS),
        amount=round(amount, 4),
        unit=_SI.get(unit, "count"),  # type: ignore[arg-type]
        of=read.text("of", said("van-f-of")),
        lot=read.text("lot", said("van-f-lot")),
        good_until=read.day("good_until", said("van-f-good")),
        opened=read.day("opened", said("van-f-opened")),
    )
    read.done()
    others = [one for one in van.stock if one.id != form.get("was")]
    return _judged(replace(van, stock=(*others, made)))


def _same(old: Stock, form: Mapping[str, str]) -> bool:
    typed = (form.get("amount", ""), form.get("unit", ""))
    return typed in {shown_amount(old, "us"), shown_amount(old, "metric")}


def without(van: Van, name: str) -> Van:
    """The van without the sprayer or thing of this id. Raises Refused where it has none."""
    kept = replace(
        van,
        sprayers=tuple(one for one in van.sprayers if one.id != name),
        stock=tuple(one for one in van.stock if one.id != name),
    )
    if kept == van:
        raise Refused(Mistake(name[:40], said("van-no-such")))
    return kept


def used_more(van: Van, form: Mapping[str, str], used: UsedUp) -> UsedUp:
    """What a job used, with the things that no entry tells, as the form has them. In stock units.

    Raises Refused.
    """
    read = _Read(form)
    things = []
    for one in van.stock:
        if one.kind == "stain":
            continue
        found = read.number(f"used.{one.id}", one.id, may_lack=True)
        if found:
            things.append((one.id, found))
    read.done()
    return replace(used, things=(*used.things, *things))


def shown_amount(one: Stock, units: Units) -> tuple[str, str]:
    """An amount and its unit as the form has them."""
    if units == "us":
        if one.unit == "l":
            return _figure(gal_from_l(one.amount)), "gal"
        if one.unit == "kg":
            return _figure(one.amount / KG_PER_LB), "lb"
        if one.unit == "m":
            return _figure(ft_from_m(one.amount)), "ft"
    return _figure(one.amount), "L" if one.unit == "l" else one.unit


def shown_tank(litres: float, units: Units) -> str:
    """A tank's size as the form has it."""
    return _figure(gal_from_l(litres) if units == "us" else litres)


def _figure(value: float) -> str:
    return f"{value:.3f}".rstrip("0").rstrip(".")


def _judged(van: Van) -> Van:
    """The van as its own reader takes it. Raises Refused."""
    from farwall.readers.van_json import van_from

    told: Any = plain(van, omit_empty=True)
    return van_from(told, said("van-title"))


class _Read:
    """Fields of a form, and what is wrong with them."""

    def __init__(self, form: Mapping[str, str]) -> None:
        self.form = form
        self.mistakes: list[Mistake] = []

    def done(self) -> None:
        """Raises Refused with all that was wrong."""
        if self.mistakes:
            raise Refused(*self.mistakes)

    def text(self, name: str, where: str, *, must: bool = False) -> str:
        found = self.form.get(name, "").strip()[:120]
        if must and not found:
            self.mistakes.append(Mistake(where, said("van-f-must")))
        return found

    def choice(self, name: str, where: str, choices: tuple[str, ...]) -> Any:
        found = self.form.get(name, "")
        if found not in choices:
            told = said("van-f-no-choice", text=found[:40])
            self.mistakes.append(Mistake(where, told))
            return choices[0]
        return found

    def number(
        self, name: str, where: str, *, may_lack: bool = False, measure: Measure = COUNT,
        units: Units = "us",
    ) -> float | None:  # fmt: skip
        """A number in SI as the measure reads it; None for none."""
        text = self.form.get(name, "").strip()
        if not text and may_lack:
            return None
        try:
            value = measure.si(text, units)
        except NoNumber:
            value = math.nan
        if not 0 <= value < 1e6:
            self.mistakes.append(Mistake(where, said("van-f-no-number", text=text[:40])))
            return None
        return value

    def count(self, name: str, where: str) -> int:
        text = self.form.get(name, "").strip() or "0"
        if not text.isdigit() or int(text) > 100_000:
            self.mistakes.append(Mistake(where, said("van-f-no-number", text=text[:40])))
            return 0
        return int(text)

    def litres(self, name: str, where: str, units: Units) -> float:
        value = self.number(name, where, measure=_TANK, units=units)
        if value is not None and value <= 0:
            self.mistakes.append(Mistake(where, said("van-f-no-number", text="0")))
        return round(value or 1.0, 4)

    def day(self, name: str, where: str) -> str:
        text = self.form.get(name, "").strip()
        if not text:
            return ""
        try:
            return date.fromisoformat(text).isoformat()
        except ValueError:
            self.mistakes.append(Mistake(where, said("days-day-wrong", text=text[:40])))
            return ""
