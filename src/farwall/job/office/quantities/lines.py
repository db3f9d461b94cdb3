"""Every line of the list, with switches and the user's own figures. Pure."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from farwall.facts.quantities import Moment, Quantities, Quantity
from farwall.facts.supplies import Supplies
from farwall.job.office.ground import OfficeGround
from farwall.job.office.masking import Masked
from farwall.job.office.quantities.basis import Basis, amount_said, switched
from farwall.job.office.quantities.mask import mask_lines
from farwall.job.office.quantities.seal import seal_lines
from farwall.job.office.quantities.stain import stain_lines
from farwall.job.office.quantities.tools import tool_lines
from farwall.job.office.quantities.wash import wash_lines
from farwall.job.office.quantities.wear import wear_lines, wear_warnings
from farwall.mix.batch import ADDED_ACID_WARNINGS

_SAFETY = frozenset({
    "bicarbonate", "gloves", "suit", "goggles", "cartridges", "boots", "spill-kit", "eyewash",
})  # fmt: skip
_MAKERS: dict[Moment, Callable[[Basis], tuple[Quantity, ...]]] = {
    "stain": stain_lines, "mask": mask_lines, "wash": wash_lines, "seal": seal_lines,
    "wear": wear_lines, "tools": tool_lines,
}  # fmt: skip
"""In the order in which they are needed."""
WINS = "The sheet of the material in hand wins over every figure here."


def quantities_of(ground: OfficeGround, masked: Masked) -> Quantities:
    """Every line in the order in which it is needed: stain, mask, wash, seal, wear, tools."""
    basis = Basis(ground, masked)
    ruled = tuple(
        replace(one, moment=moment) for moment, make in _MAKERS.items() for one in make(basis)
    )
    supplies = ground.job.supplies
    lines = tuple(switched(one, left_out=supplies.left_out, own=supplies.amounts) for one in ruled)
    warned = [*_warnings(ruled, supplies, basis.units), *wear_warnings(basis)]
    if any(one.id == "added-acid" for one in ruled):
        warned += ADDED_ACID_WARNINGS
    return Quantities(lines, (*warned, WINS), basis.units)


def _warnings(ruled: Sequence[Quantity], supplies: Supplies, units: str) -> list[str]:
    """Switches and own figures that leave a floor dry or a person bare; names of no line."""
    known = {one.id: one for one in ruled}
    told = []
    for id_ in dict.fromkeys((*supplies.left_out, *supplies.amounts)):
        one = known.get(id_)
        if one is None:
            told.append(
                f"There is no line {id_} in the list: its switch or own figure does nothing."
            )
        elif id_ in supplies.left_out and id_ in _SAFETY:
            told.append(f"{_first(one.what)} switched off: no acid is opened where none is there.")
        elif id_ in supplies.left_out and one.kind in {"stain", "sealer"}:
            told.append(f"{_first(one.what)} switched off: so much must be there already.")
        elif id_ in supplies.amounts and supplies.amounts[id_] < one.likely - 1e-9:
            own = amount_said(supplies.amounts[id_], one.unit, units)
            rule = amount_said(one.likely, one.unit, units)
            told.append(f"{_first(one.what)}: your own {own} is less than the likely {rule}.")
    return told


def _first(what: str) -> str:
    return what[:1].upper() + what[1:]
