"""What a job needs in the van: the lines of its list of quantities that are loaded.

One rule for both: `farwall.job.office.quantities`. A sheet or a list of your own wins.
"""

from __future__ import annotations

import math

from farwall.facts.job import Job
from farwall.facts.numbered import stain_named
from farwall.facts.plan import Plan
from farwall.facts.quantities import Quantity
from farwall.facts.van import Need

NOT_LOADED = frozenset({"water", "sprayer"})
"""Drawn on site; looked at one by one beside the list."""


def needs(job: Job, plan: Plan) -> tuple[Need, ...]:
    """Everything that is switched on, stains first: what to have in hand."""
    from farwall.job.office.ground import OfficeGround
    from farwall.job.office.masking import masked_of
    from farwall.job.office.quantities import quantities_of

    ground = OfficeGround(job, plan)
    found = quantities_of(ground, masked_of(ground))
    return tuple(
        _need(one, plan) for one in found.wanted if one.kind not in NOT_LOADED and one.ready
    )


def _need(one: Quantity, plan: Plan) -> Need:
    """Counts and metres whole, up; litres to two places, kilograms to one."""
    much = one.ready
    if one.unit in {"count", "m"}:
        much = float(math.ceil(much - 1e-9))
    elif not one.told:
        much = round(much, 2 if one.unit == "l" else 1)
    name = stain_named(plan, one.of) if one.kind == "stain" else ""
    return Need(one.kind, much, one.unit, one.of, one.lots, one.rank, one.source, name)
