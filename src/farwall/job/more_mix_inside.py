"""More mix by the leaner way: at a stop line, or at a look inside the last field. Pure."""

from __future__ import annotations

from farwall.facts.numbered import numbered
from farwall.facts.plan import Field, Plan
from farwall.facts.so_far import MoreMix
from farwall.job.mix_needs import helper_busy
from farwall.mix.lean import Ahead
from farwall.mix.look import (
    LEAST_BOX_L,
    BandNeed,
    Place,
    lasts_until_l,
    late_and_rest,
    looks_into,
    mix_at_look_l,
)
from farwall.mix.thirst import Thirst, inside
from farwall.units import volume_words


def is_lean(plan: Plan, coat: str) -> bool:
    """Whether the coat is mixed little by little, as its plan says, and a helper is there still."""
    told = next((way for way in plan.ways if way.coat == coat), None)
    return told is not None and told.way != "at stop lines" and plan.inputs.crew.helper


def last_ahead(field: Field, chance_dry: float) -> Ahead:
    """A whole last field, as `mix.lean` takes it."""
    bands = tuple(BandNeed(b.id, b.litres, b.start_min, b.end_min) for b in field.bands)
    likely = sum(band.litres for band in field.bands)
    return Ahead(likely, chance_dry, bands=bands, busy=helper_busy(field))


def places_ahead(
    last: Ahead, done: set[str], *, have_l: float, belief: Thirst
) -> tuple[Place, ...]:
    """The looks into a begun field that are still to come, with what is in tub and tanks now."""
    used = sum(band.litres for band in last.bands if band.id in done) * belief.factor
    places = looks_into(
        last.bands,
        belief=belief,
        begin_l=have_l + used,
        chance_late=late_and_rest(last.chance_dry)[0],
        busy=last.busy,
    )
    return tuple(place for place in places if place.band not in done)


def rest_belief(last: Ahead, done: set[str], belief: Thirst, seen_factor: float | None) -> Thirst:
    """The belief of what is left of the field in hand, its begun part as thirsty as was seen."""
    done_l = sum(band.litres for band in last.bands if band.id in done)
    if seen_factor is None or done_l <= 0 or belief.variance == 0:
        return belief
    return inside(belief, done_l=done_l, used_l=done_l * seen_factor)


def at_look(
    plan: Plan, field: Field, last: Ahead, done: set[str], *, have_l: float, rest: Thirst
) -> MoreMix | None:
    """What to do in the last field in hand: mix at this look, or look later.

    None where looks are over, or too little is left to box a batch with in time. The
    `litres` of a look to come are 0: what is left then says how much.
    """
    name = numbered(plan, field.id)
    places = places_ahead(last, done, have_l=have_l, belief=rest)
    if not places:
        return None
    first = places[0]
    before = {b.id for b in last.bands if b.end_min <= first.at_min + 1e-6 and b.id != first.band}
    if before - done:
        return look_later(
            plan, field, places, 0, have_l=have_l, rest=rest, chance_dry=last.chance_dry
        )
    litres = mix_at_look_l(places, 0, left_l=have_l, rest=rest, chance_dry=last.chance_dry)
    if litres > 0:
        keep_l = max((first.until_ready_l - first.done_l) * rest.factor, 0.0) + LEAST_BOX_L
        if have_l < keep_l:
            return None
        why = f"{volume_words(have_l)} do for less than the rest of {name} may take. The helper "
        why += "mixes while the sprayer sprays; same lots, same cut; all that is left is poured "
        why += "into it."
        up = round(-(-litres * 10 // 1) / 10, 1)
        return MoreMix("boxed", up, field.id, first.band, round(keep_l, 2), round(have_l, 2), why)
    if len(places) > 1:
        return look_later(
            plan, field, places, 1, have_l=have_l, rest=rest, chance_dry=last.chance_dry
        )
    why = f"{volume_words(have_l)} are enough for the rest of {name}."
    return MoreMix("nothing", 0.0, "", "", 0.0, round(have_l, 2), why)


def look_later(
    plan: Plan,
    field: Field,
    places: tuple[Place, ...],
    number: int,
    *,
    have_l: float,
    rest: Thirst,
    chance_dry: float,
) -> MoreMix:
    """Nothing now: tub and tank are looked at before a band of the last field."""
    place = places[number]
    go_on_l = lasts_until_l(places, number, rest=rest, chance_dry=chance_dry)
    after = numbered(plan, place.after)
    enough = volume_words(go_on_l)
    why = f"Look into tub and tank after band {after}: with {enough} or more go on to the "
    why += "next look, with less mix by what is left and box it."
    return MoreMix("look", 0.0, field.id, place.band, round(go_on_l, 2), round(have_l, 2), why)
