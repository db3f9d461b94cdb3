"""A small sound file of every format, made here: the same two rooms, as offices write them.

A hall of 4 by 3 m and a den of 3 by 3 m, 100 mm of wall between, a door in it and one outside.
"""

import io
import json
import zlib
from dataclasses import dataclass
from functools import cache
from math import cos, radians, sin
from pathlib import Path

import ezdxf
from tests.drawings import Manner, Pen, as_bytes
from tests.hostile.models import gbxml, ifc, indoorgml
from tests.readers.walk.test_json_walk import TOLD
from tests.strategies.floors import OUTSIDE, House, Passage

HOUSE = House(
    (4.0, 3.0),
    (3.0,),
    0.1,
    (
        Passage(((0, 0), OUTSIDE), "outside", 1.0, -0.1, 1.9, 0.0),
        Passage(((0, 0), (1, 0)), "door", 4.0, 1.0, 4.1, 1.8),
    ),
)
Corner = tuple[float, float]


@dataclass(frozen=True)
class Seed:
    """A sound file and the unit that a person would tell with it."""

    name: str
    data: bytes
    scale_m_per_unit: float | None = None


@cache
def seeds() -> tuple[Seed, ...]:
    """One of each kind, small."""
    return (
        Seed("dxf", dxf()),
        Seed("geojson", geojson()),
        Seed("geojson in degrees", geojson_in_degrees()),
        Seed("svg", svg(), 0.01),
        Seed("svg of no scale", svg()),
        Seed("pdf", pdf(), 0.01),
        Seed("ifc", ifc()),
        Seed("gbxml", gbxml()),
        Seed("indoorgml", indoorgml()),
        Seed("png", picture("PNG")),
        Seed("jpeg", picture("JPEG")),
        Seed("walk", walk()),
        Seed("walk in JSON", json.dumps(TOLD).encode()),
        Seed("own dxf", own(".dxf")),
        Seed("own svg", own(".svg")),
    )


def walk() -> bytes:
    """Tape lengths and turns, as somebody wrote them down on the slab."""
    return (Path(__file__).parents[2] / "examples" / "walk" / "walk.txt").read_bytes()


@cache
def own(suffix: str) -> bytes:
    """The two rooms as we write them ourselves, to be read back without loss."""
    from farwall.papers.exchange.files import exchange_files
    from farwall.readers.any_plan import read_bytes

    files = exchange_files(read_bytes(geojson()))
    return next(data for name, data in files.items() if name.endswith(suffix))


def dxf() -> bytes:
    """With blocks, curves, lettering and a dimension."""
    document = ezdxf.new("R2000")
    document.header["$INSUNITS"] = 4
    Pen(document, Manner(unit="mm", sizes=True)).house(HOUSE)
    space = document.modelspace()
    tub = document.blocks.new("TUB")
    tub.add_lwpolyline([(0, 0), (1500, 0), (1500, 700), (0, 700)], close=True)
    tub.add_circle((700, 350), 200)
    space.add_blockref("TUB", (100, 2200), dxfattribs={"layer": "A-FIXT", "rotation": 10})
    space.add_linear_dim(base=(0, -500), p1=(0, 0), p2=(4000, 0)).render()
    space.add_mtext("NOTE\\Pslab", dxfattribs={"insert": (100, 100), "char_height": 100})
    space.add_spline([(0, 0), (100, 200), (300, 300)])
    return as_bytes(document)


def _boxes() -> list[tuple[str, list[Corner]]]:
    return [
        ("Hall", [(0.0, 0.0), (4.0, 0.0), (4.0, 3.0), (0.0, 3.0)]),
        ("Den", [(4.1, 0.0), (7.1, 0.0), (7.1, 3.0), (4.1, 3.0)]),
    ]


def geojson() -> bytes:
    """Our own collection."""
    from farwall.floor.geojson import floor_collection
    from farwall.floor.geometry import PolygonGeometry
    from farwall.floor.nouns import Exit, Floor, Opening, Room

    rooms = tuple(
        Room(name.lower(), PolygonGeometry(((*box, box[0]),)), name) for name, box in _boxes()
    )
    doors = (
        Opening("d1", "door", ((4.05, 1.0), (4.05, 1.8)), ("hall", "den"), 0.8),
        Opening("out", "outside", ((1.0, -0.05), (1.9, -0.05)), ("hall",), 0.9),
    )
    return json.dumps(floor_collection(Floor(rooms, doors), (Exit("e", "out"),)), indent=1).encode()


def geojson_in_degrees() -> bytes:
    """As others write it: rooms by type, a feature that is no room."""
    features = [
        {
            "type": "Feature",
            "properties": {"type": "room", "name": name},
            "geometry": {
                "type": "Polygon",
                "coordinates": [[[11.5 + x * 1.35e-5, 48.1 + y * 9e-6] for x, y in [*box, box[0]]]],
            },
        }
        for name, box in _boxes()
    ]
    bench = {"type": "Feature", "properties": {"type": "bench"}, "geometry": None}
    return json.dumps({"type": "FeatureCollection", "features": [*features, bench]}).encode()


