"""The price in lines for a terminal: no figure without its range."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.job.office.priced.kept import IN_VAN
from farwall.job.office.priced.noun import Priced


def priced_said(found: Priced) -> tuple[str, ...]:
    """Costs, what is added, the price, what drives it, offers, rooms that lose."""
    return (
        *_costs(found), *_gear(found), *_price(found), *_drivers(found), *_offers(found),
        *_rooms(found),
        *(one.said for one in found.sanity), *found.warnings,
    )  # fmt: skip


def _costs(found: Priced) -> Iterator[str]:
    for one in found.costs:
        yield f"{one.what}: {one.likely} ({one.low} to {one.high}; {one.rule}; {one.rank})"
    yield (
        f"Cost {found.cost} {found.currency} if all goes as likely; four jobs in five end between "
        f"{found.cost_low} and {found.cost_high}, {found.cost_mean} on the average"
    )
    for chance in found.chances:
        line = (
            f"Call-back for {chance.what}: {chance.percent:g} % of jobs ({chance.rank}), "
            f"{chance.cost_low} to {chance.cost_high} each, usually {chance.cost}"
        )
        yield f"{line}. {chance.why}" if chance.why else line


def _gear(found: Priced) -> Iterator[str]:
    for one in found.gear:
        if one.rank == IN_VAN:
            yield f"{one.what}: {IN_VAN}, not bought and not priced"
        else:
            yield (
                f"{one.what}: {one.share} of {one.cost}, for it lasts {one.jobs:g} jobs "
                f"({one.jobs_low:g} to {one.jobs_high:g}; {one.rank})"
            )


def _price(found: Priced) -> Iterator[str]:
    for one in found.added:
        share = f" {one.percent} % of cost" if one.percent else " as the draws say"
        yield f"{one.what}{share}: {one.amount} ({one.rank})"
    least = ", the least job that is taken" if found.least_job else ""
    yield (
        f"To ask {found.price} {found.currency}{least} ({found.price_low} to {found.price_high} at "
        f"the ends of cost); it loses money on {found.loss_percent:g} % of such jobs"
    )


def _drivers(found: Priced) -> Iterator[str]:
    for one in found.drivers:
        yield f"{one.what} explains {one.share_percent:.0f} % of the spread. {one.measure}"


def _offers(found: Priced) -> Iterator[str]:
    for one in found.offers:
        yield (
            f"Offer {one.name}: {one.price} ({one.price_low} to {one.price_high}); cost {one.cost} "
            f"({one.cost_low} to {one.cost_high}); {one.hours_h:.0f} h, {one.days[1]} days "
            f"({one.days[0]} to {one.days[2]}); loses on {one.loss_percent:g} % of such jobs"
        )


def _rooms(found: Priced) -> Iterator[str]:
    for one in found.rooms:
        if one.loses:
            yield (
                f"{one.name} costs {one.cost} ({one.cost_low} to {one.cost_high}) and brings "
                f"{one.price} by its floor: {one.left}. {one.do}"
            )
