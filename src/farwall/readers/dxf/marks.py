"""What a drawing's header tells of itself: its unit, the way it letters lengths, north."""

from __future__ import annotations

from math import atan2, degrees
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ezdxf.document import Drawing


def header_code(document: Drawing) -> int:
    """The header's code for its unit; 0 where it names none."""
    try:
        return int(document.header.get("$INSUNITS", 0))
    except (TypeError, ValueError):
        return 0


def inch_letters(document: Drawing) -> bool:
    """Engineering and architectural lettering takes one unit for one inch by definition."""
    try:
        return int(document.header.get("$LUNITS", 2)) in {3, 4}
    except (TypeError, ValueError):
        return False


def north_deg(document: Drawing) -> float | None:
    """Degrees clockwise from the sheet's up to north, or None."""
    try:
        data = document.modelspace().get_geodata()
        if data is None:
            return None
        east, north = (float(v) for v in data.dxf.north_direction[:2])
    except Exception:  # no north is better than a wrong one
        return None
    return round(degrees(atan2(east, north)) % 360.0, 3) if (east or north) else None
