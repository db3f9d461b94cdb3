"""The coats that may be laid: cuts of the trade by coverages by stains. Pure."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.colour.next_coat import Way
from farwall.facts.default_table import LATER_COAT_M2_PER_L

WATER_PARTS = (1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0)
"""Parts of water to one of stain, from 1:1 to a hint at 1:15 [common-practice]. Neat stain is not
among them: two light coats rather than one strong."""
ACCENT_PARTS = tuple(one for one in WATER_PARTS if one >= 4)
"""Of a third coat, which is an accent and no full coat [common-practice]."""
MIST_M2_PER_L = LATER_COAT_M2_PER_L.high or LATER_COAT_M2_PER_L.usual
"""Coverage of a light mist: the high end of a later coat, 450 ft²/gal [common-practice]."""
HABIT_WATER = 2.0
"""What the habit lays: two of water to one of stain, then look (common practice, no source)."""


def ways_of(stain: int, m2_per_l: float, *, accent: bool) -> tuple[Way, ...]:
    """The grid for one stain: at the coverage of its sample, and as a light mist.

    m2_per_l: of the mix, as sampled or planned · accent: the floor has two coats already, and only
    a light mist of a weak cut may follow.
    """
    mist = max(MIST_M2_PER_L, m2_per_l)
    cuts = ACCENT_PARTS if accent else WATER_PARTS
    coverages = (mist,) if accent else tuple(dict.fromkeys((m2_per_l, mist)))
    return tuple(Way(stain, water, 1 / m2) for water in cuts for m2 in coverages)


def habit(stain: int, m2_per_l: float) -> Way:
    """Two of water to one of stain at the usual coverage."""
    return Way(stain, HABIT_WATER, 1 / m2_per_l)


def cut_of(way: Way) -> str:
    """Its cut as the trade writes it: stain : water."""
    return f"1:{way.water_parts:g}"


def lightest_half(ways: Sequence[Way], strong: Way) -> Way:
    """The way that lays most of what is at most half the stain of `strong`, else the weakest."""
    half = strong.laid.l_per_m2 / 2
    own = [one for one in ways if one.stain == strong.stain] or list(ways)
    lighter = [one for one in own if one.laid.l_per_m2 <= half * 1.001]
    if not lighter:
        return min(own, key=lambda one: one.laid.l_per_m2)
    return max(lighter, key=lambda one: one.laid.l_per_m2)
