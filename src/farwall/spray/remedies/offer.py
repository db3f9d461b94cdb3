"""An offer: one remedy with what came of it, before it is put into the table."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from farwall.facts.plan import OpenTime, Remedy
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.spray.remedies.case import Outcome
from farwall.spray.sweeps import Pieces

_GAIN_MIN = 0.05
"""Less than this is told apart by nobody: the checker's own tolerance."""

PRICES: dict[str, str] = {
    "stop-here": "one more stop",
    "bands": "minutes and mix",
    "sample": "a sample board, before the day",
    "window": "film on the glass, before the day",
    "hour": "another hour of the day",
    "film": "more mix, and a new sample",
    "helper": "one more person",
    "two": "one more person and sprayer",
    "stop-line": "before staining only",
}
"""What each remedy asks for, the least first: this order is that of the table. Rank: guess."""


@dataclass(frozen=True)
class Otherwise:
    """A field under other facts of the slab or the air: how long its edge then lives.

    `sure` is False where only a measurement will tell. `l_per_m2` is None where the coat
    drinks what it did.
    """

    code: str
    what: str
    lasting: OpenTime
    l_per_m2: float | None = None
    caution: str = ""
    sure: bool = True


OtherFacts = Callable[[Pieces, float, float], Sequence[Otherwise]]
"""For a field begun at a minute whose oldest edge waits so long: what else might hold for it."""
Cost = Callable[[float], str | None]
"""Amount of money that so many litres of mix more cost, as text; None where no price is told."""


@dataclass(frozen=True)
class Offer:
    """One remedy: what, what came of it, and the budget that then holds."""

    code: str
    what: str
    found: Outcome | None
    budget_min: float
    caution: str = ""
    sure: bool = True
    line: tuple[Point, ...] | None = None

    @property
    def works(self) -> bool:
        """Whether the field then fits."""
        return self.found is not None and self.found.peak_age_min <= self.budget_min

    @property
    def margin_min(self) -> float | None:
        """What is then left of the budget."""
        return None if self.found is None else self.budget_min - self.found.peak_age_min

    def gains(self, stands: Outcome, budget_min: float) -> bool:
        """Whether it leaves more to spare than the field has as it stands."""
        now = budget_min - stands.peak_age_min
        return self.margin_min is not None and self.margin_min > now + _GAIN_MIN

    def remedy(self, stands: Outcome, cost: Cost) -> Remedy:
        """Its row of the table."""
        found = self.found
        if found is None:
            return Remedy(self.code, self.what, None, works=False, price=PRICES[self.code])
        more_l = round(found.litres - stands.litres, 2)
        return Remedy(
            self.code,
            self.what,
            round(found.peak_age_min, 4),
            works=self.works if self.sure else None,
            margin_min=round(self.budget_min - found.peak_age_min, 2),
            more_min=round(found.minutes - stands.minutes, 2),
            more_l=more_l,
            price=PRICES[self.code],
            cost=cost(more_l) if more_l > 0 else None,
            caution=self.caution,
            line=self.line,
        )


def by_price(offers: Sequence[Offer], stands: Outcome) -> list[Offer]:
    """Those that work first, then those that only a measurement can tell; each by price."""
    rank = list(PRICES)

    def key(offer: Offer) -> tuple[int, int, float, float]:
        state = 2 if not offer.works else 0 if offer.sure else 1
        found = offer.found or stands
        return state, rank.index(offer.code), found.minutes, found.litres

    return sorted(offers, key=key)
