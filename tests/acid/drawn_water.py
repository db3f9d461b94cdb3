"""Water with acid and bases in it, drawn: hydrochloric acid 10⁻⁴ to 3 mol/kg, bases 0 to 4 times.

No amount passes 6 mol/kg. A seed always means the same water.
"""

from __future__ import annotations

import random

from farwall.acid.equilibrium import CO2_WAYS, Co2
from farwall.acid.equilibrium_species import Totals

GIVES: dict[str, dict[str, float]] = {
    "NaHCO3": {"sodium": 1, "carbon": 1},
    "Na2CO3": {"sodium": 1, "carbon": 0.5},
    "NaOH": {"sodium": 1},
    "KOH": {"potassium": 1},
    "NH3": {"ammonia": 1},
    "CaCO3": {"calcium": 0.5, "carbon": 0.5},
    "Ca(OH)2": {"calcium": 0.5},
}
"""mol of each total for one equivalent of the base."""


def water_with(hcl: float, equivalents: dict[str, float]) -> Totals:
    """Acid, mol/kg, and equivalents of each base for each equivalent of acid."""
    sums: dict[str, float] = {}
    for base, share in equivalents.items():
        for total, each in GIVES[base].items():
            sums[total] = sums.get(total, 0.0) + hcl * share * each
    return Totals(hcl=hcl, **sums)


def drawn(count: int, seed: int) -> list[tuple[Totals, Co2]]:
    """So many waters, each with its way of the carbon dioxide."""
    die = random.Random(seed)
    found: list[tuple[Totals, Co2]] = []
    while len(found) < count:
        bases = die.sample(list(GIVES), die.choice([0, 1, 1, 1, 2, 3]))
        weights = [die.random() for _ in bases]
        all_of_it = die.uniform(0, 4)
        shares = {
            base: all_of_it * weight / sum(weights)
            for base, weight in zip(bases, weights, strict=True)
        }
        totals = water_with(10 ** die.uniform(-4, 0.477), shares)
        if max(vars(totals).values()) <= 6:
            found.append((totals, die.choice(CO2_WAYS)))
    return found
