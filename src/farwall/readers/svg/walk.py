"""Walks an SVG from its root: each thing drawn, with its frame, its style and its layer's name.

Symbols that are used are followed, but only so deep and so often; nothing outside the file is.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import field, replace
from functools import lru_cache

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.readers.lines.matrices import Matrix, times
from farwall.readers.lines.roles import role_of
from farwall.readers.lines.sheet import Role
from farwall.readers.svg.frames import fitted, transform, view_box
from farwall.readers.svg.shapes import SHAPES, View
from farwall.readers.svg.style import Sheets, Style, styled
from farwall.readers.svg.tree import Node
from farwall.readers.svg.units import length

MOST_DRAWN = 150_000
DEEPEST_USE = 12
_GROUPS = {"svg", "g", "a"}
_NOT_DRAWN = """defs clipPath mask pattern marker linearGradient radialGradient metadata title desc
style script filter symbol namedview view animate set animateTransform font font-face cursor RDF
guide grid path-effect solidcolor"""
_SILENT = frozenset(_NOT_DRAWN.split())
_KINDS = {"image": "picture", "foreignObject": "piece of foreign content",
          "textPath": "line of lettering along a path"}  # fmt: skip


@dataclass(frozen=True)
class Layer:
    """What the names around an element say: the name that tells a role, and the role."""

    name: str = ""
    role: Role = Role.OTHER


@dataclass(frozen=True)
class Drawn:
    """A shape or a text with all that holds for it."""

    node: Node
    matrix: Matrix
    style: Style
    layer: Layer
    view: View


@dataclass(frozen=True)
class _Place:
    matrix: Matrix
    style: Style
    layer: Layer
    view: View
    used: tuple[str, ...] = ()


@dataclass
class Walker:
    """`things` are met in the order they are painted; `aside` counts what was passed over."""

    root: Node
    sheets: Sheets
    aside: Counter[str] = field(default_factory=Counter)
    outside: Counter[str] = field(default_factory=Counter)
    _seen: int = 0

    def __post_init__(self) -> None:
        self._by_id = {node.get("id"): node for node in _all(self.root) if node.get("id")}

    def things(self, matrix: Matrix, view: View) -> Iterator[Drawn]:
        """Everything that is drawn; `matrix` is the frame of the root's own content."""
        place = _Place(matrix, styled(Style(), self.root, self.sheets), Layer(), view)
        stack = [(child, place) for child in reversed(self.root.children)]
        while stack:
            node, around = stack.pop()
            self._count()
            if node.tag in _SILENT:
                continue
            inner = self._inside(node, around)
            if inner is None:
                continue
            if node.tag in SHAPES or node.tag == "text":
                yield Drawn(node, inner.matrix, inner.style, inner.layer, inner.view)
            elif node.tag == "use":
                stack += self._used(node, inner)
            elif node.tag in _GROUPS:
                stack += [(child, inner) for child in reversed(node.children)]
            elif node.tag == "switch":
                stack += [(child, inner) for child in node.children[:1]]
            else:
                self.aside[_KINDS.get(node.tag, f"<{node.tag[:40]}>")] += 1

    def _count(self) -> None:
        self._seen += 1
        if self._seen > MOST_DRAWN:
            what = f"The drawing sets more than {MOST_DRAWN:,} things, its symbols counted out."
            raise Refused(Mistake("", what, "Save the floor plan alone into a file of its own."))

    def _inside(self, node: Node, around: _Place) -> _Place | None:
        """What holds inside of an element; None where it does not show or has no frame."""
        style = styled(around.style, node, self.sheets)
        if not style.shown:
            return None
        try:
            matrix = times(around.matrix, transform(node.get("transform")))
            if node.tag == "svg":
                shift = self._lengths(node, ("x", "y"), around.view, "0")
                matrix = times(matrix, (1.0, 0.0, 0.0, 1.0, *shift))
                matrix, view = self._viewport(node, node, matrix, around.view)
            else:
                view = around.view
        except ValueError:
            self.aside["frame that cannot be read"] += 1
            return None
        return _Place(matrix, style, _layer_of(node, around.layer), view, around.used)

    def _of_symbol(
        self, symbol: Node, setter: Node, place: _Place, link: str
    ) -> list[tuple[Node, _Place]]:
        inner = self._inside(symbol, place)
        if inner is None:
            return []
        matrix, view = self._viewport(symbol, setter, inner.matrix, inner.view)
        used = replace(inner, matrix=matrix, view=view, used=(*place.used, link))
        return [(child, used) for child in reversed(symbol.children)]

    def _viewport(
        self, node: Node, setter: Node, matrix: Matrix, view: View
    ) -> tuple[Matrix, View]:
        """The frame inside of a nested drawing or symbol; `setter` says how large it is."""
        size = self._lengths(setter, ("width", "height"), view, "100%")
        box = view_box(node.get("viewBox"))
        if box is None:
            return matrix, size
        inner = fitted(box, size, node.get("preserveAspectRatio"))
        return times(matrix, inner), (box.wide, box.high)

    def _lengths(self, node: Node, names: tuple[str, str], view: View, missing: str) -> View:
        found = [
            length(node.get(name, missing) or missing, whole=whole)
            for name, whole in zip(names, view, strict=True)
        ]
        if found[0] is None or found[1] is None:
            raise ValueError("no length")
        return found[0], found[1]

    def _used(self, node: Node, place: _Place) -> list[tuple[Node, _Place]]:
        """What a `use` sets, one level in; loops and links to other files end here."""
        link = node.get("href").strip()
        if not link.startswith("#"):
            self.outside[link.partition("#")[0][:80]] += 1
            return []
        target = self._by_id.get(link[1:])
        if target is None:
            self.aside["symbol that is not in the file"] += 1
            return []
        if link in place.used or len(place.used) >= DEEPEST_USE:
            self.aside["symbol that holds itself"] += 1
            return []
        try:
            shift = self._lengths(node, ("x", "y"), place.view, "0")
            matrix, view = times(place.matrix, (1.0, 0.0, 0.0, 1.0, *shift)), place.view
            if target.tag == "symbol":
                return self._of_symbol(target, node, replace(place, matrix=matrix), link)
        except ValueError:
            self.aside["frame that cannot be read"] += 1
            return []
        return [(target, _Place(matrix, place.style, place.layer, view, (*place.used, link)))]


def _all(root: Node) -> Iterator[Node]:
    stack = [root]
    while stack:
        node = stack.pop()
        yield node
        stack += reversed(node.children)


def style_texts(root: Node) -> list[str]:
    """What stands in the style elements."""
    return [node.text for node in _all(root) if node.tag == "style"]


def _layer_of(node: Node, around: Layer) -> Layer:
    """The nearest name that tells what is drawn: label, class, id, from the inside out."""
    label, classes, own = node.get("label"), node.get("class"), node.get("id")
    for name in (label, classes, own):
        role = _role(name) if name else Role.OTHER
        if role is not Role.OTHER:
            return Layer(name[:80], role)
    if around.role is Role.OTHER and node.tag in _GROUPS and (label or own):
        return Layer((label or own)[:80])
    return around


@lru_cache(maxsize=4096)
def _role(name: str) -> Role:
    return role_of(name)
