"""A stranger's photo of a floor, looked at or laid on the plan by a process of its own."""

from __future__ import annotations

from typing import TYPE_CHECKING

from farwall.readers.apart.start import asked, broke

if TYPE_CHECKING:
    from collections.abc import Sequence

    from farwall.colour.marks.nouns import KnownEdge
    from farwall.readers.colour_photo.found import Values
    from farwall.readers.floor_photo.nouns import FloorLook, FloorSeen, Ground


def floor_look_of(content: bytes, *, name: str = "") -> FloorLook:
    """A photo of a floor as a page shows it. Raises Refused."""
    found = asked(content, name, None, "floor-look")
    from farwall.readers.floor_photo.nouns import FloorLook

    if not isinstance(found, FloorLook):
        raise broke("unsound answer")
    return found


def floor_seen_of(
    content: bytes,
    *,
    name: str = "",
    points: str,
    room: Ground,
    edges: Sequence[KnownEdge] = (),
    own_values: Values | None = None,
) -> FloorSeen:
    """A photo of a floor on the plan, with its marks; points: `px,py=x,y;…`. Raises Refused.

    edges: where bands of spraying met in the room, by the run sheet. own_values: Lab of the squares
    of the target among the points, as measured.
    """
    told = [[one.line, one.sd_m, one.coat, one.band] for one in edges]
    values = None if own_values is None else {key: list(lab) for key, lab in own_values.items()}
    also = {
        "points": points, "rings": room.rings, "dry": room.dry, "edges": told, "values": values,
    }  # fmt: skip
    found = asked(content, name, None, "floor", also)
    from farwall.readers.floor_photo.nouns import FloorSeen

    if not isinstance(found, FloorSeen):
        raise broke("unsound answer")
    return found
