"""The bands of each coat across those of the coat below, where a field's shape and edges allow it.

Each field has two ways that its bands may run. Where both can be walked, coats take them in turn,
and the plan weighs their edges; a field whose crossed bands would lose an edge takes the best bands
there are instead, and says so.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import field

from farwall.errors import Unanswerable
from farwall.facts.plan import Field, PlanTools
from farwall.job.laying_out import LaidOut
from farwall.job.seal_day.direction import CROSSED_DEG, apart_deg, mean_direction_deg
from farwall.job.seal_day.noun import Crossing
from farwall.nouns import dataclass
from farwall.spray.directed import WAYS, DirectedSweeper
from farwall.spray.order import Step
from farwall.spray.sweeper import Sweeper

ONE_WAY = "nobody can walk bands the other way here and still get out"
SAME_SHAPE = "its shape turns both ways into nearly the same bands"
EDGE = "crossed, an edge would be {age:.1f} min old, and it lives {low:.1f}"
TOO_LONG = "crossed bands that can be walked here would lose their edge before it is met"
ACROSS = "turn the applicator instead and lay each strip off across it"


@dataclass
class Ways:
    """The sweepers of each field for each coat; what was tried stays for the next question."""

    laid: LaidOut
    tools: PlanTools
    l_per_m2: float
    edge_min: float
    """The longest that an edge lives in any of these coats, about."""
    tried: dict[Step, tuple[DirectedSweeper, ...]] = field(default_factory=dict)
    why: dict[tuple[int, Step], str] = field(default_factory=dict)
    hopeless: set[Step] = field(default_factory=set)

    def sweeper(self, coat: int, step: Step) -> Sweeper:
        """The sweeper of a field in coat number `coat`, from 0."""
        ways = self.ways(step)
        if len(ways) < len(WAYS) or (coat, step) in self.why:
            return self.laid.sweeps.sweeper(step.pieces, step.exit)
        return ways[coat % len(ways)]

    def ways(self, step: Step) -> tuple[DirectedSweeper, ...]:
        """The directed sweepers that can be walked and truly cross; the younger edges first."""
        if step not in self.tried:
            self.tried[step] = self._walked(step)
        return self.tried[step]

    def give_up(self, coat: int, step: Step, done: Field) -> bool:
        """Take the best bands for this field instead; False where they are taken already."""
        if len(self.ways(step)) < len(WAYS) or (coat, step) in self.why:
            return False
        self.why[coat, step] = EDGE.format(age=done.peak_age_min, low=done.open_time_min.low)
        return True

    def reason(self, coat: int, step: Step) -> str:
        """Why this field is not crossed with the coat below."""
        given_up = self.why.get((coat, step)) or self.why.get((coat - 1, step))
        if given_up:
            return f"{given_up}; {ACROSS}"
        if step in self.hopeless:
            return f"{TOO_LONG}; {ACROSS}"
        return f"{ONE_WAY if len(self.ways(step)) < len(WAYS) else SAME_SHAPE}; {ACROSS}"

    def _walked(self, step: Step) -> tuple[DirectedSweeper, ...]:
        found: list[tuple[float, DirectedSweeper, float | None]] = []
        for way in WAYS:
            sweeper = DirectedSweeper(
                self.laid.sweeps.world,
                sorted(step.pieces),
                step.exit,
                self.tools,
                l_per_m2=self.l_per_m2,
                kept=self.laid.sweeps.floors,
            )
            sweeper.way, sweeper.edge_min = way, self.edge_min
            if sweeper.hopeless:
                self.hopeless.add(step)
                return ()
            try:
                sweep = sweeper.sweep(self.tools)
                turned = mean_direction_deg(each.strip.shape for each in sweep.passes)
                found.append((sweeper.age_min(self.tools), sweeper, turned))
            except Unanswerable:
                if sweeper.leaves_out:
                    self.hopeless.add(step)
                continue
        if len(found) < len(WAYS):
            return ()
        apart = apart_deg(found[0][2], found[1][2])
        if apart is None or apart < CROSSED_DEG:
            return ()
        found.sort(key=lambda one: one[0])
        return tuple(sweeper for _, sweeper, _ in found)


def crossings(
    ways: Ways, steps: Sequence[Step], below: Sequence[Field], here: Sequence[Field], coat: int
) -> tuple[Crossing, ...]:
    """How far each field of a coat turns from the same field of the coat below, as planned."""
    found = []
    for step, under, over in zip(steps, below, here, strict=True):
        apart = apart_deg(_direction(under), _direction(over))
        crossed = apart is not None and apart >= CROSSED_DEG
        found.append(
            Crossing(
                over.id,
                under.id,
                over.rooms,
                None if apart is None else round(apart, 1),
                crossed,
                "" if crossed else ways.reason(coat, step),
            )
        )
    return tuple(found)


def _direction(planned: Field) -> float | None:
    return mean_direction_deg(band.polygon.shape for band in planned.bands)
