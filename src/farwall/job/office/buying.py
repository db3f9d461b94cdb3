"""What is bought for the job, of whom, and what it comes to."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from farwall.facts.quantities import Quantities
from farwall.job.office.ground import OfficeGround
from farwall.price.money import written


@dataclass(frozen=True)
class Bought:
    """One line of the shopping list: so many of a size, at a price each; amounts as text."""

    kind: str
    of: str
    what: str
    size: float
    unit: str
    count: int
    price: str
    cost: str
    seller: str = ""
    lot: str = ""
    quantity: str = ""


@dataclass(frozen=True)
class Buying:
    """The shopping list. total: with delivery, as text."""

    lines: tuple[Bought, ...]
    total: str
    currency: str
    warnings: tuple[str, ...] = ()


def buying_of(ground: OfficeGround, quantities: Quantities) -> Buying:
    """The containers of stain that the plan found to be cheapest."""
    stains = (ground.plan.buying or {}).get("stains", [])
    wanted = {one.of: one for one in quantities.wanted if one.kind == "stain"}
    lines = []
    for one in stains if isinstance(stains, list) else []:
        if one["stain"] not in wanted:
            continue
        for packed in one["containers"]:
            cost = Decimal(packed["price"]) * packed["count"]
            lines.append(
                Bought(
                    "stain", one["stain"], one["stain"], packed["size_l"], "l", packed["count"],
                    packed["price"], written(cost), quantity=wanted[one["stain"]].id,
                )
            )  # fmt: skip
    total = sum((Decimal(one.cost) for one in lines), start=Decimal(0))
    return Buying(tuple(lines), written(total), ground.job.prices.currency)


def buying_said(found: Buying) -> tuple[str, ...]:
    """Lines for a terminal."""
    lines = [
        f"{one.count} of {one.size:.3g} {one.unit} {one.what}: {one.cost}" for one in found.lines
    ]
    return (*lines, f"In all {found.total} {found.currency}", *found.warnings)