@dataclass(frozen=True)
class _Line:
    points: tuple[Corner, ...]


@cache
def _strokes() -> tuple[tuple[_Line, ...], tuple[tuple[str, Corner], ...]]:
    """The house as bare strokes and lettering, centimetres, y up."""
    document = ezdxf.new("R2010")
    Pen(document, Manner(unit="cm", sizes=True)).house(HOUSE)
    lines: list[_Line] = []
    words: list[tuple[str, Corner]] = []
    for one in document.modelspace():
        kind = one.dxftype()
        if kind == "LINE":
            lines.append(_Line((tuple(one.dxf.start)[:2], tuple(one.dxf.end)[:2])))
        elif kind == "LWPOLYLINE":
            corners = [(x, y) for x, y, *_ in one.get_points()]
            lines.append(_Line((*corners, corners[0]) if one.closed else tuple(corners)))
        elif kind == "ARC":
            turn = (one.dxf.end_angle - one.dxf.start_angle) % 360
            angles = [radians(one.dxf.start_angle + turn * n / 12) for n in range(13)]
            (x, y), r = tuple(one.dxf.center)[:2], one.dxf.radius
            lines.append(_Line(tuple((x + r * cos(a), y + r * sin(a)) for a in angles)))
        elif kind == "TEXT":
            place = one.dxf.get("align_point") or one.dxf.insert
            words.append((one.dxf.text, (place[0], place[1])))
    return tuple(lines), tuple(words)


def svg() -> bytes:
    """Paths, a group that is turned upside down, a symbol that is used, lettering."""
    lines, words = _strokes()
    paths = "\n".join(
        '<path d="M ' + " L ".join(f"{x:g} {y:g}" for x, y in line.points) + '"/>' for line in lines
    )
    texts = "\n".join(
        f'<text x="{x:g}" y="{-y:g}" font-size="15">{text}</text>' for text, (x, y) in words
    )
    return f"""<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"
 width="800" height="400" viewBox="-40 -350 800 400">
<style>path {{ stroke: #000; fill: none }}</style>
<defs><symbol id="tub"><rect width="150" height="70"/></symbol></defs>
<g transform="scale(1,-1)">
{paths}
</g>
<use xlink:href="#tub" x="5" y="-295"/>
{texts}
</svg>
""".encode()


def pdf() -> bytes:
    """One page of strokes and lettering, its stream packed, with its table of places."""
    lines, words = _strokes()
    drawn = ["1 0 0 1 40 40 cm 0.7 w"]
    for line in lines:
        (x, y), *rest = line.points
        drawn.append(f"{x:g} {y:g} m " + " ".join(f"{a:g} {b:g} l" for a, b in rest) + " S")
    for text, (x, y) in words:
        safe = text.replace("\\", "").replace("(", "").replace(")", "")
        drawn.append(f"BT /F1 12 Tf {x:g} {y:g} Td ({safe}) Tj ET")
    return pdf_of(zlib.compress("\n".join(drawn).encode()))


def pdf_of(stream: bytes, *, packed: bool = True) -> bytes:
    """A page that holds this stream."""
    how = b"/Filter /FlateDecode " if packed else b""
    objects = [
        b"<< /Type /Catalog /Pages 2 0 R >>",
        b"<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
        b"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 800 400] /Contents 4 0 R /Resources 6 0 R >>",
        b"<< " + how + b"/Length %d >>\nstream\n" % len(stream) + stream + b"\nendstream",
        b"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>",
        b"<< /Font << /F1 5 0 R >> >>",
    ]
    return pdf_from(objects)


def pdf_from(objects: list[bytes]) -> bytes:
    """The file of these objects, the first being the catalogue."""
    out, places = io.BytesIO(b"%PDF-1.4\n"), []
    out.seek(0, io.SEEK_END)
    for number, one in enumerate(objects, 1):
        places.append(out.tell())
        out.write(b"%d 0 obj\n%s\nendobj\n" % (number, one))
    start = out.tell()
    out.write(b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1))
    for place in places:
        out.write(b"%010d 00000 n \n" % place)
    out.write(b"trailer\n<< /Size %d /Root 1 0 R >>\n" % (len(objects) + 1))
    out.write(b"startxref\n%d\n%%%%EOF\n" % start)
    return out.getvalue()


def picture(kind: str) -> bytes:
    """The strokes on white paper, as a telephone or a scanner would keep them."""
    from PIL import Image, ImageDraw

    sheet = Image.new("L", (400, 220), 255)
    pen = ImageDraw.Draw(sheet)
    for line in _strokes()[0]:
        pen.line([(20 + x / 2, 200 - y / 2) for x, y in line.points], fill=0, width=2)
    out = io.BytesIO()
    sheet.save(out, kind)
    return out.getvalue()
