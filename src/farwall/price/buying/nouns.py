"""What is to be bought, and what was found best: the nouns of buying. No reckoning here."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Literal

from farwall.facts.wares import Seller, Ware
from farwall.nouns import dataclass

BuyAim = Literal["cheapest", "fewest left over"]


@dataclass(frozen=True)
class Material:
    """Something of which `need` is bought, in the unit of its wares.

    parts: what single fields take of it, in the same unit, adding up to the need; what one field
    takes comes from one lot. Without parts lots do not matter.
    """

    id: str
    need: float
    wares: tuple[Ware, ...]
    parts: tuple[float, ...] = ()


@dataclass(frozen=True)
class Taken:
    """So many of a ware, for a material."""

    material: str
    ware: Ware
    count: int


@dataclass(frozen=True)
class Proof:
    """How good the answer is.

    status: `best` where nothing cheaper is possible, `within` where the search was stopped, with
    the gap that is left · at_least: nothing can cost less (with the left-overs that the aim asks
    for) · gap: total less at_least.
    """

    status: Literal["best", "within"]
    at_least: Decimal
    gap: Decimal


@dataclass(frozen=True)
class Basket:
    """The purchase. delivery: of each seller that is used · left_over: by material.

    boxed: materials of which no one lot does for a field, so that all that is bought of them is
    poured together before any of it is cut.
    """

    taken: tuple[Taken, ...]
    goods: Decimal
    delivery: tuple[tuple[str, Decimal], ...]
    total: Decimal
    left_over: tuple[tuple[str, float], ...]
    boxed: tuple[str, ...]
    proof: Proof


def lot_key(ware: Ware) -> tuple[str, str]:
    """The lot of a ware: where the seller does not say which, whatever one lot he fills from."""
    return (ware.lot, "") if ware.lot else ("", ware.seller)


def ordered(wares: Sequence[Ware]) -> tuple[Ware, ...]:
    """Wares in the fixed order in which ties are broken."""
    return tuple(sorted(wares, key=lambda one: (one.seller, -one.size, one.lot, one.price, one.id)))


def terms_of(wares: Sequence[Ware], sellers: Sequence[Seller]) -> dict[str, Seller]:
    """The sellers of these wares by id; one of whom nothing is told delivers for nothing."""
    told = {one.id: one for one in sellers}
    return {name: told.get(name) or Seller(name or "-") for name in {one.seller for one in wares}}
