"""The kinds of plan files, each known by what it holds, with the reader that opens it.

Asked from the top: the first kind that fits reads the file. A reader is a function of the bytes and
of `scale_m_per_unit`, the user's own word for the drawing's unit [m], and gives a Reading.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from farwall.nouns import dataclass
from farwall.readers.photo.kinds import is_heic, is_jpeg, is_png
from farwall.readers.xml_text import root_name

HEAD_BYTES = 4096
_MARKED_BYTES = 16
_AS_PICTURE = "Open it and save or export it as JPEG or PNG, or take a photo of the plan."
BLANKS = b"\xef\xbb\xbf \t\r\n"


@dataclass(frozen=True)
class Kind:
    """A format that is read: `reader` is a function of `module`, imported when it is wanted."""

    name: str
    fits: Callable[[bytes], bool]
    module: str
    reader: str
    hinted: bool = False
    """Whether it takes all that a person tells (`hints`), and not the scale alone."""


@dataclass(frozen=True)
class Unread:
    """A format that is known by its first bytes but not read, and what to do about it."""

    mark: bytes
    name: str
    remedy: str
    then: bytes = b""
    """What else stands in its head, where the mark alone would not tell."""

    def fits(self, start: bytes) -> bool:
        """Whether a file that begins so is one."""
        return start.startswith(self.mark) and self.then in start[:_MARKED_BYTES]


def head(data: bytes) -> bytes:
    """The first bytes of a file, without byte order mark and blanks."""
    return data[:HEAD_BYTES].lstrip(BLANKS)


def _is_dxf(data: bytes) -> bool:
    if data.startswith(b"AutoCAD Binary DXF"):
        return True
    return b"SECTION" in data and (b"ENTITIES" in data or b"HEADER" in data or b"BLOCKS" in data)


def _is_json(data: bytes) -> bool:
    return head(data).startswith((b"{", b"["))


_WALK = re.compile(rb'(?i)(?:walk|recorrido)\b|\{\s*"walk"\s*:')


def _is_walk(data: bytes) -> bool:
    """The word `walk` first, or JSON whose first key it is."""
    return _WALK.match(head(data)) is not None


_ROOM = re.compile(rb"(?im)^[ \t]*(?:room|cuarto)\b")
BEGIN_A_WALK = (
    'Write "walk, tape in metres" (or in feet) above it; then each room, as "room Garage", and '
    'below it its walls in order, as "6.2, right, 5.8, right, 6.2, right, 5.8".'
)
"""How a walk is begun, for whoever wrote one without its first line."""


def looks_walked(data: bytes) -> bool:
    """Whether a text names rooms line by line, as a walk does, but is not called one."""
    start = head(data)
    return b"\0" not in start and _ROOM.search(start) is not None


def _is_step(data: bytes) -> bool:
    return head(data).startswith(b"ISO-10303-21")


def _is_pdf(data: bytes) -> bool:
    return b"%PDF-" in data[:1024]


def _has_root(name: str) -> Callable[[bytes], bool]:
    return lambda data: root_name(data) == name


def _is_own_svg(data: bytes) -> bool:
    return head(data).startswith(b"<") and b"data-farwall=" in head(data)


KINDS: tuple[Kind, ...] = (
    Kind("walk", _is_walk, "farwall.readers.walk.read", "read_walk"),
    Kind("IFC", _is_step, "farwall.readers.ifc.read", "read_ifc"),
    Kind("SVG", _is_own_svg, "farwall.readers.own_svg", "read_own_svg"),
    Kind("SVG", _has_root("svg"), "farwall.readers.svg.read", "read_svg"),
    Kind("PDF", _is_pdf, "farwall.readers.pdf.read", "read_pdf", hinted=True),
    Kind("GeoJSON", _is_json, "farwall.readers.geojson", "read_geojson"),
    Kind("gbXML", _has_root("gbXML"), "farwall.readers.gbxml.read", "read_gbxml", hinted=True),
    Kind(
        "IndoorGML", _has_root("IndoorFeatures"), "farwall.readers.indoorgml.read", "read_indoorgml"
    ),
    Kind("PNG", is_png, "farwall.readers.photo.read", "read_photo", hinted=True),
    Kind("JPEG", is_jpeg, "farwall.readers.photo.read", "read_photo", hinted=True),
    Kind("HEIC", is_heic, "farwall.readers.photo.read", "read_photo", hinted=True),
    Kind("DXF", _is_dxf, "farwall.readers.dxf.read", "read_dxf"),
)
UNREAD: tuple[Unread, ...] = (
    Unread(b"AC10", "a DWG drawing", "Save it as DXF in the program it was drawn with."),
    Unread(b"GIF8", "a GIF picture", _AS_PICTURE),
    Unread(b"RIFF", "a WebP picture", _AS_PICTURE, then=b"WEBP"),
    Unread(b"II*\x00", "a TIFF picture or scan", _AS_PICTURE),
    Unread(b"MM\x00*", "a TIFF picture or scan", _AS_PICTURE),
    Unread(b"BM", "a BMP picture", _AS_PICTURE, then=b"\x00\x00"),
    Unread(b"PK\x03\x04", "a zip archive", "Unpack it (.ifczip too) and hand over what is in it."),
    Unread(b"\x1f\x8b", "a compressed file", "Unpack it and hand over the drawing itself."),
)
CAN_READ = f"What can be read: {', '.join(sorted({kind.name for kind in KINDS}))}."
