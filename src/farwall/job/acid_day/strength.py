"""How strong each batch is: the cut, added acid, its heat, moles of acid on a square metre."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.job.acid_day.ground import Ground


@dataclass(frozen=True)
class Strength:
    """How strong each batch is: the cut, added acid, its heat, moles of acid on a square metre."""

    warnings: tuple[str, ...] = ()


def strength_of(ground: Ground) -> Strength:  # noqa: ARG001
    """How strong each batch is: the cut, added acid, its heat, moles of acid on a square metre."""
    return Strength()


def strength_said(part: Strength) -> tuple[str, ...]:
    """The part in lines for a terminal."""
    return part.warnings
