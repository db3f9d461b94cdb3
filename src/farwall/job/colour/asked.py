"""What is asked about a floor's colour, and which rooms and coat that means. Pure."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.errors import Mistake, Refused
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.facts.log import Kept
from farwall.facts.plan import Plan
from farwall.facts.settled import SettledJob
from farwall.job.colour.laid import LaidCoat, RoomCoats
from farwall.job.colour.told import with_told
from farwall.job.lessons import with_lessons
from farwall.job.story.noun import Story
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Asked:
    """The question. room: one alone · coat: the one to be decided · stain: that alone."""

    job: Job
    plan: Plan
    kept: tuple[Kept, ...] = ()
    lessons: Lessons | None = None
    room: str = ""
    coat: str = ""
    stain: str = ""


def settled_of(asked: Asked) -> SettledJob:
    """The job's gaps filled, samples of its log and the firm's lessons counted in."""
    told = with_told(asked.job, asked.kept)
    return with_lessons(settle(told, starts_at=asked.plan.starts_at), asked.lessons)


def rooms_asked(asked: Asked, laid: RoomCoats) -> tuple[str, ...]:
    """The rooms asked about: one, else those that had most coats, before the coat asked about."""
    if asked.room:
        return (asked.room,)
    ids = [coat.id for coat in asked.plan.inputs.coats]
    if asked.coat:
        before = ids[: ids.index(asked.coat)]
        own = [r for r, coats in laid.items() if [c.coat for c in coats] == before]
        if not own:
            what = f"no room waits for {asked.coat}: by the log it is on, or one before is missing."
            raise Refused(Mistake("--coat", what, "Leave it out to hear of what comes next."))
        return tuple(own)
    most = max(len(coats) for coats in laid.values())
    return tuple(room for room, coats in laid.items() if len(coats) == most)


def named_coat(asked: Asked, story: Story | None) -> str | None:
    """The coat that is on by somebody's word: the one before the coat asked about, or looked at."""
    ids = [coat.id for coat in asked.plan.inputs.coats]
    if asked.coat:
        at = ids.index(asked.coat)
        return ids[at - 1] if at else None
    told = [one.text("coat") for one in story.of("colour-seen")] if story is not None else []
    known = [ids.index(one) for one in told if one in ids]
    return ids[max(known)] if known else None


def next_planned(plan: Plan, coats: Sequence[LaidCoat]) -> str:
    """The first coat of the plan that is not on; empty where all are."""
    on = {one.coat for one in coats}
    return next((one.id for one in plan.inputs.coats if one.id not in on), "")


def insist_known(asked: Asked) -> None:
    """Raises Refused with all names that are not there."""
    rooms = {room for field in asked.plan.fields for room in field.rooms}
    coats = {one.id for one in asked.plan.inputs.coats}
    stains = {one.id for one in settle(asked.job, starts_at=asked.plan.starts_at).stains}
    wrong = [
        Mistake(f"--{name}", f"there is no {name} {told}.", _there_are(known))
        for name, told, known in (
            ("room", asked.room, rooms), ("coat", asked.coat, coats),
            ("stain", asked.stain, stains),
        )
        if told and told not in known
    ]  # fmt: skip
    if wrong:
        raise Refused(*wrong)


def _there_are(known: set[str]) -> str:
    return f"There are {', '.join(sorted(known))}."
