"""Containers to buy for a need, at least cost: exact, as `farwall.mix.pack` finds them."""

from __future__ import annotations

import re

from farwall.errors import Mistake, Refused
from farwall.evidence import Rank
from farwall.facts.job import Container
from farwall.job.sums.arguments import VOLUME
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum
from farwall.mix.pack import Aim, in_measures, pack
from farwall.price.money import written
from farwall.units import gal_from_l

_PRICE = re.compile(r"\d{1,9}(\.\d{1,4})?", re.ASCII)
_AIMS: dict[str, Aim] = {"cost": "cost", "left-over": "left over"}
MOST_SIZES = 200


def reckon(given: Given) -> Result:
    """How many of each size, what they cost, what is left over beyond the need.

    `containers` names only sizes of which some are bought; `counts` has one number for each size
    in the order in which they were given. Cost is text. The least cost there is, of equally cheap
    ways the one with least left over; aim=left-over turns that round. Source: arithmetic.
    """
    sizes_l, prices = given.numbers("sizes_l"), given.texts("prices")
    mistakes = [
        Mistake("prices", f'"{one[:40]}" is not a price.', "Write it like 60.00.")
        for one in prices
        if not _PRICE.fullmatch(one)
    ]
    if len(sizes_l) != len(prices) or not 0 < len(sizes_l) <= MOST_SIZES:
        what = f"There are {len(sizes_l)} sizes and {len(prices)} prices."
        mistakes.append(Mistake("prices", what, "Give one price for each size, joined by commas."))
    if mistakes:
        raise Refused(*mistakes, about="The sum pack cannot be done with this.")
    shelf = [Container(size, price) for size, price in zip(sizes_l, prices, strict=True)]
    need_l, spare = given.number("need_l"), given.usual("spare_percent", 0.0)
    aim = _AIMS[given.text("aim") or "cost"]
    found = pack(need_l, shelf, spare_percent=spare, aim=aim)
    bought = {id(one): count for one, count in found.containers}
    return {
        "containers": [_told(one, count) for one, count in found.containers],
        "counts": [bought.get(id(one), 0) for one in shelf],
        "cost": written(found.cost),
        "bought_gal": gal_from_l(found.bought_l),
        "bought_l": found.bought_l,
        "left_over_gal": gal_from_l(found.left_over_l),
        "left_over_l": found.left_over_l,
        "rank": Rank.PUBLISHED.value,
        "source": "arithmetic",
        "warnings": _warnings(need_l * (1 + spare / 100), sizes_l),
    }


def _told(one: Container, count: int) -> dict[str, object]:
    return {
        "size_gal": gal_from_l(one.size_l),
        "size_l": one.size_l,
        "count": count,
        "price": one.price,
    }


def _warnings(wanted_l: float, sizes_l: tuple[float, ...]) -> list[object]:
    if wanted_l <= 0 or in_measures(wanted_l, sizes_l).exact:
        return []
    told = (
        "These sizes share no measure: each is taken as a hair smaller than it is, so that what "
        "is bought is never short; it may be a hair from the cheapest."
    )
    return [told]


SUM = Sum(
    name="pack",
    what="containers to buy for a need, at least cost",
    arguments=(
        Argument("need", VOLUME, Bounds(0.0, 1e6), needed=True),
        Argument("sizes", VOLUME, Bounds(0.0, 1e5, above=True), needed=True, several=True),
        Argument("prices", needed=True, several=True),
        Argument("spare_percent", bounds=Bounds(0.0, 500.0)),
        Argument("aim", choices=tuple(_AIMS)),
    ),
    reckon=reckon,
)
