"""Takes a drawing apart into strokes, swings, rings, words and measures.

Blocks are taken apart too, as far as they are plainly placed. What cannot be
read is counted by its kind, so that nothing disappears unsaid.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from itertools import pairwise
from math import isfinite
from typing import TYPE_CHECKING, Any

from farwall.errors import Mistake, Refused
from farwall.floor.geometry import Point
from farwall.readers.dxf.words import lines_of_words
from farwall.readers.lines.roles import plain_layer, role_of
from farwall.readers.lines.sheet import Block, Measure, Ring, Role, Sheet, Stroke, Swing, Words

if TYPE_CHECKING:
    from ezdxf.document import Drawing

MOST_ENTITIES = 200_000
DEEPEST_BLOCK = 6
FARTHEST = 1e11
_CURVES = {"ARC", "CIRCLE", "ELLIPSE", "SPLINE", "LWPOLYLINE", "POLYLINE", "LINE"}
_EXPLODED = {"INSERT", "MLINE"}
_PASSED_OVER = {"HATCH", "LEADER", "MULTILEADER", "POINT", "VIEWPORT", "IMAGE", "WIPEOUT", "ATTDEF",
                "XLINE", "RAY", "TOLERANCE", "ACAD_PROXY_ENTITY", "OLE2FRAME"}  # fmt: skip
_DASHES = ("HIDDEN", "DASH", "CENTER", "PHANTOM", "DOT", "DIVIDE", "BORDER")


class Gatherer:
    """Collects what the drawing holds; `sheet` is the result."""

    def __init__(self, document: Drawing) -> None:
        self.document = document
        self.strokes: list[Stroke] = []
        self.swings: list[Swing] = []
        self.rings: list[Ring] = []
        self.words: list[Words] = []
        self.measures: list[Measure] = []
        self.blocks: list[Block] = []
        self.skipped: Counter[str] = Counter()
        self.seen = 0
        self.hidden = {layer.dxf.name for layer in _hidden(document)}

    def take(self, entities: Iterable[Any], *, block: str = "", layer: str = "", depth: int = 0,
             dashed: bool = False) -> None:  # fmt: skip
        """Add entities; inside a block, layer 0 means the layer the block was set on."""
        for entity in _each(entities, self.skipped):
            self.seen += 1
            if self.seen > MOST_ENTITIES:
                raise Refused(
                    Mistake(
                        "",
                        f"The drawing holds more than {MOST_ENTITIES:,} entities.",
                        "Save the floor plan alone into a file of its own.",
                    )
                )
            try:
                self._one(entity, block=block, layer=layer, depth=depth, dashed=dashed)
            except (Refused, MemoryError):
                raise
            except Exception:  # one spoilt entity must not cost the whole floor
                self.skipped[str(entity.dxftype())] += 1

    def _one(self, entity: Any, *, block: str, layer: str, depth: int, dashed: bool) -> None:
        kind = entity.dxftype()
        own = str(entity.dxf.get("layer", "0"))
        name = layer if own == "0" and layer else own
        if name in self.hidden or entity.dxf.get("invisible", 0):
            return
        dashed = dashed or self._dashed(entity)
        if kind in _CURVES:
            self._curve(entity, kind, name, dashed=dashed, block=block)
        elif kind in {"TEXT", "MTEXT", "ATTRIB"}:
            self.words.extend(lines_of_words(entity, plain_layer(name)))
        elif kind == "DIMENSION":
            self.measures.append(_measure(entity))
        elif kind in _EXPLODED:
            self._symbol(entity, kind, name, block=block, depth=depth, dashed=dashed)
        elif kind in {"SOLID", "TRACE"}:
            self._ring([_flat(p) for p in entity.wcs_vertices()], name, dashed=dashed, block=block)
        elif kind not in _PASSED_OVER:
            self.skipped[kind] += 1

    def _symbol(self, entity: Any, kind: str, name: str, *, block: str, depth: int,
                dashed: bool) -> None:  # fmt: skip
        if depth >= DEEPEST_BLOCK:
            self.skipped["INSERT"] += 1
            return
        inner = plain_layer(str(entity.dxf.name)) if kind == "INSERT" else block
        before = len(self.strokes), len(self.swings)
        self.take(entity.virtual_entities(), block=block or inner, layer=name, depth=depth + 1,
                  dashed=dashed)  # fmt: skip
        if kind == "INSERT":
            self.take(entity.attribs, layer=name, depth=depth + 1)
            if depth == 0:
                self._boxed(inner, name, before)

    def _boxed(self, name: str, layer: str, before: tuple[int, int]) -> None:
        points = [p for s in self.strokes[before[0] :] for p in (s.start, s.end)]
        if points:
            xs, ys = [p[0] for p in points], [p[1] for p in points]
            low, high = (min(xs), min(ys)), (max(xs), max(ys))
            self.blocks.append(Block(name, low, high, role_of(layer)))

    def _curve(self, entity: Any, kind: str, name: str, *, dashed: bool, block: str) -> None:
        role = role_of(name)
        points = _points(entity, kind)
        if kind == "ARC":
            self.swings.append(_swing(entity, plain_layer(name), role))
            if role is Role.OPENING:
                return
        if len(points) > 3 and points[0] == points[-1]:
            self._ring(points[:-1], name, dashed=dashed, block=block)
            return
        layer, curve = plain_layer(name), kind == "ARC"
        for start, end in pairwise(points):
            if start != end:
                self.strokes.append(Stroke(start, end, layer, role, dashed, block, curve))

    def _ring(self, points: list[Point], name: str, *, dashed: bool, block: str) -> None:
        role, layer = role_of(name), plain_layer(name)
        clean = tuple(p for p, q in zip(points, points[1:] + points[:1], strict=True) if p != q)
        self.rings.append(Ring(clean, layer, role, dashed, block))
        for start, end in zip(clean, clean[1:] + clean[:1], strict=True):
            self.strokes.append(Stroke(start, end, layer, role, dashed, block))

    def _dashed(self, entity: Any) -> bool:
        name = str(entity.dxf.get("linetype", "BYLAYER")).upper()
        if name in {"BYLAYER", "BYBLOCK"}:
            layer = str(entity.dxf.get("layer", "0"))
            layers = self.document.layers
            name = str(layers.get(layer).dxf.linetype).upper() if layer in layers else ""
        return any(word in plain_layer(name) for word in _DASHES)


def gather(document: Drawing, repairs: tuple[str, ...] = ()) -> Sheet:
    """Everything of the model space that a floor can be read from, in drawing units."""
    gatherer = Gatherer(document)
    gatherer.take(document.modelspace())
    if not gatherer.strokes:
        for sheet in document.layouts:
            if sheet.is_any_paperspace:
                gatherer.take(sheet)
        if gatherer.strokes:
            repairs = (*repairs, "The model space is empty: the paper sheets were read instead.")
    return Sheet(
        strokes=tuple(gatherer.strokes),
        swings=tuple(gatherer.swings),
        rings=tuple(gatherer.rings),
        words=tuple(gatherer.words),
        measures=tuple(gatherer.measures),
        blocks=tuple(gatherer.blocks),
        header_code=_header_code(document),
        inch_letters=_inch_letters(document),
        north_deg=_north_deg(document),
        skipped=tuple(sorted(gatherer.skipped.items())),
        repairs=repairs,
    )


def _each(entities: Iterable[Any], skipped: Counter[str]) -> Iterator[Any]:
    iterator = iter(entities)
    while True:
        try:
            yield next(iterator)
        except StopIteration:
            return
        except (Refused, MemoryError):
            raise
        except Exception:  # a block that cannot be taken apart ends here, and is counted
            skipped["INSERT"] += 1
            return


def _hidden(document: Drawing) -> list[Any]:
    return [layer for layer in document.layers if layer.is_off() or layer.is_frozen()]


def _flat(point: Any) -> Point:
    x, y = float(point[0]), float(point[1])
    if not (isfinite(x) and isfinite(y)) or max(abs(x), abs(y)) > FARTHEST:
        raise ValueError("a point lies beyond any sheet")
    return round(x, 9) + 0.0, round(y, 9) + 0.0


def _points(entity: Any, kind: str) -> list[Point]:
    if kind == "LINE":
        return [_flat(entity.dxf.start), _flat(entity.dxf.end)]
    from ezdxf import path

    if kind == "POLYLINE" and not (entity.is_2d_polyline or entity.is_3d_polyline):
        raise ValueError("a mesh is no line on a floor")
    way = path.make_path(entity)
    low, high = path.bbox([way], fast=True).size.vec2, None
    del high
    fine = max(low.magnitude * 5e-4, 1e-9)
    points = [_flat(point) for point in way.flattening(fine)]
    if len(points) > 10_000:
        raise ValueError("a curve with more points than any wall has")
    return points


def _swing(entity: Any, layer: str, role: Role) -> Swing:
    centre = _flat(entity.ocs().to_wcs(entity.dxf.center))
    sweep = (float(entity.dxf.end_angle) - float(entity.dxf.start_angle)) % 360.0
    ends = _flat(entity.start_point), _flat(entity.end_point)
    return Swing(centre, ends, abs(float(entity.dxf.radius)), sweep, layer, role)


def _measure(entity: Any) -> Measure:
    length = float(entity.get_measurement())
    if not isfinite(length) or not 0 < length < FARTHEST:
        raise ValueError("a dimension without a length")
    text = str(entity.dxf.get("text", "") or "")
    if text in {"", "<>"}:
        text = _block_text(entity)
    return Measure(length, text)


def _block_text(entity: Any) -> str:
    block = entity.get_geometry_block()
    for part in block if block is not None else ():
        if part.dxftype() in {"TEXT", "MTEXT"}:
            return str(part.plain_text())
    return ""


def _header_code(document: Drawing) -> int:
    try:
        return int(document.header.get("$INSUNITS", 0))
    except (TypeError, ValueError):
        return 0


def _inch_letters(document: Drawing) -> bool:
    """Engineering and architectural lettering takes one unit for one inch by definition."""
    try:
        return int(document.header.get("$LUNITS", 2)) in {3, 4}
    except (TypeError, ValueError):
        return False


def _north_deg(document: Drawing) -> float | None:
    try:
        data = document.modelspace().get_geodata()
        if data is None:
            return None
        east, north = (float(v) for v in data.dxf.north_direction[:2])
    except Exception:  # no north is better than a wrong one
        return None
    from math import atan2, degrees

    return round(degrees(atan2(east, north)) % 360.0, 3) if (east or north) else None
