"""What a sealer's film is like by its generic type, until its sheet is read. The sheet wins.

Coverage and waits are those that finishers tell (common practice, no source). No text of the
trade tells minutes of a sealer's wet edge: those here are our guesses, set short.
"""

from __future__ import annotations

from typing import Literal

from farwall.air.conditions import REFERENCE, Conditions
from farwall.air.waits import evaporating
from farwall.evidence import Rank, Span
from farwall.facts.sealer import Sealer, SealerType
from farwall.nouns import dataclass
from farwall.units import m2_per_l_from_ft2_per_gal

Base = Literal["water", "solvent", "cure"]
GUESS = "house-guess"
PRACTICE = "common-practice"
SHEET = "the sealer's sheet"
_SLOWEST, _QUICKEST = 0.7, 4.0
"""A pace is held between these: beyond them a guess is worth nothing."""


@dataclass(frozen=True)
class Film:
    """A type of sealer: minutes of its wet edge on a mild day, coverage [m²/L], waits [h].

    `recoat_h`: likely and late end of the wait to the next coat. `sensitisers`: what its type
    often holds, until the sheet is read.
    """

    base: Base
    wet_edge_min: tuple[float, float, float]
    ft2_per_gal: tuple[float, float, float]
    recoat_h: tuple[float, float]
    sensitisers: tuple[str, ...] = ()

    @property
    def m2_per_l(self) -> float:
        """Usual coverage. [m²/L]"""
        return m2_per_l_from_ft2_per_gal(self.ft2_per_gal[1])


ISOCYANATE, AMINE = "isocyanates", "epoxy amines"
BY_TYPE: dict[SealerType, Film] = {
    "water acrylic": Film("water", (5, 8, 12), (300, 400, 500), (3, 4.9)),
    "solvent acrylic": Film("solvent", (4, 7, 12), (300, 400, 500), (6, 10)),
    "water epoxy and urethane": Film(
        "water", (6, 10, 15), (250, 325, 400), (14, 18), (AMINE, ISOCYANATE)
    ),
    "epoxy": Film("cure", (10, 20, 30), (100, 150, 200), (14, 18), (AMINE,)),
    "penetrating": Film("water", (8, 15, 25), (100, 250, 400), (3, 6)),
    "floor finish": Film("water", (3, 5, 8), (1500, 2000, 2500), (0.75, 1.0)),
}
UNKNOWN = Film("water", (3, 5, 8), (250, 325, 400), (14, 18), (AMINE, ISOCYANATE))
"""Of every type the worst: the shortest edge, the longest wait, what could be in it."""


def film_of(sealer: Sealer) -> Film:
    """The film of the sealer's type, or the worst of all where no type is told."""
    return BY_TYPE[sealer.type] if sealer.type is not None else UNKNOWN


def has_solvent(sealer: Sealer) -> bool:
    """Whether it holds solvent: as its sheet says, else by type; a sealer nobody named may."""
    if sealer.solvent is not None:
        return sealer.solvent
    return sealer.type is None or film_of(sealer).base == "solvent"


def pace(sealer: Sealer, now: Conditions) -> float:
    """How much faster than on a mild day the edge goes off, 0.7 to 4.

    Water leaves as it evaporates [uno-1998]. Solvent and hardeners go twice as fast over a slab
    10 K warmer, solvent half as fast again for each 0.25 m/s of moving air: guesses.
    """
    base = "solvent" if has_solvent(sealer) and sealer.type is not None else film_of(sealer).base
    if base == "water":
        found = evaporating(now)
    else:
        found = float(2.0 ** ((now.surface_c - REFERENCE.surface_c) / 10))
        if base == "solvent":
            found *= (1 + 2 * now.air_speed_m_s) / (1 + 2 * REFERENCE.air_speed_m_s)
    return min(max(found, _SLOWEST), _QUICKEST)


def wet_edge(sealer: Sealer, now: Conditions) -> Span:
    """Minutes that an edge of this sealer stays wet enough to be laid into. [min]

    What its sheet tells holds as it stands on a mild day and slower ones, and is shortened on
    quicker ones; else the guess for its type, slowed or hurried.
    """
    quick = pace(sealer, now)
    told = sealer.wet_edge_min
    if told is not None:
        held = told / max(quick, 1.0)
        return Span(held, held, held, Rank.MEASURED, SHEET)
    low, likely, high = (minutes / quick for minutes in film_of(sealer).wet_edge_min)
    return Span(low, likely, high, Rank.GUESS, GUESS)
