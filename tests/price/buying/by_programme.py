"""A purchase as one mixed integer programme for HiGHS: another way to the same least total.

Materials without fields. It shares no code with what is tested; its own tolerance is a millionth.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp

from farwall.facts.wares import Seller
from farwall.price.buying import Material


def least_total(materials: Sequence[Material], sellers: Sequence[Seller]) -> float:
    """The least total, as exactly as HiGHS tells it."""
    wares = [(m, one) for m, material in enumerate(materials) for one in material.wares]
    terms = [one for one in sellers if any(ware.seller == one.id for _, ware in wares)]
    many, paying, free = len(wares), len(wares), len(wares) + len(terms)
    columns = many + 2 * len(terms)
    cost, most = np.zeros(columns), np.ones(columns)
    rows, low, high = [], [], []
    for n, (m, ware) in enumerate(wares):
        cost[n] = float(ware.price)
        enough = np.ceil(materials[m].need / ware.size) + 400 // max(float(ware.price), 1)
        most[n] = enough if ware.in_stock is None else min(enough, ware.in_stock)
    for m, material in enumerate(materials):
        rows.append([one.size / material.need * (of == m) for of, one in wares])
        low.append(1.0)
        high.append(np.inf)
    for s, seller in enumerate(terms):
        cost[paying + s] = float(seller.delivery)
        own = [n for n, (_, ware) in enumerate(wares) if ware.seller == seller.id]
        if seller.free_from is None:
            most[free + s] = 0
        else:  # brought for nothing: his goods come to the sum
            rows.append([float(wares[n][1].price) * (n in own) for n in range(many)])
            rows[-1] += [-float(seller.free_from) * (c == free + s) for c in range(many, columns)]
            low.append(0.0)
            high.append(np.inf)
        for n in own:  # nothing of him unless he is paid for, or comes for nothing
            rows.append([1.0 * (c == n) - most[n] * (c in (paying + s, free + s))
                         for c in range(columns)])  # fmt: skip
            low.append(-np.inf)
            high.append(0.0)
    table = np.array([[*row, *[0.0] * (columns - len(row))] for row in rows])
    answer = milp(
        cost, integrality=np.ones(columns), bounds=Bounds(0, most),
        constraints=LinearConstraint(table, low, high), options={"mip_rel_gap": 0.0},
    )  # fmt: skip
    assert answer.status == 0, answer.message
    return float(answer.fun)
