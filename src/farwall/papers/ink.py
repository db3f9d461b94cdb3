"""Colours of the look, each with one meaning, and the ramp of age.

Every picture must also work in grey: number, hatch, dash or word says again
what a colour says.
"""

from __future__ import annotations

INK = "#1f2a30"
"""All that is fixed: walls, words, numbers."""
PAPER = "#faf8f3"
WHITE = "#ffffff"
LINE = "#c8c2b6"
"""Rules, hatch of dry floor, what lies outside the field at hand."""
DONE = "#dcd8cf"
"""Floor that is sprayed already, in a plan made in mid-day."""
SOFT = "#6b6a64"
"""Second-rank words, never a number that matters on site."""
DANGER = "#9a3412"
"""The live edge, danger and "no"; nothing else."""
SUN = "#f2d98b"
"""Sun on the floor, at half strength and hatched."""
RAMP = ("#dbebef", "#a1cbd6", "#6daab9", "#3b8697", "#1f6170", "#0e3f49")
"""Wet floor by age, sprayed first to sprayed last, even steps of lightness."""


def ramp_colour(place: int, count: int) -> str:
    """The ramp's colour for number `place` (from 0) of `count`, first lightest, last darkest."""
    if count <= 1:
        return RAMP[0]
    return RAMP[round(place * (len(RAMP) - 1) / (count - 1))]
