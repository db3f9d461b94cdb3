"""Lettering of an SVG as runs, each with its place on the page."""

from __future__ import annotations

import re
from collections.abc import Iterator
from math import atan2, degrees, hypot

from farwall.nouns import dataclass
from farwall.readers.lines.lettering import Run, usual_width
from farwall.readers.lines.matrices import placed
from farwall.readers.svg.style import Sheets, Style, styled
from farwall.readers.svg.tree import Node
from farwall.readers.svg.units import length
from farwall.readers.svg.walk import Drawn

_DEEPEST = 8
_BLANKS = re.compile(r"[ \t\r\n]+")


@dataclass
class _Caret:
    """Where the next letter stands, in the text's own frame."""

    x: float = 0.0
    y: float = 0.0


def runs_of(thing: Drawn, sheets: Sheets) -> list[Run]:
    """The runs of a `text` element, with its spans, each where it starts on the page."""
    caret = _Caret()
    runs = []
    for text, style, x, y in _chunks(thing.node, thing.style, sheets, caret, 0):
        wide = usual_width(text) * style.font_size
        shift = {"middle": -wide / 2, "end": -wide}.get(style.anchor, 0.0)
        runs.append(_run(thing, text, style.font_size, x + shift, y))
    return runs


def _run(thing: Drawn, text: str, size: float, x: float, y: float) -> Run:
    a, b, _, _, _, _ = thing.matrix
    start = placed(thing.matrix, (x, y))
    along, upright = placed(thing.matrix, (x + 1, y)), placed(thing.matrix, (x, y - 1))
    turned = degrees(atan2(along[1] - start[1], along[0] - start[0]))
    tall = hypot(upright[0] - start[0], upright[1] - start[1])
    wide = usual_width(text) * size * hypot(a, b)
    return Run(text, start, size * tall, turned, thing.layer.name, wide)


def _chunks(
    node: Node, style: Style, sheets: Sheets, caret: _Caret, depth: int
) -> Iterator[tuple[str, Style, float, float]]:
    """Text, its style and its place, in order; glyphs that are placed singly come singly."""
    if not style.shown or depth > _DEEPEST:
        return
    xs, ys = _list(node, "x", style), _list(node, "y", style)
    caret.x = (xs[0] if xs else caret.x) + sum(_list(node, "dx", style)[:1])
    caret.y = (ys[0] if ys else caret.y) + sum(_list(node, "dy", style)[:1])
    yield from _plain(node.text, style, caret, xs)
    for child in node.children:
        if child.tag in {"tspan", "a"}:
            yield from _chunks(child, styled(style, child, sheets), sheets, caret, depth + 1)
        yield from _plain(child.tail, style, caret, [])


def _plain(
    text: str, style: Style, caret: _Caret, xs: list[float]
) -> Iterator[tuple[str, Style, float, float]]:
    if not style.visible:
        return
    said = _BLANKS.sub(" ", text) if text.strip() else text.strip("\r\n\t")
    if len(xs) > 1:
        for letter, x in zip(said, xs, strict=False):
            yield letter, style, x, caret.y
        return
    if said:
        yield said, style, caret.x, caret.y
        caret.x += usual_width(said) * style.font_size


def _list(node: Node, name: str, style: Style) -> list[float]:
    parts = node.get(name).replace(",", " ").split()
    found = [length(part, font_size=style.font_size) for part in parts]
    return [value for value in found if value is not None]
