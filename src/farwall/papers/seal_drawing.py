"""The drawings of a seal day: the floor of each coat, one above the other, and each field.

They are the floor drawing itself; only the words that speak of spraying are said in sealer's words.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from farwall.facts.plan import Field, Plan
from farwall.job.seal_day.noun import CoatHours, Sealing
from farwall.papers.drawing.floor_view import draw_floor
from farwall.papers.drawing.scene import Storey, scenes
from farwall.papers.floor_drawing import field_svg, floor_svg
from farwall.papers.ink import PAPER
from farwall.papers.lettering import PAPER_LETTERING, SCREEN_LETTERING
from farwall.papers.seal_words import coat_span
from farwall.papers.svg import Svg, number, plain
from farwall.papers.wall_clock import Units, plan_clock
from farwall.phrasebook import LANGUAGE, Language

_WORDS: dict[Language, tuple[tuple[str, str], ...]] = {
    "en": (
        ("sprayed first", "laid first"), ("are sprayed", "are laid"), ("be sprayed", "be laid"),
        ("tank", "tray"),
    ),
    "es": (
        ("se rocía", "se pone"), ("se rocían", "se ponen"), ("se puede rociar", "se puede poner"),
        ("tanque lleno", "charola llena"), ("en el tanque", "en la charola"),
    ),
}  # fmt: skip
"""What is said of spraying, and of laying: in the language in which it was drawn."""
_TEXT = re.compile(r">[^<]+<")
_HEAD, _BETWEEN, _EDGE = 34.0, 26.0, 6.0


def in_sealers_words(drawing: str) -> str:
    """The same drawing with its words, and only those, in the words of sealing."""

    def said(found: re.Match[str]) -> str:
        text = found.group()
        for sprayed, laid in _WORDS[LANGUAGE.get()]:
            text = text.replace(sprayed, laid)
        return text

    return _TEXT.sub(said, drawing)


def seal_svg(
    plan: Plan,
    sealing: Sealing,
    *,
    units: Units = "us",
    width: float = 960.0,
    height: float = 560.0,
) -> str:
    """The floor of each coat as SVG text, the first on top; a heading names its hours.

    width, height: units of one coat's floor.
    """
    lettering = SCREEN_LETTERING
    svg = Svg(width=width, height=height, family=lettering.family, ident="seal")
    clock, top = plan_clock(plan, units), 0.0
    for k, coat in enumerate(sealing.coats):
        head = f"{_named(coat.coat)}: {coat_span(plan, coat.coat, clock)}"
        svg.text((_EDGE, top + _HEAD * 0.7), plain(head), lettering.head, anchor="start", bold=True)
        under = _crossed(coat)
        if under:
            top += lettering.body * 1.5
            svg.text((_EDGE, top + _HEAD * 0.7), under, lettering.body, anchor="start")
        top += _HEAD
        for n, scene in enumerate(scenes(plan, coat=coat.coat)):
            ident = f"seal{k}-{n}"
            part = Svg(width=width, height=height, family=lettering.family, ident=ident)
            draw_floor(part, plan, scene, units=units, lettering=lettering)
            svg.below(part, top)
            top += part.height + _BETWEEN
    svg.height = top
    svg.parts.insert(0, f'<rect width="{number(width)}" height="{number(top)}" fill="{PAPER}"/>')
    return in_sealers_words(
        svg.document(
            title=f"Seal day of {plan.job or 'this job'}",
            description="The floor of each coat of sealer, its fields in the order in which they "
            "are laid.",
        )
    )


def coat_map(plan: Plan, coat: str, *, units: Units, width: float, height: float) -> str:
    """The floor of one coat for paper. [pt]"""
    return in_sealers_words(
        floor_svg(
            plan, units=units, coat=coat, width=width, height=height, lettering=PAPER_LETTERING,
            ground=None,
        )
    )  # fmt: skip


def field_map(
    plan: Plan,
    field: Field,
    *,
    units: Units,
    width: float,
    height: float,
    grounds: Sequence[Storey],
) -> str:
    """One field with its bands for paper. [pt]"""
    return in_sealers_words(
        field_svg(
            plan, field, units=units, width=width, height=height, lettering=PAPER_LETTERING,
            ground=None, walls=(), grounds=grounds,
        )
    )  # fmt: skip


def _named(coat: str) -> str:
    return coat.replace("seal-", "Sealer, coat ")


def _crossed(coat: CoatHours) -> str:
    """How many of its fields cross those of the coat below; empty for the first coat."""
    if not coat.crossings:
        return ""
    crossed = sum(one.crossed for one in coat.crossings)
    return f"Bands run across those of the coat below in {crossed} of {len(coat.crossings)} fields."
