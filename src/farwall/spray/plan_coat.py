"""One coat over the whole house: its fields in order, on the clock, each with its verdict."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import cached_property, partial

import numpy as np
import shapely

from farwall.beside import Beside, Gathered, at_once
from farwall.facts.job import ChoiceName
from farwall.facts.plan import Choice, Field, PlanTools, Remedy, StopLine
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.spray.crew import walks_off, with_second
from farwall.spray.dry import DryGround
from farwall.spray.edges import Moments
from farwall.spray.fitting import Fitted, fitting, on_the_clock
from farwall.spray.lives import Lives
from farwall.spray.order import Order, Step
from farwall.spray.plain_bands import Choosing
from farwall.spray.refills import Flow
from farwall.spray.routes import nearest_on
from farwall.spray.schedule import Day
from farwall.spray.sweep import Sweep
from farwall.spray.sweeper import Sweeper
from farwall.spray.sweeps import Pieces
from farwall.spray.verdict import Case, CoatFacts, Judge, Weighed
from farwall.spray.world import BODY_M, Seam, World

_BASE_OUT_M = 1.3


@dataclass(frozen=True)
class Aside:
    """What is told beside a field: its choices of bands, remedies that leave more room."""

    choices: tuple[Choice, ...]
    remedies: tuple[Remedy, ...]


@dataclass(frozen=True)
class LaidField:
    """A field of the plan, with the moments of its edges and the open times that hold them.

    `aside` finds what the plan does not rest on: bands to choose from, and what would leave
    more room.
    """

    field: Field
    moments: tuple[Moments, ...]
    lives: Lives
    aside: Callable[[], Aside]

    def with_aside(self, found: Aside) -> LaidField:
        """The same with what was found aside."""
        remedies = (*self.field.remedies, *found.remedies)
        return replace(self, field=replace(self.field, choices=found.choices, remedies=remedies))


@dataclass(frozen=True)
class Rest:
    """The rest of a coat in mid-day: where the day stands; each field's id and earliest minute."""

    day: Day
    ids: tuple[str, ...]
    not_before_min: tuple[float, ...]


def plan_coat(
    world: World,
    order: Order,
    sweeper_of: Callable[[Step], Sweeper],
    coat: CoatFacts,
    judge: Judge,
    *,
    begins_min: float,
    first_number: int,
    rest: Rest | None = None,
    beside: Beside = at_once,
    gathered: Gathered | None = None,
    last: bool = False,
) -> tuple[LaidField, ...]:
    """The fields of one coat in order, from `begins_min` on; or the rest of them, from a `rest`.

    beside: begins the remedies of a field that does not hold, and what is found aside of a
    tight one, as soon as it is planned. gathered: takes what is found aside of the others; of the
    `last` coat it is begun while the last field is planned, which holds the way out and is the
    largest and tightest as a rule.
    """
    sweepers = tuple(sweeper_of(step) for step in order.steps)
    sweeps = tuple(each.sweep(coat.tools, thorough=coat.thorough) for each in sweepers)
    whole = _Coat(world, order, sweepers, sweeps, coat, judge, first_number, rest, beside)
    gathered = gathered or Gathered(at_once)
    day = whole.begun(begins_min)
    planned: list[_Planned] = []
    for index in range(len(sweeps)):
        if last and index == len(sweeps) - 1:
            gathered.begin()
        one, day = whole.planned(index, day, gathered.later)
        planned.append(one)
    fields = _last_walk_out([one.field for one in planned], day, coat.tools)
    return tuple(one.laid(field) for one, field in zip(planned, fields, strict=True))


@dataclass(frozen=True)
class _Planned:
    """A field on the clock, weighed, and what is found aside of it."""

    field: Field
    moments: tuple[Moments, ...]
    lives: Lives
    weighed: Weighed
    aside: Callable[[], Aside]

    def laid(self, field: Field) -> LaidField:
        """With its verdict, which waits for what the judge began beside."""
        told = replace(field, verdict=self.weighed.verdict, remedies=self.weighed.remedies)
        return LaidField(told, self.moments, self.lives, self.aside)


