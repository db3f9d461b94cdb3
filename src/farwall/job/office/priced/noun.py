"""The price as nouns: plain values, amounts as text."""

from __future__ import annotations

from farwall.job.office.priced.kept import KeptGear
from farwall.nouns import dataclass
from farwall.price.chances import Chance
from farwall.price.usual import RatesUsed


@dataclass(frozen=True)
class Cost:
    """A line of cost, amounts as text: low, likely, high; its rank, the rule and source."""

    what: str
    low: str
    likely: str
    high: str
    rank: str
    rule: str = ""
    source: str = ""
    group: str = "work"


@dataclass(frozen=True)
class Added:
    """What is added to cost: its name, per cent of cost where it is a share, the amount."""

    what: str
    percent: str
    amount: str
    rank: str
    source: str


@dataclass(frozen=True)
class Driver:
    """What drives the spread: how much it explains alone, per cent; what would narrow it."""

    what: str
    share_percent: float
    measure: str


@dataclass(frozen=True)
class OfferPriced:
    """One way of doing the floor with its price.

    cost_low, cost, cost_high: four jobs in five end between the ends; price_low, price_high: what
    the same shares would ask at those ends · loss_percent: chance that cost and overhead are more
    than the price · holds: what it is, in sentences · days: on site, low, likely, high.
    """

    id: str
    name: str
    price: str
    price_low: str
    price_high: str
    cost_low: str
    cost: str
    cost_high: str
    loss_percent: float
    hours_h: float
    days: tuple[int, int, int]
    coats: tuple[str, ...]
    rooms: tuple[str, ...]
    sealer_coats: int
    finish_coats: int
    area_m2: float
    per_ft2: str
    holds: tuple[str, ...]
    words: str = ""
    own: bool = False


@dataclass(frozen=True)
class RoomMoney:
    """A room: its cost with overhead and risk, its part of the price by area, what is left of it;
    `do` says what helps where that is below nothing. cost_low, cost_high: its part of what the
    whole job costs at its ends, with overhead."""

    room: str
    name: str
    area_m2: float
    cost: str
    price: str
    left: str
    loses: bool
    do: str = ""
    cost_low: str = ""
    cost_high: str = ""


@dataclass(frozen=True)
class Sanity:
    """A figure beside a published range, in words."""

    said: str
    inside: bool | None
    rank: str
    source: str


@dataclass(frozen=True)
class Priced:
    """The job as it stands: every cost, what is added, the price, each with its range.

    cost: the sum of what is likely · cost_mean: on the average of all draws, with what may happen ·
    the rest as in an offer. `offers`: those the firm told, else some made from the job ·
    gear: what is bought and kept, with the share of it that is in the costs.
    """

    costs: tuple[Cost, ...]
    cost: str
    currency: str
    warnings: tuple[str, ...] = ()
    cost_low: str = ""
    cost_median: str = ""
    cost_high: str = ""
    cost_mean: str = ""
    added: tuple[Added, ...] = ()
    price: str = ""
    price_low: str = ""
    price_high: str = ""
    loss_percent: float = 0.0
    least_job: bool = False
    area_m2: float = 0.0
    per_ft2: str = ""
    days: tuple[int, int, int] = (0, 0, 0)
    drivers: tuple[Driver, ...] = ()
    together_percent: float = 0.0
    chances: tuple[Chance, ...] = ()
    sanity: tuple[Sanity, ...] = ()
    offers: tuple[OfferPriced, ...] = ()
    rooms: tuple[RoomMoney, ...] = ()
    rates: RatesUsed | None = None
    gear: tuple[KeptGear, ...] = ()
