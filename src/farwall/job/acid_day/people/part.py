"""The people of an acid day: each looked at for each duty, on the day that the plan begins. Pure.

It informs and decides nothing: who is fit to wear a respirator is for a doctor and a fit tester to
say, and what the air asks for is an industrial hygienist's.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime

from farwall.acid.look_in import look_in_of
from farwall.acid.may import VERBS, called, needs_of, word_of
from farwall.acid.protection import holds
from farwall.acid.worn import BREATHING, Check, Needs, asked_of, checked
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.facts.workers import Duty, Worker
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.people.first_aid import first_aid, numbers_of
from farwall.job.acid_day.people.hours import (
    Spell,
    cartridge_day,
    keep_out,
    looks_of,
    spells_of,
)
from farwall.job.acid_day.people.noun import DutyWord, Looked, People, Person

STOPPED: tuple[Duty, ...] = ("mixes", "sprays")
"""Duties without which nothing begins: what is missing for them is a stop."""
_INSIDE: frozenset[Duty] = frozenset({"sprays", "helps"})
ALONE = "Nobody works alone with acid: no second adult is told to be on site."
NO_ONE = (
    "Nobody told who works with the acid: who mixes, sprays, helps, scrubs and stands by, and "
    "what each was fitted, cleared and gloved for."
)
NO_SPRAYER = "Of the people told none is told to spray."
NO_STANDBY = "Nobody is named to stand by outside: who looks in on the sprayer, and calls?"
NO_NUMBER = "No emergency number was entered: the firm enters its own, none is filled in here."
NO_POISON = (
    "No poison centre's number was entered: the firm enters its own, none is filled in here."
)
NO_EYEWASH_PLACE = "Nobody told where the eyewash stands."


def people_of(ground: Ground) -> People:
    """Everybody told, the looks of the day, who stays out, first aid and the firm's own numbers."""
    job, plan = ground.job, ground.plan
    spells = tuple(spell for _, spell in spells_of(plan))
    needs, day = needs_of(job), day_of(plan)
    every = look_in_of(job.emergency)
    people = tuple(_person(one, day, needs, spells, plan) for one in job.workers)
    return People(
        people=people,
        stands_by=tuple(called(one) for one in job.workers if "stands by" in one.duties),
        look_in_min=every.value,
        look_in_rank=every.rank.value,
        look_in_source=every.source,
        look_ins=looks_of(plan, every.value),
        spray_spells_min=spells,
        eyewash_at=job.emergency.eyewash_at,
        keep_out=keep_out(plan, job.floor),
        first_aid=first_aid(chromate=needs.chromate),
        numbers=numbers_of(job.emergency),
        stops=tuple(_stops(job, people)),
        warnings=tuple(_warnings(job)),
    )


def day_of(plan: Plan) -> date:
    """The day on which the plan begins, by the clock of the house."""
    return datetime.fromisoformat(plan.starts_at).date()


def _person(worker: Worker, day: date, needs: Needs, spells: Sequence[Spell], plan: Plan) -> Person:
    words: list[DutyWord] = []
    looked: dict[str, Check] = {}
    for duty in worker.duties:
        checks = checked(worker, duty, day, needs)
        words.append(DutyWord(duty, *word_of(checks)))
        for one in checks:
            before = looked.get(one.item)
            if before is None or _STRICT[one.state] > _STRICT[before.state]:
                looked[one.item] = one
    breathes = any(set(BREATHING) & set(asked_of(duty, needs)) for duty in worker.duties)
    inside = bool(_INSIDE & set(worker.duties))
    own = spells if inside else ()
    held = holds(worker.respirator) if worker.respirator is not None and breathes else None
    return Person(
        id=worker.id,
        name=called(worker),
        duties=tuple(words),
        looked=tuple(Looked(one.item, one.state, one.why, one.source) for one in looked.values()),
        respirator=worker.respirator or "",
        gloves=worker.gloves,
        spraying_min=round(sum(end - begin for begin, end in own), 1),
        cartridge=None if worker.cartridge is None or not breathes
        else cartridge_day(worker.cartridge, own, plan),
        factor=None if held is None else held.factor,
        holds_ppm=None if held is None else held.legal_ppm,
        holds_hygienists_ppm=None if held is None else held.hygienists_ppm,
    )  # fmt: skip


_STRICT = {"in order": 0, "not told": 1, "missing": 2}


def _stops(job: Job, people: Sequence[Person]) -> list[str]:
    found = [] if job.crew.second_adult or job.crew.helper else [ALONE]
    found += [
        f"{person.name} may not {VERBS[word.duty]} yet: {'; '.join(word.why)}."
        for person in people
        for word in person.duties
        if word.duty in STOPPED and word.word == "not yet"
    ]
    return found


def _warnings(job: Job) -> list[str]:
    found = []
    if not job.workers:
        found.append(NO_ONE)
    else:
        duties = {duty for one in job.workers for duty in one.duties}
        found += [] if "sprays" in duties else [NO_SPRAYER]
        found += [] if "stands by" in duties else [NO_STANDBY]
        found += [f"Nobody told what {called(one)} does." for one in job.workers if not one.duties]
    told = job.emergency
    found += [] if told.number else [NO_NUMBER]
    found += [] if told.poison_centre else [NO_POISON]
    found += [] if told.eyewash_at else [NO_EYEWASH_PLACE]
    return found
