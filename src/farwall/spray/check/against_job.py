"""`other-job`: a plan whose inputs are not the facts of the job beside it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from functools import partial
from typing import Protocol, TypeVar

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.spray.check.loose import At
from farwall.spray.check.nouns import (
    PLACE_M,
    SHARE,
    Exit,
    Fault,
    Fixture,
    Opening,
    Room,
    SawCut,
    Unreadable,
    area_slack,
)
from farwall.spray.check.reading import (
    cut_of,
    read_exit,
    read_fixture,
    read_opening,
    read_room,
    read_saw_cut,
)

DEEPEST_M = 0.8
"""A wall is no thicker than this: how far floor may reach from an opening's line."""

_LEFT = "leave for another colour"
_ENDS_M = 0.25
"""So much of a line on a joint may stick out at its ends: it runs on to the walls."""

Noun = TypeVar("Noun")


class _HasId(Protocol):
    @property
    def id(self) -> str: ...


Named = TypeVar("Named", bound=_HasId)


def against_job(plan: Mapping[str, object], job: object) -> list[Fault]:
    """Where the plan's inputs differ from a job's facts; raises `Unreadable` for the job."""
    if not isinstance(job, Mapping):
        raise Unreadable(("the job: an object with the keys of a job is expected.",))
    mistakes: list[str] = []
    top, inputs = At(job, "the job", mistakes), At(plan.get("inputs"), "inputs", [])
    says = [*_floor(top, inputs), *_given(top, inputs), *_coats(top, inputs)]
    if mistakes:
        raise Unreadable(tuple(dict.fromkeys(mistakes)))
    return [Fault("other-job", "", 0.0, what) for what in says]


def _floor(job: At, inputs: At) -> Iterator[str]:
    floor = job.get("floor")
    rooms = [_all(at, "rooms", read_room) for at in (inputs.get("floor"), floor)]
    openings = [_all(at, "openings", read_opening) for at in (inputs, floor)]
    doorways = shapely.difference(_doorways(openings[1]), _whole(rooms[1]))
    yield from _compared("room", *rooms, differs=partial(_room, doorways))
    yield from _compared("opening", *openings, differs=_opening)
    yield from _left_out(_whole(rooms[0]), *openings)
    exits = [_all(at, "exits", read_exit) for at in (inputs, job)]
    yield from _compared("exit", *exits, differs=_exit)
    fixtures = [_all(at, "fixtures", read_fixture) for at in (inputs, floor)]
    dry, joints = _patches(job)
    yield from _fixtures(fixtures[0], [*fixtures[1], *dry])
    saw_cuts = [_all(at, "saw_cuts", read_saw_cut) for at in (inputs, floor)]
    yield from _cuts(saw_cuts[0], saw_cuts[1], joints)


def _patches(job: At) -> tuple[list[Fixture], BaseGeometry]:
    """Patches that are kept dry, and the edges of later pours, where a plan may stop."""
    survey = job.get("survey")
    told = survey.get("patches") if survey.given else survey
    drawn = [at for at in told.items() if at.get("polygon").given] if told.given else []
    left = [at for at in drawn if at.get("decision").text_or("") == _LEFT]
    pours = [at for at in drawn if at.get("kind").text_or("") == "pour" and at not in left]
    edges = [at.get("polygon").polygon().boundary for at in pours]
    return (
        [Fixture(at.get("id").text_or(""), at.get("polygon").polygon()) for at in left],
        shapely.union_all(edges),
    )


def _whole(rooms: list[Room]) -> BaseGeometry:
    return shapely.union_all([room.shape for room in rooms])


def _doorways(openings: list[Opening]) -> BaseGeometry:
    """Where a plan may add the floor in the depth of walls to its rooms."""
    strips = [shapely.buffer(o.line, DEEPEST_M, cap_style="flat") for o in openings]
    return shapely.union_all([*strips, *(o.threshold for o in openings if o.threshold)])


def _left_out(rooms: BaseGeometry, mine: list[Opening], job: list[Opening]) -> Iterator[str]:
    """Floor under the job's inner doors that the plan has nowhere."""
    floor = shapely.union_all([rooms, *(o.threshold for o in mine if o.threshold)])
    for opening in job:
        if opening.threshold is not None and len(opening.rooms) > 1:
            lost = float(shapely.difference(opening.threshold, floor).area)
            if lost > area_slack(opening.threshold.area):
                yield f"Opening {opening.id}: the plan leaves out {lost:.2f} m² of its threshold."


def _all(at: At, key: str, read: Callable[[At], Noun]) -> list[Noun]:
    place = at.get(key)
    return [read(item) for item in place.items()] if place.given else []


def _compared(
    name: str,
    mine: list[Named],
    theirs: list[Named],
    *,
    differs: Callable[[Named, Named], Iterator[str]],
) -> Iterator[str]:
    """What the plan lacks, what it has too much, and what differs under the same id."""
    here = {noun.id: noun for noun in mine}
    there = {noun.id: noun for noun in theirs}
    for lost in sorted(set(there) - set(here)):
        yield f"The job has {name} {lost!r}; the plan was made without it."
    for added in sorted(set(here) - set(there)):
        yield f"The plan was made with {name} {added!r}, which the job does not have."
    for both in sorted(set(here) & set(there)):
        yield from differs(here[both], there[both])


