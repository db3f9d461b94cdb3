"""A colour target: patches on a plane, their places and their own colours."""

from __future__ import annotations

from farwall.nouns import dataclass

Lab = tuple[float, float, float]
Place = tuple[float, float]


@dataclass(frozen=True)
class Patch:
    """A square of one colour: its middle from the target's upper left, y down, and its own Lab.

    lab: under D50; None where it is not known · grey: whether it is one of the grey steps.
    """

    name: str
    at_mm: Place
    side_mm: float
    lab: Lab | None
    grey: bool = False


@dataclass(frozen=True)
class Marker:
    """A square that tells where a target lies: its number and its cells, row by row, True white."""

    number: int
    at_mm: Place
    side_mm: float
    cells: tuple[tuple[bool, ...], ...]


@dataclass(frozen=True)
class Target:
    """A target.

    known: its values are published or measured; else they are what a printer was asked for ·
    lit_between: the ground between its patches is bare paper, by which its light can be evened.
    """

    name: str
    size_mm: tuple[float, float]
    patches: tuple[Patch, ...]
    known: bool
    lit_between: bool
    markers: tuple[Marker, ...] = ()
