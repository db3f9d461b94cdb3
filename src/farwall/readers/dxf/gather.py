"""Takes a drawing apart into strokes, swings, rings, bands, words and measures.

Blocks are taken apart once and then set wherever a symbol of them stands: turned, mirrored,
stretched, in rows, within each other. What cannot be read is counted by its kind, so that nothing
disappears unsaid.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import cache
from itertools import pairwise
from math import isfinite
from typing import TYPE_CHECKING, Any

from farwall.errors import Mistake, Refused
from farwall.floor.geometry import Point
from farwall.readers.dxf.bulk import Bulk, Loose
from farwall.readers.dxf.curves import flat, measures_of, points_of, swing_of, width_of
from farwall.readers.dxf.marks import header_code, inch_letters, north_deg
from farwall.readers.dxf.pieces import PLAIN, Pieces, Setting
from farwall.readers.dxf.words import lines_of_words
from farwall.readers.lines.roles import plain_layer, role_of
from farwall.readers.lines.sheet import Band, Block, Ring, Role, Sheet, Stroke

if TYPE_CHECKING:
    from ezdxf.document import Drawing

MOST_ENTITIES = 400_000
DEEPEST_BLOCK = 12
_CURVES = {"ARC", "CIRCLE", "ELLIPSE", "SPLINE", "LWPOLYLINE", "POLYLINE", "LINE", "HELIX"}
_ROUND = {"ARC", "CIRCLE", "ELLIPSE", "SPLINE", "HELIX"}
_LETTERS = {"TEXT", "MTEXT", "ATTRIB"}
_DIMENSIONS = {"DIMENSION", "LARGE_RADIAL_DIMENSION"}
_ASIDE = {
    "HATCH": "hatch", "MPOLYGON": "hatch", "LEADER": "leader", "MULTILEADER": "leader",
    "IMAGE": "picture", "XLINE": "endless line", "RAY": "endless line", "REGION": "region",
    "3DSOLID": "solid body", "BODY": "solid body", "MESH": "solid body", "SURFACE": "solid body",
    "OLE2FRAME": "picture", "ACAD_PROXY_ENTITY": "object of another program",
    "ACAD_TABLE": "table", "3DFACE": "solid body",
}  # fmt: skip
_SILENT = {"POINT", "VIEWPORT", "WIPEOUT", "ATTDEF", "TOLERANCE", "SHAPE", "LIGHT", "ARC_DIMENSION"}
_DASHES = ("HIDDEN", "DASH", "CENTER", "PHANTOM", "DOT", "DIVIDE", "BORDER")


class Gatherer:
    """Collects what the drawing holds; blocks are kept as they were taken apart."""

    def __init__(self, document: Drawing, bulk: Bulk) -> None:
        self.document, self.bulk = document, bulk
        self.seen = 0
        self.hidden = {
            layer.dxf.name for layer in document.layers if layer.is_off() or layer.is_frozen()
        }
        self._blocks: dict[tuple[str, str, bool], Pieces] = {}
        self._within: list[str] = []
        self.role = cache(role_of)
        self.plain = cache(plain_layer)
        self._dashed_layer = cache(self._is_dashed_layer)
        self._text = cache(self._decoded)

    def taken(self, entities: Iterable[Any], block: str, *, layer: str = "",
              dashed: bool = False) -> Pieces:  # fmt: skip
        """The pieces of a layout or block; layer 0 means the layer its symbol is on."""
        into = Pieces()
        for line in self.bulk.lines.get(block.lower(), ()):
            self._count(1)
            self._loose(line, into, layer=layer, dashed=dashed)
        for entity in _each(entities, into):
            self._count(1)
            try:
                self._one(entity, into, layer=layer, dashed=dashed)
            except (Refused, MemoryError):
                raise
            except Exception:  # one spoilt entity must not cost the whole floor
                into.skipped[str(entity.dxftype())] += 1
        return into

    def _count(self, more: int) -> None:
        self.seen += more
        if self.seen > MOST_ENTITIES:
            what = f"The drawing holds more than {MOST_ENTITIES:,} lines, symbols counted out."
            raise Refused(Mistake("", what, "Save the floor plan alone into a file of its own."))

    def _one(self, entity: Any, into: Pieces, *, layer: str, dashed: bool) -> None:
        kind = entity.dxftype()
        own = str(entity.dxf.get("layer", "0"))
        name = layer if own == "0" and layer else own
        if name in self.hidden or entity.dxf.get("invisible", 0):
            return
        dashed = dashed or self._dashed(str(entity.dxf.get("linetype", "BYLAYER")), own)
        if kind in _LETTERS:
            into.words.extend(lines_of_words(entity, self.plain(name)))
        elif kind in _DIMENSIONS:
            into.measures.extend(measures_of(entity))
        elif kind in _CURVES:
            self._curve(entity, kind, into, name=name, dashed=dashed)
        elif kind == "INSERT":
            self._symbol(entity, into, name=name, dashed=dashed)
        else:
            self._other(entity, kind, into, name=name, dashed=dashed)

    def _other(self, entity: Any, kind: str, into: Pieces, *, name: str, dashed: bool) -> None:
        if kind == "MLINE":
            for part in entity.virtual_entities():
                self._one(part, into, layer=name, dashed=dashed)
        elif kind in {"SOLID", "TRACE"}:
            self._ring([flat(p) for p in entity.wcs_vertices()], into, name=name, dashed=dashed)
        elif kind in _ASIDE:
            into.aside[_ASIDE[kind]] += 1
        elif kind not in _SILENT:
            into.skipped[kind] += 1

    def _symbol(self, entity: Any, into: Pieces, *, name: str, dashed: bool) -> None:
        block = str(entity.dxf.name)
        if block.lower() in self._within or len(self._within) >= DEEPEST_BLOCK:
            into.skipped["INSERT"] += 1
            return
        pieces = self._block(block, name, dashed=dashed)
        top = "" if self._within else self.plain(block)
        if entity.mcount * max(1, pieces.size) > MOST_ENTITIES:
            self._count(MOST_ENTITIES + 1)
        for one in entity.multi_insert() if entity.mcount > 1 else (entity,):
            self._count(pieces.size)
            placed = Setting.of(list(one.matrix44())).set(pieces, top)
            if top and placed.strokes:
                into.blocks.append(_boxed(top, placed.strokes, self.role(name)))
            into.add(placed)
        for attribute in entity.attribs:
            self._one(attribute, into, layer=name, dashed=False)

    def _block(self, name: str, layer: str, *, dashed: bool) -> Pieces:
        key = name.lower(), layer, dashed
        if key not in self._blocks:
            entities = self.document.blocks.get(name)
            if entities is None:
                raise ValueError("a symbol of a block that is not in the file")
            self._within.append(name.lower())
            try:
                self._blocks[key] = self.taken(entities, name, layer=layer, dashed=dashed)
            finally:
                self._within.pop()
        return self._blocks[key]

    def _loose(self, line: Loose, into: Pieces, *, layer: str, dashed: bool) -> None:
        own = self._text(line.layer)
        name = layer if own == "0" and layer else own
        if name in self.hidden:
            return
        dashed = dashed or self._dashed(self._text(line.linetype) or "BYLAYER", own)
        if line.closed and len(line.points) > 2:
            self._ring(list(line.points), into, name=name, dashed=dashed)
        else:
            self._strokes(line.points, into, name=name, dashed=dashed, curve=False)

    def _curve(self, entity: Any, kind: str, into: Pieces, *, name: str, dashed: bool) -> None:
        role, layer = self.role(name), self.plain(name)
        if role is Role.PAPER and kind in _ROUND:
            into.aside["curve on a layer of furniture, hatching or notes"] += 1
            return
        points = points_of(entity, kind)
        if kind == "ARC":
            into.swings.append(swing_of(entity, layer, role))
            if role is Role.OPENING:
                return
        closed = len(points) > 3 and points[0] == points[-1]
        width = width_of(entity, kind)
        if width:
            ends = tuple(points[:-1] if closed else points)
            into.bands.append(Band(ends, width, layer, role, dashed, closed))
        elif closed:
            self._ring(points[:-1], into, name=name, dashed=dashed)
        else:
            self._strokes(points, into, name=name, dashed=dashed, curve=kind == "ARC")

    def _strokes(self, points: Iterable[Point], into: Pieces, *, name: str, dashed: bool,
                 curve: bool) -> None:  # fmt: skip
        layer, role = self.plain(name), self.role(name)
        for start, end in pairwise(points):
            if start != end:
                into.strokes.append(Stroke(start, end, layer, role, dashed, "", curve))

    def _ring(self, points: list[Point], into: Pieces, *, name: str, dashed: bool) -> None:
        role, layer = self.role(name), self.plain(name)
        clean = tuple(p for p, q in zip(points, points[1:] + points[:1], strict=True) if p != q)
        if len(clean) < 2:
            return
        into.rings.append(Ring(clean, layer, role, dashed))
        for start, end in zip(clean, clean[1:] + clean[:1], strict=True):
            into.strokes.append(Stroke(start, end, layer, role, dashed))

    def _dashed(self, linetype: str, layer: str) -> bool:
        name = linetype.upper()
        if name in {"BYLAYER", "BYBLOCK"}:
            return self._dashed_layer(layer)
        return any(word in self.plain(name) for word in _DASHES)

    def _is_dashed_layer(self, layer: str) -> bool:
        layers = self.document.layers
        name = str(layers.get(layer).dxf.linetype).upper() if layer in layers else ""
        return any(word in self.plain(name) for word in _DASHES)

    def _decoded(self, text: bytes) -> str:
        from ezdxf.lldxf.encoding import decode_dxf_unicode

        encoding = "utf-8" if self.document.dxfversion >= "AC1021" else self.document.encoding
        return str(decode_dxf_unicode(text.decode(encoding, "surrogateescape")))


def _boxed(name: str, strokes: list[Stroke], role: Role) -> Block:
    points = [p for s in strokes for p in (s.start, s.end)]
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return Block(name, (min(xs), min(ys)), (max(xs), max(ys)), role)


def gather(document: Drawing, bulk: Bulk, repairs: tuple[str, ...] = ()) -> Sheet:
    """Everything of the model space that a floor can be read from, in drawing units."""
    gatherer = Gatherer(document, bulk)
    found = gatherer.taken(document.modelspace(), "")
    if not found.strokes and not found.bands:
        for sheet in document.layouts:
            if sheet.is_any_paperspace:
                found.add(PLAIN.set(gatherer.taken(sheet, str(sheet.block_record_name)), ""))
        if found.strokes:
            repairs = (*repairs, "The model space is empty: the paper sheets were read instead.")
    found.skipped.update(bulk.spoilt)
    hatches = bulk.dropped["HATCH"] + bulk.dropped["MPOLYGON"]
    if hatches:
        found.aside["hatch"] += hatches
    return Sheet(
        strokes=tuple(found.strokes),
        swings=tuple(s for s in found.swings if isfinite(s.radius)),
        rings=tuple(found.rings),
        bands=tuple(found.bands),
        words=tuple(found.words),
        measures=tuple(found.measures),
        blocks=tuple(found.blocks),
        header_code=header_code(document),
        inch_letters=inch_letters(document),
        north_deg=north_deg(document),
        skipped=tuple(sorted(found.skipped.items())),
        aside=tuple(sorted(found.aside.items())),
        repairs=repairs,
    )


def _each(entities: Iterable[Any], into: Pieces) -> Iterator[Any]:
    iterator = iter(entities)
    while True:
        try:
            yield next(iterator)
        except StopIteration:
            return
        except (Refused, MemoryError):
            raise
        except Exception:  # what cannot be taken apart ends here, and is counted
            into.skipped["INSERT"] += 1
            return
