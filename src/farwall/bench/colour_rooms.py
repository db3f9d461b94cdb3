"""Invented houses that take colour: rooms of one slab that drink unlike each other. Frozen.

On the floors of `bench.colour_floors`, which stay as they are: every room has its own suction,
lime, shade and drying, the closet of the samples too. Rank of every figure: guess.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from farwall.bench.colour_floors import PATCHES, Floor, floor
from farwall.nouns import dataclass

ROOM_THIRST, ROOM_LIME, ROOM_SHADE, ROOM_DRYING = 0.16, 0.15, 0.035, 0.12
"""Spreads of a room against its house, as logarithms: how hard it was trowelled, how it cured."""


@dataclass(frozen=True)
class House:
    """Rooms of one slab with their areas, and the closet that holds the samples.

    thirst: of each room against its house, for telling which drinks most.
    """

    closet: Floor
    rooms: tuple[Floor, ...]
    area_m2: tuple[float, ...]
    thirst: tuple[float, ...]
    seed: int


def house(seed: int, *, stains: int = 1) -> House:
    """The house of that number, of three to six rooms; the same on every machine."""
    throws = np.random.Generator(np.random.PCG64([seed, 77]))
    slab = floor(seed, stains=stains)
    count = int(throws.integers(3, 7))
    made = [_room(slab, throws) for _ in range(count + 1)]
    return House(
        closet=made[0][0],
        rooms=tuple(one for one, _ in made[1:]),
        area_m2=tuple(float(one) for one in throws.uniform(6.0, 40.0, count)),
        thirst=tuple(thirst for _, thirst in made[1:]),
        seed=seed,
    )


def _room(slab: Floor, throws: np.random.Generator) -> tuple[Floor, float]:
    thirst = float(throws.lognormal(0.0, ROOM_THIRST))
    tight = throws.lognormal(0.0, 0.13, PATCHES)
    shade = throws.lognormal(0.0, ROOM_SHADE) * throws.lognormal(0.0, 0.06, PATCHES)
    middle = slab.bare.mean(axis=0)
    own = replace(
        slab,
        bare=np.clip(middle * shade[:, None], 0.08, 0.7),
        lime_mol=slab.lime_mol.mean() * throws.lognormal(0.0, ROOM_LIME) * tight**-0.6,
        sinks=np.clip(slab.sinks.mean() * tight, 0.0, 0.6),
        thirst=thirst * tight / tight.mean(),
        wet_min=slab.wet_min * float(throws.lognormal(0.0, ROOM_DRYING)),
    )
    return own, thirst
