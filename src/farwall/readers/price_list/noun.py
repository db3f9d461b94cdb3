"""What was read of a price list."""

from __future__ import annotations

from farwall.facts.wares import PriceList, Seller, Ware
from farwall.nouns import dataclass


@dataclass(frozen=True)
class ListRead:
    """The wares that were understood; `told`: each row that was left out or guessed at, and why."""

    currency: str
    as_of: str
    sellers: tuple[Seller, ...]
    wares: tuple[Ware, ...]
    told: tuple[str, ...] = ()

    @property
    def prices(self) -> PriceList:
        """As a price list."""
        return PriceList(
            currency=self.currency, as_of=self.as_of, sellers=self.sellers, wares=self.wares
        )
