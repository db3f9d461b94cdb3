"""Which rooms lose money: what each costs, against its part of the price by its floor."""

from __future__ import annotations

import math
from decimal import Decimal

from farwall.job.office.ground import OfficeGround
from farwall.job.office.hours.part import room_shares
from farwall.job.office.hours.sizes import RoomSize, rooms_of
from farwall.job.office.masking import Masked
from farwall.job.office.priced.noun import RoomMoney
from farwall.job.office.priced.reckoned import Reckoned, money
from farwall.price.asking import area_shares
from farwall.price.money import rounded, written

BUNDLE = (
    "Keep it with the rest and price the job as a whole: alone by its floor it does not pay. "
    "Named alone, ask for a least amount a room."
)
LEAVE_OUT = (
    "Offer the job without it, or name a least amount for it: its walls cost more than its floor "
    "brings."
)
_MUCH = Decimal("0.25")
"""A room that loses more than this part of its own price might be left out. A guess."""


def rooms_money(ground: OfficeGround, masked: Masked, found: Reckoned) -> tuple[RoomMoney, ...]:
    """Every room. All costs and the whole price are parted, so both columns add up to the job's.

    Costs go with floor, wall or washing; what belongs to the job (trips, papers, samples, risk,
    overhead) goes with the floor, as the price does, and cannot make a room lose.
    """
    rooms = rooms_of(ground, masked, found.scope)
    cost = _costs(rooms, found)
    beside = found.asked.overhead + found.asked.added
    whole = math.fsum(cost) or 1.0
    shares = tuple(one / whole for one in cost)
    totals = (
        found.asked.cost + found.asked.risk + beside,
        money(found.found.low) + beside,
        money(found.found.high) + beside,
    )
    parts = zip(*(area_shares(total, shares) for total in totals), strict=True)
    prices = area_shares(found.asked.price, tuple(one.area_m2 for one in rooms))
    return tuple(
        _money(one, ends, price) for one, ends, price in zip(rooms, parts, prices, strict=True)
    )


def _costs(rooms: tuple[RoomSize, ...], found: Reckoned) -> list[float]:
    per_h = float(found.rates.labour_per_h.amount)
    area_m2 = math.fsum(one.area_m2 for one in rooms) or 1.0
    floor = tuple(one.area_m2 / area_m2 for one in rooms)
    walls = room_shares(rooms, "mask")
    costs = [0.0] * len(rooms)
    parted = 0.0

    def part(amount: float, shares: tuple[float, ...]) -> None:
        nonlocal parted
        parted += amount
        for n, share in enumerate(shares):
            costs[n] += amount * share

    for task in found.hours.tasks:
        part(task.likely_h * per_h, room_shares(rooms, task.id))
    for one in found.goods:
        part(float(one.likely), walls if one.group == "masking" else floor)
    rest = float(found.asked.cost + found.asked.overhead + found.asked.risk + found.asked.added)
    part(rest - parted, floor)
    return costs


def _money(room: RoomSize, costs: tuple[Decimal, ...], price: Decimal) -> RoomMoney:
    cost, low, high = costs
    left = rounded(price - cost)
    loses = left < 0
    much = loses and price > 0 and -left > price * _MUCH
    return RoomMoney(
        room.room, room.name, round(room.area_m2, 4), written(cost), written(price), written(left),
        loses, (LEAVE_OUT if much else BUNDLE) if loses else "", written(low), written(high),
    )  # fmt: skip
