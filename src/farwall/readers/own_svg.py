"""Reads our own SVG exactly: from the paths and the attribute that the export gave each of them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from importlib import import_module
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Reading
from farwall.job.carried import Piece, collection_with, gone_since, told_in
from farwall.job.exchange import OWN, reading_of

Json = dict[str, Any]
Line = tuple[tuple[float, float], ...]
MARK = f"data-{OWN}"
_NUMBER = r"-?\d+(?:\.\d+)?(?:e-?\d+)?"
_POINT = re.compile(rf"({_NUMBER}),({_NUMBER})")
_LINE = re.compile(rf"M{_NUMBER},{_NUMBER}(?: {_NUMBER},{_NUMBER})+Z?")
_PATH = re.compile(rf"{_LINE.pattern}(?: {_LINE.pattern})*")
_AGAIN = "Export the floor again, or bring it as GeoJSON or DXF."


def read_own_svg(data: bytes, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floor in an SVG that was exported here; one unit is a metre, and no other scale is taken.

    Raises Refused when it is no XML, or when another program wrote its paths anew.
    """
    if scale_m_per_unit not in (None, 1.0):
        what = "This SVG was exported here, and one unit of it is a metre."
        raise Refused(Mistake("--scale", what, "Leave the scale out."))
    root = _root(data)
    about = told_in(root.get(MARK, ""))
    if about is None:
        raise _changed("its own words for the whole floor are gone")
    placed = sorted((_piece(path) for path in _marked(root)), key=lambda one: one[0])
    pieces = [piece for _, piece in placed]
    reading = reading_of(collection_with(pieces, about), format_name="SVG", header_unit="m")
    return replace(reading, left=(*gone_since(pieces, about), *reading.left))


def _root(data: bytes) -> Any:
    from xml.etree.ElementTree import ParseError

    safe: Any = import_module("defusedxml.ElementTree")
    try:
        return safe.fromstring(data)
    except ParseError as error:
        line, column = error.position
        where = f"line {line}, column {column + 1}"
        raise Refused(Mistake(where, "this is no sound XML.", _AGAIN)) from error
    except (ValueError, LookupError) as error:  # entities, outside or growing, are such too
        what = "It names entities or an encoding that are not opened here."
        raise Refused(Mistake("", what, _AGAIN)) from error


def _marked(root: Any) -> Iterator[Any]:
    found = root.iter()
    next(found)  # the root itself
    return (one for one in found if one.get(MARK) is not None)


def _piece(path: Any) -> tuple[int, Piece]:
    """A piece and its place in the collection."""
    told = told_in(path.get(MARK, ""))
    if told is None:
        raise _changed("a path's own words are gone")
    data = path.get("d", "")
    if path.get("transform") is not None or not _PATH.fullmatch(data):
        raise _changed(f"the path of {told.get('kind')} {told.get('id', '')}".rstrip())
    place, closed = told.pop("piece", None), told.pop("closed", False) is True
    if not isinstance(place, int):
        raise _changed("a path's own words are spoilt")
    lines = tuple(_line(part, closed=closed) for part in _LINE.findall(data))
    return place, Piece(told, lines, closed)


def _line(data: str, *, closed: bool) -> Line:
    points = tuple((float(x), float(y)) for x, y in _POINT.findall(data))
    return (*points, points[0]) if closed else points


def _changed(what: str) -> Refused:
    return Refused(Mistake("", f"This SVG was exported here and then changed: {what}.", _AGAIN))
