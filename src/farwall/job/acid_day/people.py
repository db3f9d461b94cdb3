"""Who may do what today: fitted, cleared, gloved; what is missing."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.job.acid_day.ground import Ground


@dataclass(frozen=True)
class People:
    """Who may do what today: fitted, cleared, gloved; what is missing."""

    warnings: tuple[str, ...] = ()


def people_of(ground: Ground) -> People:  # noqa: ARG001
    """Who may do what today: fitted, cleared, gloved; what is missing."""
    return People()


def people_said(part: People) -> tuple[str, ...]:
    """The part in lines for a terminal."""
    return part.warnings
