"""The shopping list and what stands beside it, as nouns. Amounts of money are text."""

from __future__ import annotations

from farwall.nouns import dataclass


@dataclass(frozen=True)
class Bought:
    """One line of the shopping list: so many of a size, at a price each.

    rank: `measured here` where a price list or the job told the price, `guess` where nobody did ·
    ware, name: its id in the price list, and the seller's name for it · quantity: the line of the
    list of quantities it is for.
    """

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
    rank: str = "guess"
    source: str = ""
    ware: str = ""
    name: str = ""


@dataclass(frozen=True)
class There:
    """What the van has of a line: so much of what is needed, by ids of its shelf.

    mind: what has to be looked at, such as a lot that is not the sample's · opened, good_until: the
    earliest day of each on what is taken, empty where none was noted.
    """

    quantity: str
    kind: str
    what: str
    needed: float
    there: float
    buy: float
    unit: str
    from_stock: tuple[str, ...] = ()
    mind: str = ""
    opened: str = ""
    good_until: str = ""


@dataclass(frozen=True)
class Delivered:
    """A seller that is bought of: goods and delivery; free_from where he brings it free."""

    seller: str
    goods: str
    delivery: str
    free_from: str = ""
    days: int = 0


@dataclass(frozen=True)
class LeftOver:
    """What is bought of a line beyond its need without the spare, in the unit of the line."""

    quantity: str
    what: str
    amount: float
    unit: str


@dataclass(frozen=True)
class Proven:
    """How good a list is: `best` or `within` a gap; nothing can cost less than at_least."""

    status: str
    at_least: str
    gap: str


@dataclass(frozen=True)
class Way:
    """One way of buying it all. aim: cheapest, fewest left over, plenty.

    more: beyond the cheapest · guessed: how much of the total rests on invented prices · boxed:
    names of stains whose lots are poured together before anything is cut.
    """

    aim: str
    spare_percent: float
    lines: tuple[Bought, ...]
    sellers: tuple[Delivered, ...]
    total: str
    more: str
    guessed: str
    left_over: tuple[LeftOver, ...]
    boxed: tuple[str, ...]
    proof: Proven


@dataclass(frozen=True)
class Buying:
    """The shopping list: the cheapest way. total: with delivery.

    there: what the van has of each line · ways: others beside it, the cheapest first ·
    second_trip: what one more trip costs, low and high where it is practice's and not the firm's
    · as_of: the day of the price list · unpriced: things of which nobody knows a price · units:
    the user's, in which it is said; amounts are SI.
    """

    lines: tuple[Bought, ...]
    total: str
    currency: str
    warnings: tuple[str, ...] = ()
    goods: str = "0.00"
    guessed: str = "0.00"
    sellers: tuple[Delivered, ...] = ()
    there: tuple[There, ...] = ()
    ways: tuple[Way, ...] = ()
    second_trip: str = ""
    second_trip_low: str = ""
    second_trip_high: str = ""
    second_trip_rank: str = ""
    unpriced: tuple[str, ...] = ()
    as_of: str = ""
    units: str = "us"

    @property
    def chosen(self) -> Way | None:
        """The way whose lines these are."""
        return self.ways[0] if self.ways else None
