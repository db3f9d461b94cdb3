"""A field to be judged, and the same field planned once more under other facts."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from farwall.errors import Unanswerable
from farwall.facts.job import ChoiceName
from farwall.facts.plan import PlanTools
from farwall.nouns import dataclass
from farwall.spray.crew import crew_of, time_crew
from farwall.spray.lives import Held, Lives, held_to
from farwall.spray.order import Step
from farwall.spray.refills import Flow
from farwall.spray.schedule import Day, Timed
from farwall.spray.sweep import Sweep
from farwall.spray.sweeper import Sweeper
from farwall.spray.sweeps import Pieces
from farwall.spray.world import World

HOPE = 1.2
"""A first guess at the oldest edge may be this much too old and still come right."""
NARROWER = (0.85, 0.7, 0.55)
"""Shares of the full band width that are tried where the full width loses the edge."""
TIGHT = 0.2
"""A field with less than this share of its budget to spare is tight. Rank: guess."""


@dataclass(frozen=True)
class CoatFacts:
    """What a coat needs besides the order: its id, thirst, crew, tools and how long edges live."""

    id: str
    l_per_m2: float
    helper: bool
    tools: PlanTools
    lives: Callable[[Pieces, float, float], Lives]
    """How long edges live in a field of these pieces, from one minute to another."""
    thorough: bool = False
    """Seek younger edges also where plain bands hold."""
    sprayers: int = 1
    wish: Callable[[str, Sequence[str]], ChoiceName] = lambda _field, _rooms: "best"
    """Which bands are wished for in a field, by its id and its rooms."""
    us: bool = False
    """Remedies tell feet first, as in a job in feet."""


@dataclass(frozen=True)
class Case:
    """One field to be judged: its place in the order, its sweep, the coat, the day so far."""

    world: World
    step: Step
    sweeper: Sweeper
    sweep: Sweep
    coat: CoatFacts
    day: Day

    def held(self, timed: Timed) -> Held:
        """The edges of this field, on this clock, held to their open times."""
        ends = timed.bands[-1].end_min
        times = [(band.start_min, band.end_min - band.start_min) for band in timed.bands]
        lives = self.coat.lives(self.step.pieces, self.day.minute, ends)
        return held_to(lives, timed.moments, times)


@dataclass(frozen=True)
class Outcome:
    """A field once planned: its oldest edge, how long it takes, what it drinks.

    `spare_min` is what its tightest edge has to spare where it lies.
    """

    peak_age_min: float
    minutes: float
    litres: float
    spare_min: float = 0.0


@dataclass(frozen=True)
class Trial:
    """The same field planned once more under other facts, for an edge of `budget_min`.

    That is the shortest open time of any of its rooms and hours: a remedy that is
    promised holds wherever its oldest edge may lie.
    """

    case: Case
    stands: Outcome
    budget_min: float

    def works(self, found: Outcome | None, budget_min: float | None = None) -> bool:
        """Whether the edge is still live when it is met."""
        budget = self.budget_min if budget_min is None else budget_min
        return found is not None and found.peak_age_min <= budget

    def with_room(self, found: Outcome | None) -> bool:
        """Whether that leaves enough of the budget not to be tight."""
        return found is not None and found.peak_age_min <= (1 - TIGHT) * self.budget_min

    def timed(
        self,
        tools: PlanTools,
        *,
        helper: bool,
        budget_min: float | None = None,
        l_per_m2: float | None = None,
        sprayers: int | None = None,
    ) -> Outcome | None:
        """The field on the clock with these tools and this crew; None if not doable.

        Other bands are laid only while a first guess at their edge gives hope.
        """
        case = self.case
        try:
            sweep = case.sweep
            if tools.band_m != case.coat.tools.band_m:
                budget = self.budget_min if budget_min is None else budget_min
                if case.sweeper.laid(tools).longest_wait_min > HOPE * budget:
                    return None
                sweep = case.sweeper.sweep(tools)
            thirst = case.coat.l_per_m2 if l_per_m2 is None else l_per_m2
            return timed_alone(
                case, sweep, tools, helper=helper, l_per_m2=thirst, sprayers=sprayers
            )
        except Unanswerable:
            return None


def timed_alone(
    case: Case,
    sweep: Sweep,
    tools: PlanTools,
    *,
    helper: bool,
    l_per_m2: float,
    sprayers: int | None = None,
) -> Outcome:
    """A sweep of the case's field on the clock, as if it were the last of the day.

    sprayers: how many of them, as many as the crew has when not told.
    """
    need_l = sweep.wetted_m2 * l_per_m2
    flow = Flow(case.coat.id, l_per_m2, helper, tools, need_l)
    day = crew_of(sprayers or case.coat.sprayers, case.day, case.world)
    timed, after = time_crew(sweep, day, flow, field_id="trial")
    spare = case.held(timed).spare_min
    return Outcome(timed.peak_age_min, after.minute - case.day.minute, need_l, spare)


def narrower(tools: PlanTools, share: float) -> PlanTools:
    """The same tools with bands of this share of their width."""
    return replace(tools, band_m=tools.band_m * share)
