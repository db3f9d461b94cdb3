"""One coat in mid-day: what is done of it kept, what is to come laid from where it stands.

The planner of the morning does it (`plan_coat`, `time_sweep`), given the day as it stands.
"""

from __future__ import annotations

from dataclasses import replace
from functools import cached_property
from math import inf

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Field, Plan, PlanTools, Remedy, RoomOpenTime, Walk
from farwall.facts.so_far import ClosedRoom
from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor
from farwall.job.again_fields import area_m2, as_drawn, joined, numbered, with_walks
from farwall.job.in_view import as_seen
from farwall.job.midday_judge import MiddayJudge, cut_short, seam_of
from farwall.job.past import Settled
from farwall.job.places_again import (
    at_the_tub,
    dry_place,
    insist_on_room,
    left_by_second,
    minutes_left,
    out_of_the_way,
    walks_to,
)
from farwall.job.sun_midday import in_sun
from farwall.nouns import dataclass
from farwall.spray.building import build_world
from farwall.spray.crew import walks_off
from farwall.spray.dry import DryGround
from farwall.spray.kept import KeptSweeper, kept_sweep, pieces_of
from farwall.spray.lives import Lives, held_to
from farwall.spray.midday import Shut, Turns, Waiting, in_turn
from farwall.spray.order import Order, Step
from farwall.spray.plan_coat import Rest, plan_coat
from farwall.spray.refills import Flow
from farwall.spray.schedule import Day, Second, time_sweep
from farwall.spray.sweep import Sweep
from farwall.spray.sweeper import Sweeper
from farwall.spray.sweeps import Pieces, Sweeps
from farwall.spray.verdict import CoatFacts
from farwall.spray.world import World


@dataclass(frozen=True)
class Remains:
    """The fields of the day, past and to come, and those left for another day with the reason."""

    fields: tuple[Field, ...]
    left: tuple[Field, ...]
    why: dict[str, str]


@dataclass(frozen=True)
class Again:
    """The plan that is taken up again, and the rooms in which somebody stands."""

    plan: Plan
    closed: tuple[ClosedRoom, ...]

    @cached_property
    def world(self) -> World:
        """The house of the plan."""
        return as_seen(build_world(self.floor, self.plan.inputs.exits), self.plan)

    @cached_property
    def floor(self) -> Floor:
        """Its floor."""
        given = self.plan.inputs
        return Floor(given.floor.rooms, given.openings, given.fixtures, given.saw_cuts)

    @property
    def tools(self) -> PlanTools:
        """Its tools."""
        return self.plan.inputs.tools

    @cached_property
    def sweeps(self) -> Sweeps:
        """Sweeps that are laid anew, where a field has to be left by another door."""
        thirst = max(self.plan.inputs.l_per_m2.values())
        return Sweeps(self.world, self.tools, thirst, self.plan.inputs.crew.helper)


@dataclass(frozen=True)
class Stand:
    """Where a coat stands: what is done of it, what is to come, and the day's state."""

    past: tuple[Field, ...]
    rest: tuple[Field, ...]
    at_min: float
    state: Settled

    @staticmethod
    def of(state: Settled) -> Stand:
        """The coat in hand."""
        return Stand(state.past, state.rest, state.now_min, state)

    @staticmethod
    def below(state: Settled, coat: str) -> Stand:
        """A coat that is wholly done."""
        past = tuple(field for field in state.before if field.coat == coat)
        there = replace(state, here=state.base, at=state.base, second=at_the_tub(state.second))
        return Stand(past, (), state.at_min, there)

    @staticmethod
    def before_coat(state: Settled, begins: float, rest: tuple[Field, ...]) -> Stand:
        """A coat that is not begun."""
        dry = replace(
            state,
            here=state.base,
            at=state.base,
            tank_then_l=0.0,
            helper_free_min=begins,
            done={},
            second=at_the_tub(state.second),
        )
        return Stand((), rest, begins, dry)


