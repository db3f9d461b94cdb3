"""What each of two sprayers has in his tank: as told, else by the plan, else prudently. Pure.

Together they may have enough while one of them runs dry in mid-field, and his edge dies. So each
tank is reckoned apart, and where an entry may be about either's, for both as if it were theirs:
what is told is the soonest that either could be empty.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Literal

from farwall.facts.plan import Band, Field, Refill
from farwall.job.live.standing import Standing
from farwall.job.second_past import swaps_for
from farwall.job.story.noun import Happened
from farwall.job.story.whose import names_of, two_spray, whose
from farwall.nouns import dataclass

How = Literal["told", "plan", "either"]
_HAIR_MIN = 0.01
_HAIR_L = 0.05


@dataclass(frozen=True)
class Tank:
    """What a sprayer (1 or 2) has left now, litres, not below 0.

    how: told of his tank · plan: filled as the plan has it, drunk as believed · either: the least
    of what was told without saying whose.
    """

    sprayer: int
    litres: float
    how: How


def tanks(standing: Standing) -> tuple[Tank, ...]:
    """The tanks of those who have bands to do in the field in hand; none where one sprays alone."""
    field = standing.in_hand
    if field is None or not two_spray(standing.plan):
        return ()
    hands = sorted({band.sprayer for band in standing.left_of(field)})
    return tuple(_tank(standing, hand) for hand in hands)


def _tank(standing: Standing, hand: int) -> Tank:
    own = [b for f in standing.own for b in f.bands if b.sprayer == hand]
    told = list(_told(standing))
    litres, how, since = _by_plan(standing, hand), "plan", -1e9
    for at, whose_, holds in told:
        if whose_ == hand:
            litres, since = holds - _drunk_l(standing, own, at), at
            how = "told"
    if how == "told" and litres < -_HAIR_L:  # he was filled, and nobody entered it
        litres, how = _by_plan(standing, hand), "plan"
    for at, whose_, holds in told:
        least = holds - _drunk_l(standing, own, at)
        if whose_ is None and at > since and -_HAIR_L <= least < litres:
            litres, how = least, "either"
    return Tank(hand, max(litres, 0.0), how)  # type: ignore[arg-type]


def _told(standing: Standing) -> Iterator[tuple[float, int | None, float]]:
    """What tanks of this coat held: at which minute, whose, litres. A fill told bare is a full one
    of whose it is named; of nobody's it tells nothing."""
    happened = standing.story.happened
    names = names_of(standing.plan, happened)
    before = [one.end_min for name, one in standing.done.items() if name not in _ids(standing.own)]
    begins = max(before, default=-1e9)
    for one in happened:
        if one.at_min < begins or not _tells(one):
            continue
        done = {name for name, each in standing.done.items() if each.end_min <= one.at_min}
        hand = whose(standing.plan, standing.coat, one, names=names, done=done)
        holds = _holds_l(standing, one, hand)
        if holds is not None:
            yield one.at_min, hand, holds


def _tells(one: Happened) -> bool:
    return one.word in {"tank-empty", "filled"} or one.number("tank_l") is not None


def _holds_l(standing: Standing, one: Happened, hand: int | None) -> float | None:
    if one.word == "tank-empty":
        return 0.0
    told = one.number("tank_l")
    if told is None and one.word == "filled" and hand is not None:
        return standing.plan.inputs.tools.tank_l if one.number("litres") is None else None
    return told


def _ids(fields: Sequence[Field]) -> set[str]:
    return {band.id for field in fields for band in field.bands}


def _drunk_l(standing: Standing, own: Sequence[Band], since_min: float) -> float:
    """What a sprayer used since a minute, as thirsty as the slab is believed to be."""
    used = 0.0
    for band in own:
        then = standing.done.get(band.id)
        if then is None or then.end_min <= since_min:
            continue
        lasts = max(then.end_min - then.start_min, 1e-9)
        used += band.litres * min((then.end_min - since_min) / lasts, 1.0)
    return used * standing.belief.factor


def _by_plan(standing: Standing, hand: int) -> float:
    """Filled to the plan's mark where the plan fills him, what is made of it by bands done."""
    level = marked = 0.0
    for field in sorted(standing.own, key=lambda one: one.start_min):
        begun = any(band.id in standing.done for band in field.bands)
        events: list[tuple[float, Refill | Band]] = [
            (fill.at_min + fill.minutes, fill)
            for fill in field.refills
            if swaps_for(fill.by) == hand
        ]
        events += [(band.end_min, band) for band in field.bands if band.sprayer == hand]
        for at, one in sorted(events, key=lambda each: each[0]):
            if isinstance(one, Band):
                marked -= one.litres
                if one.id in standing.done:
                    level -= one.litres * standing.belief.factor
                continue
            marked += one.litres
            if begun and _made(standing, field, hand, at):
                level = marked
    return level


def _made(standing: Standing, field: Field, hand: int, at_min: float) -> bool:
    """Whether a fill of the plan lies behind: before the field was begun, or the band after it."""
    if at_min <= min(band.start_min for band in field.bands) + _HAIR_MIN:
        return True
    later = [b for b in field.bands if b.sprayer == hand and b.end_min > at_min + _HAIR_MIN]
    return any(band.id in standing.done for band in later)
