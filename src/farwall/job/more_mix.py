"""More mix in mid-day: when, how much, and never so that two mixes are seen side by side. Pure.

More is mixed at a stop line; or in mid-field early enough to be poured together with all that is
left (boxed). Never a fresh mix against a wet edge, nor beside floor that is seen with it
through an opening without a leaf.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from farwall.facts.numbered import numbered
from farwall.facts.plan import Field, Plan
from farwall.facts.so_far import MoreMix, SoFar
from farwall.job.first_thirst import first_thirst
from farwall.job.half_told import bands_done
from farwall.job.mix_needs import planned_mixed_l, seen_beside
from farwall.job.more_mix_inside import at_look, is_lean, last_ahead, look_later, rest_belief
from farwall.mix.gate import budget, mix_now_l
from farwall.mix.lean import Ahead, looks_of, mix_at_line_l
from farwall.mix.look import LEAST_BOX_L
from farwall.mix.thirst import Thirst
from farwall.nouns import dataclass
from farwall.units import volume_words

MIXING_MIN = 6.0
"""Measuring out, stirring and boxing a batch. Rank: guess."""
_CERTAIN_PERCENT = 99.0


@dataclass(frozen=True)
class _Ahead:
    """A field to come, or the rest of the one in hand: its litres and its part of the chance."""

    field: Field
    litres: float
    chance_dry: float
    begun: bool


def more_mix(plan: Plan, so_far: SoFar, *, belief: Thirst | None = None) -> MoreMix | None:
    """Whether more has to be mixed for the coat in hand; None when nothing of it is to come.

    `plan` is one planned in mid-day. What was really used corrects the belief
    of how thirsty the slab is, once the tub is told; until then it is as planned. A `belief` that
    has learned already, field by field, is taken as it is.
    """
    if plan.so_far is None:
        return None
    ahead = _ahead(plan)
    if not ahead:
        return None
    planned_l = _done_l(plan)
    mixed_l = so_far.mixed_l if so_far.mixed_l is not None else _mixed_l(plan)
    told = so_far.tub_l is not None
    tanks_l = plan.so_far.tank_l + (plan.so_far.tank_2_l or 0.0)
    have_l = (so_far.tub_l or 0.0) + tanks_l if told else mixed_l - planned_l
    if belief is not None:
        return _answer(plan, ahead, max(have_l, 0.0), belief, belief)
    belief = first_thirst(plan, plan.so_far.coat)
    used_l = mixed_l - have_l
    if planned_l > 0 and used_l > 0:  # untold is as planned, here as everywhere
        for litres in _whole_fields_l(plan):  # as the gate's table on the sheet does it
            belief = belief.after(likely_l=litres, used_l=litres * used_l / planned_l)
    seen = used_l / planned_l if told and planned_l > 0 and used_l > 0 else None
    rest = (
        rest_belief(_last(plan, ahead), bands_done(plan), belief, seen)
        if ahead[0].begun
        else belief
    )
    return _answer(plan, ahead, max(have_l, 0.0), belief, rest)


def _answer(
    plan: Plan, ahead: Sequence[_Ahead], have_l: float, belief: Thirst, rest: Thirst
) -> MoreMix:
    """`rest` is the belief of what is left of the field in hand."""
    first = ahead[0]
    lean = is_lean(plan, first.field.coat)
    if lean and first.begun and len(ahead) == 1:
        last = _last(plan, ahead)
        looked = at_look(plan, first.field, last, bands_done(plan), have_l=have_l, rest=rest)
        if looked is not None:
            return looked
    left_l = have_l
    sooner: tuple[_Ahead, float] | None = None
    for number, one in enumerate(ahead):
        litres = _asked_l(plan, ahead[number:], left_l, belief, lean=lean)
        if litres > 0 and one.begun:
            return _in_mid_field(plan, one, litres, have_l, belief)
        if litres > 0:
            late = left_l < LEAST_BOX_L and bool(_seen_beside(plan, one.field))
            where, then_l = sooner if late and sooner is not None else (one, max(left_l, 0.0))
            return _at_stop_line(
                plan, where, litres, have_l=have_l, left_l=then_l,
                seen=_seen_beside(plan, where.field),
            )  # fmt: skip
        if not one.begun and left_l >= LEAST_BOX_L:
            sooner = (one, left_l)
        if lean and not one.begun and number + 1 == len(ahead):
            last = _last(plan, ahead)
            places = looks_of(last, belief, begin_l=max(left_l, 0.0))
            if places:
                chance = last.chance_dry
                return look_later(
                    plan, one.field, places, 0, have_l=have_l, rest=belief, chance_dry=chance
                )
        left_l -= one.litres * belief.factor
    coat = numbered(plan, first.field.coat)
    why = f"{volume_words(have_l)} are enough for all that is to come in coat {coat}."
    return MoreMix("nothing", 0.0, "", "", 0.0, round(have_l, 2), why)


def _asked_l(
    plan: Plan, ahead: Sequence[_Ahead], left_l: float, belief: Thirst, *, lean: bool
) -> float:
    """What the way of the coat asks for before the first of `ahead` is begun, or gone on with."""
    if not lean or ahead[0].begun:
        litres, chances = [one.litres for one in ahead], [one.chance_dry for one in ahead]
        return mix_now_l(left_l, litres, belief=belief, chances=chances)
    asked = [
        Ahead(one.litres, one.chance_dry, bool(_seen_beside(plan, one.field))) for one in ahead
    ]
    return mix_at_line_l(left_l, [*asked[:-1], _last(plan, ahead)], belief)


def _last(plan: Plan, ahead: Sequence[_Ahead]) -> Ahead:
    """The last field to come, with its bands where the coat's way looks into it."""
    one = ahead[-1]
    seen = bool(_seen_beside(plan, one.field))
    return replace(last_ahead(one.field, one.chance_dry), seen=seen)


