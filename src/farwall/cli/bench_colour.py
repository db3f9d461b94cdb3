"""`farwall bench colour`: how well the next coat is foreseen, and jobs that are led by it."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import asdict
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from farwall.bench.colour import Foreseen, Jobs

_DONE, _WRONG = 0, 1
MOST_TOO_DARK_PERCENT, MOST_COST_SHARE = 1.5, 0.75
AIMS = {"4": (1.2, 2.3), "7": (0.9, 1.8)}
"""Median and 90 % of CIEDE2000 that are aimed at."""


def run_colour(*, floors: int, as_json: bool, tuning: bool = False) -> int:
    """Score so many invented floors of the judging half (or the tuning half); 1 past an aim.

    Houses with rooms are a quarter as many, floors of two colours half as many.
    """
    from farwall.bench.colour import JUDGING, TUNING, score_foreseen, score_jobs
    from farwall.bench.colour_score import score_whole
    from farwall.bench.colour_sealed import score_sealed
    from farwall.cli.bench_colour_whole import sealed_lines, whole_lines

    first = TUNING if tuning else JUDGING
    seeds = range(first, first + floors)
    seen, jobs = score_foreseen(seeds), score_jobs(seeds)
    whole = score_whole(seeds[: -(-floors // 4)], seeds[: -(-floors // 2)])
    sealed = score_sealed(seeds)
    met = _met(seen, jobs)
    if as_json:
        told = {
            "half": "tuning" if tuning else "judging",
            "foreseen": [asdict(one) for one in seen],
            "jobs": [asdict(one) for one in jobs],
            "whole": asdict(whole),
            "sealed": [asdict(one) for one in sealed],
            "met": met,
        }
        print(json.dumps(told))
    else:
        print("\n".join([*lines(seen, jobs), *whole_lines(whole), *sealed_lines(sealed)]))
    return _DONE if met else _WRONG


def _met(seen: Sequence[Foreseen], jobs: tuple[Jobs, Jobs]) -> bool:
    known = [one for one in seen if one.patches in AIMS]
    ours, habit = jobs
    return (
        all((one.median, one.p90) <= AIMS[one.patches] for one in known)
        and all(one.p90 <= AIMS[one.patches][1] for one in known)
        and ours.too_dark_percent <= MOST_TOO_DARK_PERCENT
        and ours.cost <= MOST_COST_SHARE * habit.cost
    )


def lines(seen: Sequence[Foreseen], jobs: Sequence[Jobs]) -> list[str]:
    """The two tables on the screen."""
    told = [
        "CIEDE2000 between the look that was foreseen and the one that came, invented floors;",
        "change: what the coat itself moved; bias: foreseen less true, L; held: per cent of floors",
        "within the range that says four in five.",
        "",
        f"{'patches':<18}{'floors':>7}{'median':>8}{'90 %':>7}{'change':>8}{'bias':>7}{'held':>7}",
    ]
    told += [
        f"{one.patches:<18}{one.floors:>7}{one.median:>8.2f}{one.p90:>7.2f}{one.change:>8.2f}"
        f"{one.bias:>7.2f}{one.held_percent:>7.1f}"
        for one in seen
    ]
    told += ["", f"{'jobs led by':<34}{'too dark %':>11}{'cost':>7}{'coats':>7}{'away':>7}"]
    told += [
        f"{one.rule:<34}{one.too_dark_percent:>11.2f}{one.cost:>7.2f}{one.coats:>7.2f}"
        f"{one.away:>7.2f}"
        for one in jobs
    ]
    return told
