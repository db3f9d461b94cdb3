"""Which bands are done, and when: told minutes where there are some, else the plan's.

Where bands are told to have been quicker than planned, the minutes between are shared out
evenly; where only the minute now is late, the bands are taken to have been done on time, for
older edges are the safe guess.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import pairwise

from farwall.errors import Mistake, Refused
from farwall.facts.numbered import numbered
from farwall.facts.plan import Band, Plan, TimedPoint
from farwall.facts.so_far import Done, SoFar
from farwall.job.half_told import halves_by_id, with_other_halves
from farwall.job.past_gaps import parted
from farwall.job.so_far_sense import HAIR_MIN, bands_by_id, every_band, whole_fields

_QUICKEST = 2.0
"""Nobody sprays more than so many times as fast as planned: a minute mistyped. Rank: guess."""


def bands_done(plan: Plan, so_far: SoFar) -> dict[str, Band]:
    """The bands done at their true minutes, by id, in order. Raises `Refused`."""
    told = _told(plan, so_far, as_planned(plan, so_far.at_min))
    told, hand = with_other_halves(plan, told)
    done = _with_times(plan, so_far, told, hand)
    _insist_on_order(plan, done)
    return parted(done, every_band(plan))


def as_planned(plan: Plan, minute: float) -> dict[str, Band]:
    """The bands that the plan has done by this minute, the one in hand among them."""
    bands = sorted(bands_by_id(plan).values(), key=lambda band: band.start_min)
    return {band.id: band for band in bands if band.start_min < minute - HAIR_MIN}


def _told(plan: Plan, so_far: SoFar, planned: dict[str, Band]) -> dict[str, Done]:
    """What is told to be done, by band."""
    every = sorted(bands_by_id(plan).values(), key=lambda band: band.start_min)
    of_field = {field.id: field.bands for field in whole_fields(plan)}
    found: dict[str, Done] = {}
    if not so_far.done and so_far.done_up_to is None and not so_far.nothing_done:
        found = {name: Done(name) for name in planned}
    elif so_far.done_up_to is not None:
        last = max(b.start_min for b in every if so_far.done_up_to in (b.id, *_owner(plan, b)))
        found = {band.id: Done(band.id) for band in every if band.start_min <= last}
    if plan.so_far is not None:  # what was told once is fixed
        found.update({one.id: Done(one.id) for one in plan.so_far.done})
    for one in so_far.done:
        whole = of_field.get(one.id)
        found.update({one.id: one} if whole is None else _field_told(one, whole))
    if so_far.in_hand is not None:
        found[so_far.in_hand.id] = so_far.in_hand
    return found


def _owner(plan: Plan, band: Band) -> tuple[str, ...]:
    return tuple(field.id for field in plan.fields if band in field.bands)


def _field_told(one: Done, bands: Sequence[Band]) -> dict[str, Done]:
    """A field told as one: its bands share its minutes as planned."""
    first, last = bands[0].start_min, bands[-1].end_min
    start = first if one.start_min is None else one.start_min
    end = one.end_min
    if one.start_min is None and end is None:
        return {band.id: Done(band.id) for band in bands}
    lasts = (last - first) if end is None else (end - start)
    scale = lasts / (last - first)
    return {
        band.id: Done(
            band.id,
            start + (band.start_min - first) * scale,
            start + (band.end_min - first) * scale,
        )
        for band in bands
    }


def _with_times(
    plan: Plan, so_far: SoFar, told: dict[str, Done], also: frozenset[str]
) -> dict[str, Band]:
    """Bands done with their true times; untold ones lie between their neighbours as planned.

    also: halves of which only the other one was told; they are in hand.
    """
    bands = [band for band in every_band(plan).values() if band.id in told]
    bands.sort(key=lambda band: band.start_min)
    halves = halves_by_id(plan)
    hand = also | _in_hand(plan, so_far, told, bands)
    last = max((b.end_min for b in bands if b.id not in hand), default=0.0)
    fixed = _fixed_until(plan, told)
    squeeze = _squeezed(fixed, last, so_far.at_min)
    found: dict[str, Band] = {}
    for band in bands:
        start, end = told[band.id].start_min, told[band.id].end_min
        lasts = band.end_min - band.start_min
        if band.id in hand:
            other = told.get(halves.get(band.id, ""))
            start = other.start_min if start is None and other is not None else start
            begun = band.start_min if start is None else start
            begun = min(begun, so_far.at_min)
            found[band.id] = _at_times(band, begun, max(begun + lasts, so_far.at_min))
            continue
        if end is not None:  # which may be 0: done as the day began
            found[band.id] = _at_times(band, end - lasts if start is None else start, end)
        elif start is not None:
            found[band.id] = _at_times(band, start, min(start + lasts, so_far.at_min))
        else:
            found[band.id] = _at_times(band, squeeze(band.start_min), squeeze(band.end_min))
    return found


def _in_hand(
    plan: Plan, so_far: SoFar, told: dict[str, Done], bands: Sequence[Band]
) -> frozenset[str]:
    """The bands that are being sprayed now: none, one, or by two both halves of one."""
    if so_far.in_hand is not None:
        return frozenset({so_far.in_hand.id})
    if not bands:
        return frozenset()
    last = max(bands, key=lambda band: band.start_min)
    now = so_far.at_min + HAIR_MIN
    ends = {one.id: one.end_min for one in bands}
    # Of the halves of the last band the one that is named is done, the other maybe not yet.
    other = halves_by_id(plan).get(last.id, "")
    if so_far.done_up_to in (last.id, other) and so_far.done_up_to is not None:
        named, half = so_far.done_up_to, other if so_far.done_up_to == last.id else last.id
        if half in told and ends[named] <= now < ends[half] and told[half].end_min is None:
            return frozenset({half})
    if so_far.done or so_far.done_up_to is not None:
        return frozenset()
    mine = [one for one in (last.id, other) if one in told and told[one].start_min is None]
    return frozenset(one for one in mine if ends[one] > now)


def _fixed_until(plan: Plan, told: dict[str, Done]) -> float:
    """The last minute that nobody may move: of a past settled before, and of told times."""
    ends = [one.end_min for one in plan.so_far.done] if plan.so_far is not None else []
    bands = every_band(plan)
    ends += [bands[name].end_min for name, one in told.items() if one.end_min is not None]
    return max(ends, default=0.0)


def _squeezed(fixed: float, last: float, now: float) -> Callable[[float], float]:
    """Planned minutes as they must have been: the untold ones end before now."""
    if last <= now + HAIR_MIN or last <= fixed:
        return lambda minute: min(minute, now)
    share = max(now - fixed, 0.0) / (last - fixed)
    if share < 1 / _QUICKEST:
        what = f"what is told as done ends at {last:.1f} min in the plan, and now is {now:.1f} min."
        raise Refused(Mistake("at_min", what, "Tell the minute now, and the last band done."))
    return lambda minute: minute if minute <= fixed else fixed + (minute - fixed) * share


def _at_times(band: Band, start: float, end: float) -> Band:
    """The band sprayed from `start` to `end`, walked at one pace."""
    if start == band.start_min and end == band.end_min:
        return band
    start, end = round(start, 4), round(max(end, start), 4)
    return replace(band, start_min=start, end_min=end, path=_over(band.path, start, end))


def _over(path: tuple[TimedPoint, ...], start: float, end: float) -> tuple[TimedPoint, ...]:
    t0, t1 = path[0][2], path[-1][2]
    share = (end - start) / (t1 - t0) if t1 > t0 else 0.0
    moved = [(x, y, round(start + (t - t0) * share, 4)) for x, y, t in path]
    moved[-1] = (*moved[-1][:2], end)
    return tuple(moved)


def _insist_on_order(plan: Plan, done: dict[str, Band]) -> None:
    """Bands of a field in a row, one at a time, and no coat begun before the one below is done."""
    mistakes = []
    for field in whole_fields(plan):
        lacking = ""
        for band in field.bands:
            if band.id not in done:
                lacking = lacking or band.id
            elif lacking:
                told, missing = numbered(plan, band.id), numbered(plan, lacking)
                what = f"{told} is told done, and {missing} before it is not."
                mistakes.append(Mistake("done", what, f"Tell {missing} too, or leave it out."))
                break
    ordered = sorted(done.values(), key=lambda band: (band.sprayer, band.start_min))
    for before, after in pairwise(ordered):
        if before.sprayer == after.sprayer and after.start_min < before.end_min - 0.05:
            first, then = numbered(plan, before.id), numbered(plan, after.id)
            what = f"{then} begins at {after.start_min:.2f} min, before {first} ends at "
            what += f"{before.end_min:.2f} min."
            mistakes.append(Mistake("done", what, "One person sprays one band at a time."))
    coats = [coat.id for coat in plan.inputs.coats]
    begun = [c for c in coats if any(f.coat == c and f.bands[0].id in done for f in plan.fields)]
    for coat in coats[: coats.index(begun[-1])] if begun else ():
        open_ = [f.id for f in plan.fields if f.coat == coat and f.bands[-1].id not in done]
        if open_:
            above, below = numbered(plan, begun[-1]), numbered(plan, coat)
            fields = ", ".join(numbered(plan, one) for one in open_)
            what = f"coat {above} is begun, and {fields} of coat {below} is not done."
            mistakes.append(Mistake("done", what, "Tell what is done of both coats."))
    if mistakes:
        raise Refused(*mistakes, about="The day so far cannot be like this:")
