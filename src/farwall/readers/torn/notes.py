"""What is torn in a file that was read all the same, so that nothing is missing in silence."""

from __future__ import annotations

from collections.abc import Callable

from farwall.facts.reading import Note
from farwall.readers.torn.packed import torn_pdf
from farwall.readers.torn.step import torn_step
from farwall.readers.torn.tagged import torn_dxf

_LOOKS: dict[str, Callable[[bytes], list[str]]] = {
    "DXF": torn_dxf,
    "IFC": torn_step,
    "PDF": torn_pdf,
}


def torn_notes(data: bytes, format_name: str) -> tuple[Note, ...]:
    """A note for each way in which the file is not whole; none for formats that are judged."""
    look = _LOOKS.get(format_name)
    return tuple(Note("torn", what) for what in look(data)) if look else ()
