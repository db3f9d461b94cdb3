"""The shopping list: what is needed less what is there, bought in the best way. Pure."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from farwall.evidence import Rank
from farwall.facts.default_wares import KEPT, SECOND_TRIP
from farwall.facts.quantities import Quantities
from farwall.facts.wares import Seller
from farwall.job.office.buying.noun import (
    Bought,
    Buying,
    Delivered,
    LeftOver,
    Proven,
    There,
    Way,
)
from farwall.job.office.buying.wanted import (
    HAIR,
    Line,
    Offered,
    capacity,
    lines_of,
    offered,
    parts_left,
    sellers_of,
    there_for,
)
from farwall.job.office.ground import OfficeGround
from farwall.nouns import dataclass
from farwall.price.buying import Basket, BuyAim, Material, Taken, buy
from farwall.price.money import NOTHING, amount, written

PLENTY_PERCENT = (20.0, 50.0)
"""Too much of everything, so that nobody drives twice: what that costs is shown for these."""


@dataclass(frozen=True)
class _Wish:
    """A line as it is bought: what is there, what is offered, what is bought of it."""

    line: Line
    there: There
    offered: Offered
    material: Material


def buying_of(ground: OfficeGround, quantities: Quantities) -> Buying:
    """The cheapest list, the others beside it, and what is told about them."""
    spare = ground.job.supplies.spare_percent or 0.0
    lines = lines_of(quantities)
    warnings: list[str] = list(_money_warnings(ground))
    wishes = _wishes(ground, lines, spare, warnings)
    sellers = sellers_of(ground)
    first = _way("cheapest", spare, _bought(wishes, sellers, "cheapest"), wishes, sellers)
    ways = [first]
    ways.append(
        _way("fewest left over", spare, _bought(wishes, sellers, "fewest left over"), wishes,
             sellers)
    )  # fmt: skip
    for percent in PLENTY_PERCENT:
        if percent > spare:
            more = _wishes(ground, lines, percent, [])
            ways.append(_way("plenty", percent, _bought(more, sellers, "cheapest"), more, sellers))
    ways = [replace(one, more=written(amount(one.total) - amount(first.total))) for one in ways]
    trip, low, high, rank = _second_trip(ground)
    return Buying(
        lines=first.lines, total=first.total, currency=ground.job.prices.currency,
        warnings=(*dict.fromkeys(warnings), *_about(first)), goods=_goods(first),
        guessed=first.guessed, sellers=first.sellers, there=tuple(one.there for one in wishes),
        ways=tuple(ways), second_trip=trip, second_trip_low=low, second_trip_high=high,
        second_trip_rank=rank,
        unpriced=tuple(
            one.line.what for one in wishes if one.there.buy > HAIR and not one.offered.wares
        ),
        units=ground.job.wishes.units,
        as_of=ground.wares.as_of if ground.wares is not None and sellers_told(ground) else "",
    )  # fmt: skip


def sellers_told(ground: OfficeGround) -> bool:
    """Whether the price list is in the job's money, and so taken."""
    return ground.wares is not None and ground.wares.currency == ground.job.prices.currency


def _money_warnings(ground: OfficeGround) -> tuple[str, ...]:
    if ground.wares is None or sellers_told(ground):
        return ()
    listed, own = ground.wares.currency, ground.job.prices.currency
    return (f"The price list is in {listed} and the job in {own}: it is not taken.",)


def _wishes(
    ground: OfficeGround, lines: Sequence[Line], spare: float, warnings: list[str]
) -> list[_Wish]:
    found = []
    for line in lines:
        share = 0.0 if line.kind in KEPT else spare / 100
        more = replace(
            line, needed=line.needed * (1 + share),
            parts=tuple(one * (1 + share) for one in line.parts),
        )  # fmt: skip
        there = there_for(ground.van, more, on=ground.day)
        goods = offered(ground, line, there.buy)
        need, parts = there.buy, parts_left(more.parts, there.there)
        warnings += goods.warnings
        most = capacity(goods.wares)
        if goods.wares and most < need - HAIR:
            warnings.append(
                f"{line.what}: all that is offered is {most:.3g} of the {need:.3g} "
                f"{_UNIT[line.unit]} still needed. Ask another seller before the job is promised."
            )
            need, parts = most * (1 - 1e-9), ()
        if not goods.wares:
            need = 0.0
        found.append(
            _Wish(line, there, goods, Material(line.id, max(need, 0.0), goods.wares, parts))
        )
    return found


