"""The rest of a day: what is sprayed kept, what is to come laid on the clock from now on.

The planner of the morning does it (`plan_coat`, `time_sweep`), given the day as it stands.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from math import inf

from farwall.errors import Mistake, Refused
from farwall.facts.plan import Band, Field, OpenTime, Plan, PlanTools, Refill, Remedy, Verdict, Walk
from farwall.facts.so_far import ClosedRoom
from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor
from farwall.job.past import AT_M, Settled
from farwall.job.so_far_sense import whole_fields
from farwall.spray.dry import DryGround
from farwall.spray.fields import Pieces, Sweeps
from farwall.spray.kept import KeptSweeper, kept_sweep, pieces_of
from farwall.spray.midday import Shut, Turns, Waiting, in_turn
from farwall.spray.order import Order, Step
from farwall.spray.plan_coat import Rest, plan_coat
from farwall.spray.refills import Flow
from farwall.spray.routes import gap_m, nearest_on, part_with
from farwall.spray.schedule import Day, Timed, route, time_sweep, timed_path
from farwall.spray.sweep import Sweep
from farwall.spray.sweeper import Sweeper
from farwall.spray.verdict import Case, CoatFacts, Judge
from farwall.spray.world import World, build_world

CLOSED = "closed"
_ON_SEAM_MIN = 0.1


@dataclass(frozen=True)
class Remains:
    """The fields of the day, past and to come, and those left for another day with the reason."""

    fields: tuple[Field, ...]
    left: tuple[Field, ...]
    why: dict[str, str]


@dataclass(frozen=True)
class RestOfDay:
    """A plan in mid-day: where it stands, and which rooms are closed."""

    plan: Plan
    state: Settled
    closed: tuple[ClosedRoom, ...]

    @cached_property
    def world(self) -> World:
        """The house of the plan."""
        return build_world(self.floor, self.plan.inputs.exits)

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

    def remains(self) -> Remains:
        """Past and rest of every coat. Raises `Unanswerable`, and `Refused` for a place on wet."""
        coats = [coat.id for coat in self.plan.inputs.coats]
        here = coats.index(self.state.coat)
        fields: list[Field] = []
        for coat in coats[:here]:
            fields += _Coat(self, coat, _Stand.below(self.state, coat)).remains().fields
        left: list[Field] = []
        why: dict[str, str] = {}
        if self.state.past or here == 0:
            now = _Coat(self, self.state.coat, _Stand.of(self.state)).remains()
            fields += now.fields
            left, why = list(now.left), dict(now.why)
        else:
            left = [field for field in self.plan.left if coats.index(field.coat) < here]
            here -= 1
        for before, coat in zip(coats[here:], coats[here + 1 :], strict=False):
            found = self._later(coat, before, fields, left)
            fields += found.fields
            left += found.left
            why.update(found.why)
        return Remains(tuple(fields), tuple(left), why)

    def _later(
        self, coat: str, before: str, fields: Sequence[Field], left: Sequence[Field]
    ) -> Remains:
        """A coat that is not begun: as planned, later when it has to be, less what is left bare."""
        own = [field for field in whole_fields(self.plan) if field.coat == coat]
        if not own:
            return Remains((), (), {})
        bare = [pieces_of(self.world, field) for field in left if field.coat == before]
        skipped = {field.id for field in own if any(pieces_of(self.world, field) & b for b in bare)}
        back = {field.id for field in self.plan.left if field.coat == coat}
        planned = _first_min([field for field in own if field.id not in back] or own)
        begins = max(self._begins(before, fields, planned), self.state.at_min)
        still_closed = any((room.until_min or inf) > begins for room in self.closed)
        if not skipped and not still_closed and not back:
            return Remains(tuple(moved(field, begins - planned) for field in own), (), {})
        waiting = tuple(field for field in own if field.id not in skipped)
        stand = _Stand.before_coat(self.state, begins, waiting)
        found = _Coat(self, coat, stand).remains()
        reason = f"coat {before} is not on it yet."
        return Remains(
            found.fields,
            (*found.left, *(field for field in own if field.id in skipped)),
            {**found.why, **dict.fromkeys(sorted(skipped), reason)},
        )

    def _begins(self, before: str, fields: Sequence[Field], planned: float) -> float:
        """When the coat after `before` may begin: as planned, or later as that one ended."""
        own = [field for field in fields if field.coat == before]
        old = [field for field in self.plan.fields if field.coat == before]
        clock = next((c for c in self.plan.clocks if c.coat == before), None)
        if not own or clock is None:
            return planned
        ended, was = _last_min(own), _last_min(old)
        high = clock.high_min
        if high is not None and abs(was + high - planned) <= _ON_SEAM_MIN:
            begins = round(ended + high, 1)
            return planned if abs(begins - planned) <= _ON_SEAM_MIN else begins
        return planned if ended + clock.low_min <= planned else planned + ended - was


@dataclass(frozen=True)
class _Stand:
    """Where a coat stands: what is done of it, what is to come, and the day's state."""

    past: tuple[Field, ...]
    rest: tuple[Field, ...]
    at_min: float
    state: Settled

    @staticmethod
    def of(state: Settled) -> _Stand:
        return _Stand(state.past, state.rest, state.now_min, state)

    @staticmethod
    def below(state: Settled, coat: str) -> _Stand:
        past = tuple(field for field in state.before if field.coat == coat)
        return _Stand(past, (), state.at_min, replace(state, here=state.base, at=state.base))

    @staticmethod
    def before_coat(state: Settled, begins: float, rest: tuple[Field, ...]) -> _Stand:
        dry = replace(
            state, here=state.base, at=state.base, tank_then_l=0.0, helper_free_min=begins, done={}
        )
        return _Stand((), rest, begins, dry)


