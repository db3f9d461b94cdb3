"""Reads our own DXF exactly: from the extended data that the export put there.

Only what still stands as it was written is read so: a file that another program changed in its
unit, curved in its walls or broke into other entities is read as any drawing is.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.job.carried import Piece, collection_with, gone_since, told_in
from farwall.job.exchange import OWN, reading_of

if TYPE_CHECKING:
    from ezdxf.document import Drawing

Json = dict[str, Any]
APP = OWN.upper()
_METRES = 6


def own_reading(document: Drawing) -> Reading | None:
    """The floor of a drawing of ours, None when it is none or is no longer as it was written."""
    about = _about(document)
    if about is None or document.header.get("$INSUNITS") != _METRES:
        return None
    pieces = _pieces(document)
    if pieces is None:
        return None
    try:
        reading = reading_of(collection_with(pieces, about), format_name="DXF", header_unit="m")
    except Refused:
        return None
    return replace(reading, left=(*gone_since(pieces, about), *reading.left))


def _about(document: Drawing) -> Json | None:
    record = document.rootdict.get(APP)
    tags = getattr(record, "tags", None)
    if tags is None:
        return None
    return told_in("".join(str(tag.value) for tag in tags if tag.code == 1))


def _pieces(document: Drawing) -> list[Piece] | None:
    told: dict[int, Json] = {}
    rings: dict[int, dict[int, tuple[tuple[float, float], ...]]] = {}
    for own, drawn in _marked(document):
        line = _line(drawn)
        number, ring = (own.pop(key, None) for key in ("piece", "ring"))
        if not isinstance(number, int) or not isinstance(ring, int) or line is None:
            return None
        if ring in rings.setdefault(number, {}):  # copied in another program: two with one id
            return None
        rings[number][ring] = line
        if ring == 0:
            told[number] = own
    if set(told) != set(rings) or not told:
        return None
    pieces = []
    for number in sorted(told):
        closed = told[number].pop("closed", False) is True
        lines = tuple(rings[number][ring] for ring in sorted(rings[number]))
        if closed:
            lines = tuple((*line, line[0]) for line in lines)
        pieces.append(Piece(told[number], lines, closed))
    return pieces


def _marked(document: Drawing) -> Iterator[tuple[Json, Any]]:
    for drawn in document.modelspace():
        if drawn.has_xdata(APP):
            tags = drawn.get_xdata(APP)
            own = told_in("".join(str(tag.value) for tag in tags if tag.code == 1000))
            yield (own if own is not None else {}), drawn


def _line(drawn: Any) -> tuple[tuple[float, float], ...] | None:
    """The corners of a straight polyline that lies flat, None for anything else."""
    if drawn.dxftype() != "LWPOLYLINE" or tuple(drawn.dxf.extrusion) != (0.0, 0.0, 1.0):
        return None
    points = [(float(x), float(y), float(bulge)) for x, y, bulge in drawn.get_points("xyb")]
    if len(points) < 2 or any(bulge for _, _, bulge in points):
        return None
    return tuple((x, y) for x, y, _ in points)
