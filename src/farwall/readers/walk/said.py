"""Lengths as they stand on a tape, and places of a walk in words."""

from __future__ import annotations

from farwall.floor.walk.net import Row
from farwall.floor.walk.nouns import Walk
from farwall.units import M_PER_IN

_EIGHTHS = ("", " 1/8", " 1/4", " 3/8", " 1/2", " 5/8", " 3/4", " 7/8")


def tape_text(length_m: float, *, us: bool) -> str:
    """A length as read on the tape: `12' 6 1/2"` to the eighth of an inch, or `3.823 m`."""
    if not us:
        return f"{length_m:.3f} m"
    eighths = round(abs(length_m) / M_PER_IN * 8)
    feet, rest = divmod(eighths, 96)
    inches, part = divmod(rest, 8)
    sign = "-" if length_m < 0 and eighths else ""
    return f"{sign}{feet}' {inches}{_EIGHTHS[part]}\""


def small_text(length_m: float, *, us: bool) -> str:
    """A short length: inches to the eighth, or millimetres."""
    if not us:
        return f"{abs(length_m) * 1000:.0f} mm"
    eighths = round(abs(length_m) / M_PER_IN * 8)
    inches, part = divmod(eighths, 8)
    if not part:
        return f"{inches} in"
    return f"{f'{inches}' if inches else ''}{_EIGHTHS[part]} in".strip()


def added_text(length_m: float, *, us: bool) -> str:
    """What is added to a wall, with its sign; 0 where the tape would not show it."""
    words = small_text(length_m, us=us)
    if words in {"0 in", "0 mm"}:
        return "0"
    return f"{'+' if length_m > 0 else '−'}{words}"


def row_words(walk: Walk, row: Row) -> str:
    """What a reading is, in words: `wall 2 of Kitchen`. Numbers from 1."""
    room = walk.rooms[row.room]
    if row.kind == "wall":
        return f"wall {row.wall + 1} of {room.name}"
    if row.kind == "diagonal":
        return f"diagonal {row.wall + 1} to {row.other + 1} of {room.name}"
    if row.kind == "across":
        return f"the width between walls {row.wall + 1} and {row.other + 1} of {room.name}"
    if row.kind == "square":
        return f"the direction of wall {row.wall + 1} of {room.name}"
    way = room.ways[row.wall] if row.wall < len(room.ways) else None
    to = f"to {way.to}" if way is not None and way.to else "to outside"
    what = {
        "at": "the place of the opening", "width": "the width of the opening",
        "rest": "what is left beyond the opening", "depth": "the depth of the wall at the opening",
    }[row.kind]  # fmt: skip
    return f"{what} {to} in {room.name}"
