"""Joins loose glyphs and runs of text to the words that a person reads on the page.

Some programs write a text element for each glyph, some one for each line, and PDF pages know
glyphs alone. Runs are joined along their own baseline by the gaps between them.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from math import cos, radians, sin

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.sheet import Words

CAPITAL = 0.72
"""Height of capitals in ems of a usual face (from memory)."""
MOST_RUNS = 60_000
_FARTHEST = 1e9
_NARROW = set("iIl1jt.,;:!|'`()[]{}/\\ ")
_TOUCH_EM = 0.24
_DIGITS_EM = 0.5  # between figures, which some faces set as wide as a capital
_SPACE_EM = 0.9
_ASIDE_EM = 0.25


@dataclass(frozen=True)
class Run:
    """Text that starts at a place on the page; `size` is its em, `width` its length if known."""

    text: str
    at: Point
    size: float
    turned_deg: float
    layer: str = ""
    width: float | None = None

    @property
    def length(self) -> float:
        """How far it reaches along its baseline: as told, or by usual widths of letters."""
        return self.width if self.width is not None else usual_width(self.text) * self.size


def usual_width(text: str) -> float:
    """Length of a text in ems, by the usual widths of letters (from memory): good to a fifth."""
    return sum(_letter_width(letter) for letter in text)


def words_of(runs: Sequence[Run]) -> list[Words]:
    """Lines of lettering, each placed by its middle; blank runs only part or join others."""
    kept = [run for run in runs[:MOST_RUNS] if _is_sound(run) and not _is_filler(run.text)]
    lines: dict[tuple[int, str], list[Run]] = {}
    for run in kept:
        lines.setdefault((round(run.turned_deg) % 360, run.layer), []).append(run)
    found = []
    for group in lines.values():
        for row in _rows(group):
            found += [_words(part) for part in _parts(row)]
    return [words for words in found if words.text]


def _is_sound(run: Run) -> bool:
    figures = (*run.at, run.size, run.turned_deg, run.length)
    return run.size > 0 and all(abs(figure) < _FARTHEST for figure in figures)


def _letter_width(letter: str) -> float:
    if letter in _NARROW:
        return 0.28
    if letter.isupper():
        return 0.88 if letter in "MW" else 0.68
    return 0.56


def _is_filler(text: str) -> bool:
    """Blanks that only move a pen: more than one, or none."""
    return not text.strip() and text not in {" ", "\u00a0"}


def _along(run: Run) -> tuple[float, float]:
    """How far along and how far up a run starts in the frame of its own turning."""
    turn = radians(run.turned_deg)
    x, y = run.at
    return x * cos(turn) + y * sin(turn), -x * sin(turn) + y * cos(turn)


def _rows(runs: Sequence[Run]) -> list[list[Run]]:
    """Runs of one baseline together."""
    rows: list[list[Run]] = []
    for run in sorted(runs, key=lambda run: _along(run)[1]):
        up = _along(run)[1]
        if rows and abs(up - _along(rows[-1][-1])[1]) < _ASIDE_EM * min(
            run.size, rows[-1][-1].size
        ):
            rows[-1].append(run)
        else:
            rows.append([run])
    return rows


def _parts(row: Sequence[Run]) -> list[list[tuple[str, Run]]]:
    """A row cut where its gaps are wider than between words: (text with its blank before, run)."""
    parts: list[list[tuple[str, Run]]] = []
    end = 0.0
    for run in sorted(row, key=lambda run: _along(run)[0]):
        start = _along(run)[0]
        gap = (start - end) / run.size
        if parts and -0.6 < gap <= _SPACE_EM and _alike(parts[-1][-1][1], run):
            touch = _DIGITS_EM if _in_number(parts[-1][-1][0], run.text) else _TOUCH_EM
            blank = " " if gap > touch and not _ends_blank(parts[-1]) else ""
            parts[-1].append((blank + run.text, run))
        else:
            parts.append([(run.text, run)])
        end = start + run.length
    return parts


def _in_number(before: str, after: str) -> bool:
    """Whether two pieces of text meet inside of a number."""
    figures = "0123456789.,"
    return before[-1:] in figures and after[:1] in figures and bool(before and after)


def _alike(first: Run, second: Run) -> bool:
    return 0.6 < first.size / second.size < 1.67


def _ends_blank(part: Sequence[tuple[str, Run]]) -> bool:
    return part[-1][0].endswith((" ", "\u00a0"))


def _words(part: Sequence[tuple[str, Run]]) -> Words:
    text = re.sub(r"\s+", " ", "".join(text for text, _ in part)).strip()
    inked = [run for _, run in part if run.text.strip()] or [run for _, run in part]
    first, last = inked[0], inked[-1]
    size = max(run.size for run in inked)
    turn = radians(first.turned_deg)
    start, up = _along(first)
    middle = (start + _along(last)[0] + last.length) / 2
    rise = up + CAPITAL * size / 2
    at = middle * cos(turn) - rise * sin(turn), middle * sin(turn) + rise * cos(turn)
    return Words(text, at, CAPITAL * size, first.turned_deg % 360, first.layer)
