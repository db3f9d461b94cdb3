"""Writing SVG: numbers short, text escaped, every file with its title and description."""

from __future__ import annotations

import re
from collections.abc import Iterable

import numpy as np

from farwall.papers.ink import INK, WHITE
from farwall.papers.xml_text import escape, quoteattr
from farwall.phrasebook import told

_CASING = 3.0
_SPECIAL = re.compile(r"""[&<>"'\x00-\x1f\x7f]""")
_MINUS_ZERO, _ZEROS = re.compile(r"-0\.00"), re.compile(r"\.00|(?<=\.\d)0")
_LEGAL_CONTROLS = {"\t", "\n", "\r"}


def number(value: float) -> str:
    """A coordinate with at most two decimals."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def numbers(places: np.ndarray) -> str:
    """Rows of coordinates as `x,y x,y`, written as `number` writes them."""
    text = " ".join(["%.2f,%.2f"] * len(places)) % tuple(places.ravel().tolist())
    return _ZEROS.sub("", _MINUS_ZERO.sub("0", text))


def plain(text: str) -> str:
    """The text without the characters that XML 1.0 forbids."""
    if text.isprintable():
        return text
    return "".join(
        letter
        for letter in text
        if (letter >= " " or letter in _LEGAL_CONTROLS)
        and not "\ud800" <= letter <= "\udfff"
        and letter not in "\ufffe\uffff"
    )


def attributes(values: dict[str, object]) -> str:
    """XML attributes; `_` in a name stands for `-`, None leaves one out."""
    parts = []
    for name, value in values.items():
        if value is None:
            continue
        quoted = f'"{number(value)}"' if isinstance(value, int | float) else _quoted(str(value))
        parts.append(f" {name.replace('_', '-')}={quoted}")
    return "".join(parts)


def _quoted(text: str) -> str:
    """An attribute's value in quotes; path data is by far the most and has nothing to escape."""
    return quoteattr(plain(text)) if _SPECIAL.search(text) or not text.isascii() else f'"{text}"'


class Svg:
    """A drawing that grows element by element, in its own units, y downwards."""

    def __init__(self, *, width: float, height: float, family: str, ident: str = "") -> None:
        self.width = width
        self.height = height
        self.family = family
        self.ident = ident
        self.parts: list[str] = []

    def element(self, tag: str, **values: object) -> None:
        """An element without content."""
        self.parts.append(f"<{tag}{attributes(values)}/>")

    def open_group(self, **values: object) -> None:
        """Begin a group; `close_group` ends it."""
        self.parts.append(f"<g{attributes(values)}>")

    def close_group(self) -> None:
        """End the group begun last."""
        self.parts.append("</g>")

    def raw(self, markup: str) -> None:
        """Markup made elsewhere in this package (patterns, clip paths)."""
        self.parts.append(markup)

    def below(self, part: Svg, top: float) -> None:
        """Another drawing inside this one, `top` units below its upper edge."""
        self.raw(f'<g transform="translate(0 {number(top)})">\n{part}\n</g>')

    def line(self, points: Iterable[tuple[float, float]], **values: object) -> None:
        """A polyline without fill."""
        path = "M" + " ".join(f"{number(x)},{number(y)}" for x, y in points)
        self.element("path", d=path, **{"fill": "none", **values})

    def text(
        self,
        at: tuple[float, float],
        text: str,
        size: float,
        *,
        anchor: str = "middle",
        bold: bool = False,
        fill: str = INK,
        cased: bool = False,
    ) -> None:
        """One line of text, its baseline at `at`; cased: white around it, for dark ground."""
        values: dict[str, object] = {
            "x": at[0],
            "y": at[1],
            "font_size": size,
            "text_anchor": None if anchor == "start" else anchor,
            "font_weight": "700" if bold else None,
            "fill": None if fill == INK else fill,
        }
        if cased:
            values |= {
                "stroke": WHITE,
                "stroke_width": _CASING,
                "stroke_linejoin": "round",
                "paint_order": "stroke",
            }
        self.parts.append(f"<text{attributes(values)}>{escape(plain(told(text)))}</text>")

    def __str__(self) -> str:
        return "\n".join(self.parts)

    def document(self, *, title: str, description: str) -> str:
        """The whole file, with a title and a description for those who do not see it."""
        ident = self.ident or "drawing"
        head = (
            f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {number(self.width)}'
            f' {number(self.height)}" width="{number(self.width)}" height="{number(self.height)}"'
            f' role="img" aria-labelledby="{ident}-title {ident}-desc"'
            f' font-family={quoteattr(self.family)} fill="{INK}"'
            ' style="font-variant-numeric: tabular-nums">'
        )
        return "\n".join(
            [
                head,
                f'<title id="{ident}-title">{escape(plain(told(title)))}</title>',
                f'<desc id="{ident}-desc">{escape(plain(told(description)))}</desc>',
                *self.parts,
                "</svg>\n",
            ]
        )
