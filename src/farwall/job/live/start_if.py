"""The next field is begun only if: mix, slab, room, time, edges, the coat below. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from farwall.air.limits import COLDEST_C, HOTTEST_C, slab_verdict
from farwall.facts.fits_crew import fits_crew
from farwall.facts.numbered import numbered
from farwall.facts.plan import Field
from farwall.job.live.alarms import ends_min
from farwall.job.live.found import found_over
from farwall.job.live.noun import Condition, LeanStart, LiveClock, StartIf
from farwall.job.live.standing import Standing
from farwall.job.more_mix_inside import is_lean, last_ahead
from farwall.job.story.figures import temperature, volume
from farwall.job.way_words import rooms_text
from farwall.mix.lean import looks_of
from farwall.mix.look import LEAST_BOX_L, Place
from farwall.units import f_from_c


def start_if(
    standing: Standing,
    *,
    chances: Mapping[str, float],
    slab_c: float,
    measured: bool,
    open_low_min: float,
    waits: Sequence[LiveClock],
    light_until_min: float | None,
) -> StartIf | None:
    """What must hold before the next field is begun; None when none of the coat is to come."""
    field = standing.next_field
    if field is None:
        return None
    found = (
        *_verdict(standing, field),
        *_edges(standing),
        _mix(standing, field, chances),
        _slab(slab_c, measured=measured, us=standing.us),
        *_rooms(standing, field),
        *_below(standing, waits),
        _time(standing, field, light_until_min),
        _edge_age(field, open_low_min),
    )
    return StartIf(field.id, field.rooms, found, _lean(standing, field, chances))


def _lean(standing: Standing, field: Field, chances: Mapping[str, float]) -> LeanStart | None:
    """How the field is looked into, where it is the coat's last and the plan's way says so."""
    places = _places(standing, field, chances)
    if not places:
        return None
    first = places[0]
    keep = (first.until_ready_l - first.done_l) * standing.belief.factor + LEAST_BOX_L
    begin = max(_likely_l(standing, field), standing.litres.have_l)
    return LeanStart(round(begin, 2), first.band, round(keep, 2))


def _places(standing: Standing, field: Field, chances: Mapping[str, float]) -> tuple[Place, ...]:
    """The looks into a field that is to come; none unless it is the last and its way is lean."""
    if len(standing.to_come) > 1 or standing.in_hand is not None:
        return ()
    if not is_lean(standing.plan, standing.coat):
        return ()
    return looks_of(last_ahead(field, chances[field.id]), standing.belief)


def _likely_l(standing: Standing, field: Field) -> float:
    return sum(band.litres for band in standing.left_of(field)) * standing.belief.factor


def enough_l(standing: Standing, field: Field, chances: Mapping[str, float]) -> float:
    """What must stand in tub and tanks before a field is begun; its likely need if looked into."""
    if _places(standing, field, chances):
        return _likely_l(standing, field)
    litres = sum(band.litres for band in standing.left_of(field))
    return standing.belief.enough_l(litres, chance_dry=chances[field.id])


def _mix(standing: Standing, field: Field, chances: Mapping[str, float]) -> Condition:
    need = enough_l(standing, field, chances)
    left = standing.litres.have_l
    if standing.in_hand is not None:
        hand = sum(band.litres for band in standing.left_of(standing.in_hand))
        left = max(left - hand * standing.belief.factor, 0.0)
    told = "there" if standing.litres.known else "by the plan, weigh them"
    us = standing.us
    text = f"at least {volume(need, us=us)} in tub and tank; {volume(left, us=us)} {told}"
    return Condition("mix", text, left >= need - 1e-6 if standing.litres.known else None)


def _slab(slab_c: float, *, measured: bool, us: bool) -> Condition:
    verdict = slab_verdict(surface_c=slab_c)
    ends = (COLDEST_C, HOTTEST_C)
    cold_f, hot_f = (f_from_c(one) for one in ends)
    spans = (f"{cold_f:.0f} to {hot_f:.0f} °F", f"{ends[0]:.0f} to {ends[1]:.0f} °C")
    first, other = spans if us else spans[::-1]
    text = f"slab from {first} ({other}); "
    text += f"{temperature(slab_c, us=us)} {'measured' if measured else 'by the plan, measure it'}"
    no = verdict.word == "no"
    return Condition("slab", text, False if no else (True if measured else None))


def _verdict(standing: Standing, field: Field) -> Iterator[Condition]:
    """A field that nobody should spray as the plan has it: its page on the run sheet says NO."""
    if not fits_crew(field, standing.plan.inputs.crew):
        name = numbered(standing.plan, field.id)
        yield Condition(
            "plan", f"field {name} is planned anew: as it stands, its page says NO", holds=False
        )


def _rooms(standing: Standing, field: Field) -> Iterator[Condition]:
    for room in field.rooms:
        if room in standing.closed:
            until = standing.closed[room]
            when = f" until {standing.clock(until)}" if until is not None else ""
            name = rooms_text(standing.plan, [room])
            yield Condition("room", f"{name} is free; somebody is in it{when}", holds=False)
    if not set(field.rooms) & set(standing.closed):
        yield Condition("room", f"{rooms_text(standing.plan, field.rooms)} free", holds=True)


def _edges(standing: Standing) -> Iterator[Condition]:
    field = standing.in_hand
    if field is not None:
        at = standing.clock(ends_min(standing, field))
        name = numbered(standing.plan, field.id)
        text = f"{name} is done to its stop lines, about {at}; no edge stays open behind you"
        yield Condition("edges", text, holds=False)


def _below(standing: Standing, waits: Sequence[LiveClock]) -> Iterator[Condition]:
    """A coat over another waits until that is dry."""
    coats = [coat.id for coat in standing.plan.inputs.coats]
    at = coats.index(standing.coat)
    if not at:
        return
    below = coats[at - 1]
    number = numbered(standing.plan, below)
    wait = next((w for w in waits if w.clock.coat == below and "recoat" in w.clock.name), None)
    told = standing.story.coat(below)
    if wait is None or told is None or told.end_min is None:
        yield Condition("coat below", f"coat {number} is done and dry", holds=False)
        return
    holds = found_over(standing.plan, standing.story, clock="dry to recoat", coat=below)
    low, high = wait.clock.low_min, wait.clock.high_min
    if holds is None and standing.at_min < told.end_min + low:
        holds = False
    ends = [standing.clock(told.end_min + m) for m in (low, high) if m is not None]
    text = f"coat {number} is dry, looked at; likely from {' to '.join(ends)}"
    yield Condition("coat below", text, holds)


def _time(standing: Standing, field: Field, light_until_min: float | None) -> Condition:
    lasts = field.end_min - field.start_min
    text = f"{lasts:.0f} min of light and quiet"
    if light_until_min is None:
        return Condition("time", text, None)
    begins = standing.at_min
    if standing.in_hand is not None:
        begins = ends_min(standing, standing.in_hand)
    left = light_until_min - begins
    text += f"; the sun sets {standing.clock(light_until_min)}"
    return Condition("time", text, left >= lasts)


def _edge_age(field: Field, open_low_min: float) -> Condition:
    text = f"oldest edge {field.peak_age_min:.1f} of {open_low_min:.1f} min"
    return Condition("edge", text, field.peak_age_min <= open_low_min)
