"""One field on the clock, its bands as wide as they can be without losing an edge."""

from __future__ import annotations

from dataclasses import replace

from farwall.errors import Unanswerable
from farwall.nouns import dataclass
from farwall.spray.crew import time_crew
from farwall.spray.fields import COMFORT
from farwall.spray.lives import Held
from farwall.spray.refills import Flow
from farwall.spray.remedies.case import HOPE, NARROWER, Case
from farwall.spray.schedule import Day, Timed
from farwall.spray.sweep import Sweep


@dataclass(frozen=True)
class Fitted:
    """A field on the clock, its edges held to their open times, and the day after it."""

    sweep: Sweep
    timed: Timed
    held: Held
    after: Day


def on_the_clock(case: Case, sweep: Sweep, flow: Flow, field_id: str) -> Fitted:
    """The case's field, swept so. Raises `Unanswerable` when nobody can."""
    lives = case.coat.lives(case.step.pieces, case.day.minute, case.day.minute)
    easy = replace(flow, comfort_min=COMFORT * lives.tightest.low)
    timed, after = time_crew(sweep, case.day, easy, field_id=field_id, comfort_min=easy.comfort_min)
    return Fitted(sweep, timed, case.held(timed), after)


def fitting(case: Case, flow: Flow, field_id: str) -> Fitted:
    """The field on the clock, its bands as wide as they can be without losing an edge.

    Where the plainest sweep leaves little margin, the plain one with the shortest
    front is tried; where that loses an edge, levelled ones are sought, then smoothed ones,
    which take longer to find, then narrower bands, which leave younger edges for more
    walking and overlap. Where none fits, the best at full width stands and the verdict says no.
    """
    best = on_the_clock(case, case.sweep, flow, field_id)
    lives = case.coat.lives(case.step.pieces, case.day.minute, best.timed.bands[-1].end_min)
    if lives.longest_min <= 0 or best.held.share <= COMFORT:
        return best
    other = case.sweeper.shortest(case.coat.tools)
    if other is not case.sweep:
        found = on_the_clock(case, other, flow, field_id)
        best = max(best, found, key=lambda one: one.held.spare_min)
    if best.held.spare_min >= 0:
        return best
    for share, smoothed in ((1.0, False), *((share, True) for share in (1.0, *NARROWER))):
        tools = replace(case.coat.tools, band_m=case.coat.tools.band_m * share)
        try:
            laid = case.sweeper.laid(tools, thorough=True, smoothed=smoothed)
            if laid.longest_wait_min > HOPE * lives.longest_min:
                continue
            sweep = case.sweeper.sweep(tools, thorough=True, smoothed=smoothed)
            more = (sweep.wetted_m2 - case.sweep.wetted_m2) * flow.l_per_m2
            thirst = replace(flow, still_to_spray_l=flow.still_to_spray_l + more)
            found = on_the_clock(case, sweep, thirst, field_id)
        except Unanswerable:
            continue
        if found.held.spare_min >= 0:
            return found
        if share == 1.0:
            best = max(best, found, key=lambda one: one.held.spare_min)
    return best
