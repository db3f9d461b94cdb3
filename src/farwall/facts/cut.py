"""The cut: parts of stain to parts of water by volume, always in this order."""

from __future__ import annotations

import math
import re

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

WEAKEST = 100.0
"""Parts of water to one of stain beyond which a cut is taken for a slip of the pen."""

_CUT = re.compile(r"\s*(\d{1,6}(?:\.\d{1,6})?)\s*:\s*(\d{1,6}(?:\.\d{1,6})?)\s*")


@dataclass(frozen=True)
class Cut:
    """`stain` parts of stain to `water` parts of water, by volume."""

    stain: float
    water: float

    @property
    def stain_share(self) -> float:
        """Share of stain in the mix, 0 to 1, volumes taken as adding up."""
        return self.stain / (self.stain + self.water)

    def __str__(self) -> str:
        return f"{self.stain:g}:{self.water:g}"


def parse_cut(text: str, *, where: str = "cut") -> Cut:
    """The cut written as `1:2` (one part stain to two parts water) or `neat`.

    Raises Refused when the text is no cut, holds no stain, or is weaker than
    1:100. `where` is the place named in the refusal.
    """
    if text.strip().lower() == "neat":
        return Cut(1.0, 0.0)
    match = _CUT.fullmatch(text)
    if match is None:
        raise Refused(_mistake(where, f"{_short(text)} is not a cut."))
    stain, water = map(float, match.groups())
    if not stain > 0:
        raise Refused(_mistake(where, f"{_short(text)} has no stain in it."))
    if not math.isfinite(water) or water > WEAKEST * stain:
        raise Refused(_mistake(where, f"{_short(text)} is weaker than 1:{WEAKEST:g}."))
    return Cut(stain, water)


def _short(text: str) -> str:
    return f'"{text}"' if len(text) <= 40 else f'"{text[:40]}…"'


def _mistake(where: str, what: str) -> Mistake:
    return Mistake(
        where, what, "Write parts of stain, a colon, parts of water: 1:2 is one of stain to two."
    )