@dataclass(frozen=True)
class CoatAgain:
    """The coat in hand, or one that must be laid out anew."""

    day: Again
    coat: str
    stand: Stand

    @property
    def rate(self) -> float:
        """Litres a square metre."""
        return self.day.plan.inputs.l_per_m2[self.coat]

    @cached_property
    def pieces(self) -> dict[str, Pieces]:
        """The pieces of each field, by its id."""
        both = {field.id: field for field in (*self.stand.past, *self.stand.rest)}
        return {name: pieces_of(self.day.world, field) for name, field in both.items()}

    @cached_property
    def kept(self) -> dict[str, Sweep]:
        """The sweep of each field that is not wholly done, as planned, with what is done of it."""
        return {field.id: self._kept(field) for field in self.stand.rest}

    def _kept(self, field: Field) -> Sweep:
        return kept_sweep(
            self.day.world,
            field,
            self.pieces[field.id],
            tools=self.day.tools,
            l_per_m2=self.rate,
            done=self.stand.state.done,
            crew=self.day.plan.inputs.crew.sprayers,
        )

    def remains(self) -> Remains:
        """Its past and its rest. Raises `Unanswerable`, and `Refused` for a place on wet floor."""
        turns = self._turns()
        past = [self._aged(field) for field in self.stand.past]
        if past:
            past = with_walks(past, self._to_places())
        day, leaving = self._day_now
        if past:
            past = with_walks(past, leaving)
        new = self._new(turns, day) if turns.turns else ()
        if not new and past and self.stand.rest:
            past = with_walks(past, walks_off(day, self.day.tools))
        begun = {field.id: field for field in past}
        whole = [joined(begun.pop(field.id, None), field) for field in new]
        left = {name for name, _ in turns.left}
        broken = [cut_short(begun.pop(name)) for name in sorted(left & set(begun))]
        return Remains(
            numbered([*begun.values(), *broken, *whole], self._first_number()),
            tuple(self._left(field) for field in self.stand.rest if field.id in left),
            dict(turns.left),
        )

    def _new(self, turns: Turns, day: Day) -> tuple[Field, ...]:
        """The fields to come, those that are begun with the rest of their bands."""
        laid = plan_coat(
            self.day.world,
            Order(
                tuple(Step(self.pieces[turn.id], turn.exit) for turn in turns.turns),
                worst_share=0.0,
                least_share=0.0,
                proved=False,
            ),
            self._sweeper,
            self._facts(),
            MiddayJudge(self.day.floor, self.day.plan.inputs.exits, self._refused),
            begins_min=self.stand.at_min,
            first_number=1,
            rest=Rest(
                day,
                tuple(turn.id for turn in turns.turns),
                tuple(turn.not_before_min for turn in turns.turns),
            ),
        )
        drawn = {band.id: band for field in self.stand.rest for band in field.bands}
        return tuple(as_drawn(one.field, drawn) for one in laid)

    def _turns(self) -> Turns:
        wet: Pieces = frozenset().union(
            *(self.pieces[f.id] for f in self.stand.past if f.id not in self.kept)
        )
        return in_turn(
            sorted((self._waiting(field) for field in self.stand.rest), key=_live_first),
            wet,
            [_shut(self.day.world, closed, self._names) for closed in self.day.closed],
            self.day.sweeps,
            now_min=self.stand.at_min,
        )

    @cached_property
    def _names(self) -> dict[str, str]:
        """What people call the rooms, by id."""
        return {room.id: room.label for room in self.day.plan.inputs.floor.rooms}

    def _waiting(self, field: Field) -> Waiting:
        sweep = self.kept[field.id]
        left = minutes_left(sweep, self.day.tools)
        waited = self.stand.at_min - sweep.begun[-1].end_min if sweep.begun else 0.0
        patience = max(field.open_time_min.low - waited, 0.01) if sweep.begun else 0.0
        return Waiting(
            field.id,
            self.pieces[field.id],
            sweep.exit,
            left,
            ", ".join(self._names[room] for room in field.rooms),
            patience,
        )

    @cached_property
    def _free(self) -> DryGround:
        """Ground that this coat has left dry."""
        free = DryGround.of(self.day.world)
        for field in self.stand.past:
            sweep = self.kept.get(field.id) or self._kept(field)
            for each in sweep.passes[: len(sweep.begun)]:
                free = free.without(each.strip)
        return free

    @cached_property
    def place(self) -> Point:
        """Where the sprayer stands, on dry floor. Raises `Refused` when that is not near by."""
        return dry_place(self._free, self.stand.state, word="at")

    @cached_property
    def place_2(self) -> Point | None:
        """Where the second sprayer stands; None where there is none. Raises `Refused` as above."""
        second = self.stand.state.second
        if second is None:
            return None
        found = dry_place(self._free, second, word="at_2")
        if found != second.here or self.place != self.stand.state.here:
            insist_on_room(self.place, found)
        return found

    @cached_property
    def _day_now(self) -> tuple[Day, tuple[Walk, ...]]:
        """Where the day stands, and the walk out of a second sprayer who leaves."""
        state = self.stand.state
        day = Day(
            self.stand.at_min,
            self.place,
            max(state.tank_then_l, 0.0),
            self._free,
            state.base,
            max(state.helper_free_min, self.stand.at_min),
        )
        if state.second is None or self.place_2 is None:
            return day, ()
        second = Second(self.place_2, max(state.second.tank_then_l, 0.0), state.second.base)
        both = replace(day, second=second)
        if state.second.stays:
            return both, ()
        to_come = [each.path for sweep in self.kept.values() for each in sweep.to_spray]
        aside = out_of_the_way(self.day.world, second, day.base, to_come)
        away = replace(both, second=replace(second, base=aside))
        return left_by_second(away, self.day.tools)

    def _sweeper(self, step: Step) -> Sweeper:
        name = next(n for n, pieces in self.pieces.items() if pieces == step.pieces)
        kept = self.kept[name]
        if kept.exit == step.exit:
            return KeptSweeper(self.day.world, kept, self.day.tools, l_per_m2=self.rate)
        return self.day.sweeps.sweeper(step.pieces, step.exit)

    def _facts(self) -> CoatFacts:
        told = {self.pieces[field.id]: self._lives(field) for field in self.stand.rest}

        def lives(pieces: Pieces, from_min: float, to_min: float) -> Lives:
            return in_sun(told[pieces], self.day.plan, from_min, to_min)

        helper = self.day.plan.inputs.crew.helper
        second = self.stand.state.second
        sprayers = 2 if second is not None and second.stays else 1
        return CoatFacts(self.coat, self.rate, helper, self.day.tools, lives, sprayers=sprayers)

    def _lives(self, field: Field) -> Lives:
        """How long edges live in a field, as the morning told it: by room, or one for all."""
        world = self.day.world
        rooms: dict[str, list[BaseGeometry]] = {}
        for name in self.pieces[field.id]:
            rooms.setdefault(world.pieces[name].room, []).append(world.pieces[name].shape)
        one = field.open_time_min
        times = field.open_times or tuple(
            RoomOpenTime(room, field.start_min, one.low, one.likely, one.high) for room in rooms
        )
        return Lives(times, {room: shapely.union_all(shapes) for room, shapes in rooms.items()})

    def _refused(self, pieces: Pieces, _at_min: float) -> tuple[Remedy, ...]:
        """What the plan refused because of the slab stays refused."""
        for field in self.stand.rest:
            if self.pieces[field.id] == pieces:
                return tuple(r for r in field.remedies if r.code == "conditions")
        return ()

    def _aged(self, field: Field) -> Field:
        """What is done of a field, its edges aged by true times."""
        planned = next((f for f in self.day.plan.fields if f.id == field.id), None)
        if planned is not None and planned.bands == field.bands:
            return replace(field, remedies=planned.remedies, verdict=planned.verdict)
        whole = [f for f in self.stand.rest if f.id == field.id]
        sweep = self._kept(replace(whole[0] if whole else field, bands=field.bands))
        flow = Flow(self.coat, self.rate, helper=False, tools=self.day.tools, still_to_spray_l=0.0)
        nowhere = DryGround.of(self.day.world)
        start = Day(self.stand.at_min, self.stand.state.at, 0.0, nowhere, self.stand.state.base)
        timed, _ = time_sweep(sweep, start, flow, field_id=field.id)
        times = [(band.start_min, band.end_min - band.start_min) for band in timed.bands]
        held = held_to(self._lives(field), timed.moments, times)
        verdict, remedies = seam_of(timed, held, len(timed.bands))
        return replace(
            field,
            bands=timed.bands,
            area_m2=area_m2(timed.bands),
            peak_age_min=timed.peak_age_min,
            open_time_min=held.open_time,
            tightest=held.tightest,
            verdict=verdict or field.verdict,
            remedies=remedies or field.remedies,
        )

    def _to_places(self) -> tuple[Walk, ...]:
        """The walks from the last bands to where the sprayers were told to stand."""
        state = self.stand.state
        there: list[tuple[Point, Point]] = [(state.here, self.place)]
        if state.second is not None and self.place_2 is not None:
            there.append((state.second.here, self.place_2))
        done = [band.end_min for field in self.stand.past for band in field.bands]
        return walks_to(self._free, there, max(done), self.stand.at_min, self.day.tools.walk_m_min)

    def _first_number(self) -> int:
        return min(field.order for field in self.day.plan.fields if field.coat == self.coat)

    def _left(self, field: Field) -> Field:
        """What is not sprayed of a field, as it was planned."""
        done = self.stand.state.done
        bands = tuple(band for band in field.bands if band.id not in done)
        return replace(field, bands=bands, area_m2=area_m2(bands), walks=(), refills=())


def _live_first(one: Waiting) -> bool:
    return one.patience_min == 0


def _shut(world: World, closed: ClosedRoom, names: dict[str, str]) -> Shut:
    pieces = frozenset(n for n, piece in world.pieces.items() if piece.room == closed.room)
    return Shut(names[closed.room], pieces, inf if closed.until_min is None else closed.until_min)
