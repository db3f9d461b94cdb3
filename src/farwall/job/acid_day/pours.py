"""What of the materials in hand may be poured together, and what never."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.job.acid_day.ground import Ground


@dataclass(frozen=True)
class Pours:
    """What of the materials in hand may be poured together, and what never."""

    warnings: tuple[str, ...] = ()


def pours_of(ground: Ground) -> Pours:  # noqa: ARG001
    """What of the materials in hand may be poured together, and what never."""
    return Pours()


def pours_said(part: Pours) -> tuple[str, ...]:
    """The part in lines for a terminal."""
    return part.warnings
