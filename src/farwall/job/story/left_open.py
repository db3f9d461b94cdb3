"""Fields that stand open in a log though a later one is begun: likely a tap is missing. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from farwall.facts.numbered import numbered
from farwall.facts.plan import Field, Plan
from farwall.job.half_told import halves_by_id
from farwall.job.story.noun import Closed, Happened, Sprayed
from farwall.job.story.spraying import Spraying
from farwall.job.story.whose import two_spray
from farwall.nouns import dataclass

_HAIR_MIN = 0.05
_LEFT_ON_PURPOSE = frozenset({"stopped", "feathered"})


@dataclass(frozen=True)
class _Begun:
    """A field of which something is done: from when, until when, and whether all of it is."""

    field: Field
    start_min: float
    end_min: float
    whole: bool


def left_open(
    plan: Plan, spraying: Spraying, happened: Sequence[Happened], closed: Sequence[Closed]
) -> Iterator[str]:
    """What to ask: whether a field is done that was left for the next one, or for the next coat.

    Nobody asks where it was stopped at or feathered out, or where somebody stands in its rooms.
    """
    halves = halves_by_id(plan) if two_spray(plan) else {}
    begun = [one for field in plan.fields if (one := _begun(field, spraying, halves)) is not None]
    for one in (each for each in begun if not each.whole):
        later = [
            other for other in begun
            if other.field.coat == one.field.coat and other.start_min >= one.end_min - _HAIR_MIN
        ]  # fmt: skip
        then = min(later, key=lambda other: other.start_min, default=None)
        if then is None or _on_purpose(one, then.start_min, happened, closed):
            continue
        name, after = numbered(plan, one.field.id), numbered(plan, then.field.id)
        yield (
            f"Field {name} stands open in the log, and {after} was begun after it; if {name} is "
            "sprayed, enter it as done."
        )
    yield from _below(plan, begun)


def _begun(field: Field, spraying: Spraying, halves: dict[str, str]) -> _Begun | None:
    done: list[Sprayed] = [spraying.done[b.id] for b in field.bands if b.id in spraying.done]
    if not done:
        return None
    whole = all(
        band.id in spraying.done or halves.get(band.id) in spraying.done for band in field.bands
    )
    start = min(one.start_min for one in done)
    return _Begun(field, start, max(one.end_min for one in done), whole)


def _on_purpose(
    one: _Begun, then_min: float, happened: Sequence[Happened], closed: Sequence[Closed]
) -> bool:
    between = (each for each in happened if one.end_min - _HAIR_MIN <= each.at_min <= then_min)
    shut = any(each.room in one.field.rooms and each.holds(then_min) for each in closed)
    return shut or any(each.word in _LEFT_ON_PURPOSE for each in between)


def _below(plan: Plan, begun: Sequence[_Begun]) -> Iterator[str]:
    """A coat begun over one of which fields are not entered as done: the first of them."""
    coats = [coat.id for coat in plan.inputs.coats]
    whole = {one.field.id for one in begun if one.whole}
    for below, above in pairwise(coats):
        if not any(one.field.coat == above for one in begun):
            continue
        lacking = [f for f in plan.fields if f.coat == below and f.id not in whole]
        if lacking:
            first = min(lacking, key=lambda field: field.order)
            yield (
                f"Coat {numbered(plan, above)} is begun, and field {numbered(plan, first.id)} of "
                f"coat {numbered(plan, below)} is not entered as done; if it is, enter it."
            )
