"""All coats of a job on the clock: fields, the waits between coats, what is found aside."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from farwall.beside import Gathered
from farwall.facts.plan import Clock, Field, Remedy
from farwall.facts.settled import SettledCoat
from farwall.job.daylight import Daylight, daylight_of
from farwall.job.edge_lives import lives_on
from farwall.job.ground import JobGround, rooms_of
from farwall.job.laying_out import LaidOut
from farwall.job.waits import Waits
from farwall.job.wet_below import free_from, refused_over, stays_wet
from farwall.spray.plain_bands import wish_for
from farwall.spray.plan_coat import Aside, LaidField, plan_coat
from farwall.spray.sweeps import Pieces
from farwall.spray.verdict import CoatFacts, Judge, Otherwise, Places


def coats_of(
    ground: JobGround, laid: LaidOut, *, thorough: bool
) -> tuple[tuple[LaidField, ...], tuple[Clock, ...], Callable[[], list[Aside]]]:
    """All fields of all coats, the waits between them, and what is found aside of each field."""
    light = daylight_of(ground.settled.job, ground.settled.starts_at)
    begins = light.minute(ground.settled.coats[0].coat.not_before) or 0.0
    fields: list[LaidField] = []
    clocks: list[Clock] = []
    gathered = Gathered(laid.sweeps.beside)
    places = Places(ground.floor, ground.settled.job.exits)
    others: list[Clock] = []
    wet: tuple[str, ...] = ()
    waits = Waits(ground.lasting)
    after = (*ground.settled.coats[1:], None)
    for coat, next_coat in zip(ground.settled.coats, after, strict=True):
        last = next_coat is None
        done = plan_coat(
            ground.world,
            laid.order,
            lambda step: laid.sweeps.sweeper(step.pieces, step.exit),
            _coat_facts(ground, coat, thorough=thorough),
            _judge(ground, coat, places, wet),
            begins_min=begins,
            first_number=len(fields) + 1,
            beside=laid.sweeps.beside,
            gathered=gathered,
            last=last,
        )
        fields.extend(done)
        own = [one.field for one in done]
        clock = waits.dry(coat, own[-1].end_min, last=last)
        clocks.append(clock)
        wet = wet or (refused_over(len(clocks)) if stays_wet(clock) else ())
        others.append(waits.open_time(coat, own[0].start_min))
        if next_coat is not None:
            begins = _next_coat(begins, own, clock, light, next_coat)
    gathered.begin()
    others.extend(waits.after(ground.settled.coats[-1], fields[-1].field.end_min, clocks[-1]))
    return tuple(fields), (*clocks, *others), lambda: [one.aside() for one in fields]


def _judge(
    ground: JobGround, coat: SettledCoat, places: Places, wet: tuple[str, ...] = ()
) -> Judge:
    """Who weighs the fields of one coat. wet: why nothing goes over what lies below it."""

    def others(pieces: Pieces, at_min: float, peak_min: float) -> Sequence[Otherwise]:
        rooms = rooms_of(ground.world, pieces)
        return ground.others.for_field(rooms, coat, at_min, peak_min)

    return Judge(
        ground.floor,
        ground.settled.job.exits,
        partial(_refused, ground, wet),
        others,
        partial(ground.others.cost, coat),
        places,
    )


def _refused(
    ground: JobGround, wet: tuple[str, ...], pieces: Pieces, at_min: float
) -> tuple[Remedy, ...]:
    """Why these pieces may not be stained at that minute, and what would change it."""
    refused = ground.lasting.refusal(rooms_of(ground.world, pieces), at_min)
    words = wet if refused is None else (refused.reason, *refused.remedies)
    return tuple(Remedy("conditions", word) for word in words)


def _coat_facts(ground: JobGround, coat: SettledCoat, *, thorough: bool) -> CoatFacts:
    settled = ground.settled
    crew, wishes = settled.job.crew, settled.job.wishes
    return CoatFacts(
        coat.id,
        coat.l_per_m2,
        crew.helper,
        settled.tools,
        lives_on(ground.world, ground.lasting, coat),
        thorough,
        crew.sprayers,
        partial(wish_for, wishes.bands, wishes.bands_in),
        us=wishes.units == "us",
    )


def _next_coat(
    begins: float, done: Sequence[Field], clock: Clock, light: Daylight, coat: SettledCoat
) -> float:
    """When the next coat begins: dry below, in the light, and not before told."""
    last = last_step_min(done)
    free = free_from(begins, last, clock)
    return light.coat_begins(round(free, 1), last - begins, coat.coat.not_before)


def last_step_min(done: Sequence[Field]) -> float:
    """When the last one stepped off the floor, minute of the plan."""
    return max(walk.path[-1][2] for field in done for walk in field.walks)
