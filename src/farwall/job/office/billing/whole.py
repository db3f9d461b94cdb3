"""All lines of the whole job: the agreed price, the area as measured, changes, waits."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from decimal import Decimal

from farwall.job.office.billing.taken import MoneyTerms, money_terms
from farwall.job.office.billing.taxing import Taxing, taxing_of
from farwall.job.office.billing.told import Change, Told, Waited
from farwall.job.office.ground import OfficeGround
from farwall.job.office.priced import Priced
from farwall.nouns import dataclass
from farwall.price.invoice import Line, TaxOf, Unit
from farwall.price.money import NOTHING, added, amount, rounded, share, written
from farwall.units import M2_PER_FT2

_Split = Callable[[Decimal], tuple[tuple[TaxOf, Decimal], ...]]


@dataclass(frozen=True)
class Agreed:
    """The price of the floor without tax, and whether somebody agreed to it."""

    amount: Decimal
    by: str = ""
    warnings: tuple[str, ...] = ()


@dataclass(frozen=True)
class Whole:
    """Lines in order: those of the agreed price first, then all else. warnings: what is open."""

    agreed: Agreed
    floor: tuple[Line, ...]
    more: tuple[Line, ...]
    changes: tuple[tuple[Change, Decimal], ...]
    terms: MoneyTerms
    taxing: Taxing
    waits: Decimal = NOTHING
    by_area: Decimal = NOTHING
    warnings: tuple[str, ...] = ()

    @property
    def lines(self) -> tuple[Line, ...]:
        """All of them."""
        return (*self.floor, *self.more)


def whole_of(ground: OfficeGround, priced: Priced, told: Told) -> Whole:
    """Every line of the job as the log tells it. Amounts two decimals, without tax."""
    terms, taxing = money_terms(ground.job), taxing_of(ground.job)
    agreed = _agreed(priced, told)
    materials = material_share(priced)
    changes = tuple((one, change_price(one, terms)) for one in told.changes)
    unpriced = [one for one in told.changes if _unpriced(one, terms)]
    warnings = [*agreed.warnings, *taxing.warnings]
    warnings += [f"Change order {one.number} has no price: enter one." for one in unpriced]
    if told.waited and terms.standby_per_h is None:
        warnings.append("Waiting has no price: enter a rate of standby.")
    there_m2 = floor_m2(ground, priced, told)

    def split(net: Decimal) -> tuple[tuple[TaxOf, Decimal], ...]:
        return taxing.split(net, materials)

    area = _area(ground, there_m2)
    by_area = tuple(_by_area(ground, told, terms, there_m2, split))
    more = [*by_area]
    for one, price in changes:
        more += _change_lines(one, price, terms, taxing)
    waits = [line for one in told.waited for line in _wait_lines(one, terms, taxing)]
    return Whole(
        agreed, tuple(_floor_lines(agreed, taxing, area, split)), (*more, *waits), changes,
        terms, taxing, added(one.net for one in waits),
        added(one.net for one in by_area), tuple(dict.fromkeys(warnings)),
    )  # fmt: skip


def material_share(priced: Priced) -> Decimal:
    """Materials as a share of cost, 0 to 1: how an agreed price is split where tax asks for it."""
    known = [(one.group, amount(one.likely)) for one in priced.costs]
    total = added(cost for _, cost in known)
    materials = added(cost for group, cost in known if group == "materials")
    return materials / total if total > 0 else NOTHING


def change_price(one: Change, terms: MoneyTerms) -> Decimal:
    """What a change order costs without tax: as agreed, else hours and materials by the rates."""
    if one.amount is not None:
        return rounded(one.amount)
    return rounded(_labour(one, terms) + _materials(one, terms))


def _agreed(priced: Priced, told: Told) -> Agreed:
    if told.accepted is not None:
        return Agreed(rounded(told.accepted.amount), told.accepted.who)
    said = (
        "Nobody has agreed to a price yet: what is asked for it stands here. Enter in the log that "
        "the price was agreed."
    )
    return Agreed(rounded(amount(priced.price or priced.cost)), "", (said,))


def floor_m2(ground: OfficeGround, priced: Priced, told: Told) -> float:
    """Floor that was agreed on, as it measures now: that of the offer, else of the whole job."""
    offer = told.accepted.offer if told.accepted is not None else ""
    found = next((one.area_m2 for one in priced.offers if offer and one.id == offer), 0.0)
    return found or ground.measured.net_m2


def _area(ground: OfficeGround, area_m2: float) -> tuple[Decimal, Unit]:
    if ground.job.wishes.units == "us":
        return Decimal(str(round(area_m2 / M2_PER_FT2))), "square foot"
    return Decimal(str(round(area_m2, 1))), "square metre"


def _floor_lines(
    agreed: Agreed, taxing: Taxing, measured: tuple[Decimal, Unit], split: _Split
) -> Iterator[Line]:
    """The agreed price, by how it is taxed; its quantity is the area as measured."""
    area, unit = measured
    parts = split(agreed.amount)
    for tax, net in parts:
        what = "Staining and sealing of the concrete floor"
        if len(parts) > 1:
            what += ", labour" if tax == taxing.labour else ", materials"
        yield Line(what, net, tax, area or Decimal(1), unit if area else "one")


def _by_area(
    ground: OfficeGround, told: Told, terms: MoneyTerms, there_m2: float, split: _Split
) -> Iterator[Line]:
    """The difference by the area as measured, where it is beyond what was agreed to be borne."""
    if told.accepted is None or not told.accepted.area_m2:
        return
    base = told.accepted.area_m2
    off = Decimal(str(round((there_m2 - base) / base, 6)))
    if abs(off) * 100 <= terms.tolerance_percent.amount:
        return
    (now, unit), (then, _) = _area(ground, there_m2), _area(ground, base)
    sign = {"square foot": "ft²"}.get(unit, "m²")
    for tax, net in split(rounded(told.accepted.amount * off)):
        words = f"measured {now:,f} {sign}, agreed for {then:,f} {sign}"
        yield Line("Difference by the area as measured", net, tax, words=words)


def _unpriced(one: Change, terms: MoneyTerms) -> bool:
    if one.amount is not None:
        return False
    return (one.hours is None and one.materials is None) or bool(
        one.hours and terms.change_per_h is None
    )


def _labour(one: Change, terms: MoneyTerms) -> Decimal:
    if terms.change_per_h is None or one.hours is None:
        return NOTHING
    return rounded(one.hours * terms.change_per_h.amount)


def _materials(one: Change, terms: MoneyTerms) -> Decimal:
    if one.materials is None:
        return NOTHING
    return rounded(one.materials + share(one.materials, terms.change_material_percent.amount))


def _change_lines(one: Change, price: Decimal, terms: MoneyTerms, taxing: Taxing) -> Iterator[Line]:
    labour, materials = _labour(one, terms), _materials(one, terms)
    own = labour + materials
    part = materials / own if own > 0 else NOTHING
    parts = taxing.split(price, part)
    for tax, net in parts:
        words = change_words(one, terms)
        if len(parts) > 1:
            words = _part_words(one, terms, labour=tax == taxing.labour)
        yield Line(f"Change order {one.number}: {one.what}", net, tax, words=words)


def _part_words(one: Change, terms: MoneyTerms, *, labour: bool) -> str:
    """How one part of an order that is taxed in two comes to its price."""
    if one.amount is not None:
        return f"{'labour' if labour else 'materials'}, as agreed"
    only = replace(one, materials=None) if labour else replace(one, hours=None)
    return change_words(only, terms)


def change_words(one: Change, terms: MoneyTerms) -> str:
    """How a change order comes to its price, in words."""
    parts = []
    if one.amount is not None:
        parts.append("as agreed")
    else:
        if one.hours is not None and terms.change_per_h is not None:
            parts.append(f"{one.hours:f} h at {written(terms.change_per_h.amount)} an hour")
        if one.materials is not None:
            percent = f"{terms.change_material_percent.amount.normalize():f}"
            parts.append(f"materials {written(one.materials)} and {percent} % on them")
    return ", ".join(parts)


def _wait_lines(one: Waited, terms: MoneyTerms, taxing: Taxing) -> Iterator[Line]:
    rate = terms.standby_per_h
    if rate is None:
        return
    tax: TaxOf = taxing.labour
    net = rounded(one.hours * rate.amount)
    yield Line(f"Standby: {one.why}", net, tax, one.hours, "hour", rate.amount)
