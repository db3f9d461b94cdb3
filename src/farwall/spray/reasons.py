"""Why an order is as it is: at each place, which other fields could have gone, and what they lose.

Every answer is had by trying: the other field is moved to that place and the whole order weighed
again by the same shares.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from farwall.nouns import dataclass
from farwall.spray.order import EQUAL_SHARE, House
from farwall.spray.sweeps import Pieces

Why = Literal["shut in", "margin", "largest last", "far first", "alike"]


@dataclass(frozen=True)
class Passed:
    """A field that did not go at this place, why, and the worst share had it gone."""

    pieces: Pieces
    why: Why
    worst_share: float | None


@dataclass(frozen=True)
class Turn:
    """One place in an order: the field that goes, its share, and those that did not."""

    pieces: Pieces
    share: float
    passed: tuple[Passed, ...]


@dataclass(frozen=True)
class ShutIn:
    """A field that nobody can leave when it is its turn, and the fields wet before it."""

    pieces: Pieces
    into: tuple[Pieces, ...]


def turns(house: House, order: Sequence[int]) -> tuple[Turn, ...]:
    """The reasons of an order in which nobody is shut in; `order` holds numbers of fields."""
    walked = house.leaving.walked(order)
    if walked is None:
        raise ValueError("This order shuts somebody in; ask `shut_in` of it.")
    worst = max(share for share, _ in walked)
    return tuple(
        Turn(
            house.fields[index],
            walked[place][0],
            tuple(_passed(house, order, place, other, worst) for other in order[place + 1 :]),
        )
        for place, index in enumerate(order)
    )


def _passed(house: House, order: Sequence[int], place: int, other: int, worst: float) -> Passed:
    moved = [*order[:place], other, *(index for index in order[place:] if index != other)]
    walked = house.leaving.walked(moved)
    pieces = house.fields[other]
    if walked is None:
        return Passed(pieces, "shut in", None)
    share = max(share for share, _ in walked)
    if share > worst + EQUAL_SHARE:
        return Passed(pieces, "margin", share)
    if house.area_m2[moved[-1]] < house.area_m2[order[-1]]:
        return Passed(pieces, "largest last", share)
    if _walk(house, moved) > _walk(house, order):
        return Passed(pieces, "far first", share)
    return Passed(pieces, "alike", share)


def _walk(house: House, order: Sequence[int]) -> int:
    """Doors to the outside times place, added up: what puts far fields early."""
    away = house.leaving.away
    return sum(place * (away[index] or 0) for place, index in enumerate(order))


def shut_in(house: House, order: Sequence[int]) -> tuple[ShutIn, ...]:
    """Every field of an order that has no door outside or into a field that is still dry."""
    found = []
    for place, index in enumerate(order):
        later = set(order[place + 1 :]) | {len(house.fields)}
        doors = house.leaving.doors[index]
        if not any(door.into in later for door in doors):
            wet = tuple(dict.fromkeys(house.fields[door.into] for door in doors))
            found.append(ShutIn(house.fields[index], wet))
    return tuple(found)


def numbers_of(house: House, fields: Sequence[Pieces]) -> list[int]:
    """The numbers of fields, in the order given."""
    return [house.fields.index(pieces) for pieces in fields]
