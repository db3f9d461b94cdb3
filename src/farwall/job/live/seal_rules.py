"""What speaks against sealer that is entered: a floor that cannot be dry or is not clean. Pure.

The log takes what was done; what does not fit is said beside it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from farwall.evidence import Rank
from farwall.facts.default_table import PRACTICE
from farwall.facts.job import Job
from farwall.facts.plan import Clock
from farwall.job.live.found import found_over
from farwall.job.live.noun import Advice
from farwall.job.live.rinse_rules import SOURCE, why
from farwall.job.live.standing import Standing
from farwall.job.rinses import Rinses
from farwall.job.story.noun import Happened
from farwall.job.way_words import rooms_text

DRY_DOWN, NEXT_COAT = "dry-down before sealing", "next coat of sealer"
_WEIGHT, _DIRTY, _SOON, _UNREAD = 95, 96, 94, 66
_TWICE_MIN = 10.0
"""Sealer entered again in a room within so many minutes is one coat, tapped twice. Rank: guess."""
BARE = "Sealer is entered {at} over {room}, and no rinse before it."
RINSED = "Sealer is entered {at} over {room}: {why}"
SOON = {
    "sheet": "A coat of sealer is entered {after} after the one below; by its sheet that is not "
    "ready before {ready}.",
    "plan": "A coat of sealer is entered {after} after the one below; by the plan that is not "
    "ready before {ready}.",
}
UNCLEAN = (
    "No more sealer: over residue it peels. Rinsed again before it? Enter that. A slip? Strike it."
)
UNREAD = "Read before it? Enter that, by its time. Not read? No more sealer before pH and rag are."


def sealed_wet(standing: Standing) -> Iterator[Advice]:
    """Sealer entered over a room sooner after its last rinse than floors dry at the earliest, by
    the plan, with no look between that found it dry. It stops more sealer as long as that lasts,
    and stays advice until the floor is handed over."""
    story, clock = standing.story, _clock(standing, DRY_DOWN)
    if clock is None or story.last("handed-over") is not None:
        return
    wet = [
        (sealed_min, rinsed_min)
        for sealed_min, rinsed_min in _rinsed_and_sealed(standing)
        if sealed_min - rinsed_min < clock.low_min
        and not found_over(
            standing.plan, story, clock=DRY_DOWN, since_min=rinsed_min, until_min=sealed_min
        )
    ]
    if not wet:
        return
    sealed_min, rinsed_min = min(wet, key=lambda one: one[0] - one[1])
    dry = standing.clock(rinsed_min + clock.low_min)
    yield Advice(
        "sealed wet", standing.at_min < rinsed_min + clock.low_min,
        f"Sealer is entered {standing.clock(sealed_min)}, {_span(sealed_min - rinsed_min)} after "
        f"the last rinse; by the plan no floor is dry before {dry}, and none was entered dry.",
        "No more sealer before plastic taped down overnight stays dry beneath. A slip? Strike it.",
        _WEIGHT, Rank.PRACTICE.value, PRACTICE,
    )  # fmt: skip


def _rinsed_and_sealed(standing: Standing) -> Iterator[tuple[float, float]]:
    """For each room that was sealed and rinsed before: minute of its first sealer, of the last
    rinse before it."""
    rinses = standing.story.of("rinsed")
    for first, rooms in _first_coats(standing).values():
        for room in rooms:
            own = [
                one.at_min
                for one in rinses
                if one.text("room") in {"", room} and one.at_min <= first.at_min
            ]
            if own:
                yield first.at_min, own[-1]


def sealed_dirty(job: Job, standing: Standing) -> Iterator[Advice]:
    """Sealer entered over a room whose last rinse asks for more, or that nobody read; until the
    floor is handed over. What was read stops more sealer, what was not is asked for."""
    story = standing.story
    if story.last("handed-over") is not None:
        return
    found = [
        (first.at_min, rinses, room, rinses.step(room))
        for first, rooms in _first_coats(standing).values()
        for rinses in [_before(job, standing, first)]
        for room in rooms
    ]
    bad = [one for one in found if one[3].verdict in {"rinse", "scrub"} or one[3].sealer is False]
    unread = [one for one in found if one[3].verdict == "read"]
    for at_min, rinses, room, step in (*bad, *unread)[:1]:
        reason = BARE if step.code == "not-rinsed" else RINSED
        yield Advice(
            "sealed unclean" if bad else "sealed unread", bool(bad),
            reason.format(
                at=standing.clock(at_min), room=rooms_text(standing.plan, [room]),
                why=why(rinses, room, step),
            ),
            UNCLEAN if bad else UNREAD,
            _DIRTY if bad else _UNREAD, Rank.PRACTICE.value, SOURCE,
        )  # fmt: skip


def _first_coats(standing: Standing) -> dict[str, tuple[Happened, list[str]]]:
    """The first entry of sealer over each room, with the rooms that it was the first over."""
    found: dict[str, tuple[Happened, list[str]]] = {}
    sealed = standing.story.of("sealed")
    for room in standing.plan.inputs.floor.rooms:
        first = next((one for one in sealed if one.text("room") in {"", room.id}), None)
        if first is not None:
            found.setdefault(first.id, (first, []))[1].append(room.id)
    return found


def _before(job: Job, standing: Standing, first: Happened) -> Rinses:
    """The rinses up to an entry of sealer."""
    before = tuple(one for one in standing.story.happened if one.at_min <= first.at_min)
    return Rinses(job, standing.plan, replace(standing.story, happened=before))


def sealed_soon(job: Job, standing: Standing) -> Iterator[Advice]:
    """A coat of sealer entered on one that cannot bear it yet: by its sheet, else by the plan, with
    no look between that found it ready. It stops more sealer as long as that lasts."""
    story, least = standing.story, _least_min(job, standing)
    pair = _last_pair(story.of("sealed"))
    if least is None or pair is None or story.last("handed-over") is not None:
        return
    below, over = pair
    ready = below.at_min + least
    if over.at_min >= ready or found_over(
        standing.plan, story, clock=NEXT_COAT, since_min=below.at_min, until_min=over.at_min
    ):
        return
    told = SOON["plan" if job.sealer.recoat_from_h is None else "sheet"]
    yield Advice(
        "sealed soon", standing.at_min < ready,
        told.format(after=_span(over.at_min - below.at_min), ready=standing.clock(ready)),
        "No more sealer on it: solvent and water shut in turn it milky. A slip? Strike it.",
        _SOON, Rank.PRACTICE.value, PRACTICE,
    )  # fmt: skip


def _least_min(job: Job, standing: Standing) -> float | None:
    """Minutes from one coat of sealer to the next at the earliest: by its sheet, else the plan."""
    if job.sealer.recoat_from_h is not None:
        return job.sealer.recoat_from_h * 60
    clock = _clock(standing, NEXT_COAT)
    return None if clock is None else clock.low_min


def _last_pair(sealed: Sequence[Happened]) -> tuple[Happened, Happened] | None:
    """The last coat that lies on another of the same floor, and that one; None where none does."""
    for n in range(len(sealed) - 1, 0, -1):
        over = sealed[n]
        for below in reversed(sealed[:n]):
            if _same_floor(below, over) and _another(below, over):
                return below, over
    return None


def _same_floor(one: Happened, other: Happened) -> bool:
    rooms = one.text("room"), other.text("room")
    return "" in rooms or rooms[0] == rooms[1]


def _another(below: Happened, over: Happened) -> bool:
    """Whether it is another coat: by its number, else by the minutes between."""
    numbers = below.number("round"), over.number("round")
    if numbers[0] is not None and numbers[1] is not None:
        return numbers[1] > numbers[0]
    return below.text("room") == over.text("room") and over.at_min - below.at_min > _TWICE_MIN


def _clock(standing: Standing, name: str) -> Clock | None:
    return next((one for one in standing.plan.clocks if one.name == name), None)


def _span(minutes: float) -> str:
    return f"{minutes:.0f} min" if minutes < 100 else f"{minutes / 60:.0f} h"
