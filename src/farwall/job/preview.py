"""What a moved wall does to verdicts and edges, while it is being moved: quick, and rather strict.

Fields, their order and ways out are those of the last full plan. A field none of whose floor
changed keeps its figures. Of the changed ones the tightest are swept anew as the plan would, as
long as that is no more than `relaid_m2` of floor; the others are scaled by a first guess on a
coarse lattice. Either is weighed as if it were older, by `SAFE_SWEPT` or `SAFE`. With `relaid_m2`
infinite every changed field is swept: for the moment when the wall is let go.

How often it agrees with the full plan: `bench/preview.py` measures it on walls dragged by chance,
docs/spraying.md has the figures. It is an estimate; what is printed comes from a full plan.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Literal

from farwall.air.weather import Forecast, WeatherFile
from farwall.errors import FarwallError
from farwall.facts.job import Job
from farwall.facts.plan import Field, Plan, PlanTools, Verdict
from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor
from farwall.job.ground import JobGround, ground_of, world_of
from farwall.job.laying_out import LaidOut, laid_out
from farwall.job.patches import planned_floor
from farwall.job.plan_job import planned
from farwall.nouns import dataclass
from farwall.spray.order import Step
from farwall.spray.refills import Flow, age_with_min, refill_stops
from farwall.spray.sweep import Sweep
from farwall.spray.sweeper import Sweeper
from farwall.spray.sweeps import Pieces
from farwall.spray.world import Seam, World

SAFE = 1.2
"""By so much a guessed edge is made older before it is weighed. Measured here (docs/spraying.md,
Preview): the guess alone came out more than a fifth too young for one changed field in twenty."""
SAFE_SWEPT = 1.05
"""The same for an edge that was swept anew."""
RELAID_M2 = 16.0
"""Changed floor that is swept anew while a wall moves: some 30 ms of work on the machine of the
bench, beside 30 ms for the house itself."""
_CLEARLY = 0.9
"""A field that did not fit is told to fit only when it uses no more of its budget than this."""

How = Literal["kept", "swept", "guessed", "again"]


@dataclass(frozen=True)
class KeptField:
    """A field of the last full plan, in all its coats: what a preview scales."""

    step: Step
    guess_min: float
    area_m2: float
    coats: tuple[Field, ...]
    tank_l: tuple[float, ...]
    """What the tank holds when each coat of the field begins."""
    ages_min: tuple[float, ...]
    """The oldest edge of each coat by the plain sweep, walks around wet floor left out."""


@dataclass(frozen=True)
class Kept:
    """The last full plan of a job and what a preview needs of it."""

    job: Job
    plan: Plan
    world: World
    fields: tuple[KeptField, ...]
    tools: PlanTools
    l_per_m2: Mapping[str, float]


@dataclass(frozen=True)
class FieldPreview:
    """One field of one coat as it would be; `how` says what it was had from.

    `again`: its floor is in other pieces than before, only a full plan can tell; it then counts
    as not fitting and has no figures.
    """

    id: str
    rooms: tuple[str, ...]
    verdict: Verdict
    peak_age_min: float | None
    """The likeliest age of its oldest edge."""
    safe_age_min: float | None
    """The age that it is weighed by: the same where the field was kept, else older."""
    margin_min: float | None
    """What is left of its budget by the safe age; below 0 where it does not fit."""
    how: How


@dataclass(frozen=True)
class Previewed:
    """All fields, and whether every one of them fits."""

    fields: tuple[FieldPreview, ...]
    fits: bool


def keep(job: Job, *, weather: WeatherFile | Forecast | None = None) -> Kept:
    """A full plan of the job, kept for previews. Raises what `plan_job` raises."""
    ground = ground_of(job, weather)
    laid = laid_out(ground, job.wishes.order)
    plan = planned(job, ground, laid, weather=weather)
    fields = tuple(
        _kept(ground, laid, plan, step, place) for place, step in enumerate(laid.order.steps)
    )
    settled = ground.settled
    return Kept(job, plan, ground.world, fields, settled.tools, settled.l_per_m2)


def preview(kept: Kept, floor: Floor, *, relaid_m2: float = RELAID_M2) -> Previewed:
    """The fields of the last full plan on a changed floor with the same rooms and openings.

    relaid_m2: how much of the changed floor is swept anew, the rest being guessed [m²].
    Raises `Refused` or `Unanswerable` for a floor that makes no house at all.
    """
    job = replace(kept.job, floor=floor)
    world = world_of(job, planned_floor(job))
    left_m2, found = relaid_m2, []
    changed = [one for one in kept.fields if _changed(kept, one, world)]
    unchanged = [one for one in kept.fields if one not in changed]
    for one in unchanged:
        found += [_told(field, field.peak_age_min, "kept") for field in one.coats]
    for one in sorted(changed, key=_tightness, reverse=True):
        fields, spent_m2 = _anew(kept, one, world, left_m2)
        left_m2 -= spent_m2
        found += fields
    order = {field.id: field.order for field in kept.plan.fields}
    found.sort(key=lambda one: order[one.id])
    return Previewed(tuple(found), all(_fits(kept, one) for one in found))


def _fits(kept: Kept, one: FieldPreview) -> bool:
    helped = one.verdict == "helper" and kept.job.crew.helper
    return one.how != "again" and (one.verdict == "fits" or helped)


def _kept(ground: JobGround, laid: LaidOut, plan: Plan, step: Step, place: int) -> KeptField:
    sweeper = laid.sweeps.sweeper(step.pieces, step.exit)
    per_coat = [[f for f in plan.fields if f.coat == coat.id] for coat in plan.inputs.coats]
    coats = tuple(fields[place] for fields in per_coat)
    tanks = tuple(_tank_l(fields[:place]) for fields in per_coat)
    tools, helper = ground.settled.tools, ground.settled.job.crew.helper
    rates = ground.settled.l_per_m2
    sweep = sweeper.sweep(tools)
    ages = tuple(
        _age_min(sweep, tank, rates[field.coat], tools, helper=helper)
        for field, tank in zip(coats, tanks, strict=True)
    )
    return KeptField(step, sweeper.guess_age_min(), coats[0].area_m2, coats, tanks, ages)


def _tank_l(before: Sequence[Field]) -> float:
    """What is in the tank after these fields of a coat, which began with an empty one."""
    filled = sum(refill.litres for field in before for refill in field.refills)
    return filled - sum(band.litres for field in before for band in field.bands)


def _age_min(
    sweep: Sweep, tank_l: float, l_per_m2: float, tools: PlanTools, *, helper: bool
) -> float:
    """The oldest edge, refills where the plan would take them."""
    flow = Flow("preview", l_per_m2, helper, tools, sweep.wetted_m2 * l_per_m2)
    return age_with_min(sweep, refill_stops(sweep, tank_l, flow) - {0}, flow)


def _changed(kept: Kept, one: KeptField, world: World) -> bool:
    """Whether any floor of a field, or any opening of it, is no longer where it was."""
    before = kept.world
    for name in one.step.pieces:
        if name not in world.pieces:
            return True
        if not world.pieces[name].shape.equals(before.pieces[name].shape):
            return True
    return _seams(before, one.step.pieces) != _seams(world, one.step.pieces)


def _seams(world: World, pieces: Pieces) -> set[tuple[str, str, str, tuple[Point, ...]]]:
    return {
        (seam.id, seam.a, seam.b, tuple((round(x, 4), round(y, 4)) for x, y in seam.line))
        for seam in world.seams
        if {seam.a, seam.b} & pieces
    }


def _tightness(one: KeptField) -> float:
    """The largest share of its budget that the field took."""
    return max(f.peak_age_min / max(f.open_time_min.low, 1e-9) for f in one.coats)


def _anew(
    kept: Kept, one: KeptField, world: World, left_m2: float
) -> tuple[list[FieldPreview], float]:
    """A changed field in all its coats, and the floor that was swept for it."""
    step = _step(one, world)
    if step is None:
        return [_again(field) for field in one.coats], 0.0
    area_m2 = sum(world.pieces[name].shape.area for name in step.pieces)
    thirst = max(kept.l_per_m2.values())
    sweeper = Sweeper(world, sorted(step.pieces), step.exit, kept.tools, l_per_m2=thirst)
    try:
        if area_m2 <= left_m2:
            return _swept(kept, one, sweeper), area_m2
        grown = sweeper.guess_age_min() / one.guess_min
    except FarwallError:
        return [_again(field) for field in one.coats], 0.0
    return [_told(field, field.peak_age_min * grown, "guessed") for field in one.coats], 0.0


def _swept(kept: Kept, one: KeptField, sweeper: Sweeper) -> list[FieldPreview]:
    sweep = sweeper.sweep(kept.tools)
    found = []
    for field, tank, was in zip(one.coats, one.tank_l, one.ages_min, strict=True):
        age = _age_min(
            sweep, tank, kept.l_per_m2[field.coat], kept.tools, helper=kept.job.crew.helper
        )
        # What the plan does beyond the plain sweep (walks around wet floor, narrower bands).
        beyond = field.peak_age_min / was if was > 0 else 1.0
        found.append(_told(field, age * beyond, "swept"))
    return found


def _step(one: KeptField, world: World) -> Step | None:
    """The field in the changed house, None where its pieces or its exit are no longer there."""
    pieces: Pieces = one.step.pieces
    if not pieces <= set(world.pieces):
        return None
    old = one.step.exit
    ways: list[Seam] = [
        seam for seam in world.seams if seam.id == old.id and {seam.a, seam.b} == {old.a, old.b}
    ]
    return Step(pieces, max(ways, key=lambda seam: seam.chord.length)) if ways else None


def _again(field: Field) -> FieldPreview:
    return FieldPreview(field.id, field.rooms, "cannot", None, None, None, "again")


def _told(field: Field, age_min: float, how: How) -> FieldPreview:
    safe_min = age_min * {"kept": 1.0, "swept": SAFE_SWEPT}.get(how, SAFE)
    return FieldPreview(
        field.id,
        field.rooms,
        field.verdict if how == "kept" else _verdict(field, safe_min),
        round(age_min, 3),
        round(safe_min, 3),
        round(field.open_time_min.low - safe_min, 3),
        how,
    )


def _verdict(field: Field, age_min: float) -> Verdict:
    """The stricter of what it was and what the new edge says."""
    low, was = field.open_time_min.low, field.verdict
    fitted = field.peak_age_min <= low
    if fitted:
        return was if age_min <= low else "cannot"
    return "fits" if age_min <= _CLEARLY * low and low > 0 else was
