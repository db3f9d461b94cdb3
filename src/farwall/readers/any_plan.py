"""Chooses the reader by what a file holds, not by what it is called."""

from __future__ import annotations

from dataclasses import dataclass
from math import isfinite
from pathlib import Path

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Reading

CAN_READ = "DXF drawings and GeoJSON floors can be read."
_HEAD_BYTES = 4096


@dataclass(frozen=True)
class _Kind:
    """A format that is known by its first bytes but not read, and what to do about it."""

    name: str
    remedy: str


_KNOWN: tuple[tuple[bytes, _Kind], ...] = (
    (b"AC10", _Kind("a DWG drawing", "Save it as DXF in the program it was drawn with.")),
    (b"%PDF", _Kind("a PDF", "Ask for the drawing as DXF.")),
    (b"ISO-10303-21", _Kind("an IFC or STEP model", "Export the floor plan as DXF.")),
    (b"\x89PNG", _Kind("a picture", "Ask for the drawing as DXF.")),
    (b"\xff\xd8\xff", _Kind("a picture", "Ask for the drawing as DXF.")),
    (b"GIF8", _Kind("a picture", "Ask for the drawing as DXF.")),
    (b"PK\x03\x04", _Kind("a zip archive", "Unpack it and hand over the drawing itself.")),
    (b"\x1f\x8b", _Kind("a compressed file", "Unpack it and hand over the drawing itself.")),
)


def read_plan(path: Path, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floor in a file of any kind that can be read.

    `scale_m_per_unit` [m] is the user's own word for the drawing's unit.
    Raises Refused with what can be read, and OSError when there is no such file.
    """
    return read_bytes(path.read_bytes(), name=path.name, scale_m_per_unit=scale_m_per_unit)


def read_bytes(data: bytes, *, name: str = "", scale_m_per_unit: float | None = None) -> Reading:
    """The floor in the bytes of a file; `name` only helps to word a refusal."""
    _check_scale(scale_m_per_unit)
    try:
        return _read(data, scale_m_per_unit)
    except Refused as refusal:
        raise Refused(*refusal.mistakes, about=refusal.about or _about(name)) from refusal


def _read(data: bytes, scale_m_per_unit: float | None) -> Reading:
    head = data[:_HEAD_BYTES].lstrip(b"\xef\xbb\xbf \t\r\n")
    if not head:
        raise Refused(Mistake("", "The file is empty.", CAN_READ))
    for mark, kind in _KNOWN:
        if head.startswith(mark):
            raise Refused(Mistake("", f"This is {kind.name}.", f"{kind.remedy} {CAN_READ}"))
    if head.startswith((b"{", b"[")):
        from farwall.readers.geojson import read_geojson

        return read_geojson(data, scale_m_per_unit=scale_m_per_unit)
    if head.startswith(b"<"):
        raise Refused(Mistake("", "This is a web, SVG or XML file.", f"Ask for DXF. {CAN_READ}"))
    if _looks_like_dxf(data):
        from farwall.readers.dxf.read import read_dxf

        return read_dxf(data, scale_m_per_unit=scale_m_per_unit)
    raise Refused(Mistake("", "This is no plan that is known here.", CAN_READ))


def _looks_like_dxf(data: bytes) -> bool:
    if data.startswith(b"AutoCAD Binary DXF"):
        return True
    return b"SECTION" in data and (b"ENTITIES" in data or b"HEADER" in data or b"BLOCKS" in data)


def _check_scale(scale_m_per_unit: float | None) -> None:
    if scale_m_per_unit is None:
        return
    if not isfinite(scale_m_per_unit) or not 1e-6 <= scale_m_per_unit <= 1000:
        raise Refused(
            Mistake(
                "--scale",
                f"{scale_m_per_unit:g} metres a drawing unit cannot be.",
                "Inches are 0.0254, feet 0.3048, millimetres 0.001.",
            )
        )


def _about(name: str) -> str:
    return f"{name} was not read." if name else "The file was not read."
