"""The answer to "why this order": nouns only, as `farwall plan --explain --json` prints them."""

from __future__ import annotations

from farwall.facts.plan import Proof
from farwall.nouns import dataclass


@dataclass(frozen=True)
class FieldFigures:
    """One field of an order: its oldest edge and what is left of its budget.

    number: as a person is told it, `2.3`.
    """

    id: str
    number: str
    rooms: tuple[str, ...]
    exit: str
    verdict: str
    peak_age_min: float
    margin_min: float


@dataclass(frozen=True)
class OrderFigures:
    """What an order comes to, over all coats, and what the checker says of it.

    `refills_in_the_open` are those taken while the field has live edges.
    """

    rooms: tuple[tuple[str, ...], ...]
    stands: bool
    shut_in: tuple[str, ...]
    faults: tuple[str, ...]
    fields: tuple[FieldFigures, ...]
    least_margin_min: float | None
    minutes: float | None
    walked_m: float | None
    refills_in_the_open: int | None
    stop_lines: tuple[str, ...]


@dataclass(frozen=True)
class NotNow:
    """A field that could have stood at a place, and why it does not."""

    rooms: tuple[str, ...]
    why: str
    worst_share: float | None


@dataclass(frozen=True)
class Place:
    """One place of the best order: the field, its share of the budget, what decided."""

    place: int
    rooms: tuple[str, ...]
    share: float
    decided: str
    others: tuple[NotNow, ...]


@dataclass(frozen=True)
class Stop:
    """A stop line between two fields, and what there would be without it.

    `age_min`, `share`: of both fields as one, by first guesses; None when nobody can do it ·
    `name`, `another_name`: what people call it, by the rooms beside it.
    """

    id: str
    kind: str
    cost: float
    between: tuple[tuple[str, ...], tuple[str, ...]]
    age_min: float | None
    share: float | None
    another: str | None
    another_share: float | None
    what: str
    name: str = ""
    another_name: str = ""


@dataclass(frozen=True)
class Explained:
    """The best order with its reasons and proof; beside it the order that was asked for, if any."""

    best: OrderFigures
    asked: OrderFigures | None
    places: tuple[Place, ...]
    stops: tuple[Stop, ...]
    proof: Proof | None
