"""Whether the plan still holds or must be laid anew, and when: many taps, one re-plan. Pure."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Literal

from farwall.facts.fits_crew import fits_crew
from farwall.facts.numbered import numbered
from farwall.facts.plan import Plan
from farwall.facts.so_far import ClosedRoom, Done, SoFar
from farwall.job.live.standing import Standing
from farwall.job.story.noun import Story
from farwall.job.way_words import rooms_text
from farwall.nouns import dataclass

LATE_MIN = 1.0
"""A day that is off by less than this goes on as planned. Rank: guess."""
THIRSTY = 0.05
"""Belief of the thirst this far from the plan asks for new fillings. Rank: guess."""
SETTLE_S, MOST_S = 2.0, 10.0
"""A re-plan waits for so much quiet after the last tap, and never longer than that. Guesses."""

_STOPPED = {"stopped": "spraying stopped", "feathered": "the edge was feathered out"}
Word = Literal["holds", "again", "done"]


@dataclass(frozen=True)
class Again:
    """holds: nothing has changed, the plan's own · again: lay it anew, also where two spray ·
    done: nothing is left to spray.

    why: each reason in words · no: number of the field that comes next where its page says NO,
    though nothing has changed; empty where it may be begun.
    """

    word: Word
    why: tuple[str, ...]
    no: str = ""

    @property
    def says(self) -> str:
        """One line for whoever is on the floor."""
        if self.word == "holds" and self.no:
            return f"No entry moves the plan, but field {self.no} in it says NO: plan that first."
        if self.word == "holds":
            return "The plan still holds: order, minutes and fillings are its own."
        if self.word == "done":
            return "Nothing of the plan is left to spray."
        reasons = "; ".join(self.why)
        return f"The rest is worth planning again: {reasons}."


def again(plan: Plan, story: Story, *, at_min: float, us: bool = True) -> Again:
    """Whether the plan still holds at a minute, by what the story tells; hours in US manner, or
    not."""
    standing = Standing(plan, story, at_min, us=us)
    if all(band.id in standing.done for field in plan.fields for band in field.bands):
        return Again("done", ())
    if standing.stained:
        return Again("done", ())
    why = tuple(_reasons(standing))
    return Again("again" if why else "holds", why, _no(standing))


def _no(standing: Standing) -> str:
    """The number of the field to begin next, where nobody should spray it as it stands."""
    field = standing.next_field
    if field is None or fits_crew(field, standing.plan.inputs.crew):
        return ""
    return numbered(standing.plan, field.id)


def _reasons(standing: Standing) -> Iterator[str]:
    late = late_min(standing)
    if abs(late) >= LATE_MIN:
        yield f"{abs(late):.0f} min {'late' if late > 0 else 'ahead'}"
    factor = standing.belief.factor
    if standing.litres.known and abs(factor - 1) >= THIRSTY:
        yield f"the slab drinks {abs(factor - 1) * 100:.0f} % {'more' if factor > 1 else 'less'}"
    for room in sorted(standing.closed):
        if any(room in field.rooms for field in standing.to_come):
            yield f"{rooms_text(standing.plan, [room])} is closed"
    if _out_of_order(standing):
        yield "fields were sprayed in another order"
    if (stopped := standing.story.last("stopped", "feathered")) is not None:
        yield f"{_STOPPED[stopped.word]} at {standing.clock(stopped.at_min)}"


def late_min(standing: Standing) -> float:
    """How late the day is: by the last band done, or by the next that should have begun."""
    bands = {band.id: band for field in standing.own for band in field.bands}
    done = [one for name, one in standing.done.items() if name in bands]
    following = standing.next_band
    if not done:  # nothing of the coat is sprayed: late from the minute it should have begun
        return max(standing.at_min - following.start_min, 0.0) if following is not None else 0.0
    last = max(done, key=lambda one: one.end_min)
    behind = last.end_min - bands[last.band].end_min
    if following is not None:
        behind = max(behind, standing.at_min - following.start_min)
    return behind


def _out_of_order(standing: Standing) -> bool:
    order = [one.field for one in standing.coat_story.fields] if standing.coat_story else []
    planned = [field.id for field in standing.own if field.id in order]
    return order != planned


def so_far_of(plan: Plan, story: Story, *, at_min: float) -> SoFar:
    """The story as `replan` wants it: every band done with its minutes, litres where known."""
    standing = Standing(plan, story, at_min)
    litres = standing.litres
    told = standing.coat_story
    latest = max((one.end_min for one in standing.done.values()), default=0.0)
    # The story tells what is in both tanks together: whose it is stays as planned.
    two = plan.inputs.crew.sprayers == 2
    # Filled to its brim a tank holds more than its mark: the rest of it is told as the tub's.
    tank_l = min(litres.tank_l or 0.0, plan.inputs.tools.tank_l)
    tub_l = litres.tub_l if two else litres.have_l - tank_l
    tub_l = None if tub_l is None else round(max(tub_l, 0.0), 3)
    known = litres.known and tub_l is not None
    mixed_l = told.mixed_l if told is not None and known else None
    if mixed_l is not None:  # what is left was mixed, be it entered or not
        mixed_l = max(mixed_l, (tub_l or 0.0) + (0.0 if two else tank_l))
    return SoFar(
        at_min=max(at_min, latest, 0.0),
        done=tuple(
            Done(one.band, max(one.start_min, 0.0), max(one.end_min, 0.0))
            for one in sorted(standing.done.values(), key=lambda one: one.start_min)
        ),
        tank_l=None if two or litres.tank_l is None else round(tank_l, 3),
        tub_l=tub_l if known else None,
        mixed_l=mixed_l,
        nothing_done=not standing.done,
        closed=tuple(
            ClosedRoom(room, until)
            for room, until in standing.closed.items()
            if until is None or until > at_min
        ),
    )


def due_in_s(*, first_s: float, last_s: float, now_s: float) -> float:
    """Seconds until the one re-plan that answers all taps since `first_s`, 0 when it is due.

    Taps come in bursts: it waits until `SETTLE_S` have passed without one, at most `MOST_S` after
    the first that is not answered yet. Times are of any clock that only goes forward.
    """
    quiet = last_s + SETTLE_S
    return max(0.0, min(quiet, first_s + MOST_S) - now_s)


@dataclass(frozen=True)
class Waiting:
    """The taps that no re-plan has answered yet; None and None when there are none."""

    first_s: float | None = None
    last_s: float | None = None

    def tapped(self, at_s: float) -> Waiting:
        """After one tap more."""
        return Waiting(at_s if self.first_s is None else self.first_s, at_s)

    def due_in_s(self, now_s: float) -> float | None:
        """Seconds until a re-plan is due; None when nothing waits."""
        if self.first_s is None or self.last_s is None:
            return None
        return due_in_s(first_s=self.first_s, last_s=self.last_s, now_s=now_s)
