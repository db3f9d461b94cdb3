"""From the bytes of a DXF to a reading: load, gather, and read the sheet."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from farwall.facts.reading import Note, Reading
from farwall.readers.dxf.bulk import OWN
from farwall.readers.dxf.gather import gather
from farwall.readers.dxf.load import load
from farwall.readers.lines.read import read_sheet

if TYPE_CHECKING:
    from ezdxf.document import Drawing


def read_dxf(data: bytes, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floor in a DXF file.

    `scale_m_per_unit` [m] overrules what the file says and shows of its unit.
    A reading without rooms means that no floor is in the file. Raises Refused
    when the bytes cannot be opened as a drawing. What was exported here is read exactly.
    """
    document, bulk, repairs = load(data)
    own = _own(document) if scale_m_per_unit is None and OWN in data else None
    if own is not None:
        recovered = tuple(Note("recovered", words) for words in repairs)
        return replace(own, mended=(*recovered, *own.mended))
    return read_sheet(gather(document, bulk, repairs), scale_m_per_unit=scale_m_per_unit)


def _own(document: Drawing) -> Reading | None:
    from farwall.readers.own_dxf import own_reading  # it brings the nouns of whole jobs with it

    return own_reading(document)
