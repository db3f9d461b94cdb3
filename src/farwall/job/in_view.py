"""How much of each possible stop line is seen from the main window, on the pieces of a house."""

from __future__ import annotations

from dataclasses import replace

from farwall.facts.default_table import WINDOW_HEIGHT_M
from farwall.facts.plan import Plan
from farwall.floor.nouns import Floor
from farwall.floor.sight import View, main_window
from farwall.spray.schedule import rounded
from farwall.spray.world import World


def in_view(world: World, floor: Floor) -> World:
    """The world whose seams know how much of them is seen; as it came when no window is known."""
    main = main_window(floor, glass_m=WINDOW_HEIGHT_M.usual)
    if main is None:
        return world
    view = View(floor, main)
    return replace(
        world, seams=tuple(replace(seam, sight=view.share(seam.line)) for seam in world.seams)
    )


def as_seen(world: World, plan: Plan) -> World:
    """The world of a plan that is taken up again: its stop lines are seen as that plan told.

    A plan keeps no windows, so where it had no stop line nothing is known.
    """
    told: dict[tuple[str, tuple[tuple[float, float], ...]], float] = {
        (stop.id, stop.line): float(stop.seen)
        for field in plan.fields
        for stop in field.stop_lines
        if stop.seen is not None
    }
    if not told:
        return world
    return replace(
        world,
        seams=tuple(
            replace(seam, sight=told.get((seam.id, rounded(seam.line)))) for seam in world.seams
        ),
    )
