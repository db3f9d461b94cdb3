"""What is needed, less what the van has, and what it can be bought as. Pure."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from farwall.evidence import Rank
from farwall.facts.default_wares import GUESSED, NOT_BOUGHT
from farwall.facts.quantities import Quantities, Quantity
from farwall.facts.van import Need, StockKind, Unit, Van
from farwall.facts.wares import Seller, Ware
from farwall.job.office.buying.noun import There
from farwall.job.office.ground import OfficeGround
from farwall.job.van.shopping import same, shopping
from farwall.job.van.sprayers import condition
from farwall.nouns import dataclass
from farwall.price.buying.choices import PLACES
from farwall.price.money import amount, rounded

HAIR = 1e-6
_FINE = 4_000
"""Containers of which a need would take more than so many are left out."""
MOST_WARES = 120
"""Wares of one thing that are looked at; the cheapest by what they hold."""
_TOLD_BY_JOB, _GUESS_SOURCE = "told in the job", "house-guess"


@dataclass(frozen=True)
class Line:
    """Something that is needed, whichever lines of the list ask for it.

    parts: what each field takes of it; empty where it is for no field.
    """

    id: str
    kind: StockKind
    what: str
    of: str
    unit: Unit
    needed: float
    lots: tuple[str, ...]
    parts: tuple[float, ...]


@dataclass(frozen=True)
class Offered:
    """Wares for a line, how far their prices can be trusted, and what to be told."""

    wares: tuple[Ware, ...]
    rank: Rank
    source: str
    warnings: tuple[str, ...] = ()


def lines_of(quantities: Quantities) -> tuple[Line, ...]:
    """One line for each thing: amounts of the same thing added up, as lines are on."""
    found: dict[tuple[str, str, str], list[Quantity]] = {}
    for one in quantities.wanted:
        if one.kind not in NOT_BOUGHT and one.ready > HAIR:
            found.setdefault((one.kind, one.of.casefold(), one.unit), []).append(one)
    return tuple(_line(ones) for ones in found.values())


def _line(ones: Sequence[Quantity]) -> Line:
    first = ones[0]
    needed = math.fsum(one.ready for one in ones)
    parts: list[float] = []
    if first.kind == "stain":
        for one in ones:
            shares = [share.ready for share in getattr(one, "shares", ()) if share.field]
            whole = math.fsum(shares)
            parts += [much * one.ready / whole for much in shares] if whole else [one.ready]
    lots = tuple(dict.fromkeys(lot for one in ones for lot in one.lots))
    return Line(first.id, first.kind, first.what, first.of, first.unit, needed, lots, tuple(parts))


def there_for(van: Van | None, line: Line, *, on: str) -> There:
    """What the van has of a line, past its day not counted."""
    need = Need(line.kind, line.needed, line.unit, line.of, line.lots)
    if van is None:
        return There(line.id, line.kind, line.what, line.needed, 0.0, line.needed, line.unit)
    if line.kind == "sprayer" and line.unit == "count":
        sound = [one.id for one in van.sprayers if condition(one).word != "no"]
        there = min(float(len(sound)), line.needed)
        taken = tuple(sound[: math.ceil(there)])
        return There(
            line.id, line.kind, line.what, line.needed, there, line.needed - there, line.unit, taken
        )
    (found,) = shopping(van, [need], on=on)
    taken_of = [one for one in van.stock if one.id in found.from_stock]
    return There(
        line.id,
        line.kind,
        line.what,
        line.needed,
        found.there,
        found.buy,
        line.unit,
        found.from_stock,
        found.mind,
        opened=min((one.opened for one in taken_of if one.opened), default=""),
        good_until=min((one.good_until for one in taken_of if one.good_until), default=""),
    )


def parts_left(parts: Sequence[float], there: float) -> tuple[float, ...]:
    """What the fields still take when the largest have been given what is there."""
    left, found = there, []
    for part in sorted(parts, reverse=True):
        given = min(part, left)
        left -= given
        if part - given > HAIR:
            found.append(part - given)
    return tuple(found)


def sellers_of(ground: OfficeGround) -> tuple[Seller, ...]:
    """The sellers of the price list, where its money is the job's."""
    wares = ground.wares
    if wares is None or wares.currency != ground.job.prices.currency:
        return ()
    return wares.sellers


