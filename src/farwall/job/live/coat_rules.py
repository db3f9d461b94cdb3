"""What speaks against a coat that is begun on one that cannot be dry yet. Pure.

The log takes what was tapped, for a thumb may slip: what does not fit is said beside it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from farwall.evidence import Rank
from farwall.facts.default_table import PRACTICE
from farwall.facts.numbered import numbered
from farwall.facts.plan import Field
from farwall.job.live.noun import Advice, LiveClock
from farwall.job.live.standing import Standing
from farwall.job.way_words import rooms_text

RECOAT = "dry to recoat"
_WEIGHT = 97


def coat_on_wet(standing: Standing, waits: Sequence[LiveClock]) -> Iterator[Advice]:
    """A field of a coat over another, begun sooner than the floor below dries at the earliest, with
    no look that found it dry there. It stops more of the coat as long as that lasts."""
    coats = [coat.id for coat in standing.plan.inputs.coats]
    number = coats.index(standing.coat)
    if not number or not _to_do(standing):
        return
    below = coats[number - 1]
    wait = next((w for w in waits if w.clock.coat == below and w.clock.name == RECOAT), None)
    if wait is None:
        return
    for field in standing.own:
        ended, begun = _below_ended(standing, field, below), _begun(standing, field)
        if ended is None or begun is None or begun >= ended + wait.clock.low_min:
            continue
        dry = ended + wait.clock.low_min
        if standing.at_min >= dry or _found_dry(standing, field, below, since_min=ended):
            continue
        rooms = rooms_text(standing.plan, field.rooms)
        coat, under = (numbered(standing.plan, one) for one in (standing.coat, below))
        yield Advice(
            "wet-below", True,  # noqa: FBT003 - stop
            f"Coat {coat} is entered in {rooms} {_span(begun - ended)} after coat {under} there, "
            f"which is not dry before {standing.clock(dry)}.",
            "Spray nothing on a wet coat. A slip? Undo it. Looked at and dry? Enter that for coat "
            f"{under} there.",
            _WEIGHT, Rank.PRACTICE.value, PRACTICE,
        )  # fmt: skip
        return


def _span(minutes: float) -> str:
    return f"{max(minutes, 0.0):.0f} min"


def _to_do(standing: Standing) -> bool:
    return any(standing.left_of(field) for field in standing.own)


def _begun(standing: Standing, field: Field) -> float | None:
    """When the first stroke of a field was done that is entered, None before that."""
    done = [standing.done[band.id] for band in field.bands if band.id in standing.done]
    return min((one.end_min for one in done), default=None)


def _below_ended(standing: Standing, field: Field, below: str) -> float | None:
    """When the coat below ended where the field lies; None where nothing of it is entered."""
    under = [
        one for one in standing.plan.fields if one.coat == below and set(one.rooms) & {*field.rooms}
    ]
    done = [standing.done[band.id] for one in under for band in one.bands
            if band.id in standing.done]  # fmt: skip
    return max((one.end_min for one in done), default=None)


def _found_dry(standing: Standing, field: Field, below: str, *, since_min: float) -> bool:
    """Whether the last look into each of its rooms, or at the whole floor, found that coat dry.

    Another room that is dry tells nothing of these, nor what was seen while they were sprayed.
    """
    looks = [one.sighting for one in standing.story.sightings
             if one.sighting.coat == below and one.sighting.clock == RECOAT
             and one.at_min >= since_min]  # fmt: skip
    last = {
        room: [one.ended for one in looks if one.room in {None, "", room}][-1:]
        for room in field.rooms
    }
    return all(found == [True] for found in last.values())


_ENDS = {
    "coat-judged": "The colour was judged enough {at}: coat {coat}, not entered as sprayed, is not "
    "begun any more.",
    "neutralised": "The floor was neutralised {at}: coat {coat}, not entered as sprayed, is not "
    "begun any more.",
    "rinsed": "The floor was rinsed {at}: coat {coat}, not entered as sprayed, is not begun any "
    "more.",
    "sealed": "Sealer was entered {at}: coat {coat}, not entered as sprayed, is not begun any "
    "more.",
}


def more_planned(standing: Standing) -> Iterator[Advice]:
    """Why what the plan has beyond the log's last coat is not begun, and how it is all the same."""
    ended = standing.stained
    left = [one for one in standing.plan.fields if standing.left_of(one)]
    if ended is None or not left:
        return
    coat, at = numbered(standing.plan, left[0].coat), standing.clock(ended.by.at_min)
    yield Advice(
        "stained", False,  # noqa: FBT003 - no stop
        _ENDS[ended.by.word].format(at=at, coat=coat),
        "Sprayed? Enter it. To be laid after all? Enter a look with another as what comes next.",
        58, Rank.PRACTICE.value, PRACTICE,
    )  # fmt: skip
