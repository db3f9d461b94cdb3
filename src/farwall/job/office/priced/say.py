"""The price in lines for a terminal: what to ask first, then what it is made of.

No figure without its range. Costs are told to the whole unit, as their ranges are no finer.
"""

from __future__ import annotations

from collections.abc import Iterator

from farwall.floor.short_labels import together
from farwall.job.office.columns import columns
from farwall.job.office.priced.kept import IN_VAN
from farwall.job.office.priced.noun import Priced
from farwall.price.money import figure_said, whole_said


def priced_said(found: Priced) -> tuple[str, ...]:
    """Price, offers, costs, what is added, call-backs, gear, what drives it, rooms that lose."""
    return (
        *_price(found), *_offers(found), *_costs(found), *_added(found), *_chances(found),
        *_gear(found), *_drivers(found), *_rooms(found),
    )  # fmt: skip


def _price(found: Priced) -> Iterator[str]:
    least = ", the least job that is taken" if found.least_job else ""
    yield (
        f"To ask {whole_said(found.price)} {found.currency}{least} "
        f"({_span(found.price_low, found.price_high)} at the ends of cost); "
        f"it loses money on {found.loss_percent:.0f} % of such jobs."
    )
    yield from (one.said for one in found.sanity)
    yield from found.warnings


def _offers(found: Priced) -> Iterator[str]:
    if not found.offers:
        return
    heads = ("Offers", "price", "at the ends", "cost, four in five", "hours", "days", "loses")
    rows = [
        (
            one.name, whole_said(one.price), _span(one.price_low, one.price_high),
            _span(one.cost_low, one.cost_high), f"{one.hours_h:.0f}",
            f"{one.days[1]} ({one.days[0]} to {one.days[2]})", f"{one.loss_percent:.0f} %",
        )
        for one in found.offers
    ]  # fmt: skip
    yield ""
    yield from columns([heads, *rows], right=range(1, len(heads)))


def _costs(found: Priced) -> Iterator[str]:
    heads = (f"Costs, {found.currency}", "likely", "low to high", "rests on")
    rows = [
        (one.what, whole_said(one.likely), _span(one.low, one.high), f"{one.rank}: {one.rule}")
        for one in found.costs
    ]
    mean = f"{whole_said(found.cost_mean)} on the average of all draws"
    whole = ("four jobs in five", whole_said(found.cost), _span(found.cost_low, found.cost_high))
    yield ""
    yield from columns([heads, *rows, (*whole, mean)], right=(1, 2))


def _added(found: Priced) -> Iterator[str]:
    if not found.added:
        return
    rows = [
        (
            one.what, whole_said(one.amount),
            f"{one.rank}: " + (f"{one.percent} % of cost" if one.percent else "as the draws say"),
        )
        for one in found.added
    ]  # fmt: skip
    yield ""
    yield from columns([(f"Added, {found.currency}", "", "rests on"), *rows], right=(1,))


def _chances(found: Priced) -> Iterator[str]:
    if not found.chances:
        return
    rows = [
        (
            one.what, f"{one.percent:g} %", whole_said(one.cost),
            _span(one.cost_low, one.cost_high), f"{one.rank}. {one.why}".rstrip(". "),
        )
        for one in found.chances
    ]  # fmt: skip
    heads = (f"Call-backs, {found.currency}", "of jobs", "usually", "low to high", "rests on")
    yield ""
    yield from columns([heads, *rows], right=(1, 2, 3))


def _gear(found: Priced) -> Iterator[str]:
    if not found.gear:
        return
    heads = (
        f"Gear that is kept, {found.currency}",
        "in this job",
        "of",
        "jobs it lasts",
        "rests on",
    )
    rows = [
        (one.what, "–", "–", "–", IN_VAN) if one.rank == IN_VAN else (
            one.what, figure_said(one.share), figure_said(one.cost),
            f"{one.jobs:g} ({one.jobs_low:g} to {one.jobs_high:g})", one.rank,
        )
        for one in found.gear
    ]  # fmt: skip
    yield ""
    yield from columns([heads, *rows], right=(1, 2, 3))


def _drivers(found: Priced) -> Iterator[str]:
    if not found.drivers:
        return
    rows = [(one.what, f"{one.share_percent:.0f} %", one.measure) for one in found.drivers]
    yield ""
    yield from columns([("What drives the spread", "", "what would narrow it"), *rows], right=(1,))


def _rooms(found: Priced) -> Iterator[str]:
    losing = [one for one in found.rooms if one.loses]
    if not losing:
        return
    rows = [
        (one.name, whole_said(one.cost), _span(one.cost_low, one.cost_high), whole_said(one.price))
        for one in losing
    ]
    yield ""
    head = ("Rooms that lose", "cost", "low to high", "brought by their floor")
    yield from columns([head, *rows], right=(1, 2, 3))
    for do in dict.fromkeys(one.do for one in losing):
        names = together(one.name for one in losing if one.do == do)
        yield f"{', '.join(names)}: {do}"


def _span(low: str, high: str) -> str:
    return f"{whole_said(low)} to {whole_said(high)}"
