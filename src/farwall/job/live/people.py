"""People on a live day: looks at who sprays, respirators, cartridges, eyewash, who is out. Pure.

None of it stops the day by itself but a look that found somebody not well: what is not entered is
not known to be missing. The next look is called for on every day; what was not entered is asked
after once people are told of, in the job or in the log.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import cached_property

from farwall.acid.look_in import look_in_of
from farwall.acid.may import called
from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.job import Job
from farwall.facts.workers import Worker
from farwall.job.live.noun import Advice, Alarm, PersonNow
from farwall.job.live.standing import Standing
from farwall.job.story.wearing import Wearing, person_of, said_of, wearing
from farwall.nouns import dataclass
from farwall.units import gal_from_l

GAP_MIN = 30.0
"""With nothing sprayed for so long nobody is inside to spray any more, or entries are missing:
either way no look is called for. A guess."""
WARN_MIN = 15.0
"""So long before the end of the schedule a new pair is called for: time to come out. A guess."""
EYEWASH_S, EYEWASH_MIN, EYEWASH_L_MIN = 10.0, 15.0, 1.5
"""Reach, duration and flow that are wanted [eyewash]."""
NO_NAME = "the sprayer"
_PEOPLE_WORDS = ("respirator-on", "respirator-off", "cartridge-changed", "looked-in")


@dataclass(frozen=True)
class Crew:
    """The people of a day at its minute."""

    job: Job
    standing: Standing

    @cached_property
    def worn(self) -> tuple[Wearing, ...]:
        """Respirators as entered."""
        found, _ = wearing(
            self.standing.story, at_min=self.standing.at_min, workers=self.job.workers
        )
        return found

    @cached_property
    def told(self) -> bool:
        """Whether anybody told of people at all."""
        job, story = self.job, self.standing.story
        return bool(job.workers or job.emergency.look_in_min or story.of(*_PEOPLE_WORDS))

    @cached_property
    def sprayers(self) -> list[Worker]:
        """Who is told to spray."""
        return [one for one in self.job.workers if "sprays" in one.duties]

    @cached_property
    def since_min(self) -> float | None:
        """Since when somebody is inside to spray; None while nobody is."""
        story, now, told = self.standing.story, self.standing.at_min, self.standing.coat_story
        last = max((one.at_min for one in story.of(*_SPRAYING)), default=None)
        if last is None or now - last > GAP_MIN or told is None or told.end_min is not None:
            return None
        since = end = None
        for one in sorted(told.fields, key=lambda each: each.start_min):
            if since is None or end is None or one.start_min - end > GAP_MIN:
                since = one.start_min
            end = max(one.end_min if one.end_min is not None else now, end or one.start_min)
        return since

    def last_look_min(self, name: str) -> float | None:
        """When somebody last looked in on this person."""
        known = {called(one) for one in self.job.workers}
        found = None
        for one in self.standing.story.of("looked-in"):
            whom = person_of(one.text("person"), self.job.workers)
            if whom == name or whom not in known:
                found = one.at_min
        return found

    def names(self) -> list[str]:
        """Whom to look in on."""
        return [called(one) for one in self.sprayers] or [NO_NAME]

    def due_min(self, name: str) -> float | None:
        """When the next look is due; None while nobody sprays."""
        since = self.unseen_since_min(name)
        return None if since is None else since + look_in_of(self.job.emergency).value

    def unseen_since_min(self, name: str) -> float | None:
        """Since when nobody looked in: since spraying began, or the last look; None without."""
        since, last = self.since_min, self.last_look_min(name)
        return since if since is None or last is None else max(since, last)

    def pair_left_min(self, one: Wearing) -> float | None:
        """Minutes left of the pair on now by the maker's schedule; None where nobody told it."""
        worker = self._worker(one.person)
        pair = worker.cartridge if worker is not None else None
        used = one.pair_min
        if one.pair_since_min is None and pair is not None:
            used += pair.used_min
        limit = one.pair_limit_min or (pair.change_after_min if pair is not None else None)
        return None if limit is None else limit - used

    def _worker(self, name: str) -> Worker | None:
        return next((one for one in self.job.workers if called(one) == name), None)

    def wears(self, name: str) -> bool:
        """Whether the respirator of this person is on, as entered."""
        return any(one.on and one.person.casefold() == name.casefold() for one in self.worn)


_SPRAYING = ("field-started", "band-done", "field-done", "filled", "tank-weighed", "feathered")


def people_now(crew: Crew) -> tuple[PersonNow, ...]:
    """Everybody whose respirator is entered: on or off, minutes today and of the pair."""
    return tuple(
        PersonNow(
            one.person, one.on, round(one.minutes, 1), one.minutes_by_day, one.pair_min,
            None if (left := crew.pair_left_min(one)) is None else round(left, 1),
        )
        for one in crew.worn
    )  # fmt: skip


