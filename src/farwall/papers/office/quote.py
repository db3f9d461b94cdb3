"""The quote: what is offered, side by side, each with one clean figure; terms; a line to sign."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from farwall.facts.prices import Tax
from farwall.job.office.priced import OfferPriced, Priced
from farwall.papers.office.blocks import (
    Block,
    Facts,
    Head,
    Own,
    Paper,
    Rows,
    Sign,
    Text,
    Ticks,
    Words,
)
from farwall.papers.office.figures import asked_on, day_said, figure_said, money_said, until
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.setting import address_lines
from farwall.papers.words import area
from farwall.price.money import amount, rounded, share, written
from farwall.price.usual import DEPOSIT_PERCENT, WARRANTY_MONTHS

MOST = 4
"""Offers that stand side by side on a page; more are told below each other."""
DRAFT = (
    "Draft, not to be handed out: the firm has not told what its hour costs, and these figures "
    "rest on an invented one."
)

SAME = (
    "In each of them: masking, cleaning and drying; neutralising, scrubbing and rinsing until the "
    "white rag stays clean; unmasking, a walk over the floor together, a care sheet."
)


def quote(ground: PaperGround) -> Paper:
    """The paper for the customer."""
    customer, found = ground.job.customer, ground.office.priced
    to = (customer.name, customer.contact, *address_lines(customer.address))
    return Paper(
        title="Quote",
        under=Own(ground.job.name or ground.job.id),
        letterhead=True,
        to=tuple(one for one in to if one),
        screen="price",
        blocks=tuple(_blocks(ground, found)),
    )


def _blocks(ground: PaperGround, found: Priced) -> Iterator[Block]:
    rates = found.rates
    assert rates is not None, "a price of a planned job has its rates"
    if rates.labour_per_h.rank == "guess":
        yield Words(DRAFT, "danger")
    yield Facts(tuple(_facts(ground, found)), columns=2)
    yield Words(
        "The floor is stained with a reactive stain that takes its colour in the concrete itself. "
        "It is varied like stone, as the sealed and signed sample on this very slab shows it."
    )
    yield _offers(ground, found)
    for one in found.offers:
        if one.words:
            yield Words(Own(f"{one.name}: {one.words}"))
    yield Words(SAME)
    yield Head("When it is due")
    yield _due(ground, found)
    yield Words(_terms(ground, found), "soft")
    if len(found.offers) > 1:
        yield Head("Chosen")
        yield Ticks(tuple(_named(ground, one) for one in found.offers[:MOST]), columns=2)
    yield Sign(
        ("owner", "finisher", "date"),
        "Agreed, with the sheet “Scope and what is not in it”:",
    )


def _facts(ground: PaperGround, found: Priced) -> Iterator[tuple[Text, Text]]:
    day, job = asked_on(ground), ground.job
    assert found.rates is not None
    valid = int(found.rates.valid_days.amount)
    yield "Date", day_said(ground, day) if day else "____________"
    holds = f"until {day_said(ground, until(day, valid))}" if day else f"{valid} days"
    yield "Holds", holds
    tolerance = found.rates.area_tolerance_percent.value
    yield "Floor as measured", f"{area(found.area_m2, ground.units)}, ± {tolerance} %"
    yield "Work begins, as planned", ground.clock.day()
    if job.customer.reference:
        yield "Your reference", Own(job.customer.reference)
    if job.builder.name:
        yield "Builder", Own(job.builder.name)


def _offers(ground: PaperGround, found: Priced) -> Rows:
    """Side by side while they fit; else a row each."""
    offers, total = found.offers, len(ground.job.floor.rooms)
    if len(offers) > MOST:
        return Rows(
            ("What is offered", "Floor", "Days on site", f"Price, {found.currency}"),
            tuple(
                (
                    _name(one), area(one.area_m2, ground.units), _days(one),
                    Own(figure_said(_whole(ground, one))),
                )
                for one in offers
            ),
            widths=(4, 1.4, 1.6, 1.4), right=(1, 2, 3),
        )  # fmt: skip
    lines: list[tuple[Text, list[Text]]] = [
        ("Coats of stain", [_coats(ground, one) for one in offers]),
        ("Coats of sealer", [_number(one.sealer_coats) for one in offers]),
        ("Coats of floor finish", [_number(one.finish_coats) for one in offers]),
        ("Days on site, about", [_days(one) for one in offers]),
    ]
    if all(one.finish_coats == 0 for one in offers):
        del lines[2]
    if any(len(one.rooms) < total for one in offers):
        lines.append(("Rooms", [_rooms(one, total) for one in offers]))
        lines.append(("Floor", [area(one.area_m2, ground.units) for one in offers]))
    price: list[tuple[Text, list[Text]]] = [
        *_taxed(ground.job.prices.taxes, found),
        (f"Price, {found.currency}", [Own(figure_said(_whole(ground, one))) for one in offers]),
    ]
    rows = tuple((name, *cells) for name, cells in (*lines, *price))
    sides = tuple(range(1, len(offers) + 1))
    return Rows(
        ("", *(_name(one) for one in offers)), rows, widths=(1.5, *(1.6 for _ in offers)),
        right=sides, strong_last=True,
    )  # fmt: skip


def _taxed(taxes: tuple[Tax, ...], found: Priced) -> Iterator[tuple[Text, list[Text]]]:
    """The price before tax and the tax, where one is told that is taken of all."""
    whole = [one for one in taxes if one.on == "all" and one.percent > 0]
    if not whole:
        return
    yield "Before tax", [Own(figure_said(one.price)) for one in found.offers]
    for tax in whole:
        name = Own(f"{tax.name or 'Tax'} {tax.percent:g} %")
        yield name, [Own(figure_said(_tax(one, tax))) for one in found.offers]


def _tax(one: OfferPriced, tax: Tax) -> str:
    return written(rounded(share(amount(one.price), tax.percent)))


def _whole(ground: PaperGround, one: OfferPriced) -> str:
    """The figure that the customer pays: with every tax that is taken of all."""
    taxes = [tax for tax in ground.job.prices.taxes if tax.on == "all" and tax.percent > 0]
    total = amount(one.price) + sum((amount(_tax(one, tax)) for tax in taxes), start=Decimal(0))
    return written(total)


def _due(ground: PaperGround, found: Priced) -> Rows:
    """Parts of each price by their occasion; the last is what is left, so that they add up."""
    terms, offers = ground.job.prices.terms, found.offers[:MOST]
    deposit = DEPOSIT_PERCENT if terms.deposit_percent is None else terms.deposit_percent
    progress = terms.progress_percent or 0.0
    occasions: list[tuple[Text, float]] = [("Before stain is bought", deposit)]
    if progress:
        occasions.append(("When the colour is in and rinsed", progress))
    rows: list[tuple[Text, ...]] = []
    left = [amount(_whole(ground, one)) for one in offers]
    for name, percent in occasions:
        parts = [rounded(share(amount(_whole(ground, one)), percent)) for one in offers]
        left = [rest - part for rest, part in zip(left, parts, strict=True)]
        rows.append((name, *(Own(figure_said(written(part))) for part in parts)))
    rows.append(("At hand-over", *(Own(figure_said(written(rest))) for rest in left)))
    return Rows(
        ("", *(_name(one) for one in offers)), tuple(rows),
        widths=(1.5, *(1.6 for _ in offers)), right=tuple(range(1, len(offers) + 1)),
    )  # fmt: skip


def _terms(ground: PaperGround, found: Priced) -> str:
    rates = found.rates
    assert rates is not None
    months = ground.job.prices.terms.warranty_months
    waiting = money_said(rates.standby_per_h.value, found.currency)
    hour = money_said(rates.change_per_h.value, found.currency)
    sample = money_said(rates.mock_up.value, found.currency)
    partly = any(one.on != "all" and one.percent > 0 for one in ground.job.prices.taxes)
    tax = " Tax of a part of the work is added on the invoice." if partly else ""
    return (
        f"If the floor measures more or less than the tolerance, the price goes with it. An hour "
        f"in which others keep both of us waiting: {waiting}. Work asked for later is written down "
        f"and signed before it is done: {hour} an hour of one person, and materials with "
        f"{rates.change_material_percent.value} % on them. One more sample than agreed: {sample}. "
        f"Workmanship is warranted for {WARRANTY_MONTHS if months is None else months} months.{tax}"
    )


def _named(ground: PaperGround, one: OfferPriced) -> Text:
    price = money_said(_whole(ground, one), ground.office.priced.currency)
    return Own(f"{one.name}, {price}") if one.own else f"{one.name}, for {price}"


def _name(one: OfferPriced) -> Text:
    return Own(one.name) if one.own else one.name


def _coats(ground: PaperGround, one: OfferPriced) -> Text:
    stains = {coat.stain for coat in ground.plan.inputs.coats if coat.id in one.coats}
    if not one.coats:
        return "none"
    colours = "one colour" if len(stains) == 1 else f"{len(stains)} colours"
    return f"{len(one.coats)}, in {colours}"


def _number(count: int) -> Text:
    return Own(str(count)) if count else "none"


def _rooms(one: OfferPriced, total: int) -> Text:
    return f"all {total}" if len(one.rooms) == total else f"{len(one.rooms)} of {total}"


def _days(one: OfferPriced) -> Text:
    return Own(str(one.days[1]))
