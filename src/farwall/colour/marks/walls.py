"""Lap lines sought where no run sheet tells the edges: along every line that runs with the plan.

Bands are sprayed along a wall or across it (common practice, no source), so their edges run with
the axes of the plan. The floor is cut into corridors along both, and the best strip of each is
judged by both of its sides as one along a known edge is; but there are some twenty corridors where
a run sheet tells five edges, so as good a strip is less often a lap.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from farwall.colour.marks.called import LAP_M
from farwall.colour.marks.edges import (
    REACH_SD,
    EdgeFind,
    apart,
    edge_finds,
    length_of,
    marked,
)
from farwall.colour.marks.ground import Ground
from farwall.colour.marks.nouns import KnownEdge, Mark, Sheet
from farwall.colour.marks.sifted import MOST_WEAK, WEAK

PITCH_M, REACH_M = 0.40, 0.24
"""How far corridors lie apart, and how far each reaches to both sides: they overlap by a hand."""
USUAL, HALF = -6.0, 50.0
"""Log odds (along a known edge) that half of a floor's corridors reach; what a floor's own reach
beyond that is its pattern, and is taken from all of them. Tuned on invented floors."""
LEAST_ODDS = -1.35
"""Below such log odds, so reckoned, nothing is proposed. Tuned likewise."""
MOST_STEP = 5.0
"""What stands on a greater step is the rim of another pour, a board's edge, a shadow."""
MANY = 4
"""So many strips are the floor's own: boards of a form, grooves. A guess, and real concrete."""
RARER = (-0.51, 0.90)
"""Of one and of those log odds: log odds of a lap where no edge is known."""
_ENDS = 40


def wall_laps(
    sheet: Sheet, ground: Ground, slab: Sequence[Mark], thin: Ground | None = None
) -> list[Mark]:
    """Lap lines proposed along lines that run with the axes of the plan; none along another.

    slab: cracks and joints, which are taken out before · thin: the ground with mottle thinned,
    where it is reckoned already.
    """
    found = [
        one
        for one in edge_finds(
            sheet, ground, wall_lines(sheet, ground), slab, off_edge=0.0, own=thin
        )
        if one.sides is not None
    ]
    if not found:
        return []
    own = max(float(np.percentile([odds_of(one) for one in found], HALF)) - USUAL, 0.0)
    kept = [
        one for one in apart(found)
        if one.sides and one.sides.step <= MOST_STEP and odds_of(one) - own >= LEAST_ODDS
        and length_of(ground, one) >= LAP_M
    ]  # fmt: skip
    if len(kept) >= MANY:
        return []
    told = [_mark(sheet, ground, one, chance_here(odds_of(one) - own)) for one in kept]
    weak = [one for one in told if one.confidence < WEAK]
    return [one for one in told if one.confidence >= WEAK] + weak[:MOST_WEAK]


def odds_of(one: EdgeFind) -> float:
    """Log odds of the strip, were it along a known edge; held to ± 20."""
    sure = min(max(one.sure, 1e-9), 1 - 1e-9)
    return math.log(sure / (1 - sure))


def wall_lines(sheet: Sheet, ground: Ground) -> list[KnownEdge]:
    """Lines along and across the plan over the whole sheet, as edges of no band (0 of coat 0)."""
    high, wide = (count * ground.step_m for count in ground.dark.shape)
    sd_m = REACH_M / REACH_SD
    made = []
    for y in np.arange(PITCH_M / 2, high, PITCH_M):
        line = [(sheet.left_m + x, sheet.top_m - y) for x in np.linspace(0, wide, _ENDS)]
        made.append(KnownEdge(tuple((float(a), float(b)) for a, b in line), sd_m, 0, 0))
    for x in np.arange(PITCH_M / 2, wide, PITCH_M):
        line = [(sheet.left_m + x, sheet.top_m - y) for y in np.linspace(0, high, _ENDS)]
        made.append(KnownEdge(tuple((float(a), float(b)) for a, b in line), sd_m, 0, 0))
    return made


def chance_here(odds: float) -> float:
    """How many strips of such log odds are laps where no edge is known, 0 to 1."""
    one, slope = RARER
    return 1 / (1 + math.exp(-(one + slope * odds)))


def _mark(sheet: Sheet, ground: Ground, one: EdgeFind, sure: float) -> Mark:
    return marked(sheet, ground, one, sure, (
        "a darker strip that runs with the walls of the plan, steep along both of its sides; "
        f"{length_of(ground, one):.1f} m long"
    ))  # fmt: skip