def _apart(one: BaseGeometry, other: BaseGeometry, *, but: BaseGeometry) -> float:
    """Square metres that belong to one of two regions only, 0 within the tolerance."""
    area = float(shapely.difference(shapely.symmetric_difference(one, other), but).area)
    return area if area > area_slack(other.area) else 0.0


def _room(doorways: BaseGeometry, mine: Room, job: Room) -> Iterator[str]:
    apart = _apart(mine.shape, job.shape, but=doorways)
    if apart:
        yield f"Room {job.label}: plan and job differ on {apart:.2f} m²."


def _opening(mine: Opening, job: Opening) -> Iterator[str]:
    if mine.kind != job.kind:
        yield f"Opening {job.id}: the plan takes it for {mine.kind}, the job says {job.kind}."
    if sorted(mine.rooms) != sorted(job.rooms):
        says = f"between {', '.join(mine.rooms)}; the job says {', '.join(job.rooms)}"
        yield f"Opening {job.id}: the plan has it {says}."
    if not _same_line(mine.line, job.line):
        yield f"Opening {job.id} lies elsewhere in the job, or has another width."


def _same_line(one: shapely.LineString, other: shapely.LineString) -> bool:
    return bool(shapely.hausdorff_distance(one, other) <= PLACE_M)


def _exit(mine: Exit, job: Exit) -> Iterator[str]:
    if mine.opening != job.opening:
        says = f"opening {mine.opening}; the job says {job.opening}"
        yield f"Exit {job.id}: the plan leaves by {says}."


def _fixtures(mine: list[Fixture], job: list[Fixture]) -> Iterator[str]:
    here = shapely.union_all([fixture.shape for fixture in mine])
    there = shapely.union_all([fixture.shape for fixture in job])
    apart = _apart(here, there, but=shapely.Polygon())
    if apart:
        yield f"The fixtures of plan and job differ on {apart:.2f} m²."


def _cuts(mine: list[SawCut], job: list[SawCut], joints: BaseGeometry) -> Iterator[str]:
    """Cuts of one that the other lacks; a plan may also stop on the joint of a later pour."""
    for cut in job:
        if not any(_same_line(cut.line, other.line) for other in mine):
            yield f"The job has saw cut {cut.id!r}; the plan was made without it."
    for cut in mine:
        on_joint = shapely.difference(cut.line, shapely.buffer(joints, PLACE_M)).length <= _ENDS_M
        if not on_joint and not any(_same_line(cut.line, other.line) for other in job):
            yield f"The plan was made with saw cut {cut.id!r}, which the job does not have."


def _given(job: At, inputs: At) -> Iterator[str]:
    """Crew and tools, each value that the job gives."""
    for group in ("crew", "tools"):
        facts = job.get(group)
        if not facts.given:
            continue
        if not isinstance(facts.value, Mapping):
            facts.mistake("an object is expected")
            continue
        mine = inputs.get(group)
        for key in facts.value:
            if facts.get(key).given and mine.get(key).given:
                told = _by_morning(f"{group}.{key}", facts.get(key).value, job, inputs)
                yield from _value(f"{group}.{key}", mine.get(key).value, told)


def _by_morning(name: str, told: object, job: At, inputs: At) -> object:
    """What the job tells of a tool once its morning's check is counted in.

    A tip that gives less than the thirstiest coat takes at the told rate slows it
    to what it gives; with a sprayer that leaks a tank is filled, not swapped.
    """
    morning = job.get("morning")
    if not isinstance(morning.value, Mapping):
        return told
    tip = morning.get("tip_l_min").value
    if name == "tools.spray_m2_min" and isinstance(tip, int | float):
        thirst = inputs.get("l_per_m2").value
        drunk = thirst.values() if isinstance(thirst, Mapping) else ()
        most = [float(one) for one in drunk if isinstance(one, int | float) and one > 0]
        if most and isinstance(told, int | float):
            return min(told, tip / max(most))
    leaks = (morning.get(key).value is False for key in ("sprayer_tight", "spare_tight"))
    if name == "tools.swap_min" and any(leaks):
        return inputs.get("tools").get("refill_min").value
    return told


def _value(name: str, mine: object, job: object) -> Iterator[str]:
    if isinstance(mine, int | float) and isinstance(job, int | float):
        differ = not abs(mine - job) <= SHARE * abs(job)
    else:
        differ = mine != job
    if differ:
        yield f"`{name}`: the plan was made with {mine!r:.40}, the job says {job!r:.40}."


def _coats(job: At, inputs: At) -> Iterator[str]:
    """Coats by id, in their order, with their stain and cut."""
    there = {at.get("id").text(): at for at in _all(job, "coats", lambda at: at)}
    if not there:
        return
    here = {at.get("id").text(): at for at in inputs.get("coats").items()}
    if list(here) != list(there):
        yield f"The plan has coats {', '.join(here)}; the job says {', '.join(there)}."
    for coat in [coat for coat in there if coat in here]:
        mine, fact = here[coat], there[coat]
        if mine.get("stain").value != fact.get("stain").value:
            yield f"Coat {coat}: the plan sprays another stain than the job."
        if cut_of(mine.get("cut").text_or("")) != cut_of(fact.get("cut").text_or("")):
            yield f"Coat {coat}: the plan has another cut than the job."