def people_alarms(crew: Crew) -> Iterator[Alarm]:
    """The next look at each who sprays, told of or not, and pairs that come to their end."""
    now = crew.standing.at_min
    for name in crew.names():
        due = crew.due_min(name)
        if due is not None:
            yield Alarm(round(due, 2), "look in", f"look in on {name}, and enter looked-in")
    for one in crew.worn:
        left = crew.pair_left_min(one)
        if not one.on or left is None or left <= 0:
            continue
        if left > WARN_MIN:
            what = f"cartridges of {said_of(one.person)}: {WARN_MIN:.0f} min left"
            yield Alarm(round(now + left - WARN_MIN, 2), "cartridges", what)
        else:
            whose = said_of(one.person)
            what = f"cartridges of {whose} are at the end of their schedule: a new pair"
            yield Alarm(round(now + left, 2), "cartridges", what)


def people_advice(crew: Crew) -> Iterator[Advice]:
    """What the people of the day ask for."""
    yield from _not_well(crew)
    if crew.told:
        yield from _unseen(crew)
        yield from _bare(crew)
        yield from _used_up(crew)
    yield from _eyewash(crew)
    yield from _let_in(crew)


def _advice(rule: str, reason: str, do: str, weight: int, source: str) -> Advice:
    rank = Rank.GUESS if source == OUR_GUESS else Rank.PRACTICE
    return Advice(
        rule, stop=False, reason=reason, do=do, weight=weight, rank=rank.value, source=source
    )


def _not_well(crew: Crew) -> Iterator[Advice]:
    story = crew.standing.story
    last: dict[str, tuple[float, bool]] = {}
    for one in story.of("looked-in"):
        well = one.about.get("well")
        if isinstance(well, bool):
            last[person_of(one.text("person"), crew.job.workers)] = (one.at_min, well)
    for name, (at, well) in last.items():
        if not well:
            who = said_of(name)
            reason = f"{who[:1].upper()}{who[1:]} was not well {crew.standing.clock(at)}."
            do = "Out into fresh air, now; call; stay with the person. Then enter how it is."
            yield replace(_advice("not well", reason, do, 99, PRACTICE), stop=True)


def _unseen(crew: Crew) -> Iterator[Advice]:
    now = crew.standing.at_min
    for name in crew.names():
        due = crew.due_min(name)
        since = crew.unseen_since_min(name)
        if due is None or now <= due or since is None:
            continue
        at, lasts = crew.standing.clock(since), f"{now - since:.0f} min"
        reason = f"Nobody is entered to have looked in on {name} since {at}, {lasts}."
        yield _advice("look in", reason, "Look in now; then enter looked-in.", 88, OUR_GUESS)


def _bare(crew: Crew) -> Iterator[Advice]:
    if crew.since_min is None:
        return
    for name in (called(one) for one in crew.sprayers):
        if not crew.wears(name):
            at = crew.standing.clock(crew.since_min)
            reason = f"{name} sprays since {at}, and no respirator is entered to be on."
            do = "On before anything else; then enter respirator-on with the minute it was."
            yield _advice("respirator", reason, do, 89, "osha-respirators")


def _used_up(crew: Crew) -> Iterator[Advice]:
    for one in crew.worn:
        left = crew.pair_left_min(one)
        if one.on and left is not None and left <= 0:
            whose = said_of(one.person)
            reason = f"The cartridges of {whose} are {-left:.0f} min past their schedule."
            do = "Out at the next stop line and a new pair on; a smell or a taste in it: out now."
            yield _advice("cartridges", reason, do, 90, "osha-respirators")


def _eyewash(crew: Crew) -> Iterator[Advice]:
    last = crew.standing.story.last("eyewash-tried")
    if last is None:
        return
    flow, reach = last.number("flow_l_min"), last.number("reached_s")
    short = []
    if reach is not None and reach > EYEWASH_S:
        short.append(f"it takes {reach:.0f} s to reach it, and {EYEWASH_S:.0f} are wanted")
    if flow is not None and flow < EYEWASH_L_MIN:
        gives, wanted = (
            f"{gal_from_l(one):.1f} gal ({one:.1f} L)" for one in (flow, EYEWASH_L_MIN)
        )
        short.append(f"it gives {gives} a minute, not {wanted}")
    if short:
        reason = f"The eyewash is short of what is wanted: {'; '.join(short)}."
        yield _advice(
            "eyewash", reason, "Move it or mend it before a jug is opened.", 91, "eyewash"
        )


def _let_in(crew: Crew) -> Iterator[Advice]:
    story = crew.standing.story
    let, out, rinsed = story.last("let-in"), story.last("kept-out"), story.last("rinsed")
    if let is None or (out is not None and out.at_min > let.at_min):
        return
    if rinsed is None or rinsed.at_min > let.at_min:
        reason = "Others were let in before a rinse was entered."
        yield _advice(
            "let in", reason, "Out until rinsed and aired; enter the rinse.", 87, PRACTICE
        )


def with_people(crew: Crew, found: Sequence[Advice]) -> tuple[Advice, ...]:
    """All advice together, what stops first, then the weightiest."""
    every = [*found, *people_advice(crew)]
    return tuple(sorted(every, key=lambda one: (not one.stop, -one.weight, one.rule)))
