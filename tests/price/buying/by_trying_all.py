"""Small purchases drawn by a seed, and the best of all ways: slow, obvious, sharing no code."""

from __future__ import annotations

import itertools
import random
from decimal import Decimal

from farwall.facts.wares import Seller, Ware
from farwall.price.buying import Material

DEAREST_DELIVERY = 25
SIZES = (1.0, 2.0, 2.5, 4.0, 5.0)


def drawn(seed: int) -> tuple[list[Material], list[Seller]]:
    """One to three materials, each of one to four wares at one to three sellers."""
    draw = random.Random(seed)
    sellers = [
        Seller(
            f"s{n}",
            delivery=str(Decimal(draw.choice([0, 500, 1500, 2500])) / 100),
            free_from=draw.choice([None, None, "40", "80.50", "120"]),
        )
        for n in range(draw.randint(1, 3))
    ]
    materials = []
    for m in range(draw.randint(1, 3)):
        need = draw.choice([1, 2, 3.3, 5, 6.5])
        with_lots = draw.random() < 0.35
        wares = []
        for n in range(draw.randint(1, 4 if m == 0 else 2)):
            size = draw.choice(SIZES)
            cents = max(1, int(size * draw.uniform(500, 1500)))
            wares.append(
                Ware(
                    f"w{m}{n}", "stain", size, "l", str(Decimal(cents) / 100),
                    seller=draw.choice(sellers).id, lot=draw.choice(["", "A", "B"]),
                    in_stock=draw.choice([None, None, 1, 2, 4]),
                )
            )  # fmt: skip
        parts = _parted(draw, need) if with_lots else ()
        materials.append(Material(f"m{m}", need, tuple(wares), parts))
    return materials, sellers


def _parted(draw: random.Random, need: float) -> tuple[float, ...]:
    many = draw.randint(1, 3)
    shares = [draw.uniform(0.2, 1) for _ in range(many)]
    return tuple(need * one / sum(shares) for one in shares)


def ways_of(material: Material, *, boxed: bool) -> list[tuple[tuple[int, ...], float]]:
    """All sensible counts of a material's wares that do, with what is left over."""
    most = []
    for one in material.wares:
        for_delivery = int(DEAREST_DELIVERY / Decimal(one.price)) + 1
        sensible = int(material.need / one.size) + 1 + for_delivery
        most.append(sensible if one.in_stock is None else min(sensible, one.in_stock))
    found = []
    for counts in itertools.product(*(range(n + 1) for n in most)):
        held = sum(one.size * n for one, n in zip(material.wares, counts, strict=True))
        if held < material.need - 1e-7:
            continue
        if material.parts and not boxed and not lots_do(material, counts):
            continue
        found.append((counts, held - material.need))
    return found


def lots_do(material: Material, counts: tuple[int, ...]) -> bool:
    """Whether each field can be given one lot."""
    held: dict[tuple[str, str], float] = {}
    for one, n in zip(material.wares, counts, strict=True):
        key = (one.lot, "") if one.lot else ("", one.seller)
        held[key] = held.get(key, 0) + one.size * n
    for ways in itertools.product(held, repeat=len(material.parts)):
        taken = dict.fromkeys(held, 0.0)
        for key, much in zip(ways, material.parts, strict=True):
            taken[key] += much
        if all(taken[key] <= held[key] + 1e-7 for key in held):
            return True
    return False


def best(materials: list[Material], sellers: list[Seller], *, least_left: bool) -> Decimal | None:
    """The least total; None where somebody has not enough. All ways of all materials together."""
    all_ways = []
    for one in materials:
        ways = ways_of(one, boxed=False) or ways_of(one, boxed=True)
        if not ways:
            return None
        if least_left:
            least = min(left for _, left in ways)
            ways = [way for way in ways if way[1] <= least + 1e-7]
        all_ways.append(_told_apart(one, ways))
    terms = {one.id: one for one in sellers}
    totals = []
    for way in itertools.product(*all_ways):
        spent: dict[str, Decimal] = {}
        for paid in way:
            for name, much in paid:
                spent[name] = spent.get(name, Decimal(0)) + much
        total = Decimal(0)
        for name, much in spent.items():
            free = terms[name].free_from
            fee = Decimal(0) if free and much >= Decimal(free) else Decimal(terms[name].delivery)
            total += much + fee
        totals.append(total)
    return min(totals)


def _told_apart(material: Material, ways: list) -> set[tuple[tuple[str, Decimal], ...]]:
    """What each way pays to each seller; ways that pay the same are one."""
    found = set()
    for counts, _ in ways:
        spent: dict[str, Decimal] = {}
        for one, n in zip(material.wares, counts, strict=True):
            if n:
                spent[one.seller] = spent.get(one.seller, Decimal(0)) + Decimal(one.price) * n
        found.add(tuple(sorted(spent.items())))
    return found
