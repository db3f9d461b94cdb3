"""`farwall bench colour --photos N`: how far the reader of photos is off, by light and target."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import asdict
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from farwall.bench.colour_photos_score import Off

_DONE, _WRONG = 0, 1
MOST_MEDIAN = 1.5
"""CIEDE2000 that is aimed at, in the median over five lights: squares held out, and floor."""


def run_photos(*, photos: int, as_json: bool, tuning: bool = False) -> int:
    """Read so many photos of each target under each of five lights; 1 past the aim."""
    from farwall.bench.colour_photos_score import (
        JUDGING,
        TUNING,
        laid_24,
        laid_own,
        own_page,
        score_photos,
    )

    first = TUNING if tuning else JUDGING
    seeds = range(first, first + photos)
    found = [
        one for laid in (laid_24(), laid_own(*own_page())) for one in score_photos(laid, seeds)
    ]
    met = all(
        max(one.squares, one.floors) <= MOST_MEDIAN and one.unseen == 0
        for one in found
        if one.light == "all"
    )
    if as_json:
        half = "tuning" if tuning else "judging"
        print(json.dumps({"half": half, "photos": [asdict(one) for one in found], "met": met}))
    else:
        print("\n".join(lines(found)))
    return _DONE if met else _WRONG


def lines(found: Sequence[Off]) -> list[str]:
    """The table on the screen."""
    heads = ("target", "light", "photos", "unseen", "squares", "90 %", "floor", "90 %", "said")
    told = [
        "CIEDE2000 of invented photos: squares held out of the correction, stained floor beside",
        "the target; said: what the reader tells of its own error. unseen: no target found.",
        "",
        f"{heads[0]:<12}{heads[1]:<8}" + "".join(f"{one:>8}" for one in heads[2:]),
    ]
    return told + [
        f"{one.target:<12}{one.light:<8}{one.photos:>8}{one.unseen:>8}{one.squares:>8.2f}"
        f"{one.squares_p90:>8.2f}{one.floors:>8.2f}{one.floors_p90:>8.2f}{one.said:>8.2f}"
        for one in found
    ]