@dataclass(frozen=True)
class _Coat:
    """What every field of a coat is planned from."""

    world: World
    order: Order
    sweepers: tuple[Sweeper, ...]
    sweeps: tuple[Sweep, ...]
    coat: CoatFacts
    judge: Judge
    first_number: int
    rest: Rest | None
    beside: Beside

    @cached_property
    def owner(self) -> dict[str, Pieces]:
        """The field of each piece, as its pieces."""
        return {piece: step.pieces for step in self.order.steps for piece in step.pieces}

    def begun(self, begins_min: float) -> Day:
        """The day before the first field: all stand outside, or where a rest has them."""
        if self.rest is not None:
            return self.rest.day
        base = base_point(self.world, self.order.steps[-1].exit)
        day = Day(begins_min, base, 0.0, DryGround.of(self.world), base, begins_min)
        return with_second(day, self.world) if self.coat.sprayers == 2 else day

    def planned(self, index: int, day: Day, later: Beside) -> tuple[_Planned, Day]:
        """A field, and the day after it. later: begins what is found aside of one not tight."""
        step, coat, name = self.order.steps[index], self.coat, self._name(index)
        if self.rest is not None:
            day = replace(day, minute=max(day.minute, self.rest.not_before_min[index]))
        case = Case(self.world, step, self.sweepers[index], self.sweeps[index], coat, day)
        flow = self._flow(index)
        choosing = Choosing(case.sweeper, coat.tools, partial(_swept, case, flow, name), day.minute)
        fitted = choosing.taken(fitting(case, flow, name), self._wish(step, name))
        weighed = self.judge.weighed(
            replace(case, sweep=fitted.sweep), fitted.timed, fitted.held, self.beside
        )
        lives = coat.lives(step.pieces, day.minute, fitted.timed.bands[-1].end_min)
        begin = self.beside if weighed.is_tight else later
        told = choosing.told if self.rest is None else _no_choice
        aside = begin(partial(_aside, told, weighed.more))
        field = self._field(index, name, fitted, lives)
        return _Planned(field, fitted.timed.moments, lives, weighed, aside), fitted.after

    def _name(self, index: int) -> str:
        return f"{self.coat.id}.{index + 1}" if self.rest is None else self.rest.ids[index]

    def _wish(self, step: Step, name: str) -> ChoiceName:
        if self.rest is not None:
            return "best"
        return self.coat.wish(name, _rooms(self.world, step.pieces))

    def _flow(self, index: int) -> Flow:
        coat = self.coat
        ahead_l = sum(each.left_m2 for each in self.sweeps[index:]) * coat.l_per_m2
        later = self.sweeps[index + 1 :]
        return Flow(coat.id, coat.l_per_m2, coat.helper, coat.tools, ahead_l, later)

    def _field(self, index: int, name: str, fitted: Fitted, lives: Lives) -> Field:
        step, coat, sweep, timed = self.order.steps[index], self.coat, fitted.sweep, fitted.timed
        return Field(
            id=name,
            coat=coat.id,
            rooms=_rooms(self.world, step.pieces),
            exit=step.exit.exit or step.exit.id,
            area_m2=round(sum(band.polygon.shape.area for band in timed.bands), 4),
            order=self.first_number + index,
            start_min=min(band.start_min for band in timed.bands),
            end_min=max(band.end_min for band in timed.bands),
            verdict="cannot",  # until all are weighed: no later field hangs on it
            remedies=(),
            equivalent_front_m=round(sweep.front.equivalent_m, 3),
            bound_m=round(sweep.strongest_bound_m if coat.thorough else sweep.bound_m, 3),
            peak_age_min=timed.peak_age_min,
            open_time_min=fitted.held.open_time,
            open_times=lives.open_times,
            tightest=fitted.held.tightest,
            band_m=round(sweep.depth_m, 3),
            bands=timed.bands,
            refills=timed.refills,
            walks=timed.walks,
            stop_lines=stop_lines(self.world, step.pieces, self.owner),
        )


def _no_choice() -> tuple[Choice, ...]:
    return ()


def _aside(
    choices: Callable[[], tuple[Choice, ...]], remedies: Callable[[], tuple[Remedy, ...]]
) -> Aside:
    return Aside(choices(), remedies())


def _rooms(world: World, pieces: Pieces) -> tuple[str, ...]:
    return tuple(dict.fromkeys(world.pieces[name].room for name in sorted(pieces)))


def stop_lines(world: World, pieces: Pieces, owner: dict[str, Pieces]) -> tuple[StopLine, ...]:
    """Every seam at which this field ends on purpose."""
    lines = []
    for seam in world.seams:
        inside = (seam.a in pieces) + (seam.b in pieces)
        if inside == 1 and (not seam.b or owner.get(seam.other(_in(seam, pieces))) != pieces):
            line = tuple((round(x, 4), round(y, 4)) for x, y in seam.line)
            seen = None if seam.sight is None else seam.sight > 0
            lines.append(StopLine(seam.id, seam.kind, line, seen))  # type: ignore[arg-type]
    return tuple(lines)


def _in(seam: Seam, pieces: Pieces) -> str:
    return seam.a if seam.a in pieces else seam.b


def base_point(world: World, seam: Seam) -> Point:
    """Where the tub and the spare tank stand: outside, a step beyond the way out."""
    (x0, y0), (x1, y1) = seam.line[0], seam.line[-1]
    normal = np.array([y1 - y0, x0 - x1]) / max(float(np.hypot(x1 - x0, y1 - y0)), 1e-9)
    middle = np.array([(x0 + x1) / 2, (y0 + y1) / 2])
    inside = world.pieces[seam.a].shape
    out = max((1, -1), key=lambda s: inside.distance(shapely.Point(middle + s * 0.5 * normal)))
    yard = shapely.intersection(
        world.standing, shapely.buffer(world.outside, -BODY_M, join_style="mitre")
    )
    place = nearest_on(yard, tuple((middle + out * _BASE_OUT_M * normal).tolist()))
    return (round(place[0], 4), round(place[1], 4))


def _swept(case: Case, flow: Flow, field_id: str, sweep: Sweep) -> Fitted:
    return on_the_clock(case, sweep, flow, field_id)


def _last_walk_out(fields: Sequence[Field], day: Day, tools: PlanTools) -> tuple[Field, ...]:
    """The fields with everybody's walk off the floor added to the last one."""
    walks = walks_off(day, tools)
    last = replace(fields[-1], walks=(*fields[-1].walks, *walks))
    return (*fields[:-1], last)
