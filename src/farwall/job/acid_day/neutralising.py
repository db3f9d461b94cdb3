"""What neutralises a spill, a left-over tub, the floor; pH on the way, and why it fizzes."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.job.acid_day.ground import Ground


@dataclass(frozen=True)
class Neutralising:
    """What neutralises a spill, a left-over tub, the floor; pH on the way, and why it fizzes."""

    warnings: tuple[str, ...] = ()


def neutralising_of(ground: Ground) -> Neutralising:  # noqa: ARG001
    """What neutralises a spill, a left-over tub, the floor; pH on the way, and why it fizzes."""
    return Neutralising()


def neutralising_said(part: Neutralising) -> tuple[str, ...]:
    """The part in lines for a terminal."""
    return part.warnings
