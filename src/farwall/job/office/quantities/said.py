"""The list of quantities in calm lines, by what it is for. Pure."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.evidence import rank_words
from farwall.facts.quantities import Moment, Quantities, Quantity
from farwall.job.office.quantities.basis import amount_said, figure, in_units

HEADS: dict[Moment, str] = {
    "stain": "To stain", "mask": "To mask", "wash": "To neutralise and wash", "seal": "To seal",
    "wear": "To wear",
    "tools": "Sprayers and tools",
}  # fmt: skip


def quantities_said(found: Quantities) -> tuple[str, ...]:
    """Lines for a terminal: what to have, its range, its rule, rank and source."""
    lines: list[str] = []
    units = found.units
    for moment, head in HEADS.items():
        own = [one for one in found.lines if one.moment == moment]
        if own:
            lines.append(head)
        for one in own:
            lines += _line_said(one, units)
    return (*lines, *found.warnings)


def _line_said(one: Quantity, units: str) -> Iterator[str]:
    if not one.on:
        yield f"  {one.what}: switched off ({one.id})"
        return
    yield f"  {one.what}: {amount_said(one.ready, one.unit, units)}{range_said(one, units)}"
    if one.told:
        yield f"    your own figure; the rule has {_ruled(one, units)} ({one.id})"
    yield f"    {one.rule} ({rank_words(one.rank, one.source)})"


def _ruled(one: Quantity, units: str) -> str:
    return "none" if one.ruled is None else amount_said(one.ruled, one.unit, units)


def range_said(one: Quantity, units: str) -> str:
    """`, likely 6.3, 5.1 to 7.8`; empty where all ends are what is ready."""
    if one.told or one.low == one.likely == one.high == one.ready:
        return ""
    low, likely, high = (
        figure(in_units(each, one.unit, units)[0]) for each in (one.low, one.likely, one.high)
    )
    return f", likely {likely}, {low} to {high}"
