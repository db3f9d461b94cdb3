"""Price lists: what sellers have, in which sizes, at which prices. Amounts are text."""

from __future__ import annotations

from typing import Annotated, Literal

from annotated_types import Ge, Gt, MaxLen, MinLen

from farwall.facts.prices import Amount
from farwall.facts.van import StockKind, Unit
from farwall.nouns import dataclass

WARES_VERSION = 1
_Word = Annotated[str, MaxLen(200)]
_Id = Annotated[str, MinLen(1), MaxLen(80)]


@dataclass(frozen=True)
class Seller:
    """Who sells: what a delivery or a trip costs, free from which sum, days until it is here."""

    id: _Id
    delivery: Amount = "0"
    free_from: Amount | None = None
    days: Annotated[int, Ge(0)] = 0


@dataclass(frozen=True)
class Ware:
    """One size of one thing at one seller. `of`: the stain or sealer it is; `lot` where known."""

    id: _Id
    kind: StockKind
    size: Annotated[float, Gt(0)]
    unit: Unit
    price: Amount
    seller: str = ""
    of: _Word = ""
    name: _Word = ""
    lot: _Word = ""
    in_stock: Annotated[int, Ge(0)] | None = None


@dataclass(frozen=True)
class PriceList:
    """Wares of all sellers, in one currency, as of a day."""

    version: Literal[1] = 1
    currency: Annotated[str, MinLen(3), MaxLen(3)] = "USD"
    as_of: str = ""
    sellers: tuple[Seller, ...] = ()
    wares: tuple[Ware, ...] = ()
