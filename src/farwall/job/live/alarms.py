"""What must be looked at next, soonest first: edge, tank, gate, drying, dwell, rooms, sun. Pure."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence

from farwall.facts.numbered import numbered
from farwall.facts.plan import Field
from farwall.job.live.edges import EdgeDue
from farwall.job.live.found import found_over
from farwall.job.live.noun import Alarm, LiveClock
from farwall.job.live.standing import Standing
from farwall.job.live.tanks import tanks
from farwall.job.story.whose import two_spray
from farwall.job.way_words import rooms_text

SOON_MIN = 0.05
_BY_COAT = ("dry to recoat", "dry to neutralise")


def alarms(
    standing: Standing, due: EdgeDue | None, waits: Sequence[LiveClock]
) -> tuple[Alarm, ...]:
    """Every alarm that is still to come, and an edge that is overdue, soonest first."""
    found = [
        *_edge(standing, due),
        *_tank(standing),
        *_gate(standing),
        *_look(standing),
        *_closed(standing),
        *[one for wait in waits for one in _wait(standing, wait)],
    ]
    return in_order(found)


def in_order(found: Iterable[Alarm]) -> tuple[Alarm, ...]:
    """Alarms soonest first."""
    return tuple(sorted(found, key=lambda one: (one.at_min, one.kind)))


def _edge(standing: Standing, due: EdgeDue | None) -> Iterator[Alarm]:
    if due is not None:
        next_, band = (numbered(standing.plan, one) for one in (due.next_band, due.band))
        what = f"begin band {next_} by then, or the edge that {band} meets is dead"
        yield Alarm(due.at_min, "edge", what)


def _work(
    standing: Standing, field: Field, *, sprayer: int | None = None
) -> Iterator[tuple[float, float]]:
    """Of each band to do in a field: the minute of its end if gone on with now, its litres.

    sprayer: only those of one of two.
    """
    left = sorted(standing.left_of(field), key=lambda band: band.start_min)
    for band in (one for one in left if sprayer is None or one.sprayer == sprayer):
        yield standing.at_min + band.end_min - left[0].start_min, band.litres


def ends_min(standing: Standing, field: Field) -> float:
    """When a field is done if it is gone on with, or begun, now."""
    return max((at for at, _ in _work(standing, field)), default=standing.at_min)


def _tank(standing: Standing) -> Iterator[Alarm]:
    """When a tank will be empty, if no filling comes before; of two sprayers each his own."""
    field = standing.in_hand
    if field is None:
        return
    number = numbered(standing.plan, field.id)
    for tank in tanks(standing):
        empty = _empty_min(standing, field, tank.litres, sprayer=tank.sprayer)
        if empty is not None:
            what = _TANK[tank.how].format(sprayer=tank.sprayer, field=number)
            yield Alarm(empty, "tank", what)
    if two_spray(standing.plan) or standing.litres.tank_l is None:
        return
    empty = _empty_min(standing, field, standing.litres.tank_l)
    if empty is not None:
        yield Alarm(empty, "tank", f"the tank is empty in field {number}: fill")


_TANK = {
    "told": "the tank of sprayer {sprayer} is empty in field {field}: fill",
    "plan": "the tank of sprayer {sprayer} is empty in field {field}, reckoned by the plan: fill, "
    "and enter whose it was",
    "either": "the tank of sprayer {sprayer} may be empty in field {field}, for nobody told whose "
    "was looked at: fill, and enter whose it was",
}


def _empty_min(
    standing: Standing, field: Field, tank_l: float, *, sprayer: int | None = None
) -> float | None:
    """The minute in which it is empty; None where it lasts for the field. sprayer: whose bands."""
    before = standing.at_min
    for at, litres in _work(standing, field, sprayer=sprayer):
        need = litres * standing.belief.factor
        if need > tank_l:
            return round(before + (at - before) * tank_l / max(need, 1e-9), 2)
        tank_l -= need
        before = at
    return None


def _gate(standing: Standing) -> Iterator[Alarm]:
    field, following = standing.in_hand, standing.next_field
    if field is not None and following is not None:
        here, next_ = numbered(standing.plan, field.id), numbered(standing.plan, following.id)
        what = f"the stop line of {here}: look at tub and tank before {next_}"
        yield Alarm(round(ends_min(standing, field), 2), "gate", what)


def _look(standing: Standing) -> Iterator[Alarm]:
    """The next look into the field in hand."""
    field = standing.in_hand
    if field is None:
        return
    left = {band.id: band for band in standing.left_of(field)}
    first = min(left.values(), key=lambda band: band.start_min)
    for look in standing.plan.looks:
        if look.field == field.id and look.band in left and look.band != first.id:
            at = standing.at_min + left[look.band].start_min - first.start_min
            after = numbered(standing.plan, look.after)
            what = f"look into tub and tank after band {after}, and enter what is left"
            yield Alarm(round(at, 2), "look", what)
            return


def _closed(standing: Standing) -> Iterator[Alarm]:
    for room, until in standing.closed.items():
        if until is not None:
            name = rooms_text(standing.plan, [room])
            yield Alarm(until, "room", f"{name} should be free: ask, then enter room-free")


def _wait(standing: Standing, wait: LiveClock) -> Iterator[Alarm]:
    """The next end of a wait that is still to come: early, likely, late."""
    if wait.begins_min is None or is_over(standing, wait):
        return
    clock = wait.clock
    coat = numbered(standing.plan, clock.coat)
    ends = (
        (clock.low_min, f"look whether coat {coat} is {_state(clock.name)} already"),
        (clock.likely_min, f"coat {coat} is likely {_state(clock.name)}: look"),
        (clock.high_min, f"coat {coat} should be {_state(clock.name)} by now: look"),
    )
    for minutes, what in ends:
        if minutes is not None and wait.begins_min + minutes > standing.at_min + SOON_MIN:
            at_min = round(wait.begins_min + minutes, 1)
            yield Alarm(at_min, clock.name, what)
            return


_STATES = {
    "dry to recoat": "dry to recoat",
    "dry to neutralise": "dry to neutralise",
    "dwell": "through its dwell",
    "dry-down before sealing": "dry to seal",
    "next coat of sealer": "ready for the next coat of sealer",
    "traffic in shoes": "ready for shoes",
}


def _state(name: str) -> str:
    return _STATES.get(name, name)


def _looked_as(standing: Standing, wait: LiveClock) -> tuple[str, ...]:
    """The waits that a look at its coat may be entered for: a coat that the plan had another over
    is looked at as one that waits for it."""
    name = wait.clock.name
    more = name == "dry to neutralise" and wait.clock.coat != standing.plan.inputs.coats[-1].id
    return (name, "dry to recoat") if more else (name,)


def is_over(standing: Standing, wait: LiveClock) -> bool:
    """Whether what was waited for is over: found dry, or what follows it is begun."""
    name, story = wait.clock.name, standing.story
    found: bool | None
    if name in _BY_COAT:
        looks = (found_over(standing.plan, story, clock=one, coat=wait.clock.coat)
                 for one in _looked_as(standing, wait))  # fmt: skip
        found = any(looks)
    else:  # rinsed or sealed again, what was found before tells nothing of it
        since = -math.inf if wait.begins_min is None else wait.begins_min
        found = found_over(standing.plan, story, clock=name, since_min=since)
    if found:
        return True
    coats = [coat.id for coat in standing.plan.inputs.coats]
    if name == "dry to recoat":
        later = coats[coats.index(wait.clock.coat) + 1 :]
        return any((told := story.coat(one)) is not None and told.fields for one in later)
    after = {
        "dry to neutralise": ("neutralised", "rinsed"),
        "dwell": ("neutralised", "rinsed"),
        "dry-down before sealing": ("sealed",),
        "next coat of sealer": ("handed-over",),
        "traffic in shoes": ("handed-over",),
    }
    return story.last(*after.get(name, ("handed-over",))) is not None
