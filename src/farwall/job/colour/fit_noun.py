"""What the samples say of a slab's colour: nouns, no reckoning."""

from __future__ import annotations

from farwall.colour.sealed import Sealing
from farwall.job.colour.laid import LaidCoat
from farwall.job.colour.seen import Ask, Gathered, Lab
from farwall.job.colour.standard import Standard
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Swatch:
    """A dose of a stain and how the floor looks after it, clean and wet.

    over: what lies beneath · low_l, high_l: 10 and 90 % of its lightness.
    """

    stain: str
    cut: str
    l_per_m2: float
    stain_l_per_m2: float
    over: tuple[LaidCoat, ...]
    lab: Lab
    low_l: float
    high_l: float


@dataclass(frozen=True)
class FormWeight:
    """A form of `colour.dose` and how far the samples speak for it, 0 to 1."""

    optics: str
    lime: str
    weight: float


@dataclass(frozen=True)
class ToldAgain:
    """A patch as the others tell it: seen, told without it, CIEDE2000 between the two.

    alone: no other patch tells of one of its stains, so that a guess stands in.
    """

    name: str
    seen: Lab
    told: Lab
    away: float
    alone: bool


@dataclass(frozen=True)
class Between:
    """A quantity of the slab with its range, 10 and 90 %: what is left unknown."""

    name: str
    unit: str
    low: float
    likely: float
    high: float


@dataclass(frozen=True)
class FitAnswer:
    """All of it. bare: how the floor looks with nothing on · standard: None where there is none."""

    job: str
    bare: Swatch
    swatches: tuple[Swatch, ...]
    forms: tuple[FormWeight, ...]
    told: tuple[ToldAgain, ...]
    unknown: tuple[Between, ...]
    sealing: Sealing
    standard: Standard | None
    found: Gathered
    asks: tuple[Ask, ...]
    learned_from: int
