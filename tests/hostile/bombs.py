"""Files that somebody made to do harm, each by its name."""

import io
import struct
import zlib
from collections.abc import Callable
from dataclasses import dataclass

from tests.hostile.models import ifc
from tests.hostile.seeds import pdf_from, pdf_of

_SVG = (
    b'<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"'
    b' viewBox="0 0 100 100">'
)
_GBXML = b'<gbXML xmlns="http://www.gbxml.org/schema" lengthUnit="Meters"><Campus id="c">'
_GML = (
    b'<IndoorFeatures xmlns="http://www.opengis.net/indoorgml/1.0/core"'
    b' xmlns:gml="http://www.opengis.net/gml/3.2">'
)
_MILLION = 1_000_000


@dataclass(frozen=True)
class Bomb:
    """A hostile file: what it is, how it is made, and words that its answer has to hold."""

    name: str
    make: Callable[[], bytes]
    words: str
    heavy: bool = False
    """Takes more than about two seconds of processor time until it is refused."""


def _laughs(root: bytes) -> bytes:
    """Entities of entities: ten to the ninth power of three letters."""
    lines = [b'<!ENTITY a0 "lol">']
    lines += [b'<!ENTITY a%d "%s">' % (n, b"&a%d;" % (n - 1) * 10) for n in range(1, 10)]
    return b'<?xml version="1.0"?><!DOCTYPE x [' + b"".join(lines) + b"]>" + root % b"&a9;"


def _outside(root: bytes) -> bytes:
    """An entity that is a file of the machine."""
    told = b'<?xml version="1.0"?><!DOCTYPE x [<!ENTITY a SYSTEM "file:///etc/passwd">]>'
    return told + root % b"&a;"


def _dxf(blocks: bytes, entities: bytes) -> bytes:
    return (
        b"  0\nSECTION\n  2\nBLOCKS\n" + blocks + b"  0\nENDSEC\n"
        b"  0\nSECTION\n  2\nENTITIES\n" + entities + b"  0\nENDSEC\n  0\nEOF\n"
    )  # fmt: skip


def _block(name: bytes, inside: bytes) -> bytes:
    return b"  0\nBLOCK\n  2\n%s\n 10\n0\n 20\n0\n" % name + inside + b"  0\nENDBLK\n"


def _insert(name: bytes) -> bytes:
    return b"  0\nINSERT\n  8\n0\n  2\n%s\n 10\n0\n 20\n0\n" % name


def _line(x: bytes = b"0") -> bytes:
    return b"  0\nLINE\n  8\n0\n 10\n%s\n 20\n0\n 11\n4\n 21\n3\n" % x


def _blocks_in_a_ring() -> bytes:
    blocks = _block(b"A", _insert(b"B")) + _block(b"B", _insert(b"A"))
    return _dxf(blocks, _line() + _insert(b"A"))


def _blocks_of_blocks() -> bytes:
    blocks = _block(b"B0", _line() * 10)
    blocks += b"".join(_block(b"B%d" % n, _insert(b"B%d" % (n - 1)) * 10) for n in range(1, 9))
    return _dxf(blocks, _insert(b"B8"))


def _groups() -> bytes:
    """10 MB of groups within one another."""
    deep = 10_000_000 // len(b"<g></g>")
    return _SVG + b"<g>" * deep + b"</g>" * deep + b"</svg>"


def _used_by_itself() -> bytes:
    return _SVG + b'<g id="a"><use xlink:href="#a"/><path d="M0 0h9v9z"/></g></svg>'


def _used_many_times() -> bytes:
    parts = [b'<path id="u0" d="M0 0h9v9z"/>']
    parts += [
        b'<g id="u%d">' % n + b'<use xlink:href="#u%d"/>' % (n - 1) * 10 + b"</g>"
        for n in range(1, 9)
    ]
    return _SVG + b"<defs>" + b"".join(parts) + b'</defs><use xlink:href="#u8"/></svg>'


def _ifc_changed(old: bytes, new: bytes) -> bytes:
    data = ifc()
    assert old in data
    return data.replace(old, new)


def _ifc_million() -> bytes:
    lines = b"".join(b"#%d=IFCCARTESIANPOINT((0.,0.,0.));\n" % n for n in range(200, _MILLION))
    return _ifc_changed(b"ENDSEC;\nEND-ISO", lines + b"ENDSEC;\nEND-ISO")


