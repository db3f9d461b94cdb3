"""The ticks of a field's walls, in rows as the page shows them."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units
from farwall.papers.wall_ticks import Tick, WallRun
from farwall.units import feet_and_inches

_FEW_MARKS = 2

Row = list[dict[str, Any]]


def tick_rows(runs: Sequence[WallRun], units: Units) -> list[Row]:
    """The walls in rows: two with few marks share one."""
    rows: list[Row] = []
    for run in runs:
        wall = _wall(run, units)
        few = len(wall["marks"]) <= _FEW_MARKS
        if few and rows and len(rows[-1]) == 1 and len(rows[-1][0]["marks"]) <= _FEW_MARKS:
            rows[-1].append(wall)
        else:
            rows.append([wall])
    return rows


def marks_as_set(rows: Sequence[Row]) -> list[list[list[str]]]:
    """The marks of each wall, one string about as wide as it is set: how much room they take."""
    return [
        [[f"{m['at']} {m['other']} {m['after']}" for m in wall["marks"]] for wall in row]
        for row in rows
    ]


def _wall(run: WallRun, units: Units) -> dict[str, Any]:
    return {
        "letter": run.letter,
        "of": plain(run.of),
        "marks": [_tick(tick, units) for tick in run.ticks],
    }


def _tick(tick: Tick, units: Units) -> dict[str, Any]:
    if tick.at_m is None:
        return {"before": tick.before, "at": "in the doorway", "other": "", "after": tick.after}
    tape, metric = feet_and_inches(tick.at_m), f"{tick.at_m:.2f}"
    at, other = (tape, metric) if units == "us" else (metric, tape)
    return {"before": tick.before, "at": at, "other": other, "after": tick.after}
