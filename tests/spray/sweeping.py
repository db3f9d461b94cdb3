"""A field swept in one line: what many tests of the sweep begin with."""

from __future__ import annotations

from tests.shapes import Place
from tests.spray.hand_floors import ROUND, seam, world

from farwall.facts.plan import PlanTools
from farwall.spray.routes import gap_m
from farwall.spray.sweep import Laid, Sweep
from farwall.spray.sweeper import Sweeper
from farwall.spray.world import Seam, World

L_PER_M2 = 0.2


def way_out(of: World) -> Seam:
    """The first seam that leads out of the house."""
    return next(s for s in of.seams if s.is_way_out)


def sweeper(
    of: Place | World,
    *pieces: str,
    by: str | Seam = "",
    tools: PlanTools = ROUND,
    l_per_m2: float = L_PER_M2,
) -> Sweeper:
    """The field of these pieces (of all), left `by` a seam (its name; else the way out)."""
    here = world(of) if isinstance(of, Place) else of
    if isinstance(by, str):
        by = seam(here, by) if by else way_out(here)
    return Sweeper(here, pieces or sorted(here.pieces), by, tools, l_per_m2=l_per_m2)


def swept(
    of: Place | World,
    *pieces: str,
    by: str | Seam = "",
    tools: PlanTools = ROUND,
    l_per_m2: float = L_PER_M2,
    thorough: bool = False,
) -> Sweep:
    """That field swept with `tools`."""
    made = sweeper(of, *pieces, by=by, tools=tools, l_per_m2=l_per_m2)
    return made.sweep(tools, thorough=thorough)


def laid(of: Place | World, *pieces: str, by: str | Seam = "", tools: PlanTools = ROUND) -> Laid:
    """That field cut into strips in order, before anybody walks on it."""
    return sweeper(of, *pieces, by=by, tools=tools).laid(tools)


def oldest_min(found: Sweep, tools: PlanTools = ROUND) -> float:
    """The oldest edge when nothing interrupts the sweep: plain sums, pass after pass. [min]"""
    times, now = [], 0.0
    for index, each in enumerate(found.passes):
        if index:
            now += gap_m(found.passes[index - 1].path[-1], each.path[0]) / tools.walk_m_min
        times.append((now, each.minutes(tools)))
        now += times[-1][1]
    return found.table.peak_age_min(times)
