"""What to do now in at most ten calm lines, the biggest thing first. Pure."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Literal

from farwall.facts.numbered import numbered
from farwall.facts.plan import Plan
from farwall.facts.so_far import MoreMix
from farwall.job.live.noun import FirstBatch, LeanStart, LiveClock, Now
from farwall.job.more_mix_inside import is_lean
from farwall.job.story.figures import litres_told, volume
from farwall.job.story.say import clock
from farwall.job.way_words import rooms_text
from farwall.units import ft2_per_gal_from_m2_per_l

MOST_LINES = 10
_SOON_MIN = 3.0
"""An edge that must be met within so many minutes is the first thing told. Rank: guess."""
_EVEN = 0.03
_HANDED_OVER = (
    "NOW: nothing more by this plan. The house is handed over; struck out in its log, it is open "
    "again."
)
_SET_ASIDE = "NOW: nothing by this plan. The house is set aside; brought back, it is open again."
Over = Literal["", "handed-over", "set-aside"]
"""Whether the log says that nothing is begun by the plan any more."""
_LOOKED_AT = frozenset({"mix", "slab", "coat below"})
"""Conditions that are told also where they hold or nobody has looked; the others when they fail."""


def said_now(plan: Plan, now: Now, *, again: str = "", past: bool = False, over: Over = "") -> str:
    """The lines; `again` is what is to be said of planning anew. past: the plan's days are over,
    so that nothing of it is begun as it stands; over: by its log, nothing is either."""
    if over and not now.stops:
        lines = [_SET_ASIDE] if over == "set-aside" else [_HANDED_OVER, _drunk(plan, now)]
        return "\n".join(line for line in [*lines, *_odd(now)] if line)
    if past and not now.stops and (now.field or now.start_if is not None):
        return "\n".join([_past(plan, now), _drunk(plan, now), *_odd(now)])
    lines = [_first(plan, now), *_why_first(now)]
    if not now.stops:
        lines += [*_mix(plan, now), _drunk(plan, now)]
    odd = list(_odd(now))
    last = [_next_alarm(plan, now), *_waits(plan, now), *odd, *_advised(now), _open(now)]
    last = [line for line in last if line]
    if again and not now.stops:
        last.insert(min(2, len(last)), again)
    if now.start_if is not None and not now.stops:
        # what stands against the field, as far as there is room for it
        lines += _start_if(plan, now, most=max(MOST_LINES - len(lines) - min(len(last), 3), 2))
    kept = list(dict.fromkeys(line for line in [*lines, *last] if line))
    return "\n".join(kept[:MOST_LINES])


def _past(plan: Plan, now: Now) -> str:
    """What is said of a plan whose days are over with floor left to spray."""
    left = f"{_count(now.fields_left)} of coat {numbered(plan, now.coat)}"
    return (
        f"NOW: begin nothing by this plan. Its day is past with {left} still to do: plan the rest "
        "for a new day."
    )


def _first(plan: Plan, now: Now) -> str:
    """The one thing to do now."""
    head = f"NOW {clock(plan, now.at_min, us=now.us)}:"
    if now.stops:
        return f"{head} STOP. {now.stops[0].do}"
    if now.field:
        return f"{head} {_go_on(plan, now)}"
    ask = now.start_if
    if ask is None:
        done = "all that is planned is sprayed" if not now.fields_left else "nothing to begin"
        done = "nothing more is stained" if now.stained else done
        return f"{head} {done}. {_next_alarm(plan, now, capital=True)}".rstrip()
    rooms = rooms_text(plan, ask.rooms)
    against = [one for one in ask.conditions if one.holds is False]
    mix = now.more_mix
    if mix is not None and mix.how in {"boxed", "fresh"} and mix.before_field == ask.field:
        litres, field = volume(mix.litres, us=now.us), numbered(plan, ask.field)
        return f"{head} mix {litres} before field {field} in {rooms}."
    if against:
        return f"{head} wait with field {numbered(plan, ask.field)} in {rooms}: {against[0].text}."
    field, band = numbered(plan, ask.field), numbered(plan, now.band)
    return f"{head} begin field {field} in {rooms}, band {band}, if what is below holds."


def _go_on(plan: Plan, now: Now) -> str:
    mix = now.more_mix
    band, field = numbered(plan, now.band), numbered(plan, now.field)
    if mix is not None and mix.how == "no" and mix.before_field == now.field:
        line = "the next line that hides a seam (a door, a frame, a saw cut)"
        return f"spray to {line} and stop there."
    if mix is not None and mix.how == "boxed" and mix.before_band == now.band:
        litres = volume(mix.litres, us=now.us)
        if is_lean(plan, now.coat):
            return f"the helper mixes {litres} at once; go on with band {band}, then box it."
        return f"mix {litres} at once and box it, then go on with {band}."
    due = next((one for one in now.alarms if one.kind == "edge"), None)
    if any(one.rule == "quiet log" for one in now.advice):
        return f"enter what was sprayed since: field {field} stands open in the log."
    if any(one.rule == "feathered" for one in now.advice):
        return f"field {field} is feathered out: plan the rest again, then go on with band {band}."
    by = f", begun by {clock(plan, due.at_min, us=now.us)}" if due is not None else ""
    if due is not None and due.at_min - now.at_min < _SOON_MIN:
        by += f": {max(due.at_min - now.at_min, 0.0):.1f} min"
    return f"go on with band {band} in field {field}{by}."


def _why_first(now: Now) -> Iterator[str]:
    for one in now.stops[:2]:
        yield f"NO ({one.rule}): {one.reason}"


def _mix(plan: Plan, now: Now) -> Iterator[str]:
    mix = now.more_mix
    if mix is None:
        return
    if now.first_batch is not None:
        yield _first_batch(plan, now, now.first_batch)
    elif mix.how == "no":
        yield f"MIX NOTHING NEW. {litres_told(mix.why, us=now.us)}"
    elif mix.how == "look":
        yield _look(plan, now, mix)
    elif mix.how == "nothing":
        yield f"{_have(now)}: enough for all that is to come in coat {numbered(plan, now.coat)}."
    else:
        yield _more(plan, now, mix)


def _look(plan: Plan, now: Now, mix: MoreMix) -> str:
    """Where to look next into the last field, and with how much left to go on."""
    bands = next((one.bands for one in plan.fields if one.id == mix.before_field), ())
    ordered = sorted(bands, key=lambda band: band.start_min)
    at = next((n for n, band in enumerate(ordered) if band.id == mix.before_band), 0)
    after = numbered(plan, ordered[at - 1].id if at else mix.before_band)
    go_on = volume(mix.latest_at_l, us=now.us)
    return (
        f"{_have(now)}. Look into the tub after band {after}: with {go_on} or more go on, with "
        "less enter it and mix what is told."
    )


def _first_batch(plan: Plan, now: Now, made: FirstBatch) -> str:
    stain, water, whole = (
        volume(one, us=now.us) for one in (made.stain_l, made.water_l, made.litres)
    )
    parts = f"{stain} stain into {water} water ({made.cut})"
    return f"Mix and enter it: {whole} for coat {numbered(plan, now.coat)}, {parts}."


def _more(plan: Plan, now: Now, mix: MoreMix) -> str:
    have, litres = f"{_have(now)}; {_chance(now)}", volume(mix.litres, us=now.us)
    if mix.before_band:
        band = numbered(plan, mix.before_band)
        return f"MIX {litres} before band {band} at the latest, boxed with all that is left. {have}"
    soon = now.start_if is not None and now.start_if.field == mix.before_field
    word = "MIX" if soon and not now.field else "Later mix"
    box = "behind its closed leaf"
    if mix.how == "boxed":
        box = f"boxed with the {volume(mix.latest_at_l, us=now.us)} left then"
    field = numbered(plan, mix.before_field)
    return f"{word} {litres} before field {field}, {box}. {have}"


def _chance(now: Now) -> str:
    return f"dry inside a field: {now.chance_short * 100:.2g} %."


def _have(now: Now) -> str:
    known = "" if now.in_hand.known else " by the plan's reckoning"
    return f"In tub and tank: {volume(now.in_hand.have_l, us=now.us)}{known}"


def _waits(plan: Plan, now: Now) -> Iterator[str]:
    begun = bool(now.field or now.fields_done)
    for wait in now.waits:
        if wait.clock.name == "dry to recoat" and wait.clock.coat != now.coat and begun:
            continue  # the next coat is on it
        if wait.over:
            continue
        if wait.moved and wait.begins_min is not None and wait.seen:
            yield _wait(plan, wait, wait.begins_min, us=now.us)


def _advised(now: Now) -> Iterator[str]:
    for one in now.advice:
        if not one.stop:
            yield f"{one.reason} {one.do} ({one.rank})"


def _drunk(plan: Plan, now: Now) -> str:
    drunk = now.drunk
    left = (
        f"Coat {numbered(plan, now.coat)}: {_count(now.fields_done)} done, {now.fields_left} left"
    )
    if drunk.seen_factor is None:
        return f"{left}; what the slab drinks is not known yet: tell tank and tub."
    seen = f"The slab drank {_against(drunk.seen_factor)}"
    if abs(drunk.factor - drunk.seen_factor) >= _EVEN:
        seen += f", taken for {_against(drunk.factor)} from here"
    return (
        f"{left}. {seen}: {_covers(drunk.believed_l_per_m2, us=now.us)} "
        f"{'ft²/gal' if now.us else 'm²/L'}, planned {_covers(drunk.planned_l_per_m2, us=now.us)}."
    )


def _covers(l_per_m2: float, *, us: bool) -> str:
    return f"{ft2_per_gal_from_m2_per_l(1 / l_per_m2):.0f}" if us else f"{1 / l_per_m2:.1f}"


def _count(fields: int) -> str:
    return "1 field" if fields == 1 else f"{fields} fields"


def _against(factor: float) -> str:
    if abs(factor - 1) < _EVEN:
        return "as planned"
    return f"{abs(factor - 1) * 100:.0f} % {'more' if factor > 1 else 'less'}"


def _start_if(plan: Plan, now: Now, *, most: int) -> Iterator[str]:
    """The field, then what stands against it, what nobody has looked at, and the mix."""
    ask = now.start_if
    if ask is None:
        return
    yield f"Begin {numbered(plan, ask.field)} ({rooms_text(plan, ask.rooms)}) only if:"
    rank = {False: 0, None: 1, True: 2}
    told = [one for one in ask.conditions if one.holds is False or one.what in _LOOKED_AT]
    told.sort(key=lambda one: rank[one.holds])
    marks = {True: "holds", False: "NOT YET", None: "look"}
    lean = _lean(plan, ask.lean, us=now.us)
    for one in told[: max(most - (2 if lean else 1), 1)]:
        yield f"  {marks[one.holds]}: {one.text}"
    if lean:
        yield lean


def _lean(plan: Plan, lean: LeanStart | None, *, us: bool) -> str:
    if lean is None:
        return ""
    band, keep = numbered(plan, lean.look_band), volume(lean.keep_l, us=us)
    return (
        f"  then look at tub and tank before {band}, {keep} or more still in them; "
        "the helper has stain, water and jug set out"
    )


def _next_alarm(plan: Plan, now: Now, *, capital: bool = False) -> str:
    coming = [one for one in now.alarms if one.at_min > now.at_min]
    if not coming:
        return ""
    soonest = coming[0]
    what = soonest.what[0].upper() + soonest.what[1:] if capital else soonest.what
    return f"Next {clock(plan, soonest.at_min, us=now.us)}: {what}."


def _wait(plan: Plan, wait: LiveClock, begins: float, *, us: bool) -> str:
    ends = (wait.clock.low_min, wait.clock.likely_min, wait.clock.high_min)
    told = [_at(plan, begins, one, us=us) for one in ends]
    plan_likely = _at(plan, begins, wait.planned.likely_min, us=us)
    coat = numbered(plan, wait.clock.coat)
    return (
        f"Coat {coat}, {wait.clock.name}: likely {told[1]} ({told[0]} to {told[2]}), "
        f"by the plan {plan_likely}; {wait.clock.rank}."
    )


def _at(plan: Plan, begins: float, after: float | None, *, us: bool) -> str:
    return clock(plan, begins + after, us=us) if after is not None else "not in sight"


def _open(now: Now) -> str:
    found = now.open_time
    if found is None or not found.moved or not (now.field or now.start_if):
        return ""
    clock_ = found.clock
    likely = clock_.likely_min or 0.0
    planned = found.planned.likely_min or 0.0
    edge = f"An edge lives {now.open_low_min:.1f} min to be safe ({likely:.1f} likely"
    return f"{edge}, by the plan {planned:.1f}); {clock_.rank}."


def _odd(now: Now) -> Iterator[str]:
    if now.contradictions:
        more = len(now.contradictions) - 1
        rest = f" And {more} more in the log." if more else ""
        what = litres_told(now.contradictions[-1], us=now.us)
        yield f"What does not fit: {what}{rest}"
