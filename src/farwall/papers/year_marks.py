"""Marks of the year's tape: hatches that grey keeps apart, hours run together into few boxes."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.papers.ink import INK, LINE, RAMP, SOFT, WHITE
from farwall.papers.svg import Svg, number

HOUR_W, DAY_H = 6.0, 2.4
"""Size of an hour across and of a day down, in the picture's units."""

COLD, WARM, DAMP, SLOW, UNRINSED = "cold", "warm", "damp", "slow", "unrinsed"
SOON, LATER, LAST = RAMP[4], RAMP[2], RAMP[0]
"""Dark where most can be done."""


def patterns(svg: Svg) -> None:
    """The hatches: slanted for cold, dots for warm, level for damp, upright where too slow.

    Short dashes with no ground of their own lie over a shade: not to be rinsed next morning.
    """
    strokes = {
        COLD: f'<path d="M-1,7L7,-1M5,13L13,5M-1,1L1,-1M11,13L13,11" stroke="{LINE}"/>',
        WARM: f'<circle cx="3" cy="3" r="1.1" fill="{SOFT}"/>'
        f'<circle cx="9" cy="9" r="1.1" fill="{SOFT}"/>',
        DAMP: f'<path d="M0,3H12M0,9H12" stroke="{SOFT}" stroke-width="0.8"/>',
        SLOW: f'<path d="M3,0V12M9,0V12" stroke="{LINE}" stroke-width="0.9"/>',
    }
    white = f'<rect width="12" height="12" fill="{WHITE}"/>'
    marks = {name: white + stroke for name, stroke in strokes.items()}
    marks[UNRINSED] = f'<path d="M2,3h3M8,9h3" stroke="{INK}" stroke-width="0.9"/>'
    parts = "".join(
        f'<pattern id="{ident(svg, name)}" width="12" height="12" patternUnits="userSpaceOnUse">'
        f"{drawn}</pattern>"
        for name, drawn in marks.items()
    )
    svg.raw(f"<defs>{parts}</defs>")


def ident(svg: Svg, name: str) -> str:
    """The hatch's name in this drawing."""
    return f"{svg.ident}-{name}"


def filled(svg: Svg, name: str) -> str:
    """What to fill with for that hatch."""
    return f"url(#{ident(svg, name)})"


def boxes(cells: NDArray[np.bool_]) -> list[tuple[int, int, int, int]]:
    """Cells (days down, hours across) as few boxes that cover just them.

    Each box: first hour, first day, hours, days. Runs of an hour's row are
    joined with the same run of the days after.
    """
    found: list[tuple[int, int, int, int]] = []
    open_runs: dict[tuple[int, int], int] = {}
    for day in range(len(cells) + 1):
        runs = _runs(cells[day]) if day < len(cells) else set()
        for run in [one for one in open_runs if one not in runs]:
            first = open_runs.pop(run)
            found.append((run[0], first, run[1] - run[0], day - first))
        for run in runs:
            open_runs.setdefault(run, day)
    return sorted(found, key=lambda one: (one[1], one[0]))


def _runs(row: NDArray[np.bool_]) -> set[tuple[int, int]]:
    edges = np.flatnonzero(np.diff(np.concatenate([[0], row.astype(np.int8), [0]])))
    return {(int(a), int(b)) for a, b in edges.reshape(-1, 2)}


def draw_cells(svg: Svg, cells: NDArray[np.bool_], left: float, top: float, fill: str) -> None:
    """These cells in one path of that fill; nothing where there are none."""
    path = "".join(
        f"M{number(left + HOUR_W * hour)},{number(top + DAY_H * day)}"
        f"h{number(HOUR_W * wide)}v{number(DAY_H * high)}h{number(-HOUR_W * wide)}z"
        for hour, day, wide, high in boxes(cells)
    )
    if path:
        svg.element("path", d=path, fill=fill)
