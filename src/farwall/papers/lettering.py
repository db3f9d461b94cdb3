"""How wide words are, and how they break: all that placing text without overlap needs.

What is measured, broken or shortened is the text as it is said in the language of the paper.

Widths are those of the font that the papers carry, in thousandths of the
type size; a screen's own sans may run wider, which `Lettering.widen` allows
for. A test holds the table to the font file.
"""

from __future__ import annotations

from functools import lru_cache

from farwall.nouns import dataclass
from farwall.phrasebook import told

_REGULAR = (
    260, 267, 401, 646, 572, 823, 730, 221, 296, 296, 552, 572, 245, 322, 266, 367, 572, 572, 572,
    572, 572, 572, 572, 572, 572, 572, 266, 266, 572, 572, 572, 429, 899, 633, 648, 631, 729, 556,
    516, 728, 738, 279, 267, 614, 519, 903, 754, 779, 602, 779, 618, 549, 553, 728, 595, 926, 577,
    560, 571, 329, 367, 329, 542, 448, 577, 556, 613, 476, 613, 561, 339, 548, 614, 253, 253, 525,
    253, 930, 614, 604, 613, 613, 408, 477, 353, 614, 501, 778, 524, 504, 468, 379, 551, 379, 572,
)  # fmt: skip
_BOLD = (
    260, 286, 472, 646, 571, 901, 750, 266, 339, 339, 545, 571, 290, 322, 285, 413, 571, 571, 571,
    571, 571, 571, 571, 571, 571, 571, 285, 290, 571, 571, 571, 477, 897, 690, 672, 637, 740, 560,
    549, 724, 765, 331, 331, 664, 565, 943, 813, 796, 628, 796, 660, 551, 579, 756, 650, 967, 667,
    624, 579, 331, 413, 331, 532, 411, 607, 604, 633, 514, 633, 591, 387, 565, 657, 305, 305, 620,
    305, 982, 657, 619, 633, 633, 454, 497, 434, 657, 569, 856, 578, 569, 488, 394, 551, 394, 571,
)  # fmt: skip
_OTHER_LATIN = 650
_WIDE = 1000
_FIRST, _LAST, _LAST_LATIN = 32, 126, 0x24F

LINE_HEIGHT = 1.2
"""Distance of two baselines, in type sizes."""


@dataclass(frozen=True)
class Lettering:
    """Type of one drawing: its sizes in the drawing's units, its family, its spare width."""

    small: float
    body: float
    head: float
    title: float
    family: str
    widen: float = 1.0


PAPER_LETTERING = Lettering(
    small=9, body=11, head=15, title=26, family="Open Sans, sans-serif", widen=1.02
)
SCREEN_LETTERING = Lettering(
    small=12,
    body=14,
    head=19,
    title=22,
    family="system-ui, DejaVu Sans, Verdana, sans-serif",
    widen=1.12,
)


def text_width(text: str, size: float, *, bold: bool = False) -> float:
    """Width of one line of text, in the unit of `size`."""
    return _width(told(text), size, bold=bold)


def _width(text: str, size: float, *, bold: bool) -> float:
    return size / 1000 * _thousandths(text, bold)


@lru_cache(maxsize=4096)
def _thousandths(text: str, bold: bool) -> int:  # noqa: FBT001 - a cache key, not an option
    table = _BOLD if bold else _REGULAR
    return sum(_advance(ord(letter), table) for letter in text)


def _advance(code: int, table: tuple[int, ...]) -> int:
    if _FIRST <= code <= _LAST:
        return table[code - _FIRST]
    return _OTHER_LATIN if code <= _LAST_LATIN else _WIDE


def wrap(text: str, width: float, size: float, *, bold: bool = False) -> tuple[str, ...] | None:
    """The text in lines no wider than `width`, broken at spaces; None if a word is wider."""
    lines: list[str] = []
    for word in told(text).split():
        if _width(word, size, bold=bold) > width:
            return None
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and _width(longer, size, bold=bold) <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    return tuple(lines)


def clipped(text: str, width: float, size: float, *, bold: bool = False) -> str:
    """The text, shortened with an ellipsis where it is wider than `width`."""
    text = told(text)
    if _width(text, size, bold=bold) <= width:
        return text
    while text and _width(text + "…", size, bold=bold) > width:
        text = text[:-1].rstrip()
    return text + "…"
