"""A floor as SVG: a group to a kind, one unit a metre, what is told in an attribute of each path.

`data-farwall` of the root tells of the whole floor, of each path of its thing. The sheet prints at
1:100. Storeys stand side by side; their paths keep their own metres, the shift is the group's.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from farwall.job.carried import Piece, about_of, pieces_of, words_of
from farwall.papers.exchange.layers import (
    LAYERS,
    NAMES,
    NORTH,
    Layer,
    dry_of,
    name_spot,
    storeys_of,
)
from farwall.papers.ink import INK, WHITE
from farwall.papers.svg import number, plain
from farwall.papers.xml_text import escape, quoteattr

Box = tuple[float, float, float, float]
_MARGIN_M, _BETWEEN_M, _FOOT_M = 1.0, 2.0, 1.2
_LETTER_M = 0.22
_MM_PER_M = 10
"""Millimetres of paper to a metre of floor: 1:100."""


def svg_bytes(collection: Mapping[str, Any]) -> bytes:
    """The collection as an SVG file in UTF-8; y points down there, as the format has it."""
    pieces = list(pieces_of(collection))
    storeys = storeys_of(pieces)
    placed = list(zip(range(len(pieces)), pieces, storeys, strict=True))
    sheet = _Sheet(pieces, storeys)
    parts = [sheet.head(collection)]
    for kind, layer in LAYERS.items():
        found = [one for one in placed if one[1].kind == kind]
        if found:
            parts += [f'<g id="{layer.name.lower()}"{_ways(layer)}>', *sheet.group(found), "</g>"]
    parts += sheet.names()
    parts += sheet.foot(collection.get("north_deg"))
    return "\n".join([*parts, "</svg>\n"]).encode("utf-8", "replace")


def _ways(layer: Layer) -> str:
    ways = f' fill="{layer.fill}" fill-rule="evenodd" stroke="{layer.ink}"'
    ways += f' stroke-width="{layer.width_m:g}"'
    return ways + (f' stroke-dasharray="{layer.dash_m}"' if layer.dash_m else "")


def _box(pieces: Sequence[Piece]) -> Box:
    points = [point for piece in pieces for line in piece.lines for point in line]
    xs, ys = [x for x, _ in points] or [0.0], [y for _, y in points] or [0.0]
    return min(xs), min(ys), max(xs), max(ys)


class _Sheet:
    """Where each storey lies on the sheet, and what is written there."""

    def __init__(self, pieces: Sequence[Piece], storeys: Sequence[str]) -> None:
        self.pieces, self.storeys = pieces, storeys
        self.known = list(dict.fromkeys(s for p, s in zip(pieces, storeys, strict=True)
                                        if p.kind == "room")) or [""]  # fmt: skip
        boxes = [_box(self._on(storey)) for storey in self.known]
        self.height = max(top - low for _, low, _, top in boxes) + 2 * _MARGIN_M + _FOOT_M
        self.shifts: dict[str, tuple[float, float]] = {}
        right = _MARGIN_M
        for storey, (west, _, east, top) in zip(self.known, boxes, strict=True):
            self.shifts[storey] = (right - west, _MARGIN_M + top)
            right += east - west + _BETWEEN_M
        self.width = max(right - _BETWEEN_M + _MARGIN_M, 6.0)

    def _on(self, storey: str) -> list[Piece]:
        placed = zip(self.pieces, self.storeys, strict=True)
        return [piece for piece, on in placed if on == storey or on not in self.known]

    def head(self, collection: Mapping[str, Any]) -> str:
        wide, high = number(self.width), number(self.height)
        told = words_of(about_of(collection))
        name = escape(plain(str(collection.get("name") or "Floor")))
        rooms = [p for p in self.pieces if p.kind == "room"]
        desc = f"{len(rooms)} rooms in layers; one unit is a metre, printed at 1:100."
        return (
            '<svg xmlns="http://www.w3.org/2000/svg"'
            f" data-farwall={quoteattr(told)}"
            f' viewBox="0 0 {wide} {high}" width="{number(self.width * _MM_PER_M)}mm"'
            f' height="{number(self.height * _MM_PER_M)}mm" font-family="sans-serif"'
            f' stroke-linejoin="round" role="img">\n<title>{name}</title>\n<desc>{desc}</desc>\n'
            f'<rect width="{wide}" height="{high}" fill="{WHITE}"/>'
        )

    def _place(self, storey: str) -> str:
        right, down = self.shifts.get(storey, self.shifts[self.known[0]])
        return f'<g transform="matrix(1 0 0 -1 {number(right)} {number(down)})">'

    def group(self, found: Sequence[tuple[int, Piece, str]]) -> list[str]:
        """The paths of one kind, storey by storey."""
        parts: list[str] = []
        for storey in dict.fromkeys(on for _, _, on in found):
            parts.append(self._place(storey))
            parts += [_drawn(place, piece) for place, piece, on in found if on == storey]
            parts.append("</g>")
        return parts

    def names(self) -> list[str]:
        """The rooms' names, upright."""
        dry = dry_of(self.pieces)
        letters = f' font-size="{_LETTER_M}" text-anchor="middle"'
        parts = [f'<g id="{NAMES.lower()}" fill="{INK}"{letters}>']
        for piece, storey in zip(self.pieces, self.storeys, strict=True):
            if piece.kind == "room":
                right, down = self.shifts[storey]
                spot_x, spot_y = name_spot(piece, dry)
                name = plain(str(piece.properties.get("name") or piece.properties["id"]))
                x, y = number(spot_x + right), number(down - spot_y + _LETTER_M / 3)
                parts.append(f'<text x="{x}" y="{y}">{escape(name)}</text>')
        return [*parts, "</g>"]

    def foot(self, north_deg: float | None) -> list[str]:
        """A scale bar of two metres, and north where it is known."""
        low = self.height - _MARGIN_M / 2
        x, y = number(_MARGIN_M), number(low)
        lettered = f'font-size="{_LETTER_M}" fill="{INK}" stroke="none"'
        drawn = f'stroke="{INK}" stroke-width="0.03" fill="none"'
        at = f'x="{number(_MARGIN_M + 2.1)}" y="{number(low + _LETTER_M / 3)}"'
        parts = [
            f'<g id="scale-bar" {drawn}>',
            f'<path d="M{x},{number(low - 0.1)}v0.2m0,-0.1h2m0,-0.1v0.2"/>',
            f"<text {at} {lettered}>2 m</text>",
            "</g>",
        ]
        if north_deg is not None:
            turned = f"translate({number(_MARGIN_M + 3.6)} {y}) rotate({number(north_deg)})"
            parts += [
                f'<g id="{NORTH.lower()}" transform="{turned}" {drawn}>',
                '<path d="M0,0.4V-0.4M-0.12,-0.2L0,-0.4L0.12,-0.2"/>',
                f'<text y="-0.45" text-anchor="middle" {lettered}>N</text>',
                "</g>",
            ]
        return parts


def _drawn(place: int, piece: Piece) -> str:
    """A path with its own words; `piece` is its place in the collection."""
    told = words_of({"piece": place, "closed": piece.closed, **piece.properties})
    return f"<path d={quoteattr(_path(piece))} data-farwall={quoteattr(told)}/>"


def _path(piece: Piece) -> str:
    """Path data with every digit: what is read back is the same number."""
    return " ".join(
        "M"
        + " ".join(f"{x!r},{y!r}" for x, y in (line[:-1] if piece.closed else line))
        + ("Z" if piece.closed else "")
        for line in piece.lines
    )
