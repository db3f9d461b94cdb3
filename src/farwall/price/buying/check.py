"""Whether a purchase is what it says: everything added again, by nothing of what found it.

Plain values in, sentences out. That it is the best one is not looked at here.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from decimal import Decimal
from itertools import product
from typing import Any

Json = Mapping[str, Any]
SHORT = 1e-6
"""Share of a need that is no shortfall."""


def faults_of(
    lines: Sequence[Json],
    needs: Mapping[str, float],
    wares: Iterable[Json],
    sellers: Iterable[Json],
    told: Json,
) -> tuple[str, ...]:
    """Sentences on what is wrong with a purchase; none where it is sound.

    lines: `material`, `ware` (an id), `count` · needs: amounts by material · wares: `id`, `size`,
    `price`, `seller`, `lot`, `in_stock` · sellers: `id`, `delivery`, `free_from` · told: `goods`,
    `delivery` (amounts by seller), `total`, as text; `fields` (by material: what each field takes)
    and `boxed` where lots matter.
    """
    by_id = {str(one["id"]): one for one in wares}
    unknown = [one["ware"] for one in lines if one["ware"] not in by_id]
    if unknown:
        return tuple(f"There is no ware {one}." for one in unknown)
    odd = [one for one in lines if not isinstance(one["count"], int) or one["count"] < 1]
    if odd:
        return tuple(f"{one['ware']}: {one['count']} cannot be bought." for one in odd)
    found = [*_short(lines, needs, by_id), *_beyond_stock(lines, by_id)]
    spent: dict[str, Decimal] = defaultdict(Decimal)
    for one in lines:
        ware = by_id[one["ware"]]
        spent[ware.get("seller") or ""] += Decimal(ware["price"]) * one["count"]
    goods = sum(spent.values(), start=Decimal(0))
    if goods != Decimal(told["goods"]):
        found.append(f"The goods come to {goods}, not {told['goods']}.")
    due = _deliveries(spent, sellers)
    said = {name: Decimal(much) for name, much in told.get("delivery", {}).items()}
    found += [
        f"Delivery of {name or 'a seller'} is {due.get(name, 0)}, not {said.get(name, 0)}."
        for name in sorted(due.keys() | said.keys())
        if due.get(name, 0) != said.get(name, 0)
    ]
    total = goods + sum(due.values(), start=Decimal(0))
    if total != Decimal(told["total"]):
        found.append(f"The total is {total}, not {told['total']}.")
    boxed = set(told.get("boxed", ()))
    for material, fields in told.get("fields", {}).items():
        if fields and material not in boxed and not _lots_do(lines, material, fields, by_id):
            found.append(f"{material}: a field would take stain of two lots.")
    return tuple(found)


def _short(
    lines: Sequence[Json], needs: Mapping[str, float], by_id: Mapping[str, Json]
) -> list[str]:
    held = {
        material: sum(
            by_id[one["ware"]]["size"] * one["count"]
            for one in lines
            if one["material"] == material
        )
        for material in needs
    }
    return [
        f"{material}: {held[material]:g} is bought of the {need:g} that is needed."
        for material, need in needs.items()
        if held[material] < need * (1 - SHORT)
    ]


def _beyond_stock(lines: Sequence[Json], by_id: Mapping[str, Json]) -> list[str]:
    counts: dict[str, int] = defaultdict(int)
    for one in lines:
        counts[one["ware"]] += one["count"]
    return [
        f"{name}: {count} are bought and there are {by_id[name]['in_stock']}."
        for name, count in counts.items()
        if by_id[name].get("in_stock") is not None and count > by_id[name]["in_stock"]
    ]


def _deliveries(spent: Mapping[str, Decimal], sellers: Iterable[Json]) -> dict[str, Decimal]:
    terms = {one["id"]: one for one in sellers}
    due = {}
    for name, much in spent.items():
        seller = terms.get(name)
        if seller is None:
            continue
        free = seller.get("free_from")
        fee = Decimal(seller["delivery"])
        if fee and not (free is not None and much >= Decimal(free)):
            due[name] = fee
    return due


def _lots_do(
    lines: Sequence[Json], material: str, fields: Sequence[float], by_id: Mapping[str, Json]
) -> bool:
    """Whether every field can be given one lot so that no lot runs short; all ways are tried."""
    held: dict[tuple[str, str], float] = defaultdict(float)
    for one in lines:
        if one["material"] == material:
            ware = by_id[one["ware"]]
            lot = str(ware.get("lot") or "")
            key = (lot, "") if lot else ("", str(ware.get("seller") or ""))
            held[key] += ware["size"] * one["count"]
    for ways in product(held, repeat=len(fields)):
        left = dict(held)
        for which, much in zip(ways, fields, strict=True):
            left[which] -= much
        if all(much >= -SHORT * sum(fields) for much in left.values()):
            return True
    return False
