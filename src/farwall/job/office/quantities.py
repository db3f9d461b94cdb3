"""How much of everything the job takes."""

from __future__ import annotations

from farwall.facts.quantities import Quantities, Quantity
from farwall.job.office.ground import OfficeGround
from farwall.job.office.masking import Masked
from farwall.job.van.needs import needs
from farwall.job.van.say import NAMES


def quantities_of(ground: OfficeGround, masked: Masked) -> Quantities:
    """Every line, stains first."""
    del masked
    supplies, lines = ground.job.supplies, []
    for one in needs(ground.plan, ground.job.floor):
        id_ = f"{one.kind}:{one.of}" if one.of else one.kind
        own = supplies.amounts.get(id_)
        amount = one.amount if own is None else own
        lines.append(
            Quantity(
                id=id_, kind=one.kind, what=one.of or NAMES.get(one.kind, one.kind), unit=one.unit,
                low=amount, likely=amount, high=amount, ready=amount, rule="", rank=one.rank,
                source=one.source, of=one.of, lots=one.lots, on=id_ not in supplies.left_out,
                told=own is not None,
            )
        )  # fmt: skip
    return Quantities(tuple(lines))


def quantities_said(found: Quantities) -> tuple[str, ...]:
    """Lines for a terminal."""
    return tuple(f"{one.what}: {one.ready:g} {one.unit}" for one in found.wanted)
