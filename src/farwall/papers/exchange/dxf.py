"""A floor as DXF: a layer to a kind, metres, ids and all that is told in extended data.

Every piece is a polyline with extended data of the application FARWALL; what is told of the whole
floor stands in a record of that name. A drawing program that keeps extended data, as the format
asks, gives the floor back. The same floor gives the same bytes.
"""

from __future__ import annotations

import io
import threading
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from importlib import import_module
from math import cos, radians, sin
from typing import TYPE_CHECKING, Any

from farwall.floor.geometry import Point
from farwall.job.carried import Piece, about_of, pieces_of, words_of
from farwall.job.exchange import OWN
from farwall.papers.exchange.layers import (
    LAYERS,
    NAMES,
    NORTH,
    dry_of,
    layer_name,
    name_spot,
    storeys_of,
)
from farwall.papers.svg import plain

if TYPE_CHECKING:
    from ezdxf.document import Drawing

_APP = OWN.upper()
_VERSION = "R2010"
_METRES = 6
_CHUNK = 240
"""Letters in one string of extended data: the format allows 255 bytes."""
_LETTER_M = 0.2
_ARROW_M = 1.0
_LOCK = threading.Lock()
"""The library keeps its choice of fixed dates for the whole process."""


def dxf_bytes(collection: Mapping[str, Any]) -> bytes:
    """The collection as a DXF file of AC1024, metres, in UTF-8."""
    from ezdxf.filemanagement import new

    with _fixed_dates():
        document = new(_VERSION, setup=["linetypes"], units=_METRES)
        document.appids.add(_APP)
        _tell_whole(document, about_of(collection))
        _draw(document, list(pieces_of(collection)))
        _draw_north(document, collection)
        text = io.StringIO(newline="")
        document.write(text)
    return text.getvalue().encode("utf-8", "replace")


@contextmanager
def _fixed_dates() -> Iterator[None]:
    """No date and no chance number in the file: who wrote it when is told by whoever sends it."""
    options: Any = import_module("ezdxf").options
    with _LOCK:
        before = options.write_fixed_meta_data_for_testing
        options.write_fixed_meta_data_for_testing = True
        try:
            yield
        finally:
            options.write_fixed_meta_data_for_testing = before


def _chunks(told: Mapping[str, Any]) -> list[str]:
    words = words_of(told)
    return [words[start : start + _CHUNK] for start in range(0, len(words), _CHUNK)]


def _tell_whole(document: Drawing, about: Mapping[str, Any]) -> None:
    record = document.rootdict.add_xrecord(_APP)
    record.reset([(1, chunk) for chunk in _chunks(about)])


def _draw(document: Drawing, pieces: Sequence[Piece]) -> None:
    space, dry = document.modelspace(), dry_of(pieces)
    placed = list(zip(range(len(pieces)), pieces, storeys_of(pieces), strict=True))
    for kind, layer in LAYERS.items():
        for number, piece, storey in placed:
            if piece.kind != kind:
                continue
            name = layer_name(kind, storey)
            if name not in document.layers:
                document.layers.add(name, color=layer.aci, linetype=layer.linetype)
            told = {"piece": number, "closed": piece.closed, **piece.properties}
            for ring, line in enumerate(piece.lines):
                points = line[:-1] if piece.closed else line
                drawn = space.add_lwpolyline(points, close=piece.closed, dxfattribs={"layer": name})
                own = {**told, "ring": 0} if ring == 0 else {"piece": number, "ring": ring}
                drawn.set_xdata(_APP, [(1000, chunk) for chunk in _chunks(own)])
            if kind == "room":
                _letter(document, piece, name_spot(piece, dry))


def _letter(document: Drawing, piece: Piece, spot: Point) -> None:
    """The room's name at a place; only to be seen, for what is read back stands elsewhere."""
    from ezdxf.enums import TextEntityAlignment

    name = " ".join(plain(str(piece.properties.get("name") or piece.properties["id"])).split())
    if NAMES not in document.layers:
        document.layers.add(NAMES, color=2)
    text = name.replace("%%", "% %").replace("^", "")[:200]
    lettered = document.modelspace().add_text(text, height=_LETTER_M, dxfattribs={"layer": NAMES})
    lettered.set_placement(spot, align=TextEntityAlignment.MIDDLE_CENTER)


def _draw_north(document: Drawing, collection: Mapping[str, Any]) -> None:
    """An arrow to the north, right of the floor; degrees count clockwise from up."""
    north = collection.get("north_deg")
    if north is None:
        return
    document.layers.add(NORTH, color=2)
    points = [p for piece in pieces_of(collection) for line in piece.lines for p in line]
    foot = (max(x for x, _ in points) + 2 * _ARROW_M, min(y for _, y in points))
    for line in _arrow(foot, float(north)):
        document.modelspace().add_lwpolyline(line, dxfattribs={"layer": NORTH})


def _arrow(foot: Point, north_deg: float) -> list[list[Point]]:
    turn = radians(north_deg)

    def at(right: float, ahead: float) -> Point:
        x = foot[0] + right * cos(turn) + ahead * sin(turn)
        return x, foot[1] - right * sin(turn) + ahead * cos(turn)

    head, wing = _ARROW_M, _ARROW_M / 5
    return [
        [foot, at(0.0, head)],
        [at(-wing, head - wing), at(0.0, head), at(wing, head - wing)],
    ]