def _in_mid_field(plan: Plan, one: _Ahead, litres: float, have_l: float, belief: Thirst) -> MoreMix:
    """In an open field: boxed while enough is left, or not at all."""
    tools, field = plan.inputs.tools, one.field
    rate_l_min = tools.spray_m2_min * plan.inputs.l_per_m2[field.coat] * belief.factor
    rate_l_min *= _at_work(plan, field)
    keep_l = max(MIXING_MIN * rate_l_min, LEAST_BOX_L)
    helper = plan.inputs.crew.helper
    alone_dies = not helper and field.open_time_min.low < MIXING_MIN + 1.0
    band, at_l = _latest_band(plan, field, have_l, keep_l, belief.factor)
    if have_l < keep_l or alone_dies:
        why = "a fresh mix against the wet edge of another shows as a line"
        if alone_dies:
            why += f", and {MIXING_MIN:.0f} min of mixing alone outlive the edge"
        else:
            why += f", and {volume_words(have_l)} are gone before a new one is mixed and boxed"
        why += ". Spray with what there is to the next line that hides a seam, "
        why += "and begin the new mix behind it."
        return MoreMix("no", _up(litres), field.id, "", 0.0, round(have_l, 2), _told(why))
    name = numbered(plan, field.id)
    why = f"{volume_words(have_l)} may not do for the rest of field {name}. Same lots, same cut; "
    why += "pour all that is left in tub and tank into the new mix and stir before going on."
    return MoreMix("boxed", _up(litres), field.id, band, round(at_l, 2), round(have_l, 2), why)


def _at_work(plan: Plan, field: Field) -> int:
    """How many spray what is left of a field."""
    done = {one.id for one in plan.so_far.done} if plan.so_far is not None else set()
    return len({band.sprayer for band in field.bands if band.id not in done}) or 1


def _latest_band(
    plan: Plan, field: Field, have_l: float, keep_l: float, factor: float
) -> tuple[str, float]:
    """The last band before which enough is left to be boxed, and what is left then."""
    done = {one.id for one in plan.so_far.done} if plan.so_far is not None else set()
    band, at_l, left_l = "", have_l, have_l
    for each in field.bands:
        if each.id in done:
            continue
        if left_l < keep_l and band:
            break
        band, at_l = each.id, left_l
        left_l -= each.litres * factor
    return band, max(at_l, keep_l)


