"""Halves of a band that two begin in one minute, where only one of the halves is told. Pure."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise

from farwall.facts.plan import Band, Plan
from farwall.facts.so_far import Done
from farwall.job.past_gaps import LEAST_MIN
from farwall.job.so_far_sense import HAIR_MIN, every_band, whole_fields


def begun_together(one: Band, two: Band) -> bool:
    """Whether these are the halves of a band, begun by two in the same minute."""
    return one.sprayer != two.sprayer and abs(one.start_min - two.start_min) < HAIR_MIN


def halves_by_id(plan: Plan) -> dict[str, str]:
    """The other half of each band that two were planned to begin in the same minute, by id."""
    found: dict[str, str] = {}
    for field in whole_fields(plan):
        for one, two in pairwise(sorted(field.bands, key=lambda band: band.order)):
            if begun_together(one, two):
                found.update({one.id: two.id, two.id: one.id})
    return found


def with_other_halves(plan: Plan, told: dict[str, Done]) -> tuple[dict[str, Done], frozenset[str]]:
    """What is told, with the other half of each band; and which of these are in hand.

    The other half was begun in the same minute. It took its planned time, but no longer than
    until a later band was begun; where none was, it is in hand.
    """
    halves, bands = halves_by_id(plan), every_band(plan)
    lacking = sorted(halves[name] for name in told if halves.get(name, name) not in told)
    found, hand = dict(told), set[str]()
    begun = sorted((bands[name].start_min, name) for name in told)
    for name in lacking:
        after = [other for start, other in begun if start > bands[name].start_min + HAIR_MIN]
        start = _not_before_his_last(bands[name], told[halves[name]].start_min, bands, found)
        if not after:
            found[name] = Done(name, start)
            hand.add(name)
        elif start is None:
            found[name] = Done(name)
        else:
            end = start + bands[name].end_min - bands[name].start_min
            latest = told[after[0]].start_min
            found[name] = Done(name, start, end if latest is None else max(start, min(end, latest)))
    return found, frozenset(hand)


def _not_before_his_last(
    band: Band, start_min: float | None, bands: Mapping[str, Band], told: Mapping[str, Done]
) -> float | None:
    """When the half was begun: with the other, or when its sprayer was done with his last band."""
    ends = [
        one.end_min + LEAST_MIN for name, one in told.items()
        if one.end_min is not None and bands[name].sprayer == band.sprayer
        and bands[name].start_min < band.start_min
    ]  # fmt: skip
    return start_min if start_min is None else max([start_min, *ends])


def bands_done(plan: Plan) -> set[str]:
    """Ids of the bands that its past has done; none of a plan of the morning."""
    return {one.id for one in plan.so_far.done} if plan.so_far is not None else set()
