"""Offers side by side: those that the firm told, else three made from the job."""

from __future__ import annotations

from decimal import Decimal

from farwall.facts.prices import Offer
from farwall.job.office.buying import Buying
from farwall.job.office.ground import OfficeGround
from farwall.job.office.masking import Masked
from farwall.job.office.priced.noun import OfferPriced
from farwall.job.office.priced.reckoned import Reckoned, money, reckoned
from farwall.job.office.scope import FINISH_COATS, Scope, scope_of
from farwall.price.asking import per_area
from farwall.price.money import NOTHING, amount, written
from farwall.units import ft2_from_m2

_NUMBERS = {1: "one", 2: "two", 3: "three", 4: "four", 5: "five", 6: "six"}


def offers_told(ground: OfficeGround) -> tuple[Offer, ...]:
    """The firm's own offers; else the first coat alone, all coats, and all coats with finish."""
    if ground.job.prices.offers:
        return ground.job.prices.offers
    coats = tuple(one.id for one in ground.plan.inputs.coats)
    made = []
    if len(coats) > 1:
        made.append(Offer("one", coats=coats[:1], finish_coats=0))
    made.append(Offer("sealed", coats=coats, finish_coats=0))
    made.append(Offer("finished", coats=coats, finish_coats=FINISH_COATS))
    return tuple(made)


def offers_of(
    ground: OfficeGround, buying: Buying, masked: Masked
) -> tuple[tuple[OfferPriced, ...], tuple[str, ...]]:
    """Each offer priced; and what is wrong with those that hold no floor."""
    priced, warnings = [], []
    for one in offers_told(ground):
        scope = scope_of(ground, one)
        if not scope.rooms:
            warnings.append(f"The offer {one.name or one.id} names no room of the floor.")
            continue
        added = NOTHING if one.added is None else amount(one.added)
        found = reckoned(ground, buying, masked, scope, added=added)
        priced.append(_priced(ground, one, found))
    return tuple(priced), tuple(warnings)


def _priced(ground: OfficeGround, offer: Offer, found: Reckoned) -> OfferPriced:
    scope = found.scope
    area_m2 = sum(one.net_m2 for one in ground.measured.rooms if one.room in scope.rooms)
    return OfferPriced(
        id=offer.id,
        name=offer.name or name_of(ground, scope),
        price=written(found.asked.price),
        price_low=written(found.low.price),
        price_high=written(found.high.price),
        cost_low=written(money(found.found.low)),
        cost=written(found.asked.cost),
        cost_high=written(money(found.found.high)),
        loss_percent=found.loss_percent,
        hours_h=round(found.hours.likely_h, 6),
        days=found.hours.days,
        coats=scope.coats,
        rooms=scope.rooms,
        sealer_coats=scope.sealer_coats,
        finish_coats=scope.finish_coats,
        area_m2=round(area_m2, 4),
        per_ft2=written(per_area(found.asked.price, Decimal(str(round(ft2_from_m2(area_m2), 3))))),
        holds=holds(ground, scope),
        words=offer.words,
        own=bool(offer.name),
    )


def name_of(ground: OfficeGround, scope: Scope) -> str:
    """What an offer is called where nobody named it: colours, sealed, finished.

    Coats are told where they are more than the colours: else one coat and two of the same colour
    would be called alike.
    """
    laid = [one.stain for one in ground.plan.inputs.coats if one.id in scope.coats]
    stains = set(laid)
    name = f"{_count(len(stains), 'colour').capitalize()}" if stains else "No stain"
    if len(laid) > len(stains):
        name += f" in {_count(len(laid), 'coat')}"
    name += ", sealed" if scope.sealer_coats else ", not sealed"
    return name + (", with floor finish" if scope.finish_coats else "")


def holds(ground: OfficeGround, scope: Scope) -> tuple[str, ...]:
    """What is done, in the order in which it is done."""
    rooms = ground.measured.rooms
    part = f"{len(scope.rooms)} of {len(rooms)} rooms"
    where = "all rooms" if len(scope.rooms) == len(rooms) else part
    lines = [f"Mask, clean and dry {where}"]
    coats = [one for one in ground.plan.inputs.coats if one.id in scope.coats]
    if coats:
        stains = len({one.stain for one in coats})
        stain = _count(stains, "colour")
        lines.append(f"Stain in {stain}, {_count(len(coats), 'coat')}, as the signed sample shows")
        lines.append("Neutralise, scrub and rinse until the white rag stays clean")
    if scope.sealer_coats:
        lines.append(f"Seal in {_count(scope.sealer_coats, 'coat')}")
    if scope.finish_coats:
        lines.append(f"Floor finish in {_count(scope.finish_coats, 'coat')}, to be renewed later")
    return (*lines, "Unmask, walk the floor together, hand over")


def _count(number: int, what: str) -> str:
    said = _NUMBERS.get(number, str(number))
    return f"{said} {what}" if number == 1 else f"{said} {what}s"
