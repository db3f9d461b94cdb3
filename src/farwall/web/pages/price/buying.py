"""What the page of buying shows: the list by seller, ways side by side, the van, the price list."""

from __future__ import annotations

from typing import Any

from farwall.job.office import Office, OfficeGround
from farwall.job.office.buying import Bought, Buying, Way
from farwall.job.office.buying.said import age_said, many_said, one_job_in
from farwall.job.van.say import amount_words
from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, speaking
from farwall.price.money import amount
from farwall.units import gal_from_l
from farwall.web.pages.told import told_on_page
from farwall.web.words import said

Json = dict[str, Any]


def buying_shown(ground: OfficeGround, office: Office) -> Json:
    """What the template is given."""
    found, units = office.buying, ground.job.wishes.units
    with speaking(LANGUAGE.get(), names_in(ground.plan)):
        return {
            "total": _money(found.total),
            "currency": found.currency,
            "guessed": _money(found.guessed) if amount(found.guessed) else "",
            "proven": found.chosen is not None and found.chosen.proof.status == "best",
            "sellers": [_seller(one, found, units) for one in found.sellers],
            "unpriced": [told_on_page(one) for one in found.unpriced],
            "ways": [_way(one, found, units) for one in found.ways] if found.lines else [],
            "trip": _trip(found),
            "there": [_there(one, units) for one in found.there if one.there > 0 or one.mind],
            "warnings": [told_on_page(one) for one in found.warnings],
        }


def _money(text: str) -> str:
    return f"{amount(text):,.2f}"


def _seller(seller: Any, found: Buying, units: str) -> Json:
    own = [one for one in found.lines if one.seller == seller.seller]
    return {
        "name": seller.seller or said("price-buying-nobody"),
        "goods": _money(seller.goods),
        "delivery": _money(seller.delivery) if amount(seller.delivery) else "",
        "free_from": _money(seller.free_from) if seller.free_from else "",
        "days": seller.days,
        "lines": [_line(one, units) for one in own],
    }


def _line(one: Bought, units: str) -> Json:
    lot = one.lot or (said("price-buying-one-lot") if one.kind == "stain" else "")
    return {
        "count": told_on_page(many_said(one, units)),
        "what": told_on_page(one.what),
        "name": one.name,
        "lot": lot,
        "cost": _money(one.cost),
        "guess": one.rank == "guess",
    }


def _way(way: Way, found: Buying, units: str) -> Json:
    key = way.aim.replace(" ", "-")
    left = sum(one.amount for one in way.left_over if one.quantity.startswith("stain"))
    return {
        "name": said(f"price-buying-{key}", percent=f"{way.spare_percent:g}"),
        "total": _money(way.total),
        "more": _money(way.more) if amount(way.more) else "",
        "left": f"{left:.1f} L" if units == "metric" else f"{gal_from_l(left):.1f} gal",
        "pays": _pays(way, found),
    }


def _pays(way: Way, found: Buying) -> str:
    one_in = one_job_in(way, found)
    if way.aim != "plenty" or one_in is None:
        return ""
    if one_in < 1:
        return said("price-buying-never")
    return said("price-buying-always" if one_in == 1 else "price-buying-one-in", jobs=f"{one_in}")


def _trip(found: Buying) -> str:
    if not found.second_trip:
        return ""
    told = {"trip": _money(found.second_trip), "currency": found.currency}
    if not found.second_trip_low:
        return said("price-buying-trip-own", **told)
    ends = {"low": _money(found.second_trip_low), "high": _money(found.second_trip_high)}
    return said("price-buying-trip", **told, **ends)


def _there(one: Any, units: str) -> Json:
    return {
        "what": told_on_page(one.what),
        "there": amount_words(one.there, one.unit, units),
        "needed": amount_words(one.needed, one.unit, units),
        "mind": [told_on_page(part) for part in age_said(one)],
    }
