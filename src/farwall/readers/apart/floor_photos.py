"""A stranger's photo of a floor, looked at or laid on the plan by a process of its own."""

from __future__ import annotations

from typing import TYPE_CHECKING

from farwall.readers.apart.start import asked, broke

if TYPE_CHECKING:
    from farwall.readers.floor_photo.nouns import FloorLook, FloorSeen, Ground


def floor_look_of(content: bytes, *, name: str = "") -> FloorLook:
    """A photo of a floor as a page shows it. Raises Refused."""
    found = asked(content, name, None, "floor-look")
    from farwall.readers.floor_photo.nouns import FloorLook

    if not isinstance(found, FloorLook):
        raise broke("unsound answer")
    return found


def floor_seen_of(content: bytes, *, name: str = "", points: str, room: Ground) -> FloorSeen:
    """A photo of a floor on the plan, with its marks; points: `px,py=x,y;…`. Raises Refused."""
    also = {"points": points, "rings": room.rings, "dry": room.dry}
    found = asked(content, name, None, "floor", also)
    from farwall.readers.floor_photo.nouns import FloorSeen

    if not isinstance(found, FloorSeen):
        raise broke("unsound answer")
    return found
