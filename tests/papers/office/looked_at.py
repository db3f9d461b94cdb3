"""A PDF looked at by poppler: tagging, fonts, words with their boxes."""

from __future__ import annotations

import re
import shutil
import subprocess
from dataclasses import dataclass
from xml.etree import ElementTree

import pytest
import shapely

from farwall.papers.run_sheet.margins import MARGIN_PT

_XHTML = "{http://www.w3.org/1999/xhtml}"
LINE_PT = 5.0
"""Middles of words that lie nearer than this are of one line, whatever their scripts."""
HAIR_PT = 0.6
"""What two words may share: rounding of the boxes, and italics of other scripts."""


@dataclass(frozen=True)
class Word:
    """A word of a page with its box: left, top, right, bottom, in points from the upper left."""

    text: str
    left: float
    top: float
    right: float
    low: float

    @property
    def core(self) -> shapely.Polygon:
        """The middle of its box: ascent and descent of a font lie on the lines beside it."""
        high = self.low - self.top
        return shapely.box(self.left, self.top + 0.28 * high, self.right, self.low - 0.28 * high)


@dataclass(frozen=True)
class Sheet:
    """A page: its size and its words."""

    width: float
    height: float
    words: tuple[Word, ...]


def poppler(tool, pdf, *options):
    """What a tool of poppler says of a PDF, which it reads from a pipe."""
    if shutil.which(tool) is None:
        pytest.skip(f"{tool} is not here")
    done = subprocess.run([tool, *options], input=pdf, capture_output=True, check=True)
    return done.stdout.decode("utf-8", "replace")


def is_tagged(pdf):
    """Whether pdfinfo calls it tagged."""
    return re.search(r"^Tagged:\s+yes", poppler("pdfinfo", pdf, "-"), re.MULTILINE) is not None


def fonts_not_embedded(pdf):
    """Lines of pdffonts whose font is not in the file."""
    lines = poppler("pdffonts", pdf, "-").splitlines()[2:]
    return [line for line in lines if line.split()[-5] != "yes"]


def sheets(pdf):
    """Every page with its words."""
    told = re.sub(r"[\x00-\x08\x0b-\x1f]", "", poppler("pdftotext", pdf, "-bbox", "-", "-"))
    found = []
    for page in ElementTree.fromstring(told).iter(f"{_XHTML}page"):
        words = tuple(
            Word(one.text or "", *(float(one.get(key)) for key in ("xMin", "yMin", "xMax", "yMax")))
            for one in page.iter(f"{_XHTML}word")
        )
        found.append(Sheet(float(page.get("width")), float(page.get("height")), words))
    return found


def on_each_other(sheet):
    """Pairs of words that share more than a hair."""
    boxes = [word.core for word in sheet.words]
    tree = shapely.STRtree(boxes)
    pairs = []
    for one, two in zip(*tree.query(boxes, "intersects"), strict=True):
        if one < two:
            left, top, right, low = boxes[one].intersection(boxes[two]).bounds
            if right - left > HAIR_PT and low - top > HAIR_PT:
                pairs.append((sheet.words[one].text, sheet.words[two].text))
    return pairs


def beyond(sheet, margin=MARGIN_PT):
    """Words that reach over a margin."""
    return [
        word.text
        for word in sheet.words
        if word.left < margin - 2 or word.right > sheet.width - margin + 2
        or word.top < margin - 6 or word.low > sheet.height - margin + 6
    ]  # fmt: skip


def foot_lines(sheet, foot_pt):
    """Words below `foot_pt` of a page's end, by line; words that cross into it."""
    edge = sheet.height - foot_pt
    crossing = [
        word.text for word in sheet.words if word.core.bounds[1] < edge < word.core.bounds[3]
    ]
    below = [word for word in sheet.words if word.core.bounds[1] >= edge]
    lines: list[list[Word]] = []
    for word in sorted(below, key=lambda one: (one.top + one.low) / 2):
        middle = (word.top + word.low) / 2
        last = lines[-1][0] if lines else None
        if last is None or middle - (last.top + last.low) / 2 > LINE_PT:
            lines.append([])
        lines[-1].append(word)
    told = [[word.text for word in sorted(one, key=lambda each: each.left)] for one in lines]
    return told, crossing
