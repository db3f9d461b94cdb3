"""The quote: what is offered, side by side, each with one clean figure; terms; a line to sign."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from farwall.job.office.billing.taken import money_terms
from farwall.job.office.hours.days import calendar_days
from farwall.job.office.priced import OfferPriced, Priced
from farwall.job.office.priced.sums import offer_sums
from farwall.job.plan_days import house_ids
from farwall.papers.office.blocks import (
    LAW_WINS,
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
from farwall.papers.office.figures import asked_on, day_said, money_said, until
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.setting import address_lines
from farwall.papers.words import area
from farwall.price.money import figure_said, written

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
        wins=LAW_WINS,
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
    tolerance = f"{money_terms(job).tolerance_percent.amount.normalize():f}"
    yield "Floor as measured", f"{area(found.area_m2, ground.units)}, ± {tolerance} %"
    known = calendar_days(ground.calendar or ground.ground.calendar, house_ids([job])[0])
    if known is None:
        yield "Work begins, as planned", ground.clock.day()
    else:
        yield "Work begins, as planned", day_said(ground, known[0])
        yield "Handed over, as planned", day_said(ground, known[1])
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
        *_taxed(ground, found),
        (f"Price, {found.currency}", [Own(figure_said(_whole(ground, one))) for one in offers]),
    ]
    rows = tuple((name, *cells) for name, cells in (*lines, *price))
    sides = tuple(range(1, len(offers) + 1))
    return Rows(
        ("", *(_name(one) for one in offers)), rows, widths=(1.5, *(1.6 for _ in offers)),
        right=sides, strong_last=True,
    )  # fmt: skip


def _taxed(ground: PaperGround, found: Priced) -> Iterator[tuple[Text, list[Text]]]:
    """The price before tax and the tax, where one was told."""
    sums = [offer_sums(ground.ground, found, one) for one in found.offers]
    if any(one.tax for one in sums):
        yield "Before tax", [Own(figure_said(one.price)) for one in found.offers]
        yield "Tax", [Own(figure_said(written(one.tax))) for one in sums]


def _whole(ground: PaperGround, one: OfferPriced) -> str:
    """The figure that the customer pays: with tax."""
    return written(offer_sums(ground.ground, ground.office.priced, one).whole)


def _due(ground: PaperGround, found: Priced) -> Rows:
    """Parts of each price by their occasion; they add up to it."""
    offers = found.offers[:MOST]
    parts = [offer_sums(ground.ground, found, one).parts for one in offers]
    names = ("Before stain is bought", "When the colour is in and rinsed", "At hand-over")
    rows: tuple[tuple[Text, ...], ...] = tuple(
        (name, *(Own(figure_said(written(part))) for part in each))
        for name, each in zip(names, zip(*parts, strict=True), strict=True)
        if any(each)
    )
    return Rows(
        ("", *(_name(one) for one in offers)), rows,
        widths=(1.5, *(1.6 for _ in offers)), right=tuple(range(1, len(offers) + 1)),
    )  # fmt: skip


def _terms(ground: PaperGround, found: Priced) -> str:
    """What holds beside the price; what nobody told and is not guessed is left out."""
    rates, terms = found.rates, money_terms(ground.job)
    assert rates is not None

    def said(value: Decimal | str) -> str:
        return money_said(str(value), found.currency)

    lines = ["If the floor measures more or less than the tolerance, the price goes with it."]
    if terms.standby_per_h:
        lines.append(
            f"An hour in which others keep both of us waiting: {said(terms.standby_per_h.value)}."
        )
    if terms.change_per_h:
        percent = f"{terms.change_material_percent.amount.normalize():f}"
        lines.append(
            f"Work asked for later is written down and signed before it is done: "
            f"{said(terms.change_per_h.value)} an hour of one person, and materials with "
            f"{percent} % on them."
        )
    if rates.mock_up:
        lines.append(f"One more sample than agreed: {said(rates.mock_up.value)}.")
    lines.append(f"Workmanship is warranted for {rates.warranty_months.value} months.")
    return " ".join(lines)


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
