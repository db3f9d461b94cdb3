"""Swatches on a ruler of lightness: sample, floor now, after the coat, after the habit.

It is read in grey: each row has its words and its place on the ruler. Lighter lies left, darker
right, for that is the way a floor goes.
"""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup, escape

from farwall.colour.swatch import hex_of_lab
from farwall.nouns import dataclass

INK, LINE, SOFT, DANGER = "#1f2a30", "#c8c2b6", "#6b6a64", "#9a3412"
_AROUND = 1.5


@dataclass(frozen=True)
class Row:
    """A colour with its words; low, high: 10 and 90 % of its lightness, None where it was seen."""

    name: str
    words: str
    lab: tuple[float, float, float]
    low: float | None = None
    high: float | None = None


@dataclass(frozen=True)
class Ruler:
    """All that is drawn: rows, the sample's lightness and its words, where too dark begins."""

    rows: Sequence[Row]
    sample_l: float
    sample_words: str
    dark_l: float
    dark_words: str

    @property
    def ends(self) -> tuple[float, float]:
        """The lightest and the darkest L* that are drawn."""
        every = [self.sample_l, self.dark_l]
        for row in self.rows:
            every += [row.lab[0], *(one for one in (row.low, row.high) if one is not None)]
        return max(every) + _AROUND, min(every) - _AROUND


@dataclass(frozen=True)
class _Laid:
    width: float
    row: float
    left: float
    swatch: tuple[float, float, float, float]
    bar_y: float
    name_at: tuple[float, float]
    words_at: tuple[float, float]


WIDE = _Laid(860, 52, 330, (246, 8, 64, 34), 25, (0, 21), (0, 38))
NARROW = _Laid(350, 78, 62, (0, 40, 50, 26), 53, (0, 16), (0, 32))
_HEAD = 40.0


def ruler(of: Ruler, kind: _Laid) -> Markup:
    """The drawing as SVG, for wide or narrow."""
    lightest, darkest = of.ends
    right = kind.width - 14

    def x(lightness: float) -> float:
        return kind.left + (lightest - lightness) / (lightest - darkest) * (right - kind.left)

    height = _HEAD + kind.row * len(of.rows) + 26
    parts = [_lines(of, x, height)]
    parts += [_row(row, kind, x, _HEAD + kind.row * n) for n, row in enumerate(of.rows)]
    parts.append(_scale(x, lightest, darkest, height, right))
    return Markup(
        '<svg viewBox="0 0 {w:.0f} {h:.0f}" role="img" aria-hidden="true" '
        'font-family="system-ui, DejaVu Sans, sans-serif">{inner}</svg>'
    ).format(w=kind.width, h=height, inner=Markup("").join(parts))


def _lines(of: Ruler, x, height: float) -> Markup:  # type: ignore[no-untyped-def]
    at, dark = x(of.sample_l), x(of.dark_l)
    return Markup(
        '<line x1="{at:.1f}" x2="{at:.1f}" y1="30" y2="{foot:.1f}" stroke="{ink}" '
        'stroke-width="1.4"/><text x="{at:.1f}" y="12" font-size="12" fill="{ink}" '
        'text-anchor="end">{sample}</text>'
        '<line x1="{dark:.1f}" x2="{dark:.1f}" y1="30" y2="{foot:.1f}" stroke="{danger}" '
        'stroke-width="1.4" stroke-dasharray="7 3"/><text x="{dark:.1f}" y="26" font-size="12" '
        'fill="{danger}" text-anchor="end">{words}</text>'
    ).format(
        at=at, dark=dark, foot=height - 22, ink=INK, danger=DANGER, sample=of.sample_words,
        words=of.dark_words,
    )  # fmt: skip


def _row(row: Row, kind: _Laid, x, top: float) -> Markup:  # type: ignore[no-untyped-def]
    left, down, wide, high = kind.swatch
    y, at = top + kind.bar_y, x(row.lab[0])
    bar = Markup("")
    if row.low is not None and row.high is not None:
        bar = Markup(
            '<line x1="{a:.1f}" x2="{b:.1f}" y1="{y:.1f}" y2="{y:.1f}" stroke="{ink}" '
            'stroke-width="5" stroke-opacity="0.32"/>'
        ).format(a=x(row.high), b=x(row.low), y=y, ink=INK)
    return Markup(
        '<text x="{nx}" y="{ny:.1f}" font-size="14" font-weight="600" fill="{ink}">{name}</text>'
        '<text x="{wx}" y="{wy:.1f}" font-size="12" fill="{soft}">{words}</text>'
        '<rect x="{sx}" y="{sy:.1f}" width="{sw}" height="{sh}" fill="{colour}" stroke="{ink}" '
        'stroke-width="0.8"/>{bar}<circle cx="{at:.1f}" cy="{y:.1f}" r="5" fill="{colour}" '
        'stroke="{ink}" stroke-width="1.6"/>'
    ).format(
        nx=kind.name_at[0], ny=top + kind.name_at[1], wx=kind.words_at[0],
        wy=top + kind.words_at[1], name=escape(row.name), words=escape(row.words), sx=left,
        sy=top + down, sw=wide, sh=high, colour=hex_of_lab(row.lab), ink=INK, soft=SOFT, bar=bar,
        at=at, y=y,
    )  # fmt: skip


def _scale(x, lightest: float, darkest: float, height: float, right: float) -> Markup:  # type: ignore[no-untyped-def]
    """A rule below with whole figures of L*, every one, two or five of them."""
    span = lightest - darkest
    step = 1 if span <= 9 else 2 if span <= 18 else 5
    foot = height - 22
    first, last = int(darkest) + 1, int(lightest)
    ticks = [n for n in range(first, last + 1) if n % step == 0]
    marks = [
        Markup(
            '<line x1="{at:.1f}" x2="{at:.1f}" y1="{a:.1f}" y2="{b:.1f}" stroke="{ink}"/>'
            '<text x="{at:.1f}" y="{t:.1f}" font-size="12" fill="{soft}" text-anchor="middle">'
            "{n}</text>"
        ).format(at=x(n), a=foot, b=foot + 5, t=foot + 18, ink=INK, soft=SOFT, n=n)
        for n in ticks
    ]
    rule = Markup(
        '<line x1="{a:.1f}" x2="{b:.1f}" y1="{y:.1f}" y2="{y:.1f}" stroke="{ink}"/>'
        '<text x="{l:.1f}" y="{t:.1f}" font-size="12" fill="{soft}" text-anchor="end">L*</text>'
    ).format(a=x(lightest), b=right, y=foot, t=foot + 18, l=x(lightest) - 6, ink=INK, soft=SOFT)
    return Markup("").join([rule, *marks])
