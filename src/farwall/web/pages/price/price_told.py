"""The page of the price: what is asked with its range, offers side by side, what drives it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from farwall.floor.short_labels import together
from farwall.job.office import Office, OfficeGround
from farwall.job.office.priced import IN_VAN, Cost, OfferPriced, Priced
from farwall.papers.words import area, names_in
from farwall.phrasebook import LANGUAGE, speaking
from farwall.price.money import figure_said, whole_said
from farwall.web.pages.price.lines import Scale, range_line, scale_of
from farwall.web.pages.told import told_on_page
from farwall.web.words import said


def price_told(ground: OfficeGround, office: Office) -> dict[str, Any]:
    """All that the template shows, in words."""
    found, units = office.priced, ground.job.wishes.units
    with speaking(LANGUAGE.get(), names_in(ground.plan)):
        scale = scale_of(_ends(found))
        return {
            "asked": f"{figure_said(found.price)} {found.currency}",
            "between": said(
                "price-price-between", low=whole_said(found.price_low),
                high=whole_said(found.price_high),
            ),
            "least": said("price-price-least") if found.least_job else "",
            "costs_said": _cost(found.cost_low, found.cost_high, found.cost),
            "loses": said("price-price-loses", share=f"{found.loss_percent:.0f}"),
            "line": _line(scale, found, ticks=True),
            "offers": [_offer(scale, one, found.currency, units) for one in found.offers],
            "drivers": [
                (f"{one.share_percent:.0f} %", told_on_page(one.what), told_on_page(one.measure))
                for one in found.drivers
            ],
            "costs": [*_costs(found.costs)],
            "gear": [*_gear(ground, found)],
            "hours": f"{office.hours.likely_h:.0f} h",
            "sum": [whole_said(one) for one in (found.cost_low, found.cost, found.cost_high)],
            "added": [
                (
                    told_on_page(one.what),
                    f"{one.percent} %" if one.percent else told_on_page("as the draws say"),
                    whole_said(one.amount), told_on_page(one.rank),
                )
                for one in found.added
            ],
            "chances": [
                (
                    told_on_page(one.what), f"{one.percent:g} %", told_on_page(one.rank),
                    f"{whole_said(one.cost_low)} – {whole_said(one.cost_high)}",
                    told_on_page(one.why) if one.why else "",
                )
                for one in found.chances
            ],
            "rooms": [
                (
                    one.name, area(one.area_m2, units), whole_said(one.cost),
                    f"{whole_said(one.cost_low)} – {whole_said(one.cost_high)}",
                    whole_said(one.price), whole_said(one.left), one.loses,
                )
                for one in found.rooms
            ],
            "losing": [*_losing(found)],
            "beside": [told_on_page(one.said) for one in found.sanity],
            "warnings": [told_on_page(one) for one in found.warnings],
            "currency": found.currency,
        }  # fmt: skip


def _ends(found: Priced) -> Iterator[float]:
    every: tuple[Priced | OfferPriced, ...] = (found, *found.offers)
    for one in every:
        for text in (one.cost_low, one.cost, one.cost_high, one.price):
            yield float(text)


def _cost(low: str, high: str, likely: str) -> str:
    return said(
        "price-price-costs", low=whole_said(low), high=whole_said(high), likely=whole_said(likely)
    )


def _line(scale: Scale, one: Priced | OfferPriced, *, ticks: bool = False) -> object:
    low, likely, high = (float(text) for text in (one.cost_low, one.cost, one.cost_high))
    words = f"{_cost(one.cost_low, one.cost_high, one.cost)} "
    words += said("price-price-asked", price=whole_said(one.price))
    return range_line(scale, low, likely, high, mark=float(one.price), said=words, ticks=ticks)


def _offer(scale: Scale, one: OfferPriced, currency: str, units: Any) -> dict[str, Any]:
    low, likely, high = one.days
    return {
        "name": one.name if one.own else told_on_page(one.name),
        "own": one.own,
        "price": f"{figure_said(one.price)} {currency}",
        "between": said(
            "price-price-between", low=whole_said(one.price_low), high=whole_said(one.price_high)
        ),
        "line": _line(scale, one),
        "costs": _cost(one.cost_low, one.cost_high, one.cost),
        "loses": said("price-price-loses", share=f"{one.loss_percent:.0f}"),
        "work": said(
            "price-price-work", hours=f"{one.hours_h:.0f}", days=likely, low=low, high=high,
            area=area(one.area_m2, units),
        ),
        "holds": [told_on_page(line) for line in one.holds],
        "words": one.words,
    }  # fmt: skip


def _costs(costs: tuple[Cost, ...]) -> Iterator[tuple[Any, ...]]:
    for one in costs:
        figures = (whole_said(text) for text in (one.low, one.likely, one.high))
        yield told_on_page(one.what), *figures, told_on_page(one.rank), told_on_page(one.rule)


def _gear(ground: OfficeGround, found: Priced) -> Iterator[str]:
    """A sentence for each thing that is kept, and how it is priced where a switch says so."""
    for one in found.gear:
        what = told_on_page(one.what)
        if one.rank == IN_VAN:
            yield said("price-price-gear-van", what=what)
        else:
            yield said(
                "price-price-gear-one", what=what, share=figure_said(one.share),
                cost=figure_said(one.cost), jobs=f"{one.jobs:g}", low=f"{one.jobs_low:g}",
                high=f"{one.jobs_high:g}", rank=told_on_page(one.rank),
            )  # fmt: skip
    if ground.job.supplies.kept_gear == "whole":
        yield said("price-price-gear-whole")


def _losing(found: Priced) -> Iterator[tuple[str, object]]:
    """Rooms that lose, together by what helps them."""
    losing = [one for one in found.rooms if one.loses]
    for do in dict.fromkeys(one.do for one in losing):
        names = together(one.name for one in losing if one.do == do)
        yield ", ".join(names), told_on_page(do)
