"""How an element is shown: its own attributes, its style, and simple rules of a style sheet.

Cascading Style Sheets are taken as far as drawings use them: selectors of one element, class or
id, without nesting. Other selectors are counted, so that they can be told.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import field, replace
from functools import lru_cache

from farwall.nouns import dataclass
from farwall.readers.svg.tree import Node
from farwall.readers.svg.units import length, number

_RULE = re.compile(r"([^{}]+)\{([^{}]*)\}")
_IMPORT = re.compile(r"@import\s+(?:url\()?\s*[\"']?([^\"')\s;]+)")
_COMMENT = re.compile(r"/\*.*?\*/", re.DOTALL)
_SIMPLE = re.compile(r"\s*([\w-]*|\*)((?:[.#][\w-]+)*)\s*")
_INHERITED = ("visibility", "stroke", "fill", "stroke-width", "stroke-dasharray", "stroke-opacity",
              "fill-opacity", "font-size", "text-anchor")  # fmt: skip
_OWN = ("display", "opacity")
_ALL = (*_INHERITED, *_OWN)
_NAMED = {"white": "#ffffff", "black": "#000000", "red": "#ff0000", "blue": "#0000ff",
          "green": "#008000", "gray": "#808080", "grey": "#808080"}  # fmt: skip


@dataclass(frozen=True)
class Style:
    """What is in force at an element; `shown` is false where neither it nor its parents show."""

    values: Mapping[str, str] = field(default_factory=dict)
    shown: bool = True
    font_size: float = 16.0

    @property
    def visible(self) -> bool:
        """Whether strokes and letters set here are seen."""
        return self.shown and self.values.get("visibility", "visible") not in {"hidden", "collapse"}

    @property
    def stroke(self) -> str:
        """The colour of its lines, or nothing where none are drawn."""
        cover, width = self.values.get("stroke-opacity"), self.values.get("stroke-width")
        if cover is not None and number(cover, 1.0) <= 0:
            return ""
        if width is not None and length(width, font_size=self.font_size) == 0:
            return ""
        return colour(self.values.get("stroke", "none"))

    @property
    def fill(self) -> str:
        """The colour that its inside is filled with, black where the file says nothing."""
        cover = self.values.get("fill-opacity")
        if cover is not None and number(cover, 1.0) <= 0:
            return ""
        return colour(self.values.get("fill", "#000000"))

    @property
    def dashed(self) -> bool:
        """Whether its lines are broken."""
        dashes = re.findall(r"[\d.]+", self.values.get("stroke-dasharray", ""))
        return any(number(dash, 0.0) > 0 for dash in dashes)

    @property
    def anchor(self) -> str:
        """Where its letters stand from their place: start, middle or end."""
        return self.values.get("text-anchor", "start")


@dataclass(frozen=True)
class Sheets:
    """The rules of all style sheets inside the file, in their order, and what was missing."""

    rules: Mapping[str, list[tuple[str, frozenset[str], Mapping[str, str]]]]
    imports: tuple[str, ...] = ()
    passed_over: int = 0

    def of(self, node: Node) -> dict[str, str]:
        """What the rules say of an element, weakest selectors first: element, class, id."""
        if not self.rules:
            return {}
        marks = {f".{name}" for name in node.get("class").split()} | {f"#{node.get('id')}"}
        found: dict[str, str] = {}
        for key in ("", *sorted(marks, key=lambda mark: mark.startswith("#"))):
            for tag, needed, declared in self.rules.get(key, ()):
                if tag in {"", "*", node.tag} and needed <= marks:
                    found.update(declared)
        return found


def read_sheets(texts: list[str]) -> Sheets:
    """The rules in `style` elements."""
    rules: dict[str, list[tuple[str, frozenset[str], Mapping[str, str]]]] = {}
    imports: list[str] = []
    passed_over = 0
    for text in texts:
        plain = _COMMENT.sub("", text)
        imports += _IMPORT.findall(plain)
        for selectors, body in _RULE.findall(re.sub(r"@import[^;]*;", "", plain)):
            for selector in selectors.split(","):
                simple = _SIMPLE.fullmatch(selector)
                if simple is None:
                    passed_over += 1
                    continue
                marks = frozenset(re.findall(r"[.#][\w-]+", simple[2]))
                key = max(marks, key=lambda mark: mark.startswith("#"), default="")
                rules.setdefault(key, []).append((simple[1], marks, declarations(body)))
    return Sheets(rules, tuple(imports), passed_over)


def declarations(body: str) -> dict[str, str]:
    """`stroke:#000; fill:none` as pairs."""
    pairs = (part.partition(":") for part in body.split(";"))
    return {
        name.strip().lower(): value.replace("!important", "").strip() for name, _, value in pairs
    }


def styled(parent: Style, node: Node, sheets: Sheets) -> Style:
    """The style of an element within its parent's."""
    own: dict[str, str] = {key: node.attrs[key] for key in _ALL if key in node.attrs}
    own.update(sheets.of(node))
    if "style" in node.attrs:
        own.update(declarations(node.attrs["style"]))
    if not own:
        return parent
    shown = parent.shown and own.get("display", "") != "none"
    shown = shown and number(own.get("opacity", "1"), 1.0) > 0
    size = parent.font_size
    if "font-size" in own:
        size = length(own["font-size"], whole=parent.font_size, font_size=parent.font_size) or size
    told = {key: own[key] for key in _INHERITED if own.get(key, "inherit") != "inherit"}
    values = {**parent.values, **told} if told else parent.values
    return replace(parent, values=values, shown=shown, font_size=size)


@lru_cache(maxsize=1024)
def colour(text: str) -> str:
    """A colour as `#rrggbb`, nothing for none; a colour of another spelling as it stands."""
    plain = text.strip().lower()
    if plain in {"none", "transparent", ""}:
        return ""
    if re.fullmatch(r"#[0-9a-f]{3}", plain):
        return "#" + "".join(letter * 2 for letter in plain[1:])
    parts = re.fullmatch(r"rgba?\(\s*([\d.]+)\s*[, ]\s*([\d.]+)\s*[, ]\s*([\d.]+).*\)", plain)
    if parts:
        return "#" + "".join(f"{min(round(number(part, 0.0)), 255):02x}" for part in parts.groups())
    return _NAMED.get(plain, plain)
