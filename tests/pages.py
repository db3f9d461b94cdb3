"""Draws houses as pages, SVG and PDF, to a scale on paper, so that the readers can be tried."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from math import cos, radians, sin, tan
from types import SimpleNamespace
from typing import Any
from xml.sax.saxutils import escape

from tests.drawings import Manner, Pen
from tests.strategies.floors import House

MARGIN_M = 3.0
POINTS_PER_M = 72 / 0.0254


@dataclass(frozen=True)
class Look:
    """How a program writes a page: its scale, what is printed, how arcs and letters are written."""

    ratio: float = 50.0
    printed: str = ""
    bar: bool = False
    dimensions: str = ""
    """`m` for 3.50 m, `mm` for bare millimetres, `ft` for feet and inches; nothing for none."""
    arcs: str = "curve"
    """`curve` for one curve, `chords` for short straight pieces."""
    glyphs: bool = False
    layered: bool = True
    resized: float = 1.0
    """The page saved at this share of its size: what is printed stays."""
    unit: str = "mm"
    """Of an SVG's width: mm, in or px."""
    nested: bool = False
    turn_deg: int = 0
    """Of a PDF page."""

    @property
    def points_per_m(self) -> float:
        """Points of the page for a metre of floor."""
        return POINTS_PER_M / self.ratio * self.resized


@dataclass
class Sketch:
    """What a pen put down, in metres of floor: takes the calls of a DXF's model space."""

    lines: list[tuple[str, list[tuple[float, float]], bool]] = field(default_factory=list)
    arcs: list[tuple[str, tuple[float, float], float, float, float]] = field(default_factory=list)
    texts: list[tuple[str, str, tuple[float, float], float]] = field(default_factory=list)

    def add_line(self, start: Any, end: Any, dxfattribs: Any) -> None:
        self.lines.append((dxfattribs["layer"], [start, end], False))

    def add_lwpolyline(self, corners: Any, *, close: bool, dxfattribs: Any) -> None:
        self.lines.append((dxfattribs["layer"], list(corners), close))

    def add_arc(
        self, centre: Any, radius: float, start: float, end: float, dxfattribs: Any
    ) -> None:
        self.arcs.append((dxfattribs["layer"], centre, radius, start, end))

    def add_text(self, text: str, *, height: float, dxfattribs: Any) -> Any:
        def place(at: Any, align: Any) -> None:
            self.texts.append((dxfattribs["layer"], text, at, height))

        return SimpleNamespace(set_placement=place, dxf=SimpleNamespace())

    def extent(self) -> tuple[float, float]:
        """The farthest corner of all lines."""
        points = [p for _, line, _ in self.lines for p in line]
        return max(x for x, _ in points), max(y for _, y in points)


def sketched(house: House, look: Look, manner: Manner | None = None) -> Sketch:
    """The house with what its page says of its scale."""
    sketch = Sketch()
    pen = Pen.__new__(Pen)
    pen.space, pen.manner, pen.factor = sketch, manner or Manner(unit="m"), 1.0
    pen.house(house)
    if look.dimensions:
        _dimensions(sketch, house, look.dimensions)
    if look.bar:
        _bar(sketch)
    if look.printed:
        sketch.texts.append(("NOTES", look.printed, (2.0, -2.4), 0.2))
    return sketch


def _dimensions(sketch: Sketch, house: House, unit: str) -> None:
    """One chain of dimensions under the house, one beside it."""
    y = -house.wall - 0.7
    for column in range(len(house.columns)):
        x0, _, x1, _ = house.box((column, 0))
        sketch.lines.append(("DIMS", [(x0, y), (x1, y)], False))
        sketch.lines += [("DIMS", [(x, y - 0.1), (x, y + 0.3)], False) for x in (x0, x1)]
        sketch.texts.append(("DIMS", _lettered(x1 - x0, unit), ((x0 + x1) / 2, y + 0.14), 0.15))
    y -= 0.5
    x1 = sketch.extent()[0]
    sketch.lines.append(("DIMS", [(-house.wall, y), (x1, y)], False))
    sketch.lines += [("DIMS", [(x, y - 0.1), (x, y + 0.1)], False) for x in (-house.wall, x1)]
    middle = (x1 - house.wall) / 2
    sketch.texts.append(("DIMS", _lettered(x1 + house.wall, unit), (middle, y + 0.14), 0.15))


def _lettered(length_m: float, unit: str) -> str:
    if unit == "mm":
        return f"{length_m * 1000:.0f}"
    if unit == "ft":
        inches = round(length_m / 0.0254)
        return f"{inches // 12}'-{inches % 12}\""
    return f"{length_m:.3f} m"


