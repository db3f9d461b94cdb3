"""Units that the user said, and readings whose unit nobody knows."""

from __future__ import annotations

from dataclasses import replace

from farwall.facts.reading import Reading

GRID_DECIMALS = 9
"""Metres are kept to the nanometre: smaller numbers make no sense and spoil sums of areas."""
_NAMES = {1.0: "m", 0.01: "cm", 0.001: "mm", 0.3048: "ft", 0.0254: "in"}


def unit_named(scale_m_per_unit: float) -> str:
    """The name of a unit of so many metres; nothing when it has none here."""
    return _NAMES.get(scale_m_per_unit, "")


def honest_about_scale(reading: Reading) -> Reading:
    """The reading without a scale while it asks for one: its metres are nobody's word yet."""
    if all(note.code != "scale" for note in reading.asks):
        return reading
    return replace(reading, scale_m_per_unit=None, length_unit="")
