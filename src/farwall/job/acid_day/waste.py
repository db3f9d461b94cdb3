"""The waste water: how much, what may be in it, what must be asked and of whom."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.job.acid_day.ground import Ground


@dataclass(frozen=True)
class Waste:
    """The waste water: how much, what may be in it, what must be asked and of whom."""

    warnings: tuple[str, ...] = ()


def waste_of(ground: Ground) -> Waste:  # noqa: ARG001
    """The waste water: how much, what may be in it, what must be asked and of whom."""
    return Waste()


def waste_said(part: Waste) -> tuple[str, ...]:
    """The part in lines for a terminal."""
    return part.warnings
