"""`farwall bench clocks`: how honest the ranges of the clocks are on invented floors."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import asdict
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from farwall.bench.floors_tally import ClockScore

_DONE, _WRONG = 0, 1
HONEST = (75.0, 85.0)
"""A range that says four in five shall hold between these per cent."""


def run_clocks(*, as_json: bool, tuning: bool = False, beside: bool = False) -> int:
    """Score every clock over the test half (or the tuning half); 1 when a range is not honest.

    beside: the waits between coats alone, by what is read beside the strip and the coat.
    """
    from farwall.bench.floors_drawn import TEST, TUNING
    from farwall.bench.floors_same_coat import score_same_coat
    from farwall.bench.floors_score import score_floors, score_same_room, score_second_coat

    seeds = TUNING if tuning else TEST
    scores: tuple[ClockScore, ...]
    if beside:
        from farwall.bench.floors_read import score_read

        scores = score_read(seeds)
    else:
        scores = (
            *score_floors(seeds),
            *score_second_coat(seeds),
            *score_same_room(seeds),
            *score_same_coat(seeds),
        )
    honest = all(_honest(one) for one in scores)
    if as_json:
        half = "tuning" if tuning else "test"
        told = {"half": half, "clocks": [asdict(one) for one in scores], "honest": honest}
        print(json.dumps(told))
    else:
        print("\n".join(lines(scores)))
    return _DONE if honest else _WRONG


def lines(scores: Sequence[ClockScore]) -> list[str]:
    """The table on the screen."""
    told = [
        "Per cent of floors within the range, median error of the likely value, per cent not done",
        "at the high end; before, and after one wait was watched in another room at another hour,",
        "or, where it says so, as a strip in the same room, or within the very coat, whose first",
        "room or far end dries while the rest is damp.",
        "",
        f"{'clock':<48}{'floors':>7}{'within':>15}{'error %':>15}{'too soon %':>15}",
    ]
    told += [
        f"{one.clock:<48}{one.floors:>7}"
        + _pair(one.within_before, one.within_after)
        + _pair(one.error_before, one.error_after)
        + _pair(one.too_soon_before, one.too_soon_after)
        + ("" if _honest(one) else "  NOT HONEST")
        for one in scores
    ]
    return told


def _pair(before: float, after: float) -> str:
    return f"{before:>8.1f}{after:>7.1f}"


def _honest(one: ClockScore) -> bool:
    return all(HONEST[0] <= share <= HONEST[1] for share in (one.within_before, one.within_after))