@dataclass(frozen=True)
class _Coat:
    """The coat in hand, or one that must be laid out anew."""

    day: RestOfDay
    coat: str
    stand: _Stand

    @property
    def rate(self) -> float:
        return self.day.plan.inputs.l_per_m2[self.coat]

    @cached_property
    def pieces(self) -> dict[str, Pieces]:
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
        )

    def remains(self) -> Remains:
        turns = self._turns()
        past = [self._aged(field) for field in self.stand.past]
        past = self._with_walk_to_place(past)
        begun = {field.id: field for field in past}
        steps = tuple(Step(self.pieces[turn.id], turn.exit) for turn in turns.turns)
        new: tuple[Field, ...] = ()
        if steps:
            rest = Rest(
                self._day(),
                tuple(turn.id for turn in turns.turns),
                tuple(turn.not_before_min for turn in turns.turns),
            )
            new = plan_coat(
                self.day.world,
                Order(steps, 0.0, 0.0, proved=False),
                self._sweeper,
                self._facts(),
                MiddayJudge(self.day.floor, self.day.plan.inputs.exits, self._refused),
                begins_min=self.stand.at_min,
                first_number=1,
                rest=rest,
            )
        past = past if steps else self._walked_out(past)
        begun = begun if steps else {field.id: field for field in past}
        drawn = {band.id: band for field in self.stand.rest for band in field.bands}
        new = tuple(_as_drawn(field, drawn) for field in new)
        joined = [_joined(begun.pop(field.id, None), field) for field in new]
        left_ids = {name for name, _ in turns.left}
        cut_short = [_cut_short(begun.pop(f.id)) for f in past if f.id in left_ids & set(begun)]
        fields = _numbered([*begun.values(), *cut_short, *joined], self._first_number())
        left = tuple(self._left(f) for f in self.stand.rest if f.id in left_ids)
        return Remains(fields, left, dict(turns.left))

    def _turns(self) -> Turns:
        wet: Pieces = frozenset().union(
            *(self.pieces[f.id] for f in self.stand.past if f.id not in self.kept)
        )
        return in_turn(
            sorted((self._waiting(field) for field in self.stand.rest), key=_live_first),
            wet,
            [_shut(self.day.world, closed) for closed in self.day.closed],
            self.day.sweeps,
            now_min=self.stand.at_min,
        )

    def _waiting(self, field: Field) -> Waiting:
        sweep = self.kept[field.id]
        left = sum(each.minutes(self.day.tools) for each in sweep.to_spray)
        waited = self.stand.at_min - sweep.begun[-1].end_min if sweep.begun else 0.0
        patience = max(field.open_time_min.low - waited, 0.01) if sweep.begun else 0.0
        return Waiting(
            field.id, self.pieces[field.id], sweep.exit, left, ", ".join(field.rooms), patience
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
        state = self.stand.state
        if state.at == state.here:
            return state.at
        ground = part_with(self._free.shape, state.here)
        near = state.here if ground is None else nearest_on(ground, state.at)
        if gap_m(near, state.at) > AT_M:
            what = f"no dry way leads to ({state.at[0]:.2f}, {state.at[1]:.2f})."
            remedy = "Leave it out, or tell a place on dry floor, metres."
            raise Refused(Mistake("at", what, remedy))
        return (round(near[0], 4), round(near[1], 4))

    def _day(self) -> Day:
        state = self.stand.state
        return Day(
            self.stand.at_min,
            self.place,
            max(state.tank_then_l, 0.0),
            self._free,
            state.base,
            max(state.helper_free_min, self.stand.at_min),
        )

    def _sweeper(self, step: Step) -> Sweeper:
        name = next(n for n, pieces in self.pieces.items() if pieces == step.pieces)
        kept = self.kept[name]
        if kept.exit == step.exit:
            return KeptSweeper(self.day.world, kept, self.day.tools, l_per_m2=self.rate)
        return self.day.sweeps.sweeper(step.pieces, step.exit)

    def _facts(self) -> CoatFacts:
        told = {self.pieces[field.id]: field.open_time_min for field in self.stand.rest}

        def lasting(pieces: Pieces, _at_min: float) -> OpenTime:
            return told[pieces]

        helper = self.day.plan.inputs.crew.helper
        return CoatFacts(self.coat, self.rate, helper, self.day.tools, lasting)

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
        verdict, remedies = seam_of(timed, field.open_time_min, len(timed.bands))
        return replace(
            field,
            bands=timed.bands,
            area_m2=_area_m2(timed.bands),
            peak_age_min=timed.peak_age_min,
            verdict=verdict or field.verdict,
            remedies=remedies or field.remedies,
        )

    def _with_walk_to_place(self, past: list[Field]) -> list[Field]:
        """The walk from the last band to where the sprayer was told to stand."""
        if self.place == self.stand.state.here or not past:
            return past
        way = route(self._free, self.stand.state.here, self.place)
        last = max(past, key=lambda field: field.end_min)
        walk = _within(way, last.end_min, self.stand.at_min, self.day.tools.walk_m_min)
        return [replace(f, walks=(*f.walks, walk)) if f is last else f for f in past]

    def _walked_out(self, past: list[Field]) -> list[Field]:
        """The walk off the floor when nothing more of the coat is sprayed today."""
        base = self.stand.state.base
        if not past or not self.stand.rest or self.place == base:
            return past
        way = route(self._free, self.place, base)
        path = timed_path(way, self.stand.at_min, self.day.tools.walk_m_min)
        last = max(past, key=lambda field: field.end_min)
        return [
            replace(f, walks=(*f.walks, Walk("sprayer", path))) if f is last else f for f in past
        ]

    def _first_number(self) -> int:
        return min(field.order for field in self.day.plan.fields if field.coat == self.coat)

    def _left(self, field: Field) -> Field:
        """What is not sprayed of a field, as it was planned."""
        done = self.stand.state.done
        bands = tuple(band for band in field.bands if band.id not in done)
        return replace(field, bands=bands, area_m2=_area_m2(bands), walks=(), refills=())


@dataclass(frozen=True)
class MiddayJudge(Judge):
    """In mid-field nobody lays a field anew: an edge that dies is told, with what to do."""

    def verdict(
        self, case: Case, timed: Timed, lasting: OpenTime
    ) -> tuple[Verdict, tuple[Remedy, ...]]:
        """As in the morning, but for a field that is begun."""
        if case.sweep.begun:
            verdict, remedies = seam_of(timed, lasting, len(case.sweep.begun))
            if verdict:
                return verdict, remedies
        return super().verdict(case, timed, lasting)


def seam_of(
    timed: Timed, lasting: OpenTime, done: int
) -> tuple[Verdict | None, tuple[Remedy, ...]]:
    """The verdict on a field whose edge has died, and which edge it is; None when none has."""
    dead = [(n, band) for n, band in enumerate(timed.bands) if band.edge_age_min > lasting.low]
    if not dead:
        return None, ()
    number, band = max(dead, key=lambda one: one[1].edge_age_min)
    age = f"{band.edge_age_min:.1f} min old, live for {lasting.low:.1f} min"
    if number < done:
        words = f"A seam is in the floor before band {band.id}: its edge was {age}."
        words += " Look at it when it is dry; do not spray over it now."
    else:
        words = f"The edge before band {band.id} is {age} when the band meets it: a seam will show."
        words += " Feather it out and go on, or stop at the next line that hides one."
    return "cannot", (Remedy("seam", words, band.edge_age_min),)


def _cut_short(field: Field) -> Field:
    words = f"Field {field.id} is left in open floor: a seam will show. Feather the last band out."
    return replace(field, verdict="cannot", remedies=(Remedy("seam", words),))


def _live_first(one: Waiting) -> bool:
    return one.patience_min == 0


def _shut(world: World, closed: ClosedRoom) -> Shut:
    pieces = frozenset(n for n, piece in world.pieces.items() if piece.room == closed.room)
    return Shut(closed.room, pieces, inf if closed.until_min is None else closed.until_min)


def _within(way: Sequence[tuple[float, float]], start: float, end: float, pace: float) -> Walk:
    """The walk on the clock; hurried when the time for it was short."""
    path = timed_path(way, start, pace)
    took = path[-1][2] - start
    if start + took <= end:
        return Walk("sprayer", path)
    share = (end - start) / took
    return Walk("sprayer", tuple((x, y, round(start + (t - start) * share, 4)) for x, y, t in path))


def _as_drawn(field: Field, drawn: Mapping[str, Band]) -> Field:
    """Bands that are walked as planned have the very outline of the plan."""
    bands = tuple(
        replace(band, polygon=drawn[band.id].polygon)
        if band.id in drawn and _way(drawn[band.id]) == _way(band)
        else band
        for band in field.bands
    )
    return replace(field, bands=bands)


def _way(band: Band) -> list[tuple[float, float]]:
    return [(x, y) for x, y, _ in band.path]


def _joined(past: Field | None, field: Field) -> Field:
    """A field with what was walked and filled for its done bands."""
    if past is None:
        return field
    return replace(
        field,
        walks=(*past.walks, *field.walks),
        refills=(*past.refills, *field.refills),
    )


def _numbered(fields: Iterable[Field], first: int) -> tuple[Field, ...]:
    ordered = sorted(fields, key=lambda field: field.bands[0].start_min)
    return tuple(replace(field, order=first + n) for n, field in enumerate(ordered))


def _area_m2(bands: Iterable[Band]) -> float:
    return round(sum(band.polygon.shape.area for band in bands), 4)


def _first_min(fields: Sequence[Field]) -> float:
    """The first moment of a coat."""
    found = [w.path[0][2] for f in fields for w in f.walks] + [f.start_min for f in fields]
    return min([*found, *(r.at_min for f in fields for r in f.refills)])


def _last_min(fields: Sequence[Field]) -> float:
    """When the last walk of a coat is done."""
    return max([w.path[-1][2] for f in fields for w in f.walks] + [f.end_min for f in fields])


def moved(field: Field, by_min: float) -> Field:
    """The same field so many minutes later."""
    if by_min == 0:
        return field

    def later(minute: float) -> float:
        return round(minute + by_min, 4)

    return replace(
        field,
        start_min=later(field.start_min),
        end_min=later(field.end_min),
        bands=tuple(
            replace(
                band,
                start_min=later(band.start_min),
                end_min=later(band.end_min),
                path=tuple((x, y, later(t)) for x, y, t in band.path),
            )
            for band in field.bands
        ),
        refills=tuple(_later_refill(refill, by_min) for refill in field.refills),
        walks=tuple(
            Walk(walk.who, tuple((x, y, later(t)) for x, y, t in walk.path)) for walk in field.walks
        ),
    )


def _later_refill(refill: Refill, by_min: float) -> Refill:
    return replace(refill, at_min=round(refill.at_min + by_min, 4))