def _bar(sketch: Sketch) -> None:
    """A bar of four metres, its numbers under its ticks."""
    y = -2.0
    sketch.lines.append(("MARKS", [(0.0, y), (4.0, y)], False))
    for x in (0.0, 1.0, 2.0, 4.0):
        sketch.lines.append(("MARKS", [(x, y), (x, y + 0.15)], False))
        text = f"{x:g} m" if x == 4 else f"{x:g}"
        sketch.texts.append(("MARKS", text, (x, y - 0.2), 0.15))


def svg_page(sketch: Sketch, look: Look) -> bytes:
    """The sketch as an SVG; y runs down the page."""
    far_x, far_y = sketch.extent()
    per_m = 1000 / look.ratio  # user units are millimetres of the paper as it was drawn
    wide, high = (far_x + 2 * MARGIN_M) * per_m, (far_y + 2 * MARGIN_M) * per_m
    paper = {"mm": 1.0, "in": 1 / 25.4, "px": 3.7}[look.unit] * look.resized
    out = []
    out.append(
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide * paper:.4f}{look.unit}" '
        f'height="{high * paper:.4f}{look.unit}" viewBox="0 0 {wide:.4f} {high:.4f}">'
    )
    flip = f"matrix({per_m} 0 0 {-per_m} {MARGIN_M * per_m} {(far_y + MARGIN_M) * per_m})"
    if look.nested:
        out.append('<defs><g id="body">')
    out.append(f'<g transform="{flip}" fill="none" stroke="#000" stroke-width="0.01">')
    out += [_svg_line(*line, look) for line in sketch.lines]
    out += [_svg_arc(*arc, look) for arc in sketch.arcs]
    out.append("</g>")
    for layer, text, at, height in sketch.texts:
        x, y = (MARGIN_M + at[0]) * per_m, (far_y + MARGIN_M - at[1] + height / 2) * per_m
        out += _svg_text(layer, text, (x, y), height * per_m / 0.72, look)
    if look.nested:
        out.append('</g></defs><g transform="translate(5 7)"><use href="#body" x="-5" y="-7"/></g>')
    return "\n".join([*out, "</svg>"]).encode()


def _named(layer: str, look: Look) -> str:
    return f' class="{escape(layer)}"' if look.layered else ""


def _svg_line(layer: str, points: Any, close: bool, look: Look) -> str:
    named = _named(layer, look)
    data = " ".join(f"{'L' if i else 'M'}{x:.7f},{y:.7f}" for i, (x, y) in enumerate(points))
    return f'<path{named} d="{data}{" Z" if close else ""}"/>'


def _svg_arc(layer: str, centre: Any, radius: float, start: float, end: float, look: Look) -> str:
    if look.arcs == "chords":
        return _svg_line(layer, _chords(centre, radius, start, end), False, look)
    a, b = _around(centre, radius, start), _around(centre, radius, end)
    data = f"M{a[0]:.7f},{a[1]:.7f}A{radius:.7f} {radius:.7f} 0 0 1 {b[0]:.7f},{b[1]:.7f}"
    return f'<path{_named(layer, look)} d="{data}"/>'


def _svg_text(layer: str, text: str, at: Any, size: float, look: Look) -> list[str]:
    letters = f'font-size="{size:.4f}"{_named(layer, look)}'
    if not look.glyphs:
        place = f'x="{at[0]:.4f}" y="{at[1]:.4f}" text-anchor="middle"'
        return [f"<text {place} {letters}>{escape(text)}</text>"]
    start = at[0] - len(text) * 0.3 * size
    return [
        f'<text transform="translate({start + i * 0.6 * size:.4f} {at[1]:.4f})" {letters}>'
        f"{escape(letter)}</text>"
        for i, letter in enumerate(text)
    ]


def _around(centre: Any, radius: float, turn_deg: float) -> tuple[float, float]:
    return (
        centre[0] + radius * cos(radians(turn_deg)),
        centre[1] + radius * sin(radians(turn_deg)),
    )


def _chords(centre: Any, radius: float, start: float, end: float) -> list[tuple[float, float]]:
    return [_around(centre, radius, start + (end - start) * i / 12) for i in range(13)]


def pdf_page(sketch: Sketch, look: Look) -> bytes:
    """The sketch as a PDF of one page."""
    return pdf_file([content(sketch, look)], look)


def content(sketch: Sketch, look: Look) -> tuple[bytes, tuple[float, float]]:
    """The painting of a page, and its size in points."""
    far_x, far_y = sketch.extent()
    per_m = look.points_per_m
    size = (far_x + 2 * MARGIN_M) * per_m, (far_y + 2 * MARGIN_M) * per_m
    out = [f"q {per_m:.6f} 0 0 {per_m:.6f} {MARGIN_M * per_m:.4f} {MARGIN_M * per_m:.4f} cm 0.01 w"]
    for layer, points, close in sketch.lines:
        out += _marked(layer, _pdf_line(points) + (" h S" if close else " S"), look)
    for layer, *arc in sketch.arcs:
        out += _marked(layer, f"{_pdf_arc(*arc, look)} S", look)
    out.append("Q")
    for _, text, at, height in sketch.texts:
        em = height * per_m / 0.72
        wide = sum(0.556 if c.isalnum() else 0.278 for c in text) * em
        x, y = (MARGIN_M + at[0]) * per_m - wide / 2, (MARGIN_M + at[1] - height / 2) * per_m
        plain = text.replace("\\", "\\\\").replace("(", "\\(").replace(")", "\\)")
        out.append(f"BT /F1 {em:.4f} Tf {x:.4f} {y:.4f} Td ({plain}) Tj ET")
    return "\n".join(out).encode("latin-1"), size


