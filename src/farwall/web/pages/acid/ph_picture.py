"""pH against bicarbonate added: shut in, fresh fizz, open air. Told apart by dash and word."""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup

from farwall.job.acid_day.neutralising.noun import Curve
from farwall.papers.ink import INK, LINE, SOFT, WHITE
from farwall.papers.lettering import SCREEN_LETTERING
from farwall.papers.svg import Svg, number
from farwall.papers.xml_text import escape
from farwall.web.words import said

_WIDE, _HIGH = 420.0, 300.0
_LEFT, _RIGHT, _TOP, _FOOT = 30.0, 306.0, 12.0, 248.0
_LOWEST, _HIGHEST = 0.0, 11.0
_MOST = 2.0
_GOOD = (7.0, 8.5)
_SIZE = 13.0
_APART = 17.0
_WAYS = (("closed", "1.5 3.5", 2.0), ("rested", "7 3", 2.0), ("fresh", None, 2.6))


def ph_picture(curve: Curve) -> Markup:
    """The drawing as SVG, with what it shows in words for those who do not see it."""
    svg = Svg(width=_WIDE, height=_HIGH, family=SCREEN_LETTERING.family)
    _ground(svg)
    ends = []
    for way, dash, wide in _WAYS:
        line: Sequence[float] = getattr(curve, way)
        points = [(_x(s), _y(p)) for s, p in zip(curve.shares, line, strict=True) if s <= _MOST]
        svg.line(points, stroke=WHITE, stroke_width=wide + 2.4)
        svg.line(points, stroke=INK, stroke_width=wide, stroke_dasharray=dash)
        ends.append((points[-1][1], way))
    _names(svg, ends)
    label = said("acid-neutralising-picture", molal=f"{curve.acid_molal:g}")
    return Markup(
        '<svg xmlns="http://www.w3.org/2000/svg" class="acid-neutralising-picture" role="img" '
        f'aria-label="{escape(label)}" viewBox="0 0 {number(_WIDE)} {number(_HIGH)}" '
        f'font-family="{svg.family}" fill="{INK}">\n{svg}\n</svg>'
    )


def _x(share: float) -> float:
    return _LEFT + share / _MOST * (_RIGHT - _LEFT)


def _y(ph: float) -> float:
    held = min(max(ph, _LOWEST), _HIGHEST)
    return _FOOT - (held - _LOWEST) / (_HIGHEST - _LOWEST) * (_FOOT - _TOP)


def _ground(svg: Svg) -> None:
    """The band to reach, the rules of pH, the equivalent dose, names of both sides."""
    top, foot = _y(_GOOD[1]), _y(_GOOD[0])
    svg.element(
        "rect", x=_LEFT, y=top, width=_RIGHT - _LEFT, height=foot - top, fill=LINE, fill_opacity=0.4
    )
    for ph in range(0, 12, 2):
        svg.line([(_LEFT - 4, _y(ph)), (_RIGHT, _y(ph))], stroke=LINE, stroke_width=0.8)
        svg.text((_LEFT - 8, _y(ph) + 4.5), str(ph), _SIZE, anchor="end")
    svg.line([(_x(1), _TOP), (_x(1), _FOOT)], stroke=SOFT, stroke_width=1.2, stroke_dasharray="5 3")
    svg.line([(_LEFT, _FOOT), (_RIGHT, _FOOT)], stroke=INK, stroke_width=1.4)
    for share, words in ((0.0, "0"), (0.5, "½"), (1.0, "1"), (1.5, "1½"), (2.0, "2")):
        svg.line([(_x(share), _FOOT), (_x(share), _FOOT + 6)], stroke=INK, stroke_width=1.2)
        svg.text((_x(share), _FOOT + 21), words, _SIZE)
    svg.text((_LEFT, _HIGH - 8), said("acid-neutralising-along"), _SIZE, anchor="start")
    svg.text((_LEFT + 6, top + 15), said("acid-neutralising-good"), _SIZE, anchor="start")
    svg.text((_LEFT + 6, _TOP + 8), "pH", _SIZE, anchor="start", bold=True)


def _names(svg: Svg, ends: Sequence[tuple[float, str]]) -> None:
    """Each line's name at its end, no two closer than a line of text."""
    last = -_APART
    for y, way in sorted(ends):
        at = max(y + 4.5, last + _APART)
        svg.text((_RIGHT + 7, at), said(f"acid-neutralising-way-{way}"), _SIZE, anchor="start")
        last = at
