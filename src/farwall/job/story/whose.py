"""Whose tank an entry is about, where two spray. Pure.

A band that it names has its sprayer in the plan. A name ("blue") is whose bands were entered with
it; "1" and "2" are the plan's own. Nothing told: the first's, as long as he sprays alone.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping

from farwall.facts.plan import Field, Plan
from farwall.job.story.noun import Happened

_OWN = {"1": 1, "sprayer": 1, "sprayer 1": 1, "2": 2, "sprayer 2": 2}


def two_spray(plan: Plan) -> bool:
    """Whether any band of the plan is a second sprayer's."""
    return any(band.sprayer == 2 for field in plan.fields for band in field.bands)


def names_of(plan: Plan, happened: Iterable[Happened]) -> dict[str, int]:
    """Names with the number of the sprayer, by bands entered with them; the last word holds."""
    hands = {band.id: band.sprayer for field in plan.fields for band in field.bands}
    told = [one for one in happened if one.text("sprayer") and one.text("band") in hands]
    return {one.text("sprayer"): hands[one.text("band")] for one in told} | _OWN


def whose(
    plan: Plan, coat: str, one: Happened, *, names: Mapping[str, int], done: Collection[str]
) -> int | None:
    """1 or 2; None where it may be either's. done: bands sprayed by then, of the coat in hand."""
    name, band = one.text("sprayer"), one.text("band")
    if name:
        return names.get(name)
    hand = {b.id: b.sprayer for field in plan.fields for b in field.bands}.get(band)
    if hand is not None:
        return hand
    return None if _both_at_work(plan, coat, done) else 1


def _both_at_work(plan: Plan, coat: str, done: Collection[str]) -> bool:
    """Whether a field that is begun, or the one to go on with, is the second's too."""
    own = sorted((f for f in plan.fields if f.coat == coat), key=lambda field: field.order)
    following = next((f for f in own if any(b.id not in done for b in f.bands)), None)
    begun = [f for f in own if any(b.id in done for b in f.bands)]
    return any(_has_two(field) for field in (*begun, *([following] if following else [])))


def _has_two(field: Field) -> bool:
    return any(band.sprayer == 2 for band in field.bands)
