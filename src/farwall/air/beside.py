"""What is read beside a watched strip and again beside the coat: moving air, a wetted tile, litres.

A wait seen at one hour is carried to another by the ratio of paces, of which half is believed
(`waits.carried`): air is one figure for a day, and no relation was made for a stain. Readings at
both hours make the ratio surer, and then one occasion differs less from the next:

- *moving air*: a cheap vane, or a strip of tissue held over the floor (`TISSUE`);
- *a wetted tile*, weighed twice half an hour apart: what left it is the drying of that hour itself,
  with sun, slab and gusts in it;
- *litres counted*: the coverage of strip and of coat, from the tank's own litres.

The powers and spreads were set on the tuning half of the bench's invented floors and are
reported on the rest (docs/clocks-tried.md). That slabs are like those floors is a guess.
"""

from __future__ import annotations

from dataclasses import replace

from farwall.air.waits import Wait, carried
from farwall.nouns import dataclass

VANE_ERROR, TISSUE_ERROR, TILE_ERROR, LITRES_ERROR = 0.15, 0.35, 0.07, 0.07
"""One standard deviation of the logarithm of each reading. Rank: guess."""
TISSUE: tuple[tuple[str, float], ...] = (
    ("hangs straight", 0.05),
    ("stirs", 0.15),
    ("leans", 0.3),
    ("flutters", 0.6),
    ("streams", 1.2),
)
"""A strip of tissue a hand long, held a hand over the floor: what it does, air in m/s. Rank: guess
(no source); half as much again either way."""

_AIR_POWER = 0.65
_TILE_PACE, _TILE_POWER = 0.75, 0.65
_FILM_POWER = 0.7
_OCCASION = {"air": 0.95, "tile": 0.8, "film": 0.93, "tile film": 0.58}


@dataclass(frozen=True)
class Beside:
    """Readings at the watching and at the coat; None where one of the two is missing.

    air: both were read · tile_seen, tile_asked: kg/m²h that a wetted tile lost ·
    film_ratio: depth of the coat over that of the strip, both by litres counted.
    """

    air: bool = False
    tile_seen: float | None = None
    tile_asked: float | None = None
    film_ratio: float | None = None

    @property
    def tile(self) -> bool:
        """Whether a tile was weighed at both hours, and lost something."""
        return bool(self.tile_seen and self.tile_asked)


NOTHING = Beside()


def carried_beside(
    wait: Wait, share: float, *, pace_seen: float, pace_asked: float, beside: Beside
) -> float:
    """A share of the usual wait seen there, as it is expected here, by all that was read.

    Laws: a tile that loses more here than there makes the wait shorter, a thicker coat longer;
    without readings it is `waits.carried`.
    """
    if beside.tile and pace_seen > 0 and pace_asked > 0:
        assert beside.tile_seen is not None
        assert beside.tile_asked is not None
        share *= float((pace_asked / pace_seen) ** _TILE_PACE)
        share *= float((beside.tile_seen / beside.tile_asked) ** _TILE_POWER)
    else:
        power = wait.carried * (_AIR_POWER if beside.air else 1.0)
        share = carried(
            replace(wait, carried=power), share, pace_seen=pace_seen, pace_asked=pace_asked
        )
    if beside.film_ratio and wait.by_film:
        share *= float(beside.film_ratio**_FILM_POWER)
    return share


def spread_beside(wait: Wait, beside: Beside) -> Wait:
    """The wait with what one occasion differs from the next by, after these readings."""
    film = bool(beside.film_ratio) and wait.by_film
    kind = " ".join(
        [*(["tile"] if beside.tile else ["air"] if beside.air else []), *(["film"] if film else [])]
    )
    part = _OCCASION.get(kind, _OCCASION["air"] * _OCCASION["film"] if film else 1.0)
    return replace(wait, spread=replace(wait.spread, occasion=wait.spread.occasion * part))
