"""The firm's own sheet of a price: every cost with its range, what drives it, rooms that lose."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from farwall.floor.short_labels import together
from farwall.job.office.priced import KeptGear, OfferPriced, Priced, RoomMoney
from farwall.papers.office.blocks import Block, Head, Own, Paper, Rows, Text, Words
from farwall.papers.office.figures import money_said
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.money_words import money
from farwall.papers.words import area
from farwall.price.money import added, amount, figure_said, rounded, whole_said
from farwall.price.totals import whole_parts


def price_sheet(ground: PaperGround) -> Paper:
    """The paper; for the owner of the firm alone."""
    return Paper(
        title="The price, for the firm alone",
        under="Costs with their range, and what drives them",
        screen="price",
        blocks=tuple(_blocks(ground, ground.office.priced)),
    )


def _blocks(ground: PaperGround, found: Priced) -> Iterator[Block]:
    yield Words("Not to be handed out: costs, chances and profit of the firm.", "danger")
    yield Words(_in_short(found), "strong")
    for warning in found.warnings:
        yield Words(warning)
    yield Head("Cost")
    yield _costs(ground, found)
    yield Head("What is added")
    yield _added(found)
    yield from _gear(ground, found)
    yield Head("Offers")
    yield _offers(found.offers, found.currency)
    yield Head("What drives the spread, and what would narrow it")
    yield Rows(
        ("What", "Explains", "", "What to measure"),
        tuple(
            (one.what, Own(f"{one.share_percent:.0f} %"), "", one.measure) for one in found.drivers
        ),
        widths=(2.2, 0.9, 0.3, 5), right=(1,),
    )  # fmt: skip
    yield Head("Call-backs")
    yield _chances(found)
    yield Head("Rooms, by their floor")
    yield _rooms(ground, found)
    for line in _losing(found.rooms):
        yield Words(line)
    for one in found.sanity:
        yield Words(one.said, "soft")


def _in_short(found: Priced) -> str:
    return (
        f"Ask {money_said(found.price, found.currency)} "
        f"({whole_said(found.price_low)} to {whole_said(found.price_high)} at the ends of cost). "
        f"Four such jobs in five cost {whole_said(found.cost_low)} to "
        f"{whole_said(found.cost_high)}; {found.loss_percent:.0f} in 100 lose money at this price."
    )


def _costs(ground: PaperGround, found: Priced) -> Rows:
    hours = {one.task: one for one in ground.office.hours.tasks}
    rows: list[tuple[Text, ...]] = []
    # Whole, and yet their sum is the sum that stands below them.
    likely = whole_parts([amount(one.likely) for one in found.costs], amount(found.cost))
    for one, whole in zip(found.costs, likely, strict=True):
        task = hours.get(one.what)
        rows.append((
            one.what, one.rank, Own(f"{task.likely_h:.1f} h" if task else ""),
            Own(whole_said(str(min(amount(one.low), whole)))), Own(whole_said(str(whole))),
            Own(whole_said(str(max(amount(one.high), whole)))),
        ))  # fmt: skip
    total = Own(f"{ground.office.hours.likely_h:.1f} h")
    rows.append((
        "In all, four jobs in five", "", total, Own(whole_said(found.cost_low)),
        Own(whole_said(found.cost)), Own(whole_said(found.cost_high)),
    ))  # fmt: skip
    return Rows(
        (f"Cost, {found.currency}", "Rests on", "Hours", "Low", "Likely", "High"), tuple(rows),
        widths=(3.2, 2, 0.9, 0.9, 0.9, 0.9), right=(2, 3, 4, 5), strong_last=True,
    )  # fmt: skip


GEAR_WHOLE = "Gear that is kept is in the price whole, as the job says."
GEAR_SHARED = (
    "All of it is paid when it is bought; this price bears its share of the jobs it lasts."
)


def _gear(ground: PaperGround, found: Priced) -> Iterator[Block]:
    """What is kept: its share of this job, or that it is priced whole."""
    if ground.job.supplies.kept_gear == "whole":
        yield Words(GEAR_WHOLE)
    if not found.gear:
        return
    yield Head("Gear that is kept")
    rows: list[tuple[Text, ...]] = [
        (
            one.what,
            one.rank,
            Own(_jobs(one)),
            Own(figure_said(one.cost)),
            money(one.share),
        )
        for one in found.gear
    ]
    yield Rows(
        ("What", "Rests on", "Jobs it lasts", f"Costs, {found.currency}", "Of it in this price"),
        tuple(rows), widths=(3.2, 2, 1.6, 1.2, 1.6), right=(2, 3, 4),
    )  # fmt: skip
    if ground.job.supplies.kept_gear != "whole":
        yield Words(GEAR_SHARED, "soft")


def _jobs(one: KeptGear) -> str:
    if not one.jobs:
        return ""
    if one.jobs_low == one.jobs_high:
        return f"{one.jobs:g}"
    return f"{one.jobs:g} ({one.jobs_low:g} – {one.jobs_high:g})"


def _added(found: Priced) -> Rows:
    """From cost to price: the rows add up to the figure below them."""
    rows: list[tuple[Text, ...]] = [("cost, likely", "", "", Own(whole_said(found.cost)))]
    rows += [
        (
            one.what, one.rank, Own(f"{one.percent} %") if one.percent else "as the draws say",
            Own(whole_said(one.amount)),
        )
        for one in found.added
    ]  # fmt: skip
    told = [found.cost, *(one.amount for one in found.added)]
    off = amount(found.price) - added(rounded(amount(one), Decimal(1)) for one in told)
    if off:
        what = "up to the least job" if found.least_job else "rounding"
        rows.append((what, "", "", Own(whole_said(str(off)))))
    name = "To ask: the least job" if found.least_job else "To ask"
    rows.append((name, "", "", Own(figure_said(found.price))))
    return Rows(
        ("What", "Rests on", "Of cost", Own(found.currency)), tuple(rows),
        widths=(3.2, 2, 2.2, 1.4), right=(2, 3), strong_last=True,
    )  # fmt: skip


def _offers(offers: tuple[OfferPriced, ...], currency: str) -> Rows:
    return Rows(
        (f"Offer, {currency}", "Price", "Cost, four in five", "Hours", "Days", "Loses"),
        tuple(
            (
                Own(one.name) if one.own else one.name, Own(figure_said(one.price)),
                Own(f"{whole_said(one.cost_low)} – {whole_said(one.cost_high)}"),
                Own(f"{one.hours_h:.1f}"), Own(f"{one.days[1]} ({one.days[0]} – {one.days[2]})"),
                Own(f"{one.loss_percent:.0f} %"),
            )
            for one in offers
        ),
        widths=(3.4, 1.1, 1.8, 0.8, 1.2, 0.8), right=(1, 2, 3, 4, 5),
    )  # fmt: skip


def _chances(found: Priced) -> Rows:
    return Rows(
        ("For", "Rests on", "Of jobs", f"Costs, {found.currency}", "", "Why"),
        tuple(
            (
                one.what, one.rank, Own(f"{one.percent:g} %"),
                Own(f"{whole_said(one.cost_low)} – {whole_said(one.cost_high)}"), "", one.why,
            )
            for one in found.chances
        ),
        widths=(1.4, 1.6, 0.9, 1.8, 0.3, 3.6), right=(2, 3),
    )  # fmt: skip


def _rooms(ground: PaperGround, found: Priced) -> Rows:
    return Rows(
        ("Room", "Floor", "Costs", "Low to high", "Brings", "Left"),
        tuple(
            (
                Own(one.name), Own(area(one.area_m2, ground.units)), Own(whole_said(one.cost)),
                Own(f"{whole_said(one.cost_low)} – {whole_said(one.cost_high)}"),
                Own(whole_said(one.price)), Own(whole_said(one.left)),
            )
            for one in found.rooms
        ),
        widths=(3, 1.1, 1, 1.6, 1, 1), right=(1, 2, 3, 4, 5),
    )  # fmt: skip


def _losing(rooms: tuple[RoomMoney, ...]) -> Iterator[str]:
    losing = [one for one in rooms if one.loses]
    for do in dict.fromkeys(one.do for one in losing):
        names = ", ".join(together(one.name for one in losing if one.do == do))
        yield f"{names}: {do}"
