"""The wash day: rooms in order, passes, water, drums, and when enough is rinsed."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.job.acid_day.ground import Ground


@dataclass(frozen=True)
class WashDay:
    """The wash day: rooms in order, passes, water, drums, and when enough is rinsed."""

    warnings: tuple[str, ...] = ()


def washing_of(ground: Ground) -> WashDay:  # noqa: ARG001
    """The wash day: rooms in order, passes, water, drums, and when enough is rinsed."""
    return WashDay()


def washing_said(part: WashDay) -> tuple[str, ...]:
    """The part in lines for a terminal."""
    return part.warnings
