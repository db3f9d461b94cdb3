"""What is plugged, taped, wrapped or taken out, with the film and tape it takes."""

from __future__ import annotations

from farwall.facts.job import Job
from farwall.facts.supplies import MaskItem
from farwall.job.office.masking.nouns import Dam, ItemMasked
from farwall.job.office.masking.rules import (
    APPLIANCE_M,
    COUNTER_M,
    FILM_M,
    RETURN_M,
    STAIR_M,
    TUB_M,
)

_DOOR_WIDE_M = 0.91
_LONG_M = {"kick": 0.0, "tub": 1.52, "appliance": 2.4, "stair": 0.0, "post": 0.6}
"""Length where none was told: apron of a tub, front and sides of an appliance, girth of a post
[house-guess]. A kick and a stair have none."""
_HIGH_M = {
    "kick": COUNTER_M, "tub": TUB_M, "appliance": APPLIANCE_M, "stair": STAIR_M, "post": FILM_M,
}  # fmt: skip
_EACH_M2 = {"register": 0.1, "metal": 0.5, "drain": 0.05}
_EACH_TAPE_M = {"register": 0.9, "metal": 1.0}
"""For one register, one piece of metal, one drain under its plug [house-guess]."""


def items_of(job: Job) -> tuple[ItemMasked, ...]:
    """The list of the job, lettered in its order; nothing is hung on what is taken out."""
    return tuple(
        _item(one, _letter(n)) for n, one in enumerate(job.supplies.masking.items)
    )  # fmt: skip


def _item(one: MaskItem, letter: str) -> ItemMasked:
    film_m2, tape_m = (0.0, 0.0) if one.take_out else _takes(one)
    return ItemMasked(
        letter, one.kind, one.room, one.at, one.count, one.length_m, one.height_m, one.take_out,
        one.note, film_m2, tape_m,
    )  # fmt: skip


def _takes(one: MaskItem) -> tuple[float, float]:
    """Film [m²] and tape [m], before loss."""
    if one.kind == "outside door":
        return 0.0, 0.0
    if one.kind in _EACH_M2 and not (one.length_m and one.height_m):
        return one.count * _EACH_M2[one.kind], one.count * _EACH_TAPE_M.get(one.kind, 0.0)
    long = one.length_m if one.length_m is not None else _LONG_M.get(one.kind, 0.0)
    high = one.height_m if one.height_m is not None else _HIGH_M.get(one.kind, 0.0)
    return one.count * long * high, one.count * long


def listed_dams(job: Job) -> list[Dam]:
    """Dams at outside doors that the drawing does not have."""
    return [
        Dam("", one.room, () if one.at is None else (one.at,),
            (one.length_m or _DOOR_WIDE_M) + 2 * RETURN_M)
        for one in job.supplies.masking.items
        if one.kind == "outside door"
        for _ in range(one.count)
    ]  # fmt: skip


def long_m(one: ItemMasked) -> float:
    """Length of an item's edge that is masked, all of its count. [m]"""
    if one.take_out or one.kind not in _LONG_M:
        return 0.0
    return one.count * (one.length_m if one.length_m is not None else _LONG_M[one.kind])


def item_warnings(items: tuple[ItemMasked, ...], job: Job) -> list[str]:
    """What the list leaves open."""
    names = job.floor.room_by_id
    told = []
    for one in items:
        where = f" in {names[one.room].label}" if one.room in names else ""
        if one.kind in {"metal", "appliance"} and not one.take_out and one.at is None:
            told.append(
                f"Where {one.kind} {one.letter}{where} stands was not told: film the walls beside "
                "it to full height, or take it out."
            )
        if one.kind in {"kick", "stair"} and one.length_m is None and not one.take_out:
            told.append(f"How long {one.kind} {one.letter}{where} is was not told.")
    return told


def _letter(n: int) -> str:
    letters = "abcdefghijklmnopqrstuvwxyz"
    return letters[n % 26] * (n // 26 + 1)
