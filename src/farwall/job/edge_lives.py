"""How long edges live in a field, each where it lies: for a coat of stain and of sealer alike."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.settled import SettledCoat
from farwall.job.ground import rooms_of
from farwall.job.lasting import Lasting
from farwall.spray.lives import Lives
from farwall.spray.sweeps import Pieces
from farwall.spray.world import World


def lives_on(
    world: World, lasting: Lasting, coat: SettledCoat
) -> Callable[[Pieces, float, float], Lives]:
    """Gives the lives of edges in a field of some pieces, from one minute of the plan to another.

    The floor of each room is put together once for each field.
    """

    @cache
    def floors_of(pieces: Pieces) -> dict[str, BaseGeometry]:
        own = [world.pieces[name] for name in sorted(pieces)]
        return {
            room: shapely.union_all([piece.shape for piece in own if piece.room == room])
            for room in rooms_of(world, pieces)
        }

    def lives(pieces: Pieces, from_min: float, to_min: float) -> Lives:
        floors = floors_of(pieces)
        return Lives(lasting.open_times(tuple(floors), coat, from_min, to_min), floors)

    return lives
