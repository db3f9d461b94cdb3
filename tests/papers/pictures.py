"""Looking at SVG text in tests: its words with the room they take, its colours."""

from __future__ import annotations

import re
from dataclasses import dataclass
from xml.etree import ElementTree

from farwall.papers.lettering import text_width

SVG = "{http://www.w3.org/2000/svg}"


@dataclass(frozen=True)
class Word:
    """One line of text with the box it is estimated to take, in units of the drawing."""

    text: str
    box: tuple[float, float, float, float]
    size: float


def parsed(svg: str) -> ElementTree.Element:
    return ElementTree.fromstring(svg)


def words(svg: str) -> list[Word]:
    """Every line of text, groups' shifts added."""
    found: list[Word] = []
    _walk(parsed(svg), 0.0, 0.0, found)
    return found


def _walk(node: ElementTree.Element, dx: float, dy: float, found: list[Word]) -> None:
    shift = re.match(r"translate\(([-\d.]+) ([-\d.]+)\)", node.get("transform", ""))
    if shift:
        dx, dy = dx + float(shift[1]), dy + float(shift[2])
    if node.tag == f"{SVG}text":
        text = node.text or ""
        size = float(node.get("font-size", "0"))
        wide = text_width(text, size, bold=node.get("font-weight") == "700")
        x, y = float(node.get("x", "0")) + dx, float(node.get("y", "0")) + dy
        left = x - {"middle": wide / 2, "end": wide}.get(node.get("text-anchor", ""), 0.0)
        found.append(Word(text, (left, y - 0.74 * size, left + wide, y + 0.22 * size), size))
    for child in node:
        _walk(child, dx, dy, found)


def overlaps(found: list[Word]) -> list[tuple[str, str]]:
    """Pairs of words that lie on each other by more than a hair."""
    hair = 0.6
    pairs = []
    for k, a in enumerate(found):
        for b in found[k + 1 :]:
            across = min(a.box[2], b.box[2]) - max(a.box[0], b.box[0])
            down = min(a.box[3], b.box[3]) - max(a.box[1], b.box[1])
            if across > hair and down > hair:
                pairs.append((a.text, b.text))
    return pairs


def outside(found: list[Word], svg: str) -> list[str]:
    """Words that stick out of the drawing."""
    left, top, width, height = (float(v) for v in parsed(svg).get("viewBox", "").split())
    return [
        w.text
        for w in found
        if w.box[0] < left - 0.6
        or w.box[1] < top - 0.6
        or w.box[2] > left + width + 0.6
        or w.box[3] > top + height + 0.6
    ]


def colours(svg: str) -> set[str]:
    return set(re.findall(r'(?:fill|stroke)="(#[0-9a-fA-F]{6})"', svg))
