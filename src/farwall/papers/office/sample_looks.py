"""How samples looked, drawn for their card: three states apart, a swatch with its figures in each.

A printer is no floor and no screen: L, a and b, and words, stand beside each swatch, so that black
and white says the same. Where nobody looked, an empty place is left for a photo or a chip.
"""

from __future__ import annotations

from collections.abc import Sequence

from farwall.colour.swatch import hex_of_lab, in_words
from farwall.facts.samples import Look, Sample, State
from farwall.papers.ink import INK, LINE
from farwall.papers.lettering import PAPER_LETTERING, clipped, wrap
from farwall.papers.svg import Svg
from farwall.phrasebook import told

PLACES: tuple[tuple[str, State], ...] = (
    ("dry", "dry"), ("clean and wet", "clean wet"), ("sealed", "sealed"),
)  # fmt: skip
_GAP, _TOP, _SWATCH, _SMALL, _LINE = 14.0, 15.0, 28.0, 7.0, 8.2


def looks_drawn(samples: Sequence[Sample], *, width: float, height: float) -> str:
    """The three states side by side as SVG, in points; `samples`: at most three."""
    svg = Svg(width=width, height=height, family=PAPER_LETTERING.family, ident="places")
    wide = (width - _GAP * (len(PLACES) - 1)) / len(PLACES)
    for k, (words, state) in enumerate(PLACES):
        left = k * (wide + _GAP)
        svg.text((left, 9), words, PAPER_LETTERING.small, anchor="start", bold=True)
        svg.element(
            "rect", x=left + 0.5, y=_TOP, width=wide - 1, height=height - _TOP - 1, fill="none",
            stroke=LINE, stroke_width=0.8, stroke_dasharray="3 3",
        )  # fmt: skip
        looks = [(one, last_look(one, state)) for one in samples]
        if any(look is not None for _, look in looks):
            high = (height - _TOP - 4) / max(len(looks), 1)
            for n, (one, look) in enumerate(looks):
                _look(svg, one.id, look, at=(left + 5, _TOP + 4 + n * high), wide=wide - 10)
    return svg.document(title="How they looked", description="dry, clean and wet, sealed")


def last_look(sample: Sample, state: State) -> Look | None:
    """Its look in a state: the last with a target in the photo, else the last of all."""
    seen = [one for one in sample.looks if one.state == state]
    chosen = [one for one in seen if one.error_de is not None] or seen
    return chosen[-1] if chosen else None


def trust(look: Look) -> str:
    """Its rank, with what the target was off."""
    if look.error_de is None:
        return "guess, no target"
    return f"measured here, target off by {look.error_de:.1f}"


def _look(svg: Svg, name: str, look: Look | None, *, at: tuple[float, float], wide: float) -> None:
    left, top = at
    fill = "none" if look is None else hex_of_lab(look.lab)
    svg.element(
        "rect", x=left, y=top, width=_SWATCH, height=_SWATCH, fill=fill, stroke=INK,
        stroke_width=0.7, stroke_dasharray="2 2" if look is None else None,
    )  # fmt: skip
    beside = wide - _SWATCH - 6
    lines: list[tuple[str, bool]] = [(one, True) for one in _named(name, beside)]
    if look is not None:
        light, hue = in_words(look.lab)
        figures = "L {:.0f} a {:.0f} b {:.0f}".format(*look.lab)
        lines += [(f"{figures}, {told(f'{light} {hue}')}", False), (told(trust(look)), False)]
    for n, (text, bold) in enumerate(lines):
        place = (left + _SWATCH + 6, top + 6.5 + n * _LINE)
        short = clipped(text, beside, _SMALL, bold=bold)
        svg.text(place, short, _SMALL, anchor="start", bold=bold)


def _named(name: str, width: float) -> tuple[str, ...]:
    """A name in two lines at most; what is longer stands whole in the table above."""
    lines = wrap(name, width, _SMALL, bold=True) or (name,)
    return lines if len(lines) <= 2 else (lines[0], " ".join(lines[1:]))