def _at_stop_line(
    plan: Plan, one: _Ahead, litres: float, *, have_l: float, left_l: float, seen: str
) -> MoreMix:
    """Before a field is begun, where the last one has ended."""
    name, number = one.field.id, numbered(plan, one.field.id)
    if left_l >= LEAST_BOX_L:
        why = f"Before field {number}, at the stop line: about {volume_words(left_l)} are left "
        why += "then. Pour them into the new mix, same lots, same cut."
        if seen:
            why += f" It is seen beside {seen}, so keep at least that much back."
        return MoreMix("boxed", _up(litres), name, "", round(left_l, 2), round(have_l, 2), why)
    if seen:
        why = f"field {number} is seen beside {seen} with no leaf between, and nothing is left to "
        why += "box the new mix with: two shades would lie side by side. Leave it for another day, "
        why += "or try the new mix on a board beside the old first."
        return MoreMix("no", _up(litres), name, "", LEAST_BOX_L, round(have_l, 2), _told(why))
    why = (
        f"Before field {number}: a leaf closes between it and what is done, so a fresh mix may do; "
    )
    why += "same lots, same cut."
    return MoreMix("fresh", _up(litres), name, "", 0.0, round(have_l, 2), why)


def _told(why: str) -> str:
    return f"No: {why}"


def _up(litres: float) -> float:
    """Rounded up to a tenth of a litre: what can be measured out."""
    return round(-(-litres * 10 // 1) / 10, 1)


def _seen_beside(plan: Plan, field: Field) -> str:
    """An earlier field of the coat that is seen together with this one; empty when none is."""
    other = seen_beside(field, plan.fields)
    return f"field {numbered(plan, other)}" if other else ""


def _ahead(plan: Plan) -> list[_Ahead]:
    past = plan.so_far
    done = {one.id for one in past.done} if past is not None else set()
    coat = past.coat if past is not None else ""
    found = []
    for field in sorted(plan.fields, key=lambda field: field.order):
        left = [band.litres for band in field.bands if band.id not in done]
        if field.coat == coat and left:
            begun = len(left) < len(field.bands)
            found.append((not begun, field.order, field, sum(left), begun))
    found.sort(key=lambda one: one[:2])
    given = _chances(plan)
    shared = budget((1 - _CERTAIN_PERCENT / 100) / len(plan.inputs.coats), max(len(found), 1))
    return [
        _Ahead(field, litres, given.get(field.id, shared[number]), begun)
        for number, (_, _, field, litres, begun) in enumerate(found)
    ]


def _chances(plan: Plan) -> dict[str, float]:
    """Each field's part of the chance of running dry, as the plan's gates have it."""
    gates = (plan.buying or {}).get("gates")
    if not isinstance(gates, list):
        return {}
    return {str(gate["field"]): float(gate["chance_dry"]) for gate in gates}


def _done_l(plan: Plan) -> float:
    """What the bands done were planned to take in the coat in hand."""
    past = plan.so_far
    done = {one.id for one in past.done} if past is not None else set()
    coat = past.coat if past is not None else ""
    bands = [band for field in plan.fields if field.coat == coat for band in field.bands]
    return sum(band.litres for band in bands if band.id in done)


def _whole_fields_l(plan: Plan) -> list[float]:
    """What each field of the coat in hand that is wholly done was planned to take."""
    past = plan.so_far
    done = {one.id for one in past.done} if past is not None else set()
    coat = past.coat if past is not None else ""
    whole = [f for f in plan.fields if f.coat == coat and all(b.id in done for b in f.bands)]
    return [sum(band.litres for band in field.bands) for field in whole]


def _mixed_l(plan: Plan) -> float:
    """What the plan has mixed by now: every mix before a field that is begun, the first always."""
    past = plan.so_far
    done = {one.id for one in past.done} if past is not None else set()
    coat = past.coat if past is not None else ""
    begun = {f.id for f in plan.fields if any(band.id in done for band in f.bands)}
    return planned_mixed_l(plan, coat, begun, done)
