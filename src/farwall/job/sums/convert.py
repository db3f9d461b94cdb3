"""A value from one unit to another; factors exact wherever the unit is defined exactly."""

from __future__ import annotations

import math
from fractions import Fraction

from farwall.errors import Mistake, Refused
from farwall.evidence import Rank
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum
from farwall.job.sums.unit_table import Unit, converted, unit


def reckon(given: Given) -> Result:
    """`value` in the unit `to`. Raises `Refused` for unknown units and for two dimensions."""
    names = {key: given.text(key) or "" for key in ("from", "to")}
    mistakes: list[Mistake] = []
    found: list[Unit] = []
    for key, name in names.items():
        try:
            found.append(unit(name, where=key))
        except Refused as refused:
            mistakes.extend(refused.mistakes)
    if mistakes:
        raise Refused(*mistakes)
    source, target = found
    value = converted(Fraction(repr(given.number("value"))), source, target)
    exact = source.exact and target.exact
    return {
        "value": float(value),
        "from": source.name,
        "to": target.name,
        "of": source.dimension,
        "exact_factor": exact,
        "rank": Rank.PUBLISHED.value,
        "source": "nist-hb44",
        "warnings": _warnings(source.name, target.name),
    }


def _warnings(*names: str) -> list[object]:
    told: list[object] = []
    if any(name.startswith("Imperial") for name in names):
        told.append("An Imperial gallon is 1.2 US gallons; stain in the US is sold by the US one.")
    return told


SUM = Sum(
    name="convert",
    what="a value from one unit to another",
    arguments=(
        Argument("value", bounds=Bounds(-math.inf, math.inf), needed=True),
        Argument("from", needed=True),
        Argument("to", needed=True),
    ),
    reckon=reckon,
)
