"""The sums by name. Each lives in the module of its name and is imported when it is asked for."""

from __future__ import annotations

import importlib

from farwall.errors import Mistake, Refused
from farwall.job.sums.noun import Sum
from farwall.near_word import near_word

SUMS = {
    "convert": "a value from one unit to another",
    "coverage": "area per volume and wet film",
    "batch": "stain, water and acid of a batch at a cut",
    "need": "how much mix so that it does not run out, at a stated certainty",
    "pack": "containers to buy for a need, at least cost",
    "air": "dew point, wet bulb, vapour pressure, humidity ratio",
    "saturation": "saturated air at a temperature, or the standard pressure at an altitude",
    "evaporation": "water leaving a wet slab, by rival published relations",
    "film-drying": "minutes for evaporation alone to dry a film; not an open time",
    "open-time": "minutes that a sprayed edge stays live",
    "slab-tests": "how many moisture tests and pH readings a slab asks for",
    "vapour-rate": "vapour out of a slab, from what a calcium chloride dish gained",
    "purge": "minutes until moving air has carried a share of a vapour away",
    "room-air": "hydrogen chloride in a room's air, given off steadily and aired",
    "air-changes": "air changes an hour that keep a steady release below a limit",
    "acid-solution": (
        "hydrochloric acid by percent, molality, molarity or Baumé, with density and heat"
    ),
    "acid-vapour": "hydrogen chloride over hydrochloric acid, by strength and temperature",
    "neutraliser": "base for an amount of hydrochloric acid, and the gas and heat that come of it",
    "ph": "pH of acid and a base in water, gas shut in, fizzed off or at rest with the air",
    "sum": "totals of an invoice: lines, allowances, charges, taxes, what is paid, what is payable",
    "colour-difference": "how far two colours lie apart, by CIEDE2000",
    "film-colour": "what a film of colour throws back, alone and over a backing",
    "weather": "what a weather file says: year, month or one hour",
}


def find(name: str) -> Sum:
    """The sum of that name. Raises `Refused` with the nearest known one."""
    if name not in SUMS:
        near = near_word(name, SUMS, alike=0.5)
        remedy = f"Did you mean {near}?" if near else f"There are {', '.join(SUMS)}."
        raise Refused(Mistake(name[:60], "There is no sum of that name.", remedy))
    module = importlib.import_module(f"farwall.job.sums.{name.replace('-', '_')}")
    found = module.SUM
    assert isinstance(found, Sum)
    return found
