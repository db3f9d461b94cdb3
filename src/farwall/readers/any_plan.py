"""Chooses the reader by what a file holds, not by what it is called."""

from __future__ import annotations

from dataclasses import replace
from importlib import import_module
from math import isfinite
from pathlib import Path

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Reading
from farwall.readers.asked_beside import asks_beside
from farwall.readers.hints import Hints, with_scale
from farwall.readers.kinds import (
    BEGIN_A_WALK,
    BLANKS,
    CAN_READ,
    HEAD_BYTES,
    KINDS,
    UNREAD,
    looks_walked,
)
from farwall.readers.last_look import looked_over
from farwall.readers.torn.notes import torn_notes
from farwall.readers.xml_text import root_name

_IFC_XML = {"ifcXML", "iso_10303_28", "uos"}


def read_plan(
    path: Path, *, scale_m_per_unit: float | None = None, hints: Hints | None = None
) -> Reading:
    """The floor in a file of any kind that can be read, read by a process of its own.

    `scale_m_per_unit` [m] is the user's own word for the drawing's unit; `hints` is all else.
    Raises Refused with what can be read, and OSError when there is no such file.
    """
    from farwall.readers.apart.start import read_file

    _check_scale(scale_m_per_unit)
    return read_file(path, hints=with_scale(hints, scale_m_per_unit))


def read_content(
    content: bytes, *, name: str = "", scale_m_per_unit: float | None = None,
    hints: Hints | None = None,
) -> Reading:  # fmt: skip
    """The floor in bytes that a stranger sent, read by a process of its own. Raises Refused."""
    from farwall.readers.apart import start

    _check_scale(scale_m_per_unit)
    return start.read_bytes(content, name=name, hints=with_scale(hints, scale_m_per_unit))


def read_bytes(
    data: bytes, *, name: str = "", scale_m_per_unit: float | None = None,
    hints: Hints | None = None,
) -> Reading:  # fmt: skip
    """The floor in the bytes of a file, read here and now, with no limit to what it costs.

    `name` only helps to word a refusal. What strangers send is for `read_plan` and `read_content`.
    """
    _check_scale(scale_m_per_unit)
    try:
        return reading_in(data, with_scale(hints, scale_m_per_unit))
    except Refused as refusal:
        raise Refused(*refusal.mistakes, about=refusal.about or _about(name)) from refusal


def reading_in(data: bytes, hints: Hints) -> Reading:
    """The floor in the bytes, by the first reader that knows their kind. Raises Refused."""
    head = data[:HEAD_BYTES].lstrip(BLANKS)
    if not head:
        raise Refused(Mistake("", "The file is empty.", CAN_READ))
    for unread in UNREAD:
        if unread.fits(head):
            raise Refused(Mistake("", f"This is {unread.name}.", f"{unread.remedy} {CAN_READ}"))
    for kind in KINDS:
        if kind.fits(data):
            read = getattr(import_module(kind.module), kind.reader)
            told = {"hints": hints} if kind.hinted else {"scale_m_per_unit": hints.scale_m_per_unit}
            reading: Reading = read(data, **told)
            reading = looked_over(reading, torn_notes(data, reading.format))
            return replace(reading, asks=(*reading.asks, *asks_beside(reading)))
    if root_name(data) in _IFC_XML:
        what, remedy = "This is IFC in XML.", "Save the model as a plain .ifc file."
        raise Refused(Mistake("", what, f"{remedy} {CAN_READ}"))
    if head.startswith(b"<"):
        raise Refused(Mistake("", "This is a web or XML file.", f"Ask for DXF. {CAN_READ}"))
    if looks_walked(data):
        what = "Walls seem to be told here in words, but the first line does not say so."
        raise Refused(Mistake("", what, BEGIN_A_WALK))
    raise Refused(Mistake("", "This is no plan that is known here.", CAN_READ))


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