def _ifc_halves(deep: int = 3000) -> bytes:
    """A room clipped by what is clipped by what is clipped."""
    lines = [
        b"#%d=IFCBOOLEANRESULT(.DIFFERENCE.,#%d,#24);\n" % (1000 + n, 999 + n if n else 24)
        for n in range(deep)
    ]
    data = _ifc_changed(
        b"#25=IFCSHAPEREPRESENTATION(#5,'Body','SweptSolid',(#24));",
        b"#25=IFCSHAPEREPRESENTATION(#5,'Body','CSG',(#%d));" % (999 + deep),
    )
    return data.replace(b"ENDSEC;\nEND-ISO", b"".join(lines) + b"ENDSEC;\nEND-ISO")


def _pages_in_a_ring() -> bytes:
    return pdf_from([
        b"<< /Type /Catalog /Pages 2 0 R >>",
        b"<< /Type /Pages /Kids [2 0 R 3 0 R] /Count 2 /Parent 3 0 R >>",
        b"<< /Type /Pages /Kids [2 0 R] /Count 2 /Parent 2 0 R >>",
    ])  # fmt: skip


def _drawn_by_itself() -> bytes:
    form = b"/X Do 0 0 m 9 9 l S"
    return pdf_from([
        b"<< /Type /Catalog /Pages 2 0 R >>",
        b"<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
        b"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 800 400] /Contents 4 0 R /Resources 5 0 R >>",
        b"<< /Length 5 >>\nstream\n/X Do\nendstream",
        b"<< /XObject << /X 6 0 R >> >>",
        b"<< /Type /XObject /Subtype /Form /BBox [0 0 800 400] /Resources 5 0 R /Length %d >>"
        b"\nstream\n%s\nendstream" % (len(form), form),
    ])  # fmt: skip


def _packed(block: bytes, times: int, tail: bytes = b"") -> bytes:
    """A block so many times over and then a tail, packed as zlib does (RFC 1950, RFC 1951).

    The block is packed once: after a full flush what follows looks back at nothing before it, so
    that the same bytes may come again. Only the check sum is reckoned over all of it.
    """
    packer = zlib.compressobj(9, zlib.DEFLATED, -zlib.MAX_WBITS)
    again = packer.compress(block) + packer.flush(zlib.Z_FULL_FLUSH)
    check = 1
    for _ in range(times):
        check = zlib.adler32(block, check)
    check = zlib.adler32(tail, check)
    end = packer.compress(tail) + packer.flush()
    return b"\x78\xda" + again * times + end + struct.pack(">I", check)


