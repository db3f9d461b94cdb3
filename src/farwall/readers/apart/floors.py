"""A photo of a floor, in the process that reads it: made fit for a page, or laid on the plan."""

from __future__ import annotations

from functools import partial
from typing import Any

from farwall.readers.apart import wire
from farwall.readers.floor_photo.nouns import Ground
from farwall.readers.floor_photo.seen import floor_look, floor_seen, points_from


def floor_text(data: bytes, also: Any) -> bytes:
    """The answer; also: None for the look alone, else points, rings of the room, edges and values.

    Raises Refused.
    """
    if also is None:
        return wire.floor_text(floor_look(data))
    from farwall.colour.marks.find import marks_in
    from farwall.colour.marks.nouns import KnownEdge

    edges = [
        KnownEdge(_ring(line), float(sd_m), int(coat), int(band))
        for line, sd_m, coat, band in also["edges"]
    ]
    room = Ground(_rings(also["rings"]), tuple(_rings(one) for one in also["dry"]))
    pairs, target = points_from(str(also["points"]))
    found = floor_seen(
        data, pairs, room, partial(marks_in, edges=edges), target, own_values=also["values"]
    )
    return wire.floor_text(found)


def _rings(told: Any) -> tuple[tuple[tuple[float, float], ...], ...]:
    return tuple(_ring(ring) for ring in told)


def _ring(told: Any) -> tuple[tuple[float, float], ...]:
    return tuple((float(x), float(y)) for x, y in told)