def offered(ground: OfficeGround, line: Line, need: float) -> Offered:
    """The wares of the price list for a line, else what the job told, else invented prices."""
    prices, list_ = ground.job.prices, ground.wares
    if list_ is not None and list_.currency == prices.currency:
        listed = tuple(one for one in list_.wares if _is(one, line, ground))
        if listed:
            source = "told, price list" + (f" of {list_.as_of}" if list_.as_of else "")
            found, warnings = _of_lots(listed, line, need)
            return Offered(_sensible(found, need), Rank.MEASURED, source, warnings)
    if line.kind == "stain" and prices.containers:
        told = tuple(
            Ware(f"job-{n}", "stain", one.size_l, "l", one.price, of=one.stain)
            for n, one in enumerate(prices.containers)
            if not one.stain or same(one.stain, line.of)
        )
        if told:
            return Offered(_sensible(told, need), Rank.MEASURED, _TOLD_BY_JOB)
    guessed = tuple(one for one in GUESSED if _is(one, line, ground))
    return Offered(_sensible(guessed, need), Rank.GUESS, _GUESS_SOURCE)


def _is(ware: Ware, line: Line, ground: OfficeGround) -> bool:
    if ware.kind != line.kind or ware.unit != line.unit:
        return False
    names = {line.of, line.what} | {one.name for one in ground.job.stains if same(one.id, line.of)}
    if line.kind == "other":
        return any(name and same(ware.of or ware.name, name) for name in names)
    return not ware.of or not line.of or any(name and same(ware.of, name) for name in names)


def _of_lots(
    wares: tuple[Ware, ...], line: Line, need: float
) -> tuple[tuple[Ware, ...], tuple[str, ...]]:
    """Those of the sample's lots, and those of which the lot is not told; all, where these are too
    few, with a word on it."""
    if line.kind != "stain" or not line.lots:
        return wares, ()
    kept = tuple(one for one in wares if not one.lot or one.lot in line.lots)
    if capacity(kept) >= need - HAIR:
        return kept, ()
    lots = ", ".join(line.lots)
    told = (
        f"{line.what}: the sample is of lot {lots}, and not enough of it is offered. Make a new "
        "sample of the lot that is bought before anything is sprayed."
    )
    return wares, (told,)


def capacity(wares: Sequence[Ware]) -> float:
    """What all of them hold; endless where one has no end."""
    if any(one.in_stock is None for one in wares):
        return math.inf
    return math.fsum(one.size * (one.in_stock or 0) for one in wares)


def _sensible(wares: Sequence[Ware], need: float) -> tuple[Ware, ...]:
    """Those that can be in a purchase: prices to four decimals, none a need takes thousands of.

    Of the same size, lot and seller only the cheapest that has no end, and cheaper ones that
    have; of very many the cheapest by what they hold.
    """
    if not wares:
        return ()
    least = min(need / _FINE, max(one.size for one in wares))
    step = amount("1").scaleb(-PLACES)
    told = [
        replace(one, price=str(rounded(amount(one.price), step)))
        for one in wares
        if one.size >= least and one.in_stock != 0
    ]
    endless: dict[tuple[object, ...], Decimal] = {}
    for one in told:
        if one.in_stock is None:
            price = amount(one.price)
            endless[_alike(one)] = min(price, endless.get(_alike(one), price))
    kept, seen = [], set()
    for one in told:
        best = endless.get(_alike(one))
        if one.in_stock is None:
            if amount(one.price) > (best or 0) or _alike(one) in seen:
                continue
            seen.add(_alike(one))
        elif best is not None and amount(one.price) >= best:
            continue
        kept.append(one)
    if len(kept) > MOST_WARES:
        kept = sorted(kept, key=lambda one: (amount(one.price) / Decimal(str(one.size)), one.id))
    return tuple(kept[:MOST_WARES])


def _alike(one: Ware) -> tuple[object, ...]:
    return one.seller, one.lot, round(one.size, 9)
