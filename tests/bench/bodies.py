"""Where a body of 0.25 m radius gets on a floor: reckoned room by room, not by the planner."""

from __future__ import annotations

import shapely

from farwall.floor.nouns import Floor, Opening

HALF_PASSAGE_M = 0.279
"""No passage narrower than 0.56 m, less the chords of a drawn circle."""
AT_DOOR_M = 0.42
"""From the middle of an opening to the body: half a passage, half a wall, the play of a jamb."""


def dry_floor(floor: Floor, room: str) -> shapely.Polygon:
    """What is sprayed of a room."""
    dry = shapely.union_all([fixture.polygon.shape for fixture in floor.fixtures])
    return floor.room_by_id[room].polygon.shape.difference(dry)


def standing(floor: Floor, room: str) -> shapely.Geometry:
    """Where the middle of a body may be in a room whose openings are all shut."""
    return dry_floor(floor, room).buffer(-HALF_PASSAGE_M)


def middle(opening: Opening) -> shapely.Point:
    return shapely.LineString(opening.line).interpolate(0.5, normalized=True)


def reached_rooms(floor: Floor, exits: tuple[str, ...]) -> set[str]:
    """Rooms that a body reaches from outside through openings wide enough for it."""
    fits = [one for one in floor.openings if one.width_m >= 2 * HALF_PASSAGE_M]
    reached = {one.rooms[0] for one in fits if one.id in exits}
    while (
        more := {
            room
            for one in fits
            if one.kind != "outside" and set(one.rooms) & reached
            for room in one.rooms
        }
        - reached
    ):
        reached |= more
    return reached
