"""The paper: its size, its margins, and the space that drawings may use. [pt]"""

from __future__ import annotations

from typing import Literal

from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units

Paper = Literal["us-letter", "a4"]
MARGIN_PT = 14 / 25.4 * 72
_OVERHANG_PT = 2.0
_SIZES: dict[Paper, tuple[float, float]] = {"us-letter": (612.0, 792.0), "a4": (595.28, 841.89)}


@dataclass(frozen=True)
class PaperSize:
    """Width and height of a sheet and of what lies between its margins."""

    typst_name: Paper
    width: float
    height: float

    @property
    def inner_width(self) -> float:
        """Between left and right margin."""
        return self.width - 2 * MARGIN_PT

    @property
    def inner_height(self) -> float:
        """Between top and bottom margin; the first line's letters overhang theirs a little."""
        return self.height - 2 * MARGIN_PT - _OVERHANG_PT


def paper_for(units: Units, paper: Paper | None) -> PaperSize:
    """US Letter for us units, A4 for metric, unless a paper is named."""
    name: Paper = paper or ("us-letter" if units == "us" else "a4")
    return PaperSize(name, *_SIZES[name])