def _marked(layer: str, paint: str, look: Look) -> list[str]:
    if not look.layered:
        return [paint]
    return [f"/OC /{_key(layer)} BDC {paint} EMC"]


def _key(layer: str) -> str:
    return "L" + "".join(c for c in layer if c.isascii() and c.isalnum())


def _pdf_line(points: Sequence[Any]) -> str:
    return " ".join(f"{x:.7f} {y:.7f} {'l' if i else 'm'}" for i, (x, y) in enumerate(points))


def _pdf_arc(centre: Any, radius: float, start: float, end: float, look: Look) -> str:
    if look.arcs == "chords":
        return _pdf_line(_chords(centre, radius, start, end))
    reach = 4 / 3 * tan(radians(end - start) / 4) * radius
    a, b = _around(centre, radius, start), _around(centre, radius, end)
    c = _around(a, reach, start + 90)
    d = _around(b, reach, end - 90)
    points = " ".join(f"{x:.7f} {y:.7f}" for x, y in (c, d, b))
    return f"{a[0]:.7f} {a[1]:.7f} m {points} c"


LAYERS = ("A-WALL", "A-DOOR", "A-HEADER", "A-TEXT", "DIMS", "MARKS", "NOTES")


def pdf_file(pages: Sequence[tuple[bytes, tuple[float, float]]], look: Look) -> bytes:
    """Pages as a file: with `nested`, each is painted by a form inside a form."""
    objects: dict[int, bytes] = {}
    fresh = iter(range(3, 100_000))

    def add(body: bytes) -> int:
        number = next(fresh)
        objects[number] = body
        return number

    font = add(b"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>")
    groups = {layer: add(b"<< /Type /OCG /Name (%s) >>" % layer.encode()) for layer in LAYERS}
    named = " ".join(f"/{_key(layer)} {number} 0 R" for layer, number in groups.items())
    shared = f"/Font << /F1 {font} 0 R >> /Properties << {named} >>"
    kids = []
    for paint, (wide, high) in pages:
        resources = f"<< {shared} >>"
        if look.nested:
            box = f"/BBox [0 0 {wide:.3f} {high:.3f}]"
            head = f"/Type /XObject /Subtype /Form {box} /Matrix [2 0 0 2 10 0]"
            inner = add(stream(f"{head} /Resources {resources}", paint))
            wrap = f"{head} /Resources << /XObject << /X {inner} 0 R >> >>"
            outer = add(stream(wrap, b"q 0.5 0 0 0.5 -5 0 cm /X Do Q"))
            resources = f"<< /XObject << /X {outer} 0 R >> >>"
        shown = b"q 0.5 0 0 0.5 -5 0 cm /X Do Q" if look.nested else paint
        body = add(stream("", shown))
        kids.append(
            add(
                f"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 {wide:.3f} {high:.3f}] "
                f"/Rotate {look.turn_deg} /Contents {body} 0 R /Resources {resources} >>".encode()
            )
        )
    off = " ".join(f"{number} 0 R" for number in groups.values())
    objects[1] = (
        f"<< /Type /Catalog /Pages 2 0 R /OCProperties << /OCGs [{off}] "
        "/D << /BaseState /ON >> >> >>".encode()
    )
    listed = " ".join(f"{kid} 0 R" for kid in kids)
    objects[2] = f"<< /Type /Pages /Kids [{listed}] /Count {len(kids)} >>".encode()
    return file_of(objects)


def stream(head: str, paint: bytes) -> bytes:
    """A stream object."""
    return f"<< {head} /Length {len(paint)} >>\nstream\n".encode() + paint + b"\nendstream"


def file_of(objects: dict[int, bytes]) -> bytes:
    """Objects by their number as a file."""
    out, places = bytearray(b"%PDF-1.7\n"), {}
    for number in sorted(objects):
        places[number] = len(out)
        out += b"%d 0 obj\n" % number + objects[number] + b"\nendobj\n"
    start = len(out)
    out += b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1)
    for number in sorted(objects):
        out += b"%010d 00000 n \n" % places[number]
    out += b"trailer << /Size %d /Root 1 0 R >>\nstartxref\n%d\n%%%%EOF\n" % (
        len(objects) + 1,
        start,
    )
    return bytes(out)