_UNIT = {"l": "L", "kg": "kg", "m": "m", "count": "pieces"}


def _bought(wishes: Sequence[_Wish], sellers: Sequence[Seller], aim: BuyAim) -> Basket:
    return buy([one.material for one in wishes if one.material.need > HAIR], sellers, aim)


def _way(
    aim: str, spare: float, basket: Basket, wishes: Sequence[_Wish], sellers: Sequence[Seller]
) -> Way:
    by_id = {one.line.id: one for one in wishes}
    place = {one.line.id: n for n, one in enumerate(wishes)}
    taken = sorted(
        basket.taken, key=lambda one: (place[one.material], one.ware.seller, -one.ware.size)
    )
    lines = tuple(_line(one, by_id[one.material]) for one in taken)
    guessed = sum((amount(one.cost) for one in lines if one.rank == Rank.GUESS), start=NOTHING)
    bought = {one.material for one in basket.taken}
    left = tuple(_left_over(one, basket) for one in wishes if one.line.id in bought)
    return Way(
        aim=aim, spare_percent=spare, lines=lines, sellers=_delivered(basket, sellers),
        total=written(basket.total), more="0.00", guessed=written(guessed), left_over=left,
        boxed=tuple(by_id[name].line.what for name in basket.boxed),
        proof=Proven(
            basket.proof.status, written(basket.proof.at_least), written(basket.proof.gap)
        ),
    )  # fmt: skip


def _left_over(wish: _Wish, basket: Basket) -> LeftOver:
    """What will be over when just what is needed has gone, the spare not counted as needed."""
    held = sum(one.ware.size * one.count for one in basket.taken if one.material == wish.line.id)
    much = max(held - max(wish.line.needed - wish.there.there, 0.0), 0.0)
    return LeftOver(wish.line.id, wish.line.what, round(much, 6), wish.line.unit)


def _line(taken: Taken, wish: _Wish) -> Bought:
    ware, line = taken.ware, wish.line
    price = amount(ware.price)
    lot = ware.lot or (line.lots[0] if line.kind == "stain" and len(line.lots) == 1 else "")
    return Bought(
        kind=line.kind, of=line.of, what=line.what, size=ware.size, unit=ware.unit,
        count=taken.count, price=_price(price), cost=written(price * taken.count),
        seller=ware.seller, lot=lot, quantity=line.id, rank=wish.offered.rank.value,
        source=wish.offered.source, ware=ware.id,
        name="" if line.kind == "stain" else ware.name,
    )  # fmt: skip


def _price(price: Decimal) -> str:
    """Two decimals, four where they are told."""
    return written(price) if price == price.quantize(Decimal("0.01")) else f"{price.normalize():f}"


def _delivered(basket: Basket, sellers: Sequence[Seller]) -> tuple[Delivered, ...]:
    terms, due = {one.id: one for one in sellers}, dict(basket.delivery)
    goods: dict[str, Decimal] = {}
    for one in basket.taken:
        name = one.ware.seller
        goods[name] = goods.get(name, NOTHING) + amount(one.ware.price) * one.count
    return tuple(
        Delivered(
            name, written(goods[name]), written(due.get(name, NOTHING)),
            (terms[name].free_from or "") if name in terms else "",
            terms[name].days if name in terms else 0,
        )
        for name in sorted(goods, key=lambda one: (not one, one))
    )  # fmt: skip


def _goods(way: Way) -> str:
    return written(sum((amount(one.goods) for one in way.sellers), start=NOTHING))


def _about(way: Way) -> tuple[str, ...]:
    found = [
        f"{name}: no one lot holds what a field takes. Box all that is bought of it: pour it "
        "together before any of it is cut."
        for name in way.boxed
    ]
    if way.proof.status != "best":
        found.append(f"It is proven only that no list is more than {way.proof.gap} cheaper.")
    return tuple(found)


def _second_trip(ground: OfficeGround) -> tuple[str, str, str, str]:
    """What one more trip costs: the firm's own visit, else practice's range in dollars."""
    visit = ground.job.prices.rates.visit
    if visit is not None:
        return written(amount(visit)), "", "", Rank.MEASURED.value
    if ground.job.prices.currency != "USD":
        return "", "", "", ""
    low, middle, high = (written(amount(one)) for one in SECOND_TRIP)
    return middle, low, high, Rank.PRACTICE.value
