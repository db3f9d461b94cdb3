"""What a job needs in the van: stains from the plan, all else from floor and people.

Amounts but for stain are common practice, no source; a sheet or a list of your own wins.
"""

from __future__ import annotations

import math
from typing import Any

from farwall.evidence import Rank
from farwall.facts.default_table import PRACTICE
from farwall.facts.plan import Plan
from farwall.facts.van import Need, StockKind, Unit
from farwall.floor.nouns import Floor
from farwall.floor.takeoff import take_off
from farwall.units import M2_PER_FT2, M_PER_FT

TAPE_PER_M = 1.1
"""Metres of tape for a metre to be masked: a tenth is lost."""
_PER_1000_FT2: tuple[tuple[StockKind, float, Unit], ...] = (
    ("pads", 5, "count"), ("rags", 15, "count"), ("ph-strips", 20, "count"),
    ("bicarbonate", 3, "kg"), ("bags", 8, "count"),
)  # fmt: skip
_PER_PERSON: tuple[tuple[StockKind, float], ...] = (
    ("gloves", 3), ("suit", 1), ("goggles", 1), ("cartridges", 1),
)  # fmt: skip
FILM_OVER = 0.15 / (100 * M_PER_FT)
"""Film laps six inches at each join of a hundred-foot roll."""


def needs(plan: Plan, floor: Floor) -> tuple[Need, ...]:
    """Everything, stains first: litres to be ready for, by stain."""
    measured = take_off(floor)
    people = 2 if plan.inputs.crew.helper or plan.inputs.crew.sprayers > 1 else 1
    thousands = measured.net_m2 / (1000 * M2_PER_FT2)
    made = list(_stains(plan))
    made.append(_need("tape", measured.mask_m * TAPE_PER_M, "m"))
    made.append(_need("film", measured.mask_m * (1 + FILM_OVER), "m"))
    made += [_need(kind, people * each, "count") for kind, each in _PER_PERSON]
    made += [_need(kind, each * thousands, unit) for kind, each, unit in _PER_1000_FT2]
    return tuple(made)


def _stains(plan: Plan) -> list[Need]:
    told: Any = (plan.buying or {}).get("stains", [])
    return [
        Need(
            "stain", round(float(one["ready_l"]), 2), "l", str(one["stain"]),
            tuple(map(str, one.get("lots", ()))), Rank.PRACTICE.value, "the plan's own need",
        )
        for one in told
    ]  # fmt: skip


def _need(kind: StockKind, amount: float, unit: Unit) -> Need:
    whole = float(math.ceil(amount - 1e-9)) if unit in {"count", "m"} else round(amount, 1)
    return Need(kind, whole, unit, rank=Rank.PRACTICE.value, source=PRACTICE)
