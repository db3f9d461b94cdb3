"""How much of a field's front falls on each of its rooms."""

from __future__ import annotations

import numpy as np

from farwall.spray.front import Front
from farwall.spray.fronts import FieldGround


def room_parts(field: FieldGround, front: Front) -> dict[str, float]:
    """Of each room its steepest place over that of the whole field, 0 to 1, by room id.

    A room where the front is as long as anywhere has 1. A pair of places that lies across an
    opening counts for both rooms.
    """
    rooms = [field.world.pieces[name].room for name in field.pieces]
    if len(set(rooms)) == 1:
        return {rooms[0]: 1.0}
    ball = field.ground.ball
    span = np.abs(front.before_m2[ball.there] - front.before_m2[:, None])
    steep = (span / np.maximum(ball.away_m, ball.depth_m)).max(axis=1)
    whole = max(float(steep.max()), 1e-9)
    parts = dict.fromkeys(rooms, 0.0)
    for number, room in enumerate(rooms):
        own = steep[field.ground.lattice.owner == number]
        parts[room] = max(parts[room], float(own.max(initial=0.0)) / whole)
    return parts
