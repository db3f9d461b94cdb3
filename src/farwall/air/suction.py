"""What the slab drinks: a simple uptake from the drop test. Our own first form, a guess.

A coat loses its sheen when suction and evaporation together have taken the
film: suction caps evaporation, and usually ends open time long before it.

The model. Uptake is steady, `q` [mm/min], and goes as one over the seconds a
drop takes. Why steady: what common practice says of open time holds for coats
of 120 to 450 ft²/gal alike; a steady uptake spreads those coats over a factor
of four, which its range covers, while the square-root law of open concrete
(i = S·√t, Hall 1989, for bulk concrete under free water) would spread them
over fourteen. A trowelled skin that lets liquid through slowly onto thirstier
concrete behaves steadily. The size of `q` is not derived at all: it is set in
`air.clocks` so that a normal trowel on a mild day gives what practice says.

Cold stain is thicker and is drunk slower, as surface tension over viscosity.
Whether a drop was timed on a warm or a cold slab is rarely written down, so
the safe end of a clock takes no comfort from cold.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from farwall.evidence import Known, Rank
from farwall.facts import default_table as table

if TYPE_CHECKING:  # its nouns load shapely, which a single sum can do without
    from farwall.facts.job import Finish

REFERENCE_DROP_S = table.DROP_S.usual
"""Drop seconds of the normal trowel that common practice speaks of (scale: 5-20 s is good)."""

FINISH_DROP_S: dict[Finish, float] = {
    "hard trowel": 25.0,
    "trowel": REFERENCE_DROP_S,
    "float": 6.0,
    "broom": 4.0,
}
"""Drop seconds taken when no drop was tried: our guess, after "open float finish takes more,
hard trowel less" (trade press)."""

_SHORTEST_DROP_S = 0.5
"""Shorter than a person can time."""


def drop_seconds(*, drop_s: float | None, finish: Finish | None) -> Known:
    """Seconds a drop takes: as timed, else by the finish, else a normal trowel. [s]"""
    if drop_s is not None:
        return Known(max(drop_s, _SHORTEST_DROP_S), "s", Rank.MEASURED, "drop test")
    if finish is not None:
        return Known(FINISH_DROP_S[finish], "s", Rank.GUESS, "house-guess")
    return Known(REFERENCE_DROP_S, "s", Rank.PRACTICE, "common-practice")


def thirst(*, drop_s: float) -> float:
    """How fast the slab drinks against the normal trowel: 1 at its drop seconds, 2 at half."""
    return REFERENCE_DROP_S / drop_s


def warmth(*, surface_c: float) -> float:
    """How fast a slab drinks at this temperature against 21 °C: below 1 when colder.

    Surface tension over viscosity of water: 75.7 - 0.15·t mN/m, and
    2.414e-5·10^(247.8/(T - 140)) Pa·s with T in kelvin, both from memory,
    good to about 3 % from 0 to 50 °C. Stain is not water: a guess.
    """
    return _fluidity(surface_c) / _fluidity(table.SLAB_C.usual)


def _fluidity(temperature_c: float) -> float:
    viscosity_pa_s = 2.414e-5 * 10 ** (247.8 / (temperature_c + 273.15 - 140.0))
    return (75.7 - 0.15 * temperature_c) * 1e-3 / viscosity_pa_s