def _packed_zeros(size: int) -> bytes:
    """That many spaces and one stroke, packed a thousand times smaller."""
    chunk = b" " * 10_000_000
    return pdf_of(_packed(chunk, size // len(chunk), b"0 0 m 9 9 l S"))


def png(wide: int, high: int) -> bytes:
    """A picture of one colour that claims this size, and holds of it as much as 1 MB can."""

    def part(kind: bytes, body: bytes) -> bytes:
        check = struct.pack(">I", zlib.crc32(kind + body))
        return struct.pack(">I", len(body)) + kind + body + check

    row = b"\0" + b"\xff" * wide
    held = min(high, 1_000_000_000 // len(row))
    times, over = divmod(held, 100)
    head = part(b"IHDR", struct.pack(">IIBBBBB", wide, high, 8, 0, 0, 0, 0))
    body = part(b"IDAT", _packed(row * 100, times, row * over))
    return b"\x89PNG\r\n\x1a\n" + head + body + part(b"IEND", b"")


def jpeg(wide: int, high: int) -> bytes:
    """A small picture whose frame claims this size."""
    from PIL import Image

    out = io.BytesIO()
    Image.new("L", (64, 64), 255).save(out, "JPEG")
    data = bytearray(out.getvalue())
    at = data.index(b"\xff\xc0")
    data[at + 5 : at + 9] = struct.pack(">HH", high, wide)
    return bytes(data)


def bombs() -> tuple[Bomb, ...]:
    """All of them, by format."""
    ring = b'{"type":"Polygon","coordinates":[[[0,0],[%s,0],[4,3],[0,0]]]}'
    none = b"\xc2\xa0"
    return (
        Bomb("DXF: blocks that hold each other", _blocks_in_a_ring, r"INSERT|block"),
        Bomb("DXF: a block of blocks of blocks, 10⁹ lines", _blocks_of_blocks,
             "[234]00,000|seconds", heavy=True),
        Bomb("DXF: coordinates NaN and 1e400", lambda: _dxf(b"", _line(b"NaN") + _line(b"1e400")),
             r"LINE|damaged|[Tt]race"),
        Bomb("DXF: a million lines", lambda: _dxf(b"", _line() * _MILLION),
             r"[234]00,000|seconds|memory", heavy=True),
        Bomb("GeoJSON: a million brackets", lambda: b"[" * _MILLION, "lists|nested|points"),
        Bomb("GeoJSON: a million empty lists", lambda: b"[" + b"[]," * _MILLION + b"0]",
             "lists|nested|points"),
        Bomb("GeoJSON: a coordinate NaN", lambda: ring % b"NaN", "NaN is no number"),
        Bomb("GeoJSON: a coordinate 1e999", lambda: ring % b"1e999", r"no polygon|number"),
        Bomb("GeoJSON: a whole number of 5,000 digits", lambda: ring % (b"9" * 5000), "number"),
        Bomb("GeoJSON: a ring of a million corners",
             lambda: ring % (b"1,0],[" * _MILLION + b"2"), "lists|nested|points"),
        Bomb("GeoJSON: 900 brackets", lambda: b"[" * 900 + b"]" * 900, "no GeoJSON|nested"),
        Bomb("SVG: entities of entities (10⁹)", lambda: _laughs(_SVG + b"<text>%s</text></svg>"),
             "entities"),
        Bomb("SVG: an entity that is a file", lambda: _outside(_SVG + b"<text>%s</text></svg>"),
             "entities"),
        Bomb("SVG: 10 MB of groups within groups", _groups, "nested"),
        Bomb("SVG: a group that uses itself", _used_by_itself, r"itself|use|[Tt]race"),
        Bomb("SVG: uses of uses (10⁸)", _used_many_times, r"more than|use", heavy=True),
        Bomb("SVG: a million paths",
             lambda: _SVG + b'<path d="M0 0h9v9z"/>' * _MILLION + b"</svg>", r"more than|seconds",
             heavy=True),
        Bomb("SVG: coordinates NaN", lambda: _SVG + b'<path d="M NaN 0 L 9 1e999"/></svg>',
             r"path|[Tt]race|number"),
        Bomb("gbXML: entities of entities (10⁹)", lambda: _laughs(_GBXML + b"%s</Campus></gbXML>"),
             "entities"),
        Bomb("gbXML: an entity that is a file", lambda: _outside(_GBXML + b"%s</Campus></gbXML>"),
             "entities"),
        Bomb("IndoorGML: entities of entities (10⁹)",
             lambda: _laughs(_GML + b"%s</IndoorFeatures>"), "entities"),
        Bomb("IndoorGML: 10 MB of members within members",
             lambda: _GML + b"<a>" * 1_430_000 + b"</a>" * 1_430_000, "nested"),
        Bomb("IFC: a placement that stands on itself",
             lambda: _ifc_changed(b"#3=IFCLOCALPLACEMENT($,#2)", b"#3=IFCLOCALPLACEMENT(#3,#2)"),
             r"placed|placement|itself"),
        Bomb("IFC: a storey that is part of itself",
             lambda: _ifc_changed(b"#11,(#12));", b"#12,(#12));"), r"."),
        Bomb("IFC: a room clipped 3,000 times", _ifc_halves, r".", heavy=True),
        Bomb("IFC: coordinates NaN and 1e400",
             lambda: _ifc_changed(b"((2000.0,1500.0))", b"((NaN,1.E400))"), r"."),
        Bomb("IFC: a million points", _ifc_million, r".", heavy=True),
        Bomb("PDF: pages that hold each other", _pages_in_a_ring, r"page"),
        Bomb("PDF: a drawing that draws itself", _drawn_by_itself, r"."),
        Bomb("PDF: 2 GB of blanks, packed", lambda: _packed_zeros(2_000_000_000), r".", heavy=True),
        Bomb("PDF: a million strokes",
             lambda: pdf_of(zlib.compress(b"0 0 m 9 9 l S\n" * _MILLION)), r".", heavy=True),
        Bomb("PNG: claims 60,000 × 60,000", lambda: png(60_000, 60_000), "pixels"),
        Bomb("JPEG: claims 60,000 × 60,000", lambda: jpeg(60_000, 60_000), "pixels"),
        Bomb("zip", lambda: b"PK\x03\x04" + none * 1000, "zip archive"),
        Bomb("gzip", lambda: b"\x1f\x8b" + none * 1000, "compressed"),
    )  # fmt: skip
