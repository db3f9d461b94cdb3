"""`farwall bench learn`: how honest the ranges of lessons are on invented firms."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import asdict
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from farwall.bench.learn import LearnScore
    from farwall.bench.learn_gate import GateScore

_DONE, _WRONG = 0, 1
HONEST = (75.0, 85.0)
"""A range that says four in five shall hold between these per cent."""
MOST_SHORT_PERCENT = 1.0


def run_learn(*, as_json: bool, tuning: bool = False, large: bool = False) -> int:
    """Score every kind over the test half (or the tuning half); 1 when a range is not honest.

    large: over two thousand firms of their own instead, which tell four times as much; the gate
    is left out.
    """
    from farwall.bench.learn import score_learning
    from farwall.bench.learn_firms import LARGE, TEST, TUNING
    from farwall.bench.learn_gate import score_gate

    seeds = LARGE if large else TUNING if tuning else TEST
    scores, gates = score_learning(seeds), () if large else score_gate(seeds)
    honest = all(map(_honest, scores))
    honest = honest and all(one.short_percent <= MOST_SHORT_PERCENT for one in gates[:1])
    if as_json:
        told = {
            "half": "large" if large else "tuning" if tuning else "test",
            "lessons": [asdict(one) for one in scores],
            "gate": [asdict(one) for one in gates],
            "honest": honest,
        }
        print(json.dumps(told))
    else:
        print("\n".join([*lines(scores), *(["", *gate_lines(gates)] if gates else [])]))
    return _DONE if honest else _WRONG


def lines(scores: Sequence[LearnScore]) -> list[str]:
    """The table of ranges on the screen."""
    told = [
        "Per cent of next jobs, and of true quantities, within their range; median error of the",
        "likely value and of common practice in per cent (colour: steps; call-backs: points).",
        "",
        f"{'':<28}{'jobs':>5}{'next':>8}{'own':>8}{'error':>9}{'practice':>10}",
    ]
    told += [
        f"{one.what:<28}{one.jobs:>5}{_percent(one.next_percent):>8}"
        f"{_percent(one.own_percent):>8}{one.error:>9.2f}{one.practice_error:>10.2f}"
        + ("" if _honest(one) else "  NOT HONEST")
        for one in scores
    ]
    return told


def gate_lines(scores: Sequence[GateScore]) -> list[str]:
    """The table of the gate on the screen."""
    return [
        f"{'the gate':<28}{'days':>7}{'short %':>9}{'left %':>8}{'mixes':>7}{'spread %':>10}",
        *(
            f"{one.rule:<28}{one.days:>7}{one.short_percent:>9.2f}{one.left_percent:>8.1f}"
            f"{one.mixes:>7.2f}{one.spread_percent:>10.1f}"
            for one in scores
        ),
    ]


def _percent(value: float | None) -> str:
    return "-" if value is None else f"{value:.1f}"


def _honest(one: LearnScore) -> bool:
    shares = [share for share in (one.next_percent, one.own_percent) if share is not None]
    return all(HONEST[0] <= share <= HONEST[1] for share in shares)
