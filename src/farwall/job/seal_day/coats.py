"""The coats of a seal day on the clock: each laid out by the planner, crossed, in their turn."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from farwall.evidence import Span
from farwall.facts.fits_crew import fits_crew
from farwall.facts.job import Crew
from farwall.facts.plan import Clock, Field, Remedy
from farwall.facts.settled import SettledCoat
from farwall.job.edge_lives import lives_on
from farwall.job.ground import JobGround, rooms_of
from farwall.job.laying_out import LaidOut
from farwall.job.seal_day.crossing import Ways, crossings
from farwall.job.seal_day.edge import SealLasting
from farwall.job.seal_day.noun import Crossing
from farwall.job.seal_day.waits import SealWaits
from farwall.nouns import dataclass
from farwall.spray.plan_coat import LaidField, plan_coat
from farwall.spray.sweeps import Pieces
from farwall.spray.verdict import CoatFacts, Judge, Places


@dataclass(frozen=True)
class LaidCoat:
    """One coat on the clock, its waits, and how its bands cross those below."""

    fields: tuple[Field, ...]
    recoat: Clock | None
    abrade: Clock | None
    wet_edge: Clock
    crossings: tuple[Crossing, ...]

    @property
    def begins_min(self) -> float:
        """Its first stroke, or the walk and filling before it."""
        return self.fields[0].start_min

    @property
    def ends_min(self) -> float:
        """When the last has walked off the floor."""
        walks = [walk.path[-1][2] for field in self.fields for walk in field.walks]
        return max([self.fields[-1].end_min, *walks])


def coats_laid(
    ground: JobGround,
    lasting: SealLasting,
    laid: LaidOut,
    ways: Ways,
    waits: SealWaits,
    *,
    begins: Sequence[float | None],
) -> tuple[LaidCoat, ...]:
    """All coats; `begins` are minutes from the start, None once the one below is surely ready."""
    done: list[LaidCoat] = []
    number = 1
    for k, coat in enumerate(ground.settled.coats):
        at_min = begins[k]
        if at_min is None:
            at_min = _ready_min(done[-1])
        fields = _coat(ground, lasting, laid, ways, coat=coat, k=k, at_min=at_min, number=number)
        number += len(fields)
        crossed = crossings(ways, laid.order.steps, done[-1].fields, fields, k) if done else ()
        last = coat is ground.settled.coats[-1]
        found = LaidCoat(fields, None, None, _edge(lasting, waits, coat, fields), crossed)
        ends_at = lasting.starts_at + timedelta(minutes=found.ends_min)
        done.append(
            LaidCoat(
                fields,
                None if last else waits.recoat(coat.id, ends_at),
                None if last else waits.abrade(coat.id, found.begins_min),
                found.wet_edge,
                crossed,
            )
        )
    return tuple(done)


def _ready_min(below: LaidCoat) -> float:
    """The late end of the wait for the next coat; four days where it comes to none."""
    assert below.recoat is not None
    wait = below.recoat.high_min
    return below.ends_min + (wait if wait is not None else 4 * 24 * 60.0)


def _coat(
    ground: JobGround,
    lasting: SealLasting,
    laid: LaidOut,
    ways: Ways,
    *,
    coat: SettledCoat,
    k: int,
    at_min: float,
    number: int,
) -> tuple[Field, ...]:
    """One coat; fields whose crossed bands lose an edge are laid out by the best bands instead."""
    facts = _facts(ground, lasting, coat)
    judge = _judge(ground, lasting)
    while True:
        done: tuple[LaidField, ...] = plan_coat(
            ground.world,
            laid.order,
            lambda step: ways.sweeper(k, step),
            facts,
            judge,
            begins_min=at_min,
            first_number=number,
        )
        fields = tuple(one.field for one in done)
        lost = [
            (step, field)
            for step, field in zip(laid.order.steps, fields, strict=True)
            if _loses(field, ground.settled.job.crew)
        ]
        given_up = [step for step, field in lost if ways.give_up(k, step, field)]
        if not given_up:
            return fields


def _loses(field: Field, crew: Crew) -> bool:
    """Whether an edge dies with this crew, be the hour refused or not."""
    return not fits_crew(field, crew) and field.peak_age_min > field.open_time_min.low


def _facts(ground: JobGround, lasting: SealLasting, coat: SettledCoat) -> CoatFacts:
    crew = ground.settled.job.crew
    lives = lives_on(ground.world, lasting, coat)
    return CoatFacts(
        coat.id,
        coat.l_per_m2,
        crew.helper,
        ground.settled.tools,
        lives,
        sprayers=crew.sprayers,
        us=ground.settled.job.wishes.units == "us",
    )


def _judge(ground: JobGround, lasting: SealLasting) -> Judge:
    def refused(pieces: Pieces, at_min: float) -> tuple[Remedy, ...]:
        found = lasting.refusal(rooms_of(ground.world, pieces), at_min)
        if found is None:
            return ()
        return tuple(Remedy("conditions", word) for word in (found.reason, *found.remedies))

    exits = ground.settled.job.exits
    return Judge(ground.floor, exits, refused, places=Places(ground.floor, exits))


def _edge(
    lasting: SealLasting, waits: SealWaits, coat: SettledCoat, fields: Sequence[Field]
) -> Clock:
    at_min = fields[0].start_min
    rooms = {room for field in fields for room in field.rooms}
    spans: list[Span] = [lasting.of_floor(room, at_min) for room in sorted(rooms)]
    return waits.wet_edge(coat.id, min(spans, key=lambda one: one.low), at_min)


def at(starts_at: datetime, minutes: float) -> datetime:
    """A minute of the plan as a moment, to the full minute."""
    moment = starts_at + timedelta(minutes=minutes)
    return (moment + timedelta(seconds=30)).replace(second=0, microsecond=0)
